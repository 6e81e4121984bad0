import fc from "fast-check";
import { expect, test } from "vitest";
import { dryStep } from "./dryStep.ts";
import { lastFluxKgM2S, leastAreaM2 } from "./lastFlux.ts";

const air = { tempC: 22, rh: 0.5, pressurePa: 101_325, durationS: 3600 };
const step = dryStep(air, { filmWM2K: 15, pocketSM: 0 });
const coat = { depthM: 0.0035, dryFraction: 0.95 };

test("a backup under a rack fan at 22 °C, 50 % loses 37 g/m²h to the last", () => {
  // By hand from the worked example of the drying model: 0.009710/(188.7 + 226160·0.95·0.0035) kg/m²s.
  const gM2H = lastFluxKgM2S(step, coat, { pocketSM: 0, factor: 1 }) * 3.6e6;
  expect(gM2H).toBeGreaterThan(37.2 * 0.98);
  expect(gM2H).toBeLessThan(37.2 * 1.02);
});

test("a blind core (6000 s/m) loses a seventh of that, and twice the factor half of it", () => {
  const open = lastFluxKgM2S(step, coat, { pocketSM: 0, factor: 1 });
  expect(open / lastFluxKgM2S(step, coat, { pocketSM: 6000, factor: 1 })).toBeCloseTo(6941 / 941, 1);
  expect(lastFluxKgM2S(step, coat, { pocketSM: 0, factor: 2 })).toBeCloseTo(open / 2, 12);
});

test("in saturated air nothing leaves", () => {
  const damp = dryStep({ ...air, rh: 1 }, { filmWM2K: 15, pocketSM: 0 });
  expect(lastFluxKgM2S(damp, coat, { pocketSM: 0, factor: 1 })).toBe(0);
  expect(() => lastFluxKgM2S(step, coat, { pocketSM: 0, factor: 0 })).toThrow(/factor/);
});

test("no box has less surface than the ball of its mass", () => {
  // A ball of 1 litre: radius 62.04 mm, surface 0.04836 m² (4πr²).
  expect(leastAreaM2(2.5)).toBeCloseTo(0.04836, 5);
  const side = fc.double({ min: 0.01, max: 1, noNaN: true });
  fc.assert(
    fc.property(side, side, side, (a, b, c) => {
      expect(leastAreaM2(2500 * a * b * c)).toBeLessThanOrEqual(2 * (a * b + b * c + a * c));
    }),
  );
  expect(() => leastAreaM2(0)).toThrow(/massKg/);
});
