import * as fc from "fast-check";
import { expect, test } from "vitest";
import truth from "../../../tests/truth/slurry.json" with { type: "json" };
import { relativeViscosity, viscosityAfter } from "../shell/thickness.ts";
import { secondsAtReference, viscosityAtMm2S, waterViscosityMPaS } from "./waterViscosity.ts";

test.each(truth.water.rows)("water at $c °C has $mPaS mPa·s", ({ c, mPaS }) =>
  expect(Math.abs(waterViscosityMPaS(c) / mPaS - 1)).toBeLessThan(0.001),
);

test("water stays within 0.1 % of the CRC formula from 15 to 40 °C", () => {
  // CRC Handbook of Chemistry and Physics (from memory), valid from 20 °C.
  const crc = (c: number): number =>
    1.002 * 10 ** ((1.3272 * (20 - c) - 0.001053 * (c - 20) ** 2) / (c + 105));
  for (let c = 15; c <= 40; c += 0.5)
    expect(Math.abs(waterViscosityMPaS(c) / crc(c) - 1)).toBeLessThan(0.001);
});

test("296 mm²/s at 20 °C are 263 at 25 °C; 25.0 s Zahn 4 would read 22.8, and count as hollow", () => {
  const there = secondsAtReference({ cup: "zahn-4", seconds: 25, slurryC: 20, referenceC: 25 });
  expect(there).toMatchObject({ ok: true, hollow: true });
  if (!there.ok) return;
  expect(Math.abs(there.viscosityMm2S - 263)).toBeLessThan(1);
  expect(Math.abs(there.seconds - 22.8)).toBeLessThan(0.05);
});

test("two kelvin off still counts, more does not", () => {
  const of = { cup: "zahn-4", seconds: 25, referenceC: 22 };
  expect(secondsAtReference({ ...of, slurryC: 24 })).toMatchObject({ hollow: false });
  expect(secondsAtReference({ ...of, slurryC: 24.1 })).toMatchObject({ hollow: true });
  expect(secondsAtReference({ ...of, slurryC: 19.9 })).toMatchObject({ hollow: true });
  expect(secondsAtReference({ ...of, cup: "mug", slurryC: 22 })).toMatchObject({ code: "unknown-cup" });
  expect(() => secondsAtReference({ ...of, slurryC: 295 })).toThrow(RangeError);
});

test("there and back is where it was; warmer is thinner", () =>
  fc.assert(
    fc.property(
      fc.double({ min: 5, max: 40, noNaN: true }),
      fc.double({ min: 5, max: 40, noNaN: true }),
      (slurryC, referenceC) => {
        const there = viscosityAtMm2S({ viscosityMm2S: 300, slurryC, referenceC });
        const back = viscosityAtMm2S({ viscosityMm2S: there, slurryC: referenceC, referenceC: slurryC });
        expect(back).toBeCloseTo(300, 9);
        if (referenceC > slurryC + 1e-6) expect(there).toBeLessThan(300);
      },
    ),
    { numRuns: 150 },
  ));

test("a litre of water lost from twenty thickens a slurry by about a third", () => {
  // Krieger & Dougherty by hand: (1 − 0.4811/0.62)^−1.55 and (1 − 0.5064/0.62)^−1.55.
  const before = relativeViscosity({ flourVolumeFraction: 0.4811 });
  const after = relativeViscosity({ flourVolumeFraction: 0.5064 });
  expect(before).toBeCloseTo(10.16, 2);
  expect(after).toBeCloseTo(13.86, 1);
  expect(after / before - 1).toBeGreaterThan(0.35);
  expect(after / before - 1).toBeLessThan(0.38);
  // Einstein's limit of a thin suspension.
  expect(relativeViscosity({ flourVolumeFraction: 0.001 }) - 1).toBeCloseTo(0.0025, 4);
});

test("the guess holds its own span, and says nothing far from where it was fitted", () => {
  const of = { viscosityMm2S: 300 };
  const guess = viscosityAfter({
    ...of,
    from: { flourVolumeFraction: 0.506, densityGCm3: 1.717 },
    to: { flourVolumeFraction: 0.481, densityGCm3: 1.681 },
  });
  expect(guess?.lowMm2S).toBeLessThan(guess?.likelyMm2S ?? 0);
  expect(guess?.likelyMm2S).toBeLessThan(guess?.highMm2S ?? 0);
  expect(guess?.highMm2S).toBeLessThan(300);
  const far = { flourVolumeFraction: 0.4, densityGCm3: 1.6 };
  expect(viscosityAfter({ ...of, from: { flourVolumeFraction: 0.5, densityGCm3: 1.7 }, to: far })).toBeNull();
  const thin = { flourVolumeFraction: 0.2, densityGCm3: 1.4 };
  expect(viscosityAfter({ ...of, from: thin, to: thin })).toBeNull();
});
