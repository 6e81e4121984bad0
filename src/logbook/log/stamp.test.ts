import * as fc from "fast-check";
import { expect, test } from "vitest";
import { stampOf, stampWith } from "./stamp.ts";

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
