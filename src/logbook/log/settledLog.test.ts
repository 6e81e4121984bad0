import fc from "fast-check";
import { beforeEach, describe, expect, test, vi } from "vitest";
import * as effective from "./effective.ts";
import * as fold from "./fold.ts";
import { anyEntries } from "../../../tests/logs/anyEntries.ts";
import { hourMs } from "../../physics/stats/time.ts";
import { monday, testStream } from "../../../tests/logs/testLog.ts";
import { streamLog } from "../../../tests/logs/testStreamLog.ts";
import { compareEntries, type Entry } from "../entries/entry.ts";
import { runFrom, runSegments } from "../fire/foldRun.ts";
import { decideOn } from "./decide.ts";
import { settledLog, withEntry } from "./settledLog.ts";

vi.mock("./effective.ts", { spy: true });
vi.mock("./fold.ts", { spy: true });

const sorted = (entries: readonly Entry[]) => entries.toSorted(compareEntries);
const whole = (entries: readonly Entry[]) => settledLog(testStream, sorted(entries));

describe("a settled log", () => {
  test("put together entry by entry, in any order, is the log of all of them at once", () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        const grown = entries.reduce(withEntry, whole([]));
        const { settled, piece, entries: ordered } = whole(entries);
        expect(grown.entries).toEqual(ordered);
        expect(grown.settled.standing).toEqual(settled.standing);
        expect([...grown.settled.strikes]).toEqual([...settled.strikes]);
        expect(grown.piece()).toEqual(piece());
      }),
      { numRuns: 300 },
    );
  });

  test("tells the same steps of a run as the folded run has", () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        const { standing } = whole(entries).settled;
        expect(runSegments(standing)).toEqual(runFrom("r", standing)?.segments ?? runSegments(standing));
      }),
    );
  });
});

describe("one tap", () => {
  const log = streamLog("piece/p");
  log.tell("piece-started", { plan: { name: "Heron" }, roomId: "first" }, monday);
  const coat = (number: number) =>
    ({
      number,
      step: number - 1,
      kind: "backup",
      stuccoId: null,
      bucketId: null,
      roomId: "first",
      prewet: false,
    }) as const;
  for (let number = 1; number <= 6; number += 1)
    log.tell("coat-dipped", coat(number), monday + number * 24 * hourMs);
  const tap = (at: number) => {
    const before = settledLog("piece/p", sorted(log.entries()));
    const now = monday + 200 * hourMs;
    const moment = { now, zone: "UTC", device: "d", newId: () => "new" };
    const decision = decideOn(
      before,
      { do: "log", stream: "piece/p", type: "note-written", body: { text: "a drop" }, at },
      moment,
    );
    if (!decision.ok) throw new Error(JSON.stringify(decision.refusal));
    return decision.entries.reduce(withEntry, before).piece();
  };
  const counts = () => ({
    settles:
      vi.mocked(effective.settle).mock.calls.length +
      vi.mocked(effective.settleOrdered).mock.calls.length +
      vi.mocked(effective.effective).mock.calls.length,
    folds: vi.mocked(fold.foldPiece).mock.calls.length + vi.mocked(fold.pieceFrom).mock.calls.length,
  });

  beforeEach(() => vi.clearAllMocks());

  test("settles and folds its stream once", () => {
    expect(tap(monday + 200 * hourMs)?.coats).toHaveLength(6);
    expect(counts()).toEqual({ settles: 1, folds: 1 });
  });

  test("put back to an earlier time looks at the log of that time too", () => {
    expect(tap(monday + 30 * hourMs)?.coats).toHaveLength(6);
    expect(counts()).toEqual({ settles: 2, folds: 3 });
  });
});
