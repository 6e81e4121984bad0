import { millisecondsInHour as hourMs } from "date-fns/constants";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { evolvePiece } from "../piece/evolvePiece.ts";
import { foldPiece } from "./fold.ts";
import type { TestLog } from "../../../tests/logs/testLog.ts";
import { backup, monday, testLog, testStream } from "../../../tests/logs/testLog.ts";

type Deed =
  | { readonly do: "dip"; readonly ahead: number }
  | { readonly do: "undo"; readonly pick: number }
  | { readonly do: "move"; readonly pick: number; readonly hours: number }
  | { readonly do: "redo"; readonly pick: number };

const deed: fc.Arbitrary<Deed> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.record({ do: fc.constant("dip" as const), ahead: fc.integer({ min: -1, max: 1 }) }),
  },
  { weight: 1, arbitrary: fc.record({ do: fc.constant("undo" as const), pick: fc.nat(9) }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant("redo" as const), pick: fc.nat(9) }) },
  {
    weight: 2,
    arbitrary: fc.record({
      do: fc.constant("move" as const),
      pick: fc.nat(9),
      hours: fc.double({ min: -9, max: 9, noNaN: true }),
    }),
  },
);

/** What a person would keep on paper: the times of the coats that stand. */
function onPaper(times: readonly number[], done: Deed, { now, pick }: { now: number; pick: number }) {
  switch (done.do) {
    case "dip":
      return [...times, now];
    case "undo":
      return times.filter((_, i) => i !== pick);
    case "move":
      return times.map((at, i) => (i === pick ? at + done.hours * hourMs : at));
    case "redo":
      return times;
  }
}

function doIt(log: TestLog, done: Deed, { now, pick }: { now: number; pick: number }): boolean {
  const coats = log.piece().coats;
  const coat = coats[pick];
  const stream = testStream;
  if (done.do === "dip") {
    const number = coats.length + 1 + done.ahead;
    const decision = log.ask({ do: "log", stream, type: "coat-dipped", body: { ...backup, number } }, now);
    expect(decision.ok).toBe(done.ahead === 0);
    if (decision.ok) log.run({ do: "log", stream, type: "coat-dipped", body: { ...backup, number } }, now);
    return decision.ok;
  }
  if (coat === undefined) return false;
  const entryId = coat.id;
  const command =
    done.do === "move"
      ? ({ do: "correct", stream, entryId, at: coat.dippedAt + done.hours * hourMs, reason: "" } as const)
      : ({ do: "strike", stream, entryId, reason: "" } as const);
  if (!log.ask(command, now).ok) return false;
  const written = log.run(command, now);
  if (done.do === "redo") {
    const strike = written.find(({ type }) => type === "entry-struck")?.id ?? "";
    log.run({ do: "strike", stream, entryId: strike, reason: "" }, now + 1);
  }
  return true;
}

describe("laws of deciding", () => {
  test("however coats are dipped, undone, moved and brought back, the log agrees with the paper", () =>
    fc.assert(
      fc.property(fc.array(deed, { maxLength: 25 }), (deeds) => {
        const log = testLog();
        let paper: readonly number[] = [];
        for (const [i, done] of deeds.entries()) {
          const now = monday + (i + 1) * 4 * hourMs;
          const pick = "pick" in done ? done.pick : 0;
          const before = log.entries().length;
          if (doIt(log, done, { now, pick })) paper = onPaper(paper, done, { now, pick });
          else expect(log.entries()).toHaveLength(before);
          expect(log.piece().coats.map(({ dippedAt }) => dippedAt)).toEqual(paper);
        }
      }),
    ));

  test("a moved coat never passes its neighbours, so a corrected log keeps its order of coats", () =>
    fc.assert(
      fc.property(fc.array(deed, { maxLength: 25 }), (deeds) => {
        const log = testLog();
        const kinds: (string | undefined)[] = [];
        for (const i of [0, 1, 2, 3]) {
          kinds.push(`stucco ${i}`);
          log.coat(monday + (i + 1) * 3 * hourMs, { stuccoId: `stucco ${i}` });
        }
        for (const done of deeds)
          if (done.do === "move") doIt(log, done, { now: monday + 60 * hourMs, pick: done.pick % 4 });
        expect(log.piece().coats.map(({ stuccoId }) => stuccoId)).toEqual(kinds);
      }),
    ));

  test("a fresh entry evolves the piece into what the whole log folds to", () =>
    fc.assert(
      fc.property(fc.array(deed, { maxLength: 15 }), (deeds) => {
        const log = testLog();
        for (const [i, done] of deeds.entries()) {
          const before = log.piece();
          const now = monday + (i + 1) * 4 * hourMs;
          if (done.do !== "dip" || !doIt(log, done, { now, pick: 0 })) continue;
          const fresh = log.entries().at(-1);
          expect(fresh && evolvePiece(before, fresh, (id) => id)).toEqual(foldPiece("heron", log.entries()));
        }
      }),
    ));
});
