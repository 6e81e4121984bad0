import { describe, expect, test } from "vitest";
import { givenPiece } from "../../../tests/givenPiece.ts";
import { compareEntries, type Entry } from "../entries/entry.ts";
import { foldRun } from "../fire/foldRun.ts";
import type { Command, Moment } from "../log/command.ts";
import { decide } from "../log/decide.ts";
import { foldPiece } from "../log/fold.ts";
import { settledLog } from "../log/settledLog.ts";
import { linesOfAct, markedAsAct } from "./actMark.ts";
import { markPourStep } from "./markPourStep.ts";
import { startRun } from "./startRun.ts";
import { takeBack } from "./takeBack.ts";

const begin = Date.UTC(2026, 3, 1);
const minuteMs = 60_000;

/** A log of many streams, written command by command as a store does. */
function shopLog() {
  let entries: readonly Entry[] = [];
  let count = 0;
  const moment = (minute: number): Moment => ({
    now: begin + minute * minuteMs,
    zone: "UTC",
    device: "d",
    newId: () => `e${(count += 1)}`,
  });
  const run = (commands: readonly Command[], minute: number): readonly Entry[] => {
    const added: Entry[] = [];
    for (const command of commands) {
      const decision = decide([...entries, ...added], command, moment(minute));
      if (!decision.ok) throw new Error(JSON.stringify(decision.refusal));
      added.push(...decision.entries);
    }
    const marked = markedAsAct(added);
    entries = [...entries, ...marked];
    return marked;
  };
  const of = (stream: string) => entries.filter((entry) => entry.stream === stream).sort(compareEntries);
  const piece = (id: string) => foldPiece(id, of(`piece/${id}`));
  const logsOf = (lines: readonly string[]) =>
    [...new Set(entries.filter(({ id }) => lines.includes(id)).map(({ stream }) => stream))].map((stream) =>
      settledLog(stream, of(stream)),
    );
  const undo = (entry: Entry, minute: number) => {
    const lines = linesOfAct(entry, entries.find(({ id }) => id === entry.act?.id) ?? null);
    const commands = takeBack(lines, { logs: logsOf(lines), reason: "slip" });
    return commands.length === 0 ? [] : run(commands, minute);
  };
  return { run, undo, piece, kilnRun: () => foldRun("r", of("run/r")), entries: () => entries };
}

const ids = ["a", "b", "c", "d", "e", "f"];

function sixInARun() {
  const log = shopLog();
  for (const id of ids)
    log.run(
      [
        {
          do: "log",
          stream: `piece/${id}`,
          type: "piece-started",
          body: { plan: { name: id }, roomId: "first" },
        },
      ],
      0,
    );
  const segments = [{ kind: "ramp", toC: 700, rateKPerH: 120 }] as const;
  const body = { kilnId: null, purpose: "burnout", pieceIds: ids, startC: 20, segments } as const;
  log.run([{ do: "log", stream: "run/r", type: "run-planned", body }], 1);
  const pieces = () => ids.flatMap((id) => log.piece(id) ?? []);
  const start = (minute: number) => log.run(startRun(log.kilnRun()!, pieces(), { kilnC: 20 }), minute);
  return { ...log, pieces, start, phases: () => pieces().map(({ phase }) => phase) };
}
const all = (phase: string) => ids.map(() => phase);

describe("the start of a run", () => {
  test("is the run's line and one in each piece's log, marked as one act", () => {
    const run = sixInARun();
    const lines = run.start(2);
    expect(lines.map(({ stream, type }) => `${stream} ${type}`)).toEqual([
      "run/r run-started",
      ...ids.map((id) => `piece/${id} burnout-started`),
    ]);
    expect(lines[0]?.act).toEqual({ id: lines[0]?.id, lines: lines.map(({ id }) => id) });
    expect(lines.slice(1).map(({ act }) => act)).toEqual(ids.map(() => ({ id: lines[0]?.id })));
    expect(run.phases()).toEqual(all("burnout"));
  });

  test("leaves out what was scrapped or put away, and a burnout that is under way", () => {
    const run = sixInARun();
    run.run([{ do: "log", stream: "piece/a", type: "piece-scrapped", body: { reason: "fell" } }], 2);
    run.run([{ do: "log", stream: "piece/b", type: "piece-archived", body: { archived: true } }], 2);
    run.run([{ do: "log", stream: "piece/c", type: "burnout-started", body: {} }], 2);
    expect(run.start(3).map(({ stream }) => stream)).toEqual(["run/r", "piece/d", "piece/e", "piece/f"]);
  });

  test("of a firing writes in no piece's log, and is no act of several lines", () => {
    const run = sixInARun();
    const firing = { ...run.kilnRun()!, plan: { ...run.kilnRun()!.plan, purpose: "firing" as const } };
    const lines = run.run(startRun(firing, run.pieces(), { kilnC: 20 }), 2);
    expect(lines.map(({ type, act }) => [type, act])).toEqual([["run-started", undefined]]);
  });
});

describe("a step of the pour", () => {
  test("with a shell read goes into the log of each fired shell; without one the mark stands alone", () => {
    const fired = { ...givenPiece().standing(1).piece, id: "x", phase: "fired" as const };
    const wet = { ...fired, id: "y", phase: "coating" as const };
    const mark = { step: "shell-preheated", state: "done" } as const;
    const commands = markPourStep({ id: "p" }, mark, { pieces: [fired, wet], shellC: 540 });
    expect(commands.map(({ stream, do: act }) => [act, stream])).toEqual([
      ["log", "pour/p"],
      ["log", "piece/x"],
    ]);
    expect(commands[1]).toMatchObject({ type: "shell-preheated", body: { shellC: 540 } });
    expect(markPourStep({ id: "p" }, mark, { pieces: [fired], shellC: null })).toHaveLength(1);
    const begun = { ...mark, state: "started" } as const;
    expect(markPourStep({ id: "p" }, begun, { pieces: [fired], shellC: 540 })).toHaveLength(1);
  });
});

describe("taking back", () => {
  test("any one line of an act takes back all of it, and bringing one strike back brings all back", () => {
    const run = sixInARun();
    const lines = run.start(2);
    const strikes = run.undo(lines[4]!, 3);
    expect(strikes.map(({ stream }) => stream)).toEqual(lines.map(({ stream }) => stream).toReversed());
    expect(run.phases()).toEqual(all("coating"));
    expect(run.kilnRun()?.startedAt).toBeNull();
    run.undo(strikes[1]!, 4);
    expect(run.phases()).toEqual(all("burnout"));
    expect(run.kilnRun()?.startedAt).toBe(begin + 2 * minuteMs);
  });

  test("takes a line as it was corrected, and leaves what was struck alone before", () => {
    const run = sixInARun();
    const lines = run.start(2);
    run.run([{ do: "strike", stream: "piece/a", entryId: lines[1]!.id, reason: "not in the kiln" }], 3);
    const at = begin + 2.5 * minuteMs;
    const corrected = run.run(
      [{ do: "correct", stream: "piece/b", entryId: lines[2]!.id, at, reason: "later" }],
      4,
    );
    const replacement = corrected.find(({ type }) => type === "burnout-started")!;
    expect(replacement.act).toEqual({ id: lines[0]!.id });
    const strikes = run.undo(replacement, 5);
    expect(strikes.map(({ body }) => ("struckId" in body ? body.struckId : null))).toContain(replacement.id);
    expect(strikes).toHaveLength(6);
    expect(run.phases()).toEqual(all("coating"));
    expect(run.undo(lines[0]!, 6)).toEqual([]);
  });

  test("a line of no act, as in an old log, is taken back alone", () => {
    const run = sixInARun();
    const begun = startRun(run.kilnRun()!, run.pieces(), { kilnC: 20 }).map(
      (command) => run.run([command], 2)[0]!,
    );
    run.undo(begun[3]!, 3);
    expect(run.phases()).toEqual(["burnout", "burnout", "coating", "burnout", "burnout", "burnout"]);
    expect(run.kilnRun()?.startedAt).not.toBeNull();
  });

  test("a run that has been read since its start is not taken back: the start carries it", () => {
    const run = sixInARun();
    const lines = run.start(2);
    run.run([{ do: "log", stream: "run/r", type: "run-read", body: { kilnC: 80 } }], 3);
    expect(() => run.undo(lines[2]!, 4)).toThrow("start-carries-entries");
  });
});
