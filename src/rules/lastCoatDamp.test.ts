import { expect, test } from "vitest";
import { dayOne, givenCoated, givenPiece, knownPlan, told, unhurried } from "../../tests/givenPiece.ts";
import { lastCoatDamp } from "./lastCoatDamp.ts";

const { readyAt } = givenCoated().standing(84.1).outer ?? { readyAt: { early: null, late: null } };
const hourOf = (at: number | null): number => ((at ?? NaN) - dayOne) / 3_600_000;
const earlyH = hourOf(readyAt.early);
const lateH = hourOf(readyAt.late);

/** All coats on and no reading of the room, ever. */
function silent() {
  const piece = givenPiece(knownPlan);
  piece.coats(unhurried);
  return piece;
}

test("the last coat holds the piece until the late end of its time", () => {
  const piece = givenCoated();
  expect(told(lastCoatDamp(piece.standing(earlyH - 0.1)))).toEqual(["hold wet"]);
  expect(told(lastCoatDamp(piece.standing(earlyH + 0.1)))).toEqual(["hold maybe"]);
  expect(told(lastCoatDamp(piece.standing(lateH - 0.05)))).toEqual(["hold maybe"]);
  expect(lastCoatDamp(piece.standing(lateH + 1))).toEqual([]);
});

test("while coats are to come, a damp one is no last one", () => {
  const piece = givenPiece(knownPlan);
  piece.air(0.5);
  piece.coat(1);
  expect(lastCoatDamp(piece.standing(1.1))).toEqual([]);
});

test("with nothing logged of the air or the coat, its dryness is unknown and holds", () => {
  expect(told(lastCoatDamp(silent().standing(300)))).toEqual(["hold unknown"]);
});

test("felt dry a day later, a shell in an unread room is one to watch", () => {
  const piece = silent();
  piece.feel(110, "dry");
  expect(told(lastCoatDamp(piece.standing(111)))).toEqual(["watch touch-only"]);
});

test("felt damp, it holds whatever the sum says", () => {
  const piece = givenCoated();
  piece.feel(110, "damp");
  expect(told(lastCoatDamp(piece.standing(110.1)))).toEqual(["hold wet"]);
});

test("felt dry minutes after the dip, against the sum, is one to watch until half a day is over", () => {
  const piece = givenCoated();
  piece.feel(84.3, "dry");
  const found = lastCoatDamp(piece.standing(84.4));
  expect(told(found)).toEqual(["watch touch-only"]);
  expect(found[0]?.figures["leftShare"]?.value).toBeGreaterThan(0.5);
  expect(lastCoatDamp(piece.standing(96.1))).toEqual([]);
});

test("felt dry when the sum is nearly there is evidence enough", () => {
  const piece = givenCoated();
  piece.feel(earlyH + 0.2, "dry");
  expect(lastCoatDamp(piece.standing(earlyH + 0.3))).toEqual([]);
});

test("a burnout begun on a damp shell is a hold while it runs and one to watch after", () => {
  const piece = givenCoated();
  piece.log(84.5, "burnout-started", {});
  expect(told(lastCoatDamp(piece.standing(84.6)))).toEqual(["hold burnout-damp"]);
  piece.log(87, "burnout-ended", { result: "clean" });
  expect(told(lastCoatDamp(piece.standing(87.1)))).toEqual(["watch burnout-damp"]);
  piece.log(88, "shell-fired", { peakC: 850, holdMin: 60 });
  expect(lastCoatDamp(piece.standing(88.1))).toEqual([]);
});

test("a burnout begun on a dry shell is nothing to speak of", () => {
  const piece = givenCoated();
  piece.log(100, "burnout-started", {});
  expect(lastCoatDamp(piece.standing(101))).toEqual([]);
  piece.log(104, "burnout-ended", { result: "clean" });
  expect(lastCoatDamp(piece.standing(105))).toEqual([]);
});

test("a burnout begun on a shell of which nothing is known is one to watch, also when it has ended", () => {
  const piece = silent();
  piece.log(120, "burnout-started", {});
  expect(told(lastCoatDamp(piece.standing(121)))).toEqual(["watch burnout-unknown"]);
  piece.log(124, "burnout-ended", { result: "clean" });
  expect(told(lastCoatDamp(piece.standing(125)))).toEqual(["watch burnout-unknown"]);
});

test("dry in the open and wet in its recess, it holds and names the place; later it does not", () => {
  const piece = givenCoated({ pockets: ["recess"] });
  expect(piece.standing(lateH + 1).outer?.verdict).toBe("dry");
  const [found, ...more] = lastCoatDamp(piece.standing(lateH + 1));
  expect(more).toEqual([]);
  expect(found).toMatchObject({ variant: "slow-place", texts: { place: "hollow or deep recess" } });
  expect(found?.level).toBe("hold");
  expect(lastCoatDamp(piece.standing(200))).toEqual([]);
});
