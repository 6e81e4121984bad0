import { millisecondsInHour as hourMs } from "date-fns/constants";
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { standingOf } from "../piece/buildStanding.ts";
import type { CoatSoFar } from "./coatDrying.ts";
import { type Memo, makeMemo } from "../log/memo.ts";
import type { AirReading, Piece } from "../piece/piece.ts";
import type { CoatDrying } from "../piece/standing.ts";
import { stamped } from "../../../tests/logs/testStamps.ts";
import { monday, testLog, testShop } from "../../../tests/logs/testLog.ts";

const at = (hours: number): number => monday + hours * hourMs;
const reading = (hours: number, id = `r${hours}`): AirReading => ({
  id,
  at: at(hours),
  airC: 18 + 5 * Math.sin(hours / 3.8),
  rh: 0.6 - 0.2 * Math.sin(hours / 3.8),
  air: hours % 7 < 3 ? "draught" : "room-fan",
});
const everyHalfHour = (fromH: number, toH: number): readonly AirReading[] =>
  Array.from({ length: Math.floor((toH - fromH) * 2) + 1 }, (_, i) => reading(fromH + i / 2));

/** As from the store: equal in every field, and none of them the object of before. */
const readAgain = <T>(value: T): T => structuredClone(value);

function dryingOf(piece: Piece, readings: readonly AirReading[], now: number, memory?: Memo) {
  return standingOf(readAgain(piece), stamped([piece], testShop(readAgain(readings))), now, memory).drying;
}

/** Every number of it, in one list: times in hours from the start, so that 1e-9 means the same for all. */
function numbersOf(drying: readonly CoatDrying[]): readonly unknown[] {
  return drying.map(({ readyAt, curve, basis, ...rest }) => [
    [readyAt.early, readyAt.likely, readyAt.late].map((time) => time && (time - monday) / hourMs),
    curve.map((point) => [(point.at - monday) / hourMs, point.waterKgM2]),
    basis.readings,
    [rest.leftShare, rest.waterKgM2, rest.startKgM2, rest.carriedKgM2, rest.depthM],
    [rest.doseNeededGHM3, rest.doseSuppliedGHM3],
  ]);
}
const wordsOf = (drying: readonly CoatDrying[]): readonly unknown[] =>
  drying.map(({ verdict, reason, condensed, evidence, basis }) => [
    verdict,
    reason,
    condensed,
    evidence,
    basis.forecast,
    basis.air,
    basis.longestGapMs,
  ]);

function expectSame(a: readonly CoatDrying[], b: readonly CoatDrying[]): void {
  expect(wordsOf(a)).toEqual(wordsOf(b));
  const [found, wanted] = [a, b].map((one) => numbersOf(one).flat(Infinity));
  expect(found).toHaveLength(wanted?.length ?? 0);
  for (const [i, value] of (found ?? []).entries()) {
    const other = wanted?.[i];
    if (typeof value === "number" && typeof other === "number")
      expect(Math.abs(value - other)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(other)));
    else expect(value).toBe(other);
  }
}

function shell(coatsAt: readonly number[], plan: Parameters<typeof testLog>[0] = {}) {
  const log = testLog(plan);
  for (const hours of coatsAt) log.coat(at(hours), { step: null });
  return log;
}

describe("a memory of drying", () => {
  test("keeps what covered coats were, though room and piece are read anew with one reading more", () => {
    const piece = shell([0, 9, 20, 31]).piece();
    const memory = makeMemo();
    const before = dryingOf(piece, everyHalfHour(-2, 33), at(33.2), memory);
    const after = dryingOf(piece, everyHalfHour(-2, 33.5), at(33.6), memory);
    for (const i of [0, 1, 2]) expect(after[i]).toBe(before[i]);
    expect(after[3]).not.toBe(before[3]);
    expectSame(after, dryingOf(piece, everyHalfHour(-2, 33.5), at(33.6)));
  });

  test("goes on from the last reading with the outer coat", () => {
    const piece = shell([0]).piece();
    const memory = makeMemo();
    dryingOf(piece, everyHalfHour(-2, 1), at(1.2), memory);
    const [first] = [...(memory.get("open")?.values() ?? [])].map(({ value }) => value as CoatSoFar);
    expect(first?.at).toBe(at(1));
    // What lies behind is really taken from memory: a mark in it shows up in the answer.
    first?.track.points.unshift({ at: at(0), waterKgM2: 4.5 });
    const [marked] = dryingOf(piece, everyHalfHour(-2, 1.5), at(1.6), memory);
    expect(marked?.curve[0]?.waterKgM2).toBe(4.5);
  });

  test("forgets the coats that rest on a reading that was put right, and no others", () => {
    const piece = shell([0, 9, 20, 31]).piece();
    const memory = makeMemo();
    const readings = everyHalfHour(-2, 33);
    const before = dryingOf(piece, readings, at(33.2), memory);
    const corrected = readings.map((one) => (one.at === at(22) ? { ...one, id: "anew", rh: 0.79 } : one));
    const after = dryingOf(piece, corrected, at(33.2), memory);
    expect([0, 1, 2].map((i) => after[i] === before[i])).toEqual([true, true, false]);
    expectSame(after, dryingOf(piece, corrected, at(33.2)));
  });

  test("knows a coat again when the oldest readings are no longer looked at", () => {
    const piece = shell([0, 9, 20, 31]).piece();
    const memory = makeMemo();
    const before = dryingOf(piece, everyHalfHour(-2, 33), at(33.2), memory);
    const after = dryingOf(piece, everyHalfHour(5, 33.5), at(33.6), memory);
    expect(after[2]).toBe(before[2]);
    expectSame(after, dryingOf(piece, everyHalfHour(5, 33.5), at(33.6)));
    const longer = dryingOf(piece, everyHalfHour(-2, 34), at(34.1), memory);
    expectSame(longer, dryingOf(piece, everyHalfHour(-2, 34), at(34.1)));
  });

  test("does not mix up two pockets, two altitudes or two own factors", () => {
    const memory = makeMemo();
    const readings = everyHalfHour(-2, 33);
    for (const geometry of ["open", "recess"] as const)
      for (const altitudeM of [0, 2000])
        for (const dryingFactor of [null, 2]) {
          const piece = shell([0, 9, 31], { geometry }).piece();
          const plain = testShop(readings, { shop: { ...testShop([]).shop, dryingFactor } });
          const first = plain.rooms.get("first");
          if (first === undefined) throw new Error("no room");
          const shop = { ...plain, rooms: new Map([["first", { ...first, altitudeM }]]) };
          const asked = standingOf(
            readAgain(piece),
            stamped([piece], readAgain(shop)),
            at(33),
            memory,
          ).drying;
          expectSame(asked, standingOf(piece, readAgain(shop), at(33)).drying);
        }
  });
});

const happening = fc.oneof(
  fc.record({ do: fc.constant("read" as const), h: fc.integer({ min: -8, max: 120 }) }),
  fc.record({ do: fc.constant("drop" as const), n: fc.integer({ min: 1, max: 3 }) }),
  fc.record({ do: fc.constant("touch" as const), dry: fc.boolean(), back: fc.integer({ min: 0, max: 5 }) }),
  fc.record({ do: fc.constant("weigh" as const), g: fc.integer({ min: 1290, max: 1300 }) }),
  fc.record({ do: fc.constant("coat" as const) }),
  fc.record({ do: fc.constant("redip" as const) }),
);

test("two readings of one moment are taken as one list whichever of them came later", () => {
  const piece = shell([0, 9]).piece();
  for (const rh of [0.3, 0.75]) {
    const memory = makeMemo();
    const readings = everyHalfHour(-2, 12);
    dryingOf(piece, readings, at(12), memory);
    for (const [hours, id] of [
      [12, "zz"],
      [9.5, "zz"],
      [9.5, "a"],
      [-2, "a"],
    ] as const) {
      const twin = { ...reading(hours, id), rh };
      const more = [...readings, twin].sort((a, b) => a.at - b.at || (a.id < b.id ? -1 : 1));
      expectSame(dryingOf(piece, more, at(12.1), memory), dryingOf(piece, more, at(12.1)));
      expectSame(dryingOf(piece, readings, at(12.2), memory), dryingOf(piece, readings, at(12.2)));
    }
  }
});

test("whatever is read, dipped and seen in whatever order, a memory changes no answer", () =>
  fc.assert(
    fc.property(fc.array(happening, { minLength: 2, maxLength: 25 }), (happenings) => {
      const memory = makeMemo();
      const log = shell([0, 7], { areaM2: 0.1 });
      let readings = everyHalfHour(-3, 8);
      let hours = 8;
      for (const [i, one] of happenings.entries()) {
        hours += 0.7;
        const coatId = log.piece().coats.at(-1)?.id ?? "";
        if (one.do === "read") {
          const added = reading(one.h / 8 + hours - 8, `x${i}`);
          readings = [...readings, added].sort((a, b) => a.at - b.at || (a.id < b.id ? -1 : 1));
        } else if (one.do === "drop") readings = readings.slice(one.n);
        else if (one.do === "coat") log.coat(at(hours), { step: null });
        else if (one.do === "redip") log.tell("coat-redipped", { coatId }, at(hours));
        else if (one.do === "weigh")
          log.tell("dryness-seen", { coatId, method: "weight", massG: one.g }, at(hours));
        else {
          const verdict = one.dry ? "dry" : "wet";
          const dipped = log.piece().coats.at(-1)?.dippedAt ?? 0;
          const seenAt = Math.max(dipped, at(hours - one.back / 4));
          log.tell("dryness-seen", { coatId, method: "touch", verdict }, seenAt);
        }
        const piece = log.piece();
        expectSame(dryingOf(piece, readings, at(hours), memory), dryingOf(piece, readings, at(hours)));
      }
    }),
    { numRuns: 20 },
  ));

test("the order readings come in changes nothing, with a memory as without", () =>
  fc.assert(
    fc.property(fc.shuffledSubarray([...everyHalfHour(-2, 12)], { minLength: 5 }), (shuffled) => {
      const memory = makeMemo();
      const piece = shell([0, 9]).piece();
      const ordered = shuffled.toSorted((a, b) => a.at - b.at);
      const wanted = dryingOf(piece, ordered, at(12));
      expectSame(dryingOf(piece, shuffled, at(12), memory), wanted);
      expectSame(dryingOf(piece, shuffled.toReversed(), at(12), memory), wanted);
    }),
    { numRuns: 60 },
  ));
