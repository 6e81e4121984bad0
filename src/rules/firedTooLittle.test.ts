import { expect, test } from "vitest";
import { dayOne, givenCoated, told } from "../../tests/givenPiece.ts";
import { streamLog } from "../../tests/logs/testStreamLog.ts";
import { foldRun } from "../logbook/fire/foldRun.ts";
import type { Run } from "../logbook/fire/fireStates.ts";
import { firedTooLittle } from "./firedTooLittle.ts";
import { bestHeat } from "./firings.ts";

function burntOut() {
  const piece = givenCoated();
  piece.log(100, "burnout-started", {});
  piece.log(104, "burnout-ended", { result: "clean" });
  return piece;
}

test.each([
  [800, 30, []],
  [799, 30, ["watch cool"]],
  [800, 29, ["watch short"]],
  [700, 60, ["watch cool"]],
  [699, 60, ["hold not-bonded"]],
])("fired to %d °C for %d min: %j", (peakC, holdMin, expected) => {
  const piece = burntOut();
  piece.log(105, "shell-fired", { peakC, holdMin });
  expect(told(firedTooLittle(piece.standing(106)))).toEqual(expected);
});

test("a second, hotter firing mends a cool one", () => {
  const piece = burntOut();
  piece.log(105, "shell-fired", { peakC: 720, holdMin: 60 });
  piece.log(120, "shell-fired", { peakC: 850, holdMin: 45 });
  expect(firedTooLittle(piece.standing(121))).toEqual([]);
});

test("a firing before the last coat or patch doesn't count for it", () => {
  const coated = burntOut();
  coated.log(105, "shell-fired", { peakC: 850, holdMin: 60 });
  coated.coat(110);
  coated.log(130, "shell-preheated", { shellC: 600 });
  expect(told(firedTooLittle(coated.standing(131)))).toEqual(["watch not-logged"]);
});

test("a patch put on a fired shell has seen no fire", () => {
  const piece = burntOut();
  piece.log(105, "shell-fired", { peakC: 850, holdMin: 60 });
  const crackId = piece.log(110, "crack-found", { kind: "open", stage: "firing", where: "rim" });
  piece.log(111, "crack-patched", { crackId, how: "slurry" });
  piece.log(130, "shell-preheated", { shellC: 600 });
  expect(told(firedTooLittle(piece.standing(131)))).toEqual(["watch not-logged"]);
});

test("a burnout that was read hot for half an hour is a firing", () => {
  const piece = givenCoated();
  piece.log(100, "burnout-started", {});
  piece.log(103, "burnout-read", { kilnC: 820 });
  piece.log(103.6, "burnout-read", { kilnC: 830 });
  piece.log(104, "burnout-ended", { result: "clean" });
  piece.log(105, "shell-preheated", { shellC: 600 });
  expect(firedTooLittle(piece.standing(106))).toEqual([]);
});

test("a kiln that fell to 400 °C between two hot readings has not held its heat", () => {
  const piece = givenCoated();
  piece.log(100, "burnout-started", {});
  for (const [hour, kilnC] of [
    [103, 820],
    [103.3, 400],
    [103.6, 820],
  ] as const)
    piece.log(hour, "burnout-read", { kilnC });
  piece.log(104, "burnout-ended", { result: "clean" });
  piece.log(105, "shell-preheated", { shellC: 600 });
  const [found] = firedTooLittle(piece.standing(106));
  expect(told(found === undefined ? [] : [found])).toEqual(["watch short"]);
  // By straight lines: 20 K of 420 on the way down and as much on the way up, of 18 min each.
  expect(bestHeat(piece.standing(106))?.holdMin).toBeCloseTo((2 * 18 * 20) / 420, 3);
});

test("a shell that is heated for metal with no firing in its log can't be judged", () => {
  const piece = burntOut();
  expect(firedTooLittle(piece.standing(104.5))).toEqual([]);
  piece.log(105, "shell-preheated", { shellC: 600 });
  expect(told(firedTooLittle(piece.standing(106)))).toEqual(["watch not-logged"]);
});

/** A burnout of hours 100 to 104 whose logger was read in two hours after its end. */
function lateRun(kilnC: readonly number[]): Run {
  const run = streamLog("run/a");
  const at = (hour: number): number => dayOne + hour * 3_600_000;
  const plan = { kilnId: null, purpose: "burnout", pieceIds: [], startC: 20, segments: [] } as const;
  run.tell("run-planned", plan, at(99));
  run.tell("run-started", { kilnC: 20 }, at(100));
  run.tell("run-ended", { result: "done" }, at(104));
  const body = { source: "kiln.csv", afterS: kilnC.map((_, i) => i * 1800), kilnC: [...kilnC] };
  const done = run.run({ do: "log", stream: "run/a", type: "run-logged", body, at: at(101) }, at(106));
  const folded = foldRun("a", run.entries());
  if (!done.ok || folded === null) throw new Error("no run");
  return folded;
}

test("a logger's file read in late takes back a firing that was too cool, or shows that it was", () => {
  const piece = givenCoated();
  piece.log(100, "burnout-started", { runId: "a" });
  piece.log(104, "burnout-ended", { result: "clean" });
  piece.log(104, "shell-fired", { peakC: 690, holdMin: 60, runId: "a" });
  const asked = (run: Run) => told(firedTooLittle(piece.standing(107, [run])));
  expect(told(firedTooLittle(piece.standing(107)))).toEqual(["hold not-bonded"]);
  expect(asked(lateRun([400, 820, 830, 825]))).toEqual([]);
  expect(asked(lateRun([400, 760, 770, 765]))).toEqual(["watch cool"]);
});

test("a burnout that ended with no word of its heat is a firing by its run's readings", () => {
  const piece = givenCoated();
  piece.log(100, "burnout-started", { runId: "a" });
  piece.log(104, "burnout-ended", { result: "clean" });
  piece.log(105, "shell-preheated", { shellC: 600 });
  const asked = (runs: readonly Run[]) => told(firedTooLittle(piece.standing(107, runs)));
  expect(asked([])).toEqual(["watch not-logged"]);
  expect(asked([lateRun([400, 820, 830, 825])])).toEqual([]);
  expect(asked([lateRun([400, 820, 500, 300])])).toEqual(["watch short"]);
});
