import { millisecondsInHour as hourMs } from "date-fns/constants";
import { expect, test } from "vitest";
import { dayOne, givenCoated } from "../../../tests/givenPiece.ts";
import type { Run } from "./fireStates.ts";
import { kilnNow, runsOfPiece } from "./runsOfPiece.ts";

const preheat = (id: string, pieceId: string, startedH: number | null): Run => ({
  id,
  plan: {
    id: `${id}-plan`,
    at: dayOne,
    kilnId: "kiln",
    purpose: "preheat",
    pieceIds: [pieceId],
    segments: [],
  } as unknown as Run["plan"],
  pieceIds: [pieceId],
  segments: [],
  changes: [],
  startedAt: startedH === null ? null : dayOne + startedH * hourMs,
  startedC: 20,
  readings: [],
  stepsDone: [],
  ended: null,
  lastAt: dayOne,
});

const fired = () => {
  const piece = givenCoated();
  piece.log(130, "burnout-started", {});
  piece.log(135, "burnout-ended", { result: "clean" });
  piece.log(136, "shell-fired", { peakC: 870, holdMin: 60 });
  return piece;
};

test("a preheat that is lit is among a shell's runs, one that is only planned or another's is not", () => {
  const { piece } = fired().standing(200);
  const runs = [
    preheat("lit", piece.id, 199),
    preheat("planned", piece.id, null),
    preheat("other", "fox", 199),
  ];
  const known = new Map(runs.map((run) => [run.id, run]));
  expect(runsOfPiece(piece, known).map(({ id }) => id)).toEqual(["lit"]);
  expect(runsOfPiece(piece, undefined)).toEqual([]);
});

test("a shell stands in a lit preheat until its own log has the preheat or it came out", () => {
  const given = fired();
  const { piece } = given.standing(200);
  const lit = preheat("lit", piece.id, 199);
  expect(kilnNow(piece, [lit])).toBe(lit);
  expect(kilnNow(piece, [preheat("planned", piece.id, null)])).toBeNull();
  expect(given.standing(200).action.kind).toBe("preheat");
  expect(given.standing(200, [lit]).action).toEqual({ kind: "in-kiln", runId: "lit", since: lit.startedAt });
  given.log(201, "shell-preheated", { shellC: 600 });
  expect(kilnNow(given.standing(202).piece, [lit])).toBeNull();
});
