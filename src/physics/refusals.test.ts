import { expect, test } from "vitest";
import { aitken } from "./evidence/approachFit.ts";
import { solAs } from "./slurry/bucketMix.ts";
import { looseSand, wallCooling } from "./heat/heat.ts";
import { mixCharge } from "./metal/scrap.ts";
import { fitFactor } from "../../tests/sums/fitFactor.ts";

const wall = { wallMm: 8, startC: 540, airC: 20, minutes: 2 };
const charge = {
  items: [{ name: "ingot", massKg: 5, contents: { cu: { low: 1, high: 1 } }, isBerylliumSuspect: false }],
};
const at = (...times: readonly [number, number, number]) =>
  [
    { afterS: times[0], massG: 1250 },
    { afterS: times[1], massG: 1220 },
    { afterS: times[2], massG: 1208 },
  ] as const;

test("a wall of falling rows, no sand, a negative conductivity or part of a cell is refused with what was found", () => {
  const falling = [
    [500, 0.8],
    [20, 0.6],
  ] as const;
  expect(() => wallCooling({ ...wall, conductivityWMK: falling })).toThrow(/rising.*found 20/);
  const sand = { ...looseSand, thicknessMm: 0 };
  expect(() => wallCooling({ ...wall, outside: "cold-sand", sand })).toThrow(/thicknessMm.*found 0/);
  expect(() => wallCooling({ ...wall, conductivityWMK: -0.7 })).toThrow(/conductivityWMK.*found -0\.7/);
  expect(() => wallCooling({ ...wall, cells: 6.5 })).toThrow(/whole number, found 6\.5/);
  expect(wallCooling({ ...wall, cells: 6 }).at(-1)?.cavityFaceC).toBeLessThan(540);
});

test("a sol in percent, and a recovery reversed or above 1", () => {
  expect(() => solAs({ solKg: 10, silica: 30 })).toThrow(/silica.*not percent.*found 30/);
  expect(solAs({ solKg: 10, silica: 0.3 }).silicaKg).toBeCloseTo(3, 12);
  const recovery = (low: number, likely: number, high: number) => ({ cu: { low, likely, high } });
  expect(() => mixCharge({ ...charge, recovery: recovery(1, 0.95, 0.9) })).toThrow(/cu recovery.*found 0\.9/);
  expect(() => mixCharge({ ...charge, recovery: recovery(0.9, 1, 1.1) })).toThrow(/cu recovery.*found 1\.1/);
  expect(mixCharge({ ...charge, recovery: recovery(0.9, 0.95, 1) })).toMatchObject({ ok: true });
});

test("a coat dry at 0 s, weighings unevenly spaced, and a figure too small to divide by", () => {
  const pair = { predictedS: 3600, wetAtS: null, weight: 1 };
  expect(() => fitFactor([{ ...pair, dryAtS: 0 }])).toThrow(/dryAtS.*found 0/);
  expect(() => fitFactor([{ ...pair, predictedS: 5e-324, dryAtS: 3600 }])).toThrow(
    /predictedS.*found 5e-324/,
  );
  expect(fitFactor([{ ...pair, dryAtS: 3600 }]).factor).toBeLessThan(1);
  expect(() => aitken(at(0, 3600, 9000))).toThrow(/equal spacing.*found 5400/);
  expect(aitken(at(0, 3600, 7200.5))).not.toBeNull();
});
