import fc from "fast-check";
import { expect, test } from "vitest";
import { labelPlaces, type LabelBox } from "./labelPlaces.ts";

const above = [0, -0.75] as const;
const label = fc
  .tuple(
    fc.integer({ min: 0, max: 120 }),
    fc.integer({ min: 0, max: 120 }),
    fc.integer({ min: 25, max: 48 }),
    fc.integer({ min: 0, max: 3 }),
  )
  .map(([x, y, wide, rank]): LabelBox => ({ x, y, wide, high: 25, rank, own: above }));

/** How much two labels share, square pixels. */
function shared(
  a: LabelBox,
  b: LabelBox,
  pa: readonly [number, number],
  pb: readonly [number, number],
): number {
  const apartX = Math.abs(a.x + pa[0] * a.wide - b.x - pb[0] * b.wide);
  const apartY = Math.abs(a.y + pa[1] * a.high - b.y - pb[1] * b.high);
  return Math.max(0, (a.wide + b.wide) / 2 - apartX) * Math.max(0, (a.high + b.high) / 2 - apartY);
}

test("up to sixteen labels in a spot the size of five cover none of one another, and stay near their points", () => {
  fc.assert(
    fc.property(fc.array(label, { maxLength: 16 }), (labels) => {
      const places = labelPlaces(labels);
      for (const [n, a] of labels.entries()) {
        for (let k = 0; k < n; k++) expect(shared(a, labels[k]!, places[n]!, places[k]!)).toBe(0);
        expect(Math.max(Math.abs(places[n]![0]), Math.abs(places[n]![1]))).toBeLessThan(3.5);
      }
    }),
    { numRuns: 300 },
  );
});

test("a label alone stays where it stands by itself; of two at one point the one of lower rank does", () => {
  const one: LabelBox = { x: 50, y: 50, wide: 30, high: 25, rank: 3, own: above };
  expect(labelPlaces([one])).toEqual([above]);
  const [first, chosen] = labelPlaces([one, { ...one, rank: 1 }]);
  expect(chosen).toEqual(above);
  expect(first).not.toEqual(above);
});
