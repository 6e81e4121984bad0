import { expect, test } from "vitest";
import { kiln, plan } from "../../tests/givenFiring.ts";
import { dayOne, givenCoated, told } from "../../tests/givenPiece.ts";
import type { RunBasis } from "../logbook/entries/fireBodies.ts";
import { foldRun } from "../logbook/fire/foldRun.ts";
import { loggedSegments } from "../logbook/fire/runStanding.ts";
import { streamLog } from "../../tests/logs/testStreamLog.ts";
import { runBrokeALimit } from "./runBrokeALimit.ts";

const at = (hour: number): number => dayOne + hour * 3_600_000;

const basis: RunBasis = {
  route: "staged",
  pattern: { material: "pla", massKg: 0.3 },
  wallMm: 10,
  family: "fused-silica",
  shellKg: 3,
  damp: "dry",
  firedBefore: false,
  seenAbove1100: false,
  blindMm: 0,
  kiln,
  after: "inspect",
  preheatC: null,
  fireC: null,
};

/** A burnout begun at hour 122 and read at these hours; the piece's log tells that it was in it. */
function burntOut(
  readings: readonly (readonly [hour: number, kilnC: number])[],
  planFor: RunBasis | null = basis,
) {
  const run = streamLog("run/a");
  run.tell(
    "run-planned",
    {
      kilnId: null,
      purpose: "burnout",
      pieceIds: ["piece-of-the-test"],
      startC: 20,
      segments: loggedSegments(plan().segments),
      ...(planFor === null ? {} : { basis: planFor }),
    },
    at(121),
  );
  run.tell("run-started", { kilnC: 20 }, at(122));
  for (const [hour, kilnC] of readings) run.tell("run-read", { kilnC }, at(hour));
  const piece = givenCoated({ material: "pla" });
  const began = piece.log(122, "burnout-started", { runId: "a" });
  const folded = foldRun("a", run.entries());
  if (folded === null) throw new Error("no run");
  return { piece, began, runs: [folded] };
}

test("from 260 to 460 in half an hour, where 200 K/h is the most, holds the piece; in an hour it does not", () => {
  const slow = burntOut([
    [123, 260],
    [123.6, 262],
    [124.7, 460],
  ]);
  expect(told(runBrokeALimit({ ...slow.piece.standing(125), runs: slow.runs }))).toEqual([]);
  const fast = burntOut([
    [123, 260],
    [123.6, 262],
    [124.1, 460],
  ]);
  const [found, ...others] = runBrokeALimit({ ...fast.piece.standing(125), runs: fast.runs });
  expect(others).toEqual([]);
  expect(found).toMatchObject({ variant: "too-fast", level: "hold", entries: [fast.began] });
  expect(found?.figures["limitKPerH"]).toEqual({ value: 200, unit: "K/h" });
});

test("straight through where it should run out is told, and a hold there is not", () => {
  const through = burntOut([
    [123, 230],
    [123.05, 300],
    [123.1, 310],
  ]);
  expect(told(runBrokeALimit({ ...through.piece.standing(124), runs: through.runs }))).toContain(
    "watch no-drain",
  );
});

test("a review since then, or a coat over it, leaves it a note", () => {
  const { piece, runs } = burntOut([
    [123, 260],
    [123.6, 262],
    [124.1, 460],
  ]);
  piece.log(126, "burnout-ended", { result: "stopped" });
  expect(told(runBrokeALimit({ ...piece.standing(127), runs }))).toEqual(["hold too-fast"]);
  piece.coat(128);
  expect(told(runBrokeALimit({ ...piece.standing(129), runs }))).toEqual(["note too-fast"]);
});

test("a run nobody read, one without its figures, and no run at all say nothing", () => {
  const unread = burntOut([]);
  expect(runBrokeALimit({ ...unread.piece.standing(125), runs: unread.runs })).toEqual([]);
  const unknown = burntOut([[122.5, 900]], null);
  expect(runBrokeALimit({ ...unknown.piece.standing(125), runs: unknown.runs })).toEqual([]);
  expect(runBrokeALimit(unread.piece.standing(125))).toEqual([]);
});
