import { millisecondsInHour as hourMs } from "date-fns/constants";
import { describe, expect, test } from "vitest";
import { givenCoated } from "../../../tests/givenPiece.ts";
import { foldRun } from "../fire/foldRun.ts";
import { streamLog } from "../../../tests/logs/testStreamLog.ts";
import { endFaults, endRun, pieceEnd, startingEnd } from "./endRun.ts";

const at = Date.UTC(2026, 3, 1);

function runOf(purpose: "burnout" | "firing" | "preheat", readings: readonly (readonly [number, number])[]) {
  const log = streamLog("run/r");
  const segments = [{ kind: "instruction", code: "keep-hot" }] as const;
  log.tell("run-planned", { kilnId: null, purpose, pieceIds: ["p"], startC: 20, segments }, at);
  log.tell("run-started", { kilnC: 20 }, at);
  for (const [hour, kilnC] of readings) log.tell("run-read", { kilnC }, at + hour * hourMs);
  const run = foldRun("r", log.entries());
  if (run === null) throw new Error("no run");
  return run;
}
const hot = [
  [4, 870],
  [5.5, 868],
  [8, 600],
] as const;

describe("the end of a run in a piece's log", () => {
  test("a burnout that came clean was also a firing, with peak and hold by the readings, and stands hot", () => {
    const run = runOf("burnout", hot);
    const piece = givenCoated();
    piece.log(122, "burnout-started", { runId: "r" });
    const draft = startingEnd(run, 12.34);
    expect(draft).toMatchObject({
      peakC: 870,
      isFired: true,
      isPreheated: true,
      shellC: 600,
      energyKWh: 12.3,
    });
    expect(draft.holdMin).toBeGreaterThanOrEqual(90);
    expect(pieceEnd(run, piece.standing(123).piece, draft).map(({ type, body }) => [type, body])).toEqual([
      ["burnout-ended", { result: "clean" }],
      ["shell-fired", { peakC: 870, holdMin: draft.holdMin, runId: "r" }],
      ["shell-preheated", { shellC: 600, runId: "r" }],
    ]);
  });

  test("a piece that cracked in it was stopped and is nothing else; one that was broken off is no firing", () => {
    const run = runOf("burnout", hot);
    const draft = startingEnd(run, null);
    const cracked = givenCoated();
    cracked.log(122, "burnout-started", { runId: "r" });
    cracked.log(123, "crack-found", { kind: "open", stage: "burnout", where: "ear", runId: "r" });
    const stopped = [["burnout-ended", { result: "stopped" }]];
    const said = (commands: ReturnType<typeof pieceEnd>) => commands.map(({ type, body }) => [type, body]);
    expect(said(pieceEnd(run, cracked.standing(124).piece, draft))).toEqual(stopped);
    const broken = givenCoated();
    broken.log(122, "burnout-started", { runId: "r" });
    const { piece } = broken.standing(124);
    expect(said(pieceEnd(run, piece, { ...draft, inside: { [piece.id]: "stopped" } }))).toEqual(stopped);
  });

  test("what was written once is not written again, should the end be pressed twice", () => {
    const run = runOf("firing", hot);
    const piece = givenCoated();
    const draft = { ...startingEnd(run, null), isPreheated: false };
    expect(pieceEnd(run, piece.standing(123).piece, draft)).toHaveLength(1);
    piece.log(124, "shell-fired", { peakC: 870, holdMin: 90, runId: "r" });
    expect(pieceEnd(run, piece.standing(125).piece, draft)).toEqual([]);
  });

  test("a shell that stands hot of this run is not told so twice, and the run is among the piece's own", () => {
    const run = runOf("preheat", hot);
    const piece = givenCoated();
    piece.log(121, "shell-preheated", { shellC: 540 });
    const draft = { ...startingEnd(run, null), isFired: false };
    const before = piece.standing(122).piece;
    expect(before.runIds).toEqual([]);
    const [command] = pieceEnd({ ...run, startedAt: piece.standing(122).now }, before, draft);
    if (command?.type !== "shell-preheated") throw new Error("no preheat");
    piece.log(123, command.type, command.body);
    const after = piece.standing(124).piece;
    expect(after.runIds).toEqual(["r"]);
    expect(after.preheats.map(({ runId }) => runId)).toEqual([null, "r"]);
    expect(pieceEnd({ ...run, startedAt: null }, after, draft)).toEqual([]);
  });

  test("is one act: the lines of its pieces, then its own; a piece whose log has them already gets none", () => {
    const run = runOf("burnout", hot);
    const [first, second] = ["p", "q"].map((id) => {
      const piece = givenCoated();
      piece.log(122, "burnout-started", { runId: "r" });
      if (id === "q") {
        piece.log(123, "burnout-ended", { result: "clean" });
        piece.log(123, "shell-fired", { peakC: 870, holdMin: 90, runId: "r" });
        piece.log(123, "shell-preheated", { shellC: 600, runId: "r" });
      }
      return { ...piece.standing(124).piece, id };
    });
    const draft = { ...startingEnd(run, 12.34), note: " quiet " };
    const commands = endRun(run, [first!, second!], draft);
    expect(
      commands.map(({ stream, ...command }) => [stream, "type" in command ? command.type : null]),
    ).toEqual([
      ["piece/p", "burnout-ended"],
      ["piece/p", "shell-fired"],
      ["piece/p", "shell-preheated"],
      ["run/r", "run-ended"],
    ]);
    expect(commands.at(-1)).toMatchObject({ body: { result: "done", energyKWh: 12.3, note: "quiet" } });
    expect(endRun(run, [], { ...draft, energyKWh: null, note: " " })).toMatchObject([
      { body: { result: "done" } },
    ]);
  });

  test("a preheat is no firing; a run of 500 °C neither; ticks without their figures are asked for", () => {
    expect(startingEnd(runOf("preheat", hot), null).isFired).toBe(false);
    const cool = startingEnd(runOf("firing", [[2, 500]]), null);
    expect(cool.isFired).toBe(false);
    const bare = { ...startingEnd(runOf("firing", []), null), isFired: true };
    const firing = { run: runOf("firing", []), pieces: [] };
    expect(endFaults(bare, firing)).toEqual(["no-peak", "no-hold", "no-shell"]);
    expect(endFaults({ ...bare, isFired: false, isPreheated: false }, firing)).toEqual([]);
  });

  test("a burnout that went through asks for the inside of each piece that is still in it: nobody saw it clean", () => {
    const run = runOf("burnout", hot);
    const given = givenCoated();
    given.log(122, "burnout-started", { runId: "r" });
    const { piece } = given.standing(123);
    const draft = startingEnd(run, null);
    expect(endFaults(draft, { run, pieces: [piece] })).toEqual(["no-inside"]);
    expect(endFaults({ ...draft, inside: { [piece.id]: "residue" } }, { run, pieces: [piece] })).toEqual([]);
    expect(endFaults({ ...draft, result: "stopped" }, { run, pieces: [piece] })).toEqual([]);
    given.log(124, "crack-found", { kind: "open", stage: "burnout", where: "ear", runId: "r" });
    expect(endFaults(draft, { run, pieces: [given.standing(125).piece] })).toEqual([]);
  });
});
