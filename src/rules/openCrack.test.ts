import { expect, test } from "vitest";
import { givenCoated, told } from "../../tests/givenPiece.ts";
import { openCrack } from "./openCrack.ts";

function cracked() {
  const piece = givenCoated();
  const crackId = piece.log(100, "crack-found", { kind: "hairline", stage: "coating", where: "left ear" });
  return { piece, crackId };
}

test("a crack holds the piece, however fine it is", () => {
  const { piece, crackId } = cracked();
  const [found] = openCrack(piece.standing(101));
  expect(found).toMatchObject({ level: "hold", variant: "open", entries: [crackId] });
  expect(found?.texts).toEqual({ where: "left ear", kind: "hairline" });
});

test("a patch holds it until the patch itself is found dry; a dry outer coat says nothing of it", () => {
  const { piece, crackId } = cracked();
  piece.log(102, "crack-patched", { crackId, how: "slurry" });
  expect(told(openCrack(piece.standing(103)))).toEqual(["hold patch-not-dry"]);
  piece.feel(110, "dry");
  expect(told(openCrack(piece.standing(111)))).toEqual(["hold patch-not-dry"]);
  piece.log(112, "patch-dried", { crackId });
  expect(openCrack(piece.standing(113))).toEqual([]);
});

test("a patch made anew is wet anew", () => {
  const { piece, crackId } = cracked();
  piece.log(102, "crack-patched", { crackId, how: "slurry" });
  piece.log(112, "patch-dried", { crackId });
  piece.log(114, "crack-patched", { crackId, how: "ground out and filled again" });
  expect(told(openCrack(piece.standing(115)))).toEqual(["hold patch-not-dry"]);
});

test("a weight that stands still is of the whole shell; the patch waits for its own word", () => {
  const { piece, crackId } = cracked();
  piece.log(101, "piece-changed", { changes: { areaM2: 0.1 } });
  piece.log(102, "crack-patched", { crackId, how: "slurry" });
  const coatId = piece.standing(103).outer?.coat.id ?? "";
  for (const hour of [104, 115])
    piece.log(hour, "dryness-seen", { method: "weight", massG: 2410, scaleG: 0.1, coatId });
  expect(piece.standing(116).cracks).toMatchObject([{ state: "patch-wet", by: null }]);
});

test("felt dry before the patch says nothing of the patch", () => {
  const { piece, crackId } = cracked();
  piece.feel(101, "dry");
  piece.log(102, "crack-patched", { crackId, how: "slurry" });
  expect(told(openCrack(piece.standing(120)))).toEqual(["hold patch-not-dry"]);
});

test("a coat over the patch answers for it with its own drying", () => {
  const { piece, crackId } = cracked();
  piece.log(102, "crack-patched", { crackId, how: "slurry" });
  piece.coat(103);
  expect(openCrack(piece.standing(103.1))).toEqual([]);
});

test("fire dries a patch", () => {
  const { piece, crackId } = cracked();
  piece.log(102, "crack-patched", { crackId, how: "slurry" });
  piece.log(104, "shell-fired", { peakC: 850, holdMin: 45 });
  expect(openCrack(piece.standing(105))).toEqual([]);
});

test("two cracks with one patched leave one open", () => {
  const { piece, crackId } = cracked();
  piece.log(101, "crack-found", { kind: "open", stage: "coating", where: "base" });
  piece.log(102, "crack-patched", { crackId, how: "slurry" });
  piece.coat(103);
  expect(openCrack(piece.standing(104)).map(({ texts }) => texts["where"])).toEqual(["base"]);
});

test("no crack in the log is no finding: the rule can't see the shell", () => {
  expect(openCrack(givenCoated().standing(119))).toEqual([]);
});

test("a crack in what is trimmed off is a note, patched or not; one beside it still holds", () => {
  const piece = givenCoated();
  const chip = { kind: "chip", stage: "coating" } as const;
  piece.log(100, "crack-found", { ...chip, where: "cup rim", trimmedOff: true });
  expect(told(openCrack(piece.standing(101)))).toEqual(["note trimmed-off"]);
  expect(piece.standing(101).action.kind).not.toBe("mend");
  piece.log(102, "crack-found", { ...chip, where: "foot" });
  expect(told(openCrack(piece.standing(103)))).toEqual(["note trimmed-off", "hold open"]);
  expect(piece.standing(103).action.kind).toBe("mend");
});
