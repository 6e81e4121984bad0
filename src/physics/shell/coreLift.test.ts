import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { coreLiftN, coreNeedsN, mouthResistanceSM, neckHoldN, pinHoldN, pinYieldMPa } from "./coreLift.ts";

describe("by hand", () => {
  test("a litre of core in bronze lifts 61 N, in aluminium 8 N, one as heavy as the metal nothing", () => {
    // (7800 − 1600)·9.81/1000 and (2400 − 1600)·9.81/1000.
    expect(coreLiftN({ litre: 1, metalKgM3: 7800, coreKgM3: 1600 })).toBeCloseTo(60.82, 2);
    expect(coreLiftN({ litre: 1, metalKgM3: 2400, coreKgM3: 1600 })).toBeCloseTo(7.85, 2);
    expect(coreLiftN({ litre: 1, metalKgM3: 2400, coreKgM3: 2600 })).toBe(0);
  });

  test.each([
    [20, 235],
    [400, 235],
    [500, 183.3],
    [700, 54.05],
    [1050, 7.05],
    [1100, 4.7],
    [1300, 0],
  ])("mild steel at %d °C yields at %f MPa", (c, mpa) => expect(pinYieldMPa(c)).toBeCloseTo(mpa, 2));

  test("six pins of 3 mm: sheared off where they are hot, pulled through the core where they are cold", () => {
    const pins = { pins: 6, pinMm: 3, seatMm: 10, coreMPa: 2 };
    // 7.069 mm² · 7.05/√3 = 28.8 N each; 3·10·2 = 60 N each.
    expect(pinHoldN({ ...pins, yieldMPa: 7.05 })).toBeCloseTo(6 * 28.77, 0);
    expect(pinHoldN({ ...pins, yieldMPa: 235 })).toBe(360);
    expect(pinHoldN({ ...pins, pins: 0, yieldMPa: 235 })).toBe(0);
  });

  test("a neck of 40 mm on 150 mm of core breaks by bending, a wide one by pull", () => {
    // π·40³·2/32 / 75 = 167.6 N; pull 1256.6 mm²·1 MPa. 400 mm over 50 mm: pull 125.7 kN under 502 kN.
    expect(neckHoldN({ mouthMm: 40, depthMm: 150, coreMPa: 2 })).toBeCloseTo(167.6, 1);
    expect(neckHoldN({ mouthMm: 400, depthMm: 50, coreMPa: 2 })).toBeCloseTo(125_664, 0);
  });

  test("what is known to half or twice must hold 1.66 times the lift for an index of 1.2", () => {
    expect(coreNeedsN({ liftN: 100, spread: 2, least: 1.2 })).toBeCloseTo(100 * Math.exp(1.2 * 0.42137), 1);
  });

  test("a core of 0.1 L, 60 mm deep behind a mouth of 20 mm: about 39 500 s/m", () => {
    // r = √(1e-4/(π·0.06)) = 23.03 mm; wetted 2π·r·0.06 + π·r² = 0.01035 m²; 0.06/5e-5 · 0.01035/3.142e-4.
    expect(mouthResistanceSM({ litre: 0.1, mouthMm: 20, depthMm: 60 })).toBeCloseTo(39_530, -2);
  });
});

const litre = fc.double({ min: 0.01, max: 20, noNaN: true });
const mm = fc.double({ min: 5, max: 300, noNaN: true });
const more = fc.double({ min: 1, max: 4, noNaN: true });

test("a heavier core, a wider mouth and more pins never make it worse", () =>
  fc.assert(
    fc.property(litre, mm, mm, more, (l, mouthMm, depthMm, by) => {
      const lift = (coreKgM3: number): number => coreLiftN({ litre: l, metalKgM3: 7800, coreKgM3 });
      expect(lift(1600 * by)).toBeLessThanOrEqual(lift(1600));
      const neck = (m: number): number => neckHoldN({ mouthMm: m, depthMm, coreMPa: 2 });
      expect(neck(mouthMm * by)).toBeGreaterThanOrEqual(neck(mouthMm));
      const air = (m: number): number => mouthResistanceSM({ litre: l, mouthMm: m, depthMm });
      expect(air(mouthMm * by)).toBeLessThanOrEqual(air(mouthMm));
      const pins = (n: number): number =>
        pinHoldN({ pins: n, pinMm: 3, seatMm: 10, yieldMPa: 7, coreMPa: 2 });
      expect(pins(6 * by)).toBeGreaterThanOrEqual(pins(6));
    }),
  ));
