import { expect, test } from "vitest";
import { sieveOpeningMm } from "./meshes.ts";
import { sealMm, stuccoOf, stuccos } from "./stuccos.ts";

/** Wall a coat, mm, as the trade reckons it by film and grain (estimate, ± 25 %). */
const wall = [
  ["80-120", 0.32],
  ["50-100", 0.4],
  ["30-80", 0.63],
  ["30-50", 0.745],
  ["20-40", 0.95],
  ["16-30", 1.23],
  ["10-20", 1.82],
] as const;

test.each(wall)("a coat of %s gives about %f mm", (id, mm) => {
  expect(Math.abs((stuccoOf(id)?.mmPerCoat.value ?? 0) - mm)).toBeLessThan(0.006);
});

test.each(stuccos)("$label gives a wall within the range to allow for", ({ mmPerCoat }) => {
  expect(mmPerCoat.value).toBeGreaterThan(mmPerCoat.low);
  expect(mmPerCoat.value).toBeLessThan(mmPerCoat.high);
});

test("stuccos run from fine to coarse, and a coarser one builds more", () => {
  expect(stuccos.map(({ order }) => order)).toEqual(stuccos.map((_, i) => i));
  for (const [i, stucco] of stuccos.entries()) {
    const finer = stuccos[i - 1];
    expect(stucco.fineMm).toBeLessThan(stucco.coarseMm);
    if (finer === undefined) continue;
    expect(stucco.coarseMm + stucco.fineMm).toBeGreaterThan(finer.coarseMm + finer.fineMm);
    expect(stucco.mmPerCoat.value).toBeGreaterThan(finer.mmPerCoat.value);
  }
});

test("a higher mesh is a smaller hole", () => {
  const openings = Object.entries(sieveOpeningMm)
    .toSorted(([a], [b]) => Number(a) - Number(b))
    .map(([, mm]) => mm);
  expect(openings).toEqual(openings.toSorted((a, b) => b - a));
});

test("two primes, one 50–100, five 16–30 and a seal make 7.43 mm", () => {
  const stack = ["80-120", "80-120", "50-100", ...Array<string>(5).fill("16-30")];
  const mm = stack.reduce<number>((sum, id) => sum + (stuccoOf(id)?.mmPerCoat.value ?? 0), sealMm.value);
  expect(mm).toBeCloseTo(7.43, 1);
  expect(Math.abs(mm - 7.43)).toBeLessThan(0.02);
});

test("a stucco that isn't in the table is none", () => {
  expect(stuccoOf("1-2")).toBeNull();
});
