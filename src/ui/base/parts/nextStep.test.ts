import fc from "fast-check";
import { expect, test } from "vitest";
import { nextStep } from "./nextStep.ts";

test("a value between two steps goes to the nearer one ahead", () => {
  const range = { min: 0, max: 50 };
  expect(nextStep({ value: 20.3, step: 0.5, ...range })).toBe(20.5);
  expect(nextStep({ value: 20.3, step: -0.5, ...range })).toBe(20);
  expect(nextStep({ value: 20.5, step: 0.5, ...range })).toBe(21);
  expect(nextStep({ value: 0.3, step: 0.1, ...range })).toBe(0.4);
});

test("no step leaves the range, and steps there and back come home", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 99 }),
      fc.constantFrom(0.01, 0.1, 0.2, 0.5, 1, 5),
      (places, step) => {
        const value = Number((places * step).toPrecision(12));
        const range = { min: 0, max: 100 * step };
        const up = nextStep({ value, step, ...range });
        expect(up).toBeGreaterThan(value);
        expect(up).toBeLessThanOrEqual(range.max);
        expect(nextStep({ value: up, step: -step, ...range })).toBeCloseTo(value, 9);
      },
    ),
  );
});

test("at the end of the range it stays", () => {
  expect(nextStep({ value: 1, step: 0.5, min: 0, max: 1 })).toBe(1);
  expect(nextStep({ value: 0, step: -0.5, min: 0, max: 1 })).toBe(0);
});
