import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { lnSdOf } from "./wallVerdict.ts";
import { provenStrength } from "./provenStrength.ts";

const start = { likelyMPa: 4, spread: 2, within: 1.5, loadSpread: 1.58, held: [], broke: [] };

describe("strength after pours", () => {
  test("is as it was where nothing was poured, or the shop's own bars leave no doubt between shops", () => {
    expect(provenStrength(start)).toEqual({ likelyMPa: 4, spread: 2 });
    const bars = { ...start, spread: 1.5, held: [9] };
    expect(provenStrength(bars)).toEqual({ likelyMPa: 4, spread: 1.5 });
  });

  test("one shell that held: the closed form of a normal belief cut by a normal step", () => {
    // Mean of a normal (0, s) under Φ((x − a)/c): s²/√(s²+c²)·φ(k)/Φ(k), k = −a/√(s²+c²) (Owen 1980, 10.010.8 and parts).
    const s = Math.sqrt(lnSdOf(2) ** 2 - lnSdOf(1.5) ** 2);
    const c = Math.hypot(lnSdOf(1.5), lnSdOf(1.58));
    // Held at 4 MPa, the likely strength itself: k = 0, φ/Φ = √(2/π).
    const mean = (s ** 2 / Math.hypot(s, c)) * Math.sqrt(2 / Math.PI);
    const found = provenStrength({ ...start, held: [4] });
    expect(Math.log(found.likelyMPa / 4)).toBeCloseTo(mean, 3);
    // Its variance: s² − mean².
    const variance = s ** 2 - mean ** 2;
    expect(Math.log(found.spread) / 1.645).toBeCloseTo(Math.hypot(lnSdOf(1.5), Math.sqrt(variance)), 3);
  });

  test("five shells that held 2.4 MPa raise the low end, one that broke at 2.4 lowers it", () => {
    const low = ({ likelyMPa, spread }: { likelyMPa: number; spread: number }): number => likelyMPa / spread;
    const held = provenStrength({ ...start, held: [2.4, 2.4, 2.4, 2.4, 2.4] });
    expect(held.spread).toBeLessThan(2);
    expect(low(held)).toBeGreaterThan(low(start));
    expect(low(provenStrength({ ...start, broke: [2.4] }))).toBeLessThan(low(start));
  });

  test("loads far below what shells bear say next to nothing", () => {
    const found = provenStrength({ ...start, held: Array.from({ length: 20 }, () => 0.2) });
    expect(found.likelyMPa).toBeCloseTo(4, 1);
    expect(found.spread).toBeCloseTo(2, 1);
  });
});

const load = fc.double({ min: 0.1, max: 12, noNaN: true });

test("a shell more that held never makes strength less, nor less known where none broke; one that broke never more", () =>
  fc.assert(
    fc.property(
      fc.array(load, { maxLength: 6 }),
      fc.array(load, { maxLength: 3 }),
      load,
      (held, broke, one) => {
        const before = provenStrength({ ...start, held, broke });
        const after = provenStrength({ ...start, held: [...held, one], broke });
        expect(after.likelyMPa).toBeGreaterThanOrEqual(before.likelyMPa - 1e-9);
        const sound = (loads: readonly number[]): number => provenStrength({ ...start, held: loads }).spread;
        expect(sound([...held, one])).toBeLessThanOrEqual(sound(held) + 1e-9);
        const worse = provenStrength({ ...start, held, broke: [...broke, one] });
        expect(worse.likelyMPa).toBeLessThanOrEqual(before.likelyMPa + 1e-9);
        expect(before.spread).toBeGreaterThanOrEqual(1.5 - 1e-9);
      },
    ),
  ));
