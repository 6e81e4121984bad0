import { millisecondsInHour as hourMs } from "date-fns/constants";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { lastReadingOf, readingsOf } from "./airLog.ts";
import type { EntryBodies } from "../entries/entry.ts";
import { monday } from "../../../tests/logs/testLog.ts";
import { streamLog } from "../../../tests/logs/testStreamLog.ts";

const at = (hours: number): number => monday + hours * hourMs;
const block = (more: Partial<EntryBodies["air-logged"]> = {}): EntryBodies["air-logged"] => ({
  source: "logger 2",
  air: null,
  afterS: [0, 3600, 7200],
  airC: [18, 19, 20],
  rh: [0.6, 0.55, 0.5],
  ...more,
});
/** A room to which blocks of the past can be told at any time. */
function room() {
  const log = streamLog("room/first");
  const late = (body: EntryBodies["air-logged"], hours: number) =>
    log.run({ do: "log", stream: "room/first", type: "air-logged", body, at: at(hours) }, at(9999));
  return { ...log, late };
}

describe("a logger's block", () => {
  test("unpacks into readings of their own times, each with an id of its own", () => {
    const log = room();
    const id = (log.late(block({ pressurePa: [97600, 97610, 97620] }), 0), log.entries()[0]?.id);
    expect(readingsOf(log.entries())).toEqual(
      [18, 19, 20].map((airC, i) => ({
        id: `${id}#${i}`,
        at: at(i),
        airC,
        rh: [0.6, 0.55, 0.5][i],
        air: "still",
        sensor: "logger 2",
        pressurePa: 97600 + 10 * i,
      })),
    );
  });

  test("takes the air movement last logged before each reading, still air where none was", () => {
    const log = room();
    log.late(block(), 0);
    log.late(block(), 24);
    log.tell("air-read", { airC: 18, rh: 0.6, air: "draught" }, at(1));
    log.tell("air-read", { airC: 18, rh: 0.6, air: "rack-fan" }, at(10));
    log.late(block({ air: "tunnel" }), 48);
    log.late(block(), 72);
    expect(readingsOf(log.entries()).map(({ air }) => air)).toEqual([
      "still",
      "draught",
      "draught",
      "draught",
      "rack-fan",
      "rack-fan",
      "rack-fan",
      "rack-fan",
      "tunnel",
      "tunnel",
      "tunnel",
      "tunnel",
      "tunnel",
      "tunnel",
    ]);
  });

  test("puts its readings among the others in order of time, and the newest of all is the room's", () => {
    const log = room();
    log.tell("air-read", { airC: 30, rh: 0.5, air: "still" }, at(1.5));
    log.late(block(), 0);
    expect(readingsOf(log.entries()).map(({ airC }) => airC)).toEqual([18, 19, 30, 20]);
    expect(lastReadingOf(log.entries())?.airC).toBe(20);
  });

  test("goes whole when it is struck", () => {
    const log = room();
    log.late(block(), 0);
    const entryId = log.entries()[0]?.id ?? "";
    log.run({ do: "strike", stream: "room/first", entryId, reason: "wrong room" }, at(9999));
    expect(readingsOf(log.entries())).toEqual([]);
  });

  test("is refused with what is wrong and the numbers", () => {
    const log = room();
    const refusal = (more: Partial<EntryBodies["air-logged"]>) =>
      log.refusal("air-logged", block(more), at(0), at(9999));
    expect(refusal({})).toBeNull();
    expect(refusal({ rh: [0.6, 0.5] })).toEqual({
      code: "uneven-readings",
      field: "rh",
      found: 2,
      expected: 3,
    });
    expect(refusal({ pressurePa: [] })).toMatchObject({ code: "uneven-readings", field: "pressurePa" });
    expect(refusal({ afterS: [0, 60, 60] })).toEqual({
      code: "readings-not-rising",
      place: 3,
      found: 60,
      before: 60,
    });
    expect(refusal({ afterS: [-1, 60, 90] })).toMatchObject({ place: 1, found: -1, before: null });
    expect(refusal({ afterS: [0, 0.5, 90] })).toMatchObject({ place: 2, found: 0.5 });
    expect(refusal({ afterS: [0, NaN, 90] })).toMatchObject({ code: "readings-not-rising", place: 2 });
    expect(refusal({ afterS: [0, 60, 86_400] })).toBeNull();
    expect(refusal({ afterS: [0, 60, 86_401] })).toEqual({
      code: "readings-too-long",
      spanS: 86_401,
      mostS: 86_400,
    });
    expect(refusal({ rh: [0.6, 55, 0.5] })).toMatchObject({ code: "out-of-range", field: "rh", found: 55 });
    expect(refusal({ afterS: [], airC: [], rh: [] })).toMatchObject({ field: "readings", found: 0, low: 1 });
    expect(log.refusal("air-logged", block(), at(0))).toMatchObject({ code: "in-future", at: at(2) });
  });
});

test("packed or told one by one, a room's readings are the same", () =>
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.integer({ min: 1, max: 5000 }), fc.double({ min: 0, max: 1, noNaN: true })), {
        minLength: 1,
        maxLength: 12,
      }),
      (steps) => {
        const afterS = steps.map((_, i) => steps.slice(0, i + 1).reduce((sum, [step]) => sum + step, 0));
        const rh = steps.map(([, share]) => share);
        const packed = room();
        packed.late({ source: "x", air: "draught", afterS, airC: afterS.map(() => 20), rh }, 0);
        const single = room();
        for (const [i, second] of afterS.entries())
          single.tell("air-read", { airC: 20, rh: rh[i] ?? 0, air: "draught" }, at(0) + second * 1000);
        const plain = (log: ReturnType<typeof room>) =>
          readingsOf(log.entries()).map((reading) => [reading.at, reading.airC, reading.rh, reading.air]);
        expect(plain(packed)).toEqual(plain(single));
      },
    ),
    { numRuns: 100 },
  ));

test("sixty days of five-minute readings unpack into every one of them", () => {
  const log = room();
  const afterS = Array.from({ length: 288 }, (_, i) => i * 300);
  const day = { source: "x", air: null, afterS, airC: afterS.map(() => 20), rh: afterS.map(() => 0.5) };
  for (let i = 0; i < 60; i++) log.late(day, i * 24);
  expect(readingsOf(log.entries())).toHaveLength(17_280);
});
