import { expect, test } from "vitest";
import { dayOne, givenPiece, knownPlan, told, type GivenPiece } from "../../tests/givenPiece.ts";
import { millisecondsInDay as dayMs } from "date-fns/constants";
import { findingsFor, reviewFindingsFor } from "./all.ts";
import { dippedFromUnfitBucket } from "./dippedFromUnfitBucket.ts";
import { primeLeftBare } from "./primeLeftBare.ts";
import { recipeNotFollowed } from "./recipeNotFollowed.ts";
import { recoatedBeforeDry } from "./recoatedBeforeDry.ts";
import { stuccoOutOfOrder } from "./stuccoOutOfOrder.ts";

/** Four coats a minute apart, far too fast had they been logged as they went on. */
function withFourOn(given: Parameters<GivenPiece["coat"]>[1]): GivenPiece {
  const piece = givenPiece(knownPlan);
  for (let i = 0; i < 4; i += 1) piece.coat(0.02 * (i + 1), given);
  return piece;
}

const before = { beforeLog: "undated", stuccoId: null } as const;

test("coats from before the log are accused of nothing; the same coats logged as they went on are", () => {
  const hour = 24;
  const asked = (piece: GivenPiece) => {
    const standing = piece.standing(hour);
    return [
      ...told(recoatedBeforeDry(standing)),
      ...told(stuccoOutOfOrder(standing)),
      ...told(recipeNotFollowed(standing)),
      ...told(dippedFromUnfitBucket(standing)),
      ...told(primeLeftBare(standing)),
    ];
  };
  expect(asked(withFourOn(before))).toEqual([]);
  expect(asked(withFourOn({ stuccoId: null }))).not.toEqual([]);
});

test("with readings of that time they are still not judged", () => {
  const piece = givenPiece(knownPlan);
  piece.air(0);
  for (let i = 0; i < 4; i += 1) piece.coat(0.02 * (i + 1), before);
  piece.air(5);
  expect(recoatedBeforeDry(piece.standing(24))).toEqual([]);
  expect(piece.standing(24).wall.judged?.loadShare).toBe(1);
});

test("the coat dipped over the last of them is judged only by what the log can know", () => {
  const late = withFourOn({ ...before, beforeLog: "dated" });
  late.coat(30);
  expect(recoatedBeforeDry(late.standing(31))).toEqual([]);
  // Felt wet in the log, and covered: that is the log's own.
  const wet = withFourOn({ ...before, beforeLog: "dated" });
  wet.feel(1, "wet");
  wet.coat(1.1);
  expect(told(recoatedBeforeDry(wet.standing(2)))).toEqual(["hold wet"]);
});

test("a piece with coats on goes through its log and its review like another", () => {
  const piece = givenPiece(knownPlan);
  for (let i = 0; i < 8; i += 1) piece.coat(0.02 * (i + 1), { beforeLog: "dated" });
  for (let hour = 1; hour < 80; hour += 5) piece.air(hour);
  piece.coat(40);
  const standing = piece.standing(80);
  expect(standing.coatsDone).toBe(9);
  expect(findingsFor(standing).filter(({ level }) => level !== "note")).toEqual([]);
  expect(reviewFindingsFor(standing).filter(({ level }) => level !== "note")).toEqual([]);
  expect(standing.now - dayOne).toBeGreaterThan(3 * dayMs);
});
