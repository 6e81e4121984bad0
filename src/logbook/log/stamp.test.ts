import * as fc from "fast-check";
import { expect, test } from "vitest";
import { stampOf, stampOfNumbers, stampSpan, stampWith } from "./stamp.ts";

const line = fc.record({
  id: fc.oneof(
    fc.uuid(),
    fc.integer({ min: 0, max: 99 }).map((n) => `e${n}`),
  ),
  at: fc.integer({ min: 0, max: 2e12 }),
  recordedAt: fc.integer({ min: 0, max: 2e12 }),
});

test("a stamp changes with every line that joins or leaves, and not with the order they came in", () =>
  fc.assert(
    fc.property(fc.uniqueArray(line, { minLength: 1, maxLength: 30, selector: ({ id }) => id }), (lines) => {
      const [first, ...others] = lines;
      if (first === undefined) return;
      const stamp = stampOf(lines);
      expect(stampOf(lines.toReversed())).toBe(stamp);
      expect(stampOf(others)).not.toBe(stamp);
      expect(stampWith(stampOf(others), first)).toBe(stamp);
      expect(stampOf([...others, { ...first, at: first.at + 1 }])).not.toBe(stamp);
      expect(Number.isSafeInteger(stamp) && stamp >= 0).toBe(true);
    }),
  ));

test("no two of a hundred thousand logs that differ by a short id share a stamp", () => {
  const pairs = Array.from({ length: 447 }, (_, a) => a).flatMap((a) =>
    Array.from({ length: a }, (_, b) => [`e${a}`, `f${b}`]),
  );
  const stamps = pairs.map((ids) => stampOf(ids.map((id) => ({ id, at: 0, recordedAt: 0 }))));
  expect(new Set(stamps).size).toBe(pairs.length);
});

test("a log of nothing has a stamp of its own", () => expect(stampOf([])).toBe(0));

test("readings that differ in one figure have stamps that differ, and so have their sums", () => {
  const readings = Array.from({ length: 40 }, (_, i) => i).flatMap((i) =>
    Array.from({ length: 40 }, (__, k) => [1_793_001_060_000 + i * 300_000, 18.5, 0.5 + k / 100]),
  );
  const stamps = readings.map((numbers) => stampOfNumbers(numbers, "draught"));
  expect(new Set(stamps).size).toBe(readings.length);
  const first = stamps.slice(0, 400);
  const sums = first.flatMap((a, i) => first.slice(i + 1).map((b) => (a + b) % stampSpan));
  expect(new Set(sums).size).toBe(sums.length);
  expect(stamps.every((stamp) => Number.isSafeInteger(stamp) && stamp >= 0 && stamp < stampSpan)).toBe(true);
  expect(stampOfNumbers([1, 2, 3], "still")).not.toBe(stampOfNumbers([1, 3, 2], "still"));
  expect(stampOfNumbers([1, 2, 3], "still")).not.toBe(stampOfNumbers([1, 2, 3], "strong"));
});

test("what is kept in logs is what another device works out: it never changes", () => {
  expect(stampOfNumbers([1_793_001_060_000, 18.5, 0.61], "draught")).toBe(3_316_096_493_597_506);
  expect(stampOf([{ id: "dip", at: 1_793_020_800_000, recordedAt: 0 }])).toBe(4_102_738_794_034_558);
});
