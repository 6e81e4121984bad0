import fc from "fast-check";
import { expect, test } from "vitest";
import { bodyFault } from "../../../../logbook/entries/checkBody.ts";
import type { PackedAir } from "../../../../workers/airCsv/packAir.ts";
import { airCommands, readingCount } from "./airCommands.ts";

const midnightS = Date.UTC(2026, 0, 12) / 1000;
const air = (seconds: readonly number[], pressed: readonly number[] | null = null): PackedAir => ({
  count: seconds.length,
  atS: Float64Array.from(seconds),
  airC: Float64Array.from(seconds, (_, i) => 20 + (i % 10) / 3),
  rh: Float64Array.from(seconds, (_, i) => 0.5 + (i % 10) / 100),
  pressurePa: pressed && Float64Array.from(seconds, () => 101_325),
  hasPressure: pressed && Uint8Array.from(pressed),
});
const asked = { roomId: "first", source: "shed.csv", moves: null, stored: new Set<number>() };

test("two days of five-minute readings become a line of the log each, times told from its first", () => {
  const seconds = Array.from({ length: 576 }, (_, i) => midnightS + i * 300);
  const commands = airCommands(air(seconds), asked);
  expect(commands.map(({ at }) => at)).toEqual([midnightS * 1000, (midnightS + 86_400) * 1000]);
  expect(commands.map(({ body }) => body.afterS.length)).toEqual([288, 288]);
  expect(commands[1]?.body.afterS.slice(0, 3)).toEqual([0, 300, 600]);
  expect(commands[0]?.body).toMatchObject({ source: "shed.csv", air: null });
});

test("what is stored is left out, and a file that is stored whole leaves no line", () => {
  const seconds = [0, 300, 600].map((s) => midnightS + s);
  const stored = new Set([midnightS + 300]);
  const [only, ...others] = airCommands(air(seconds), { ...asked, stored });
  expect(others).toEqual([]);
  expect(only?.body.afterS).toEqual([0, 600]);
  expect(airCommands(air(seconds), { ...asked, stored: new Set(seconds) })).toEqual([]);
});

test("pressure is kept for the days on which every reading tells it", () => {
  const seconds = [0, 300, 86_400, 86_700].map((s) => midnightS + s);
  const [first, second] = airCommands(air(seconds, [1, 1, 1, 0]), asked);
  expect(first?.body.pressurePa).toEqual([101_325, 101_325]);
  expect(second?.body.pressurePa).toBeUndefined();
});

test("whatever the times, the log takes every line and no reading is lost", () =>
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.integer({ min: 0, max: 400_000 }), { minLength: 1, maxLength: 400 }),
      fc.integer({ min: 1, max: 30 }),
      (offsets, step) => {
        const seconds = offsets.map((offset) => midnightS + offset * step).toSorted((a, b) => a - b);
        const commands = airCommands(air(seconds), asked);
        expect(readingCount(commands)).toBe(seconds.length);
        for (const { type, body } of commands) expect(bodyFault(type, body)).toBeNull();
        const back = commands.flatMap(({ at = 0, body }) => body.afterS.map((s) => at / 1000 + s));
        expect(back).toEqual(seconds);
      },
    ),
    { numRuns: 100 },
  ));

test("a reading every second makes lines that the log takes", () => {
  const seconds = Array.from({ length: 20_000 }, (_, i) => midnightS + i);
  const commands = airCommands(air(seconds), asked);
  expect(commands).toHaveLength(3);
  for (const { type, body } of commands) expect(bodyFault(type, body)).toBeNull();
});
