import fc from "fast-check";
import { expect, test } from "vitest";
import { bandOf, heatBands } from "./heatBands.ts";

const even = (count: number): Float32Array => new Float32Array(count).fill(1);

test("a surface from 1 to 100 mm has its limits near the tenth, third, two thirds and nine tenths", () => {
  const field = Float32Array.from({ length: 100 }, (_, n) => n + 1);
  const { limitsMm, shares, unknownShare } = heatBands(field, even(100));
  expect(limitsMm).toEqual([10, 34, 67, 90]);
  expect(shares.map((share) => Math.round(100 * share))).toEqual([9, 24, 33, 23, 11]);
  expect(unknownShare).toBe(0);
});

test("a wall of one thickness has one limit, and all of it lies at or above", () => {
  const { limitsMm, shares } = heatBands(new Float32Array(50).fill(4), even(50));
  expect(limitsMm).toEqual([4]);
  expect(shares[0]).toBe(0);
  expect(shares[1]).toBeCloseTo(1);
});

test("where no ray came out counts as unknown, by its area", () => {
  const { unknownShare } = heatBands(Float32Array.from([0, 5]), Float32Array.from([1, 3]));
  expect(unknownShare).toBeCloseTo(0.25);
});

test("shares and what is unknown add up to all of the surface, and thicker never falls in a thinner band", () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: 0, max: 90, noNaN: true }), { minLength: 1, maxLength: 80 }),
      (mm) => {
        const bands = heatBands(Float32Array.from(mm), even(mm.length));
        const sum = bands.shares.reduce((all, share) => all + share, bands.unknownShare);
        expect(sum).toBeCloseTo(1, 5);
        const inBands = [...mm].sort((a, b) => a - b).map((one) => bandOf(bands.limitsMm, one));
        expect(inBands).toEqual([...inBands].sort((a, b) => a - b));
      },
    ),
    { numRuns: 150 },
  );
});
