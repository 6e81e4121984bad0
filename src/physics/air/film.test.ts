import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { dewPointC, saturationPressureWaterPa, vapourDensityKgM3 } from "./air.ts";
import { wetBulbC, evaporationFromHeatKgM2H, wetFluxKgM2S } from "../../../tests/sums/moistAir.ts";
import { condensationKgM2S, evaporativeDropK, resistances, wetSurfaceC } from "./film.ts";
import {
  airConductivityWMK,
  latentHeatJKg,
  lewisNumber,
  moistAirDensityKgM3,
  vapourDiffusivityM2S,
} from "./transport.ts";
import truth from "../../../tests/truth/drying.json" with { type: "json" };

const shop = { tempC: 22, rh: 0.5, pressurePa: 101_325, filmWM2K: 15 };

describe("a freely wet surface", () => {
  test.each(truth.wetSurface)("at $tempC °C, $rh, film $filmWM2K loses $fluxGM2H g/m²h", (row) => {
    expect(Math.abs((wetFluxKgM2S(row) * 3.6e6) / row.fluxGM2H - 1)).toBeLessThan(0.02);
    expect(Math.abs(resistances(row).surfaceSM / row.surfaceSM - 1)).toBeLessThan(0.02);
    if (row.surfaceC !== null) expect(Math.abs(wetSurfaceC(row) - row.surfaceC)).toBeLessThan(0.05);
  });

  test.each(truth.drops.rows)("cools at $rh as the table says, still to fan", ({ rh, dropK }) => {
    for (const [i, filmWM2K] of truth.drops.filmWM2K.entries())
      expect(Math.abs(evaporativeDropK({ ...shop, rh, filmWM2K }) - (dropK[i] ?? NaN))).toBeLessThan(0.1);
  });

  test("radiation holds it above the wet bulb in still air, and a gale brings it there", () => {
    const bulb = wetBulbC(shop);
    expect(wetSurfaceC({ ...shop, filmWM2K: 4 }) - bulb).toBeGreaterThan(1.5);
    // In a gale Chilton–Colburn, with a Lewis number under 1, runs a little below the adiabatic bulb.
    expect(Math.abs(wetSurfaceC({ ...shop, filmWM2K: 400 }) - bulb)).toBeLessThan(0.6);
  });

  test("Geankoplis' tray of wet sand dries at 3.39 kg/m²h", () => {
    const { kgM2H, within } = truth.evaporation;
    expect(Math.abs(evaporationFromHeatKgM2H(truth.evaporation) / kgM2H - 1)).toBeLessThan(within);
  });

  test("its heat balance closes: what evaporates is paid by film and radiation", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 2, max: 45, noNaN: true }),
        fc.double({ min: 0.05, max: 0.98, noNaN: true }),
        fc.double({ min: 3, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 6000, noNaN: true }),
        (tempC, rh, filmWM2K, pocketSM) => {
          const air = { tempC, rh, filmWM2K, pocketSM, pressurePa: 95_000 };
          const { wetSurfaceC: surfaceC } = resistances(air);
          const spent = wetFluxKgM2S(air) * latentHeatJKg(surfaceC);
          const radiated = 0.93 * 5.670374e-8 * ((tempC + 273.15) ** 4 - (surfaceC + 273.15) ** 4);
          expect(Math.abs(spent / (filmWM2K * (tempC - surfaceC) + radiated) - 1)).toBeLessThan(0.01);
          // And the same flux follows from the vapour densities alone.
          const surfaceKgM3 = saturationPressureWaterPa(surfaceC) / (461.5 * (surfaceC + 273.15));
          const filmSM = (moistAirDensityKgM3(air) * 1006 * lewisNumber(air) ** (2 / 3)) / filmWM2K;
          const flux = (surfaceKgM3 - vapourDensityKgM3(air)) / (filmSM + pocketSM);
          expect(Math.abs(flux / wetFluxKgM2S(air) - 1)).toBeLessThan(0.01);
        },
      ),
    ));

  test("in saturated air it stands at the air's temperature and nothing leaves", () => {
    expect(evaporativeDropK({ ...shop, rh: 1 })).toBe(0);
    expect(wetFluxKgM2S({ ...shop, rh: 1 })).toBe(0);
  });

  test("a shell under the dew point gathers water, one above it loses some", () => {
    expect(condensationKgM2S({ ...shop, surfaceC: 8 })).toBeGreaterThan(0);
    expect(condensationKgM2S({ ...shop, surfaceC: 13 })).toBeLessThan(0);
    expect(condensationKgM2S({ ...shop, surfaceC: dewPointC(shop) ?? NaN }) * 3.6e6).toBeCloseTo(0, 6);
  });

  test("a film of nothing, or of millibars, is refused", () => {
    expect(() => resistances({ ...shop, filmWM2K: 0 })).toThrow(/filmWM2K must be above 0/);
    expect(() => resistances({ ...shop, pressurePa: 1013 })).toThrow(/pressurePa/);
    expect(() => resistances({ ...shop, pocketSM: -1 })).toThrow(/pocketSM/);
  });
});

describe("what carries heat and vapour in air at 22 °C", () => {
  test("diffusivity, conductivity and Lewis number are those of the tables", () => {
    // Textbook: D of vapour in air 2.5e-5 m²/s and k 0.0257 W/mK near 22 °C (from memory of Incropera table A).
    expect(vapourDiffusivityM2S(shop)).toBeCloseTo(2.506e-5, 8);
    expect(airConductivityWMK(22)).toBeCloseTo(0.0257, 4);
    expect(lewisNumber(shop)).toBeCloseTo(0.857, 2);
  });

  test("latent heat is the steam tables' to 0.3 %", () => {
    // h_fg at saturation, from memory of the steam tables.
    for (const [tempC, kJ] of [
      [0.01, 2500.9],
      [20, 2453.5],
      [40, 2406.0],
      [60, 2357.7],
    ] as const)
      expect(Math.abs(latentHeatJKg(tempC) / 1000 / kJ - 1)).toBeLessThan(0.003);
  });
});
