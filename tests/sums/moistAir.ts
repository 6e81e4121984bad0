import {
  humidityRatio,
  saturationPressurePa,
  triplePointC,
  vapourPressurePa,
  wettedPressurePa,
} from "../../src/physics/air/air.ts";
import { resistances, type MovingAir } from "../../src/physics/air/film.ts";
import { saturationDeficitGM3 } from "../../src/physics/air/air.ts";
import { requireAirPressure, requirePositive, requireWithin } from "../../src/physics/stats/range.ts";
import { risingRoot } from "../../src/physics/stats/root.ts";

// What published tables of moist air are printed in, made from the sums the app runs, so that those can be held
// against the tables.
const molarRatio = 0.621945;

/** Vapour pressure deficit, Pa, >= 0. */
export function vapourPressureDeficitPa({ tempC, rh }: { tempC: number; rh: number }): number {
  return saturationPressurePa(tempC) - vapourPressurePa({ tempC, rh });
}

/**
 * Thermodynamic wet-bulb temperature, °C, by bisection on ASHRAE Fundamentals 2017 ch. 1 eq. 33 (35 in air
 * below freezing). For air of −60 to 90 °C; rh 0 is fine.
 *
 * In air above freezing the bulb stays liquid (see `wettedPressurePa`), so it may read a little under 0 °C.
 */
export function wetBulbC({
  tempC,
  rh,
  pressurePa,
}: {
  tempC: number;
  rh: number;
  pressurePa: number;
}): number {
  requireWithin("tempC", tempC, { low: -60, high: 90, unit: "°C" });
  const airRatio = humidityRatio({ tempC, rh, pressurePa });
  const low = tempC < triplePointC ? -100 : -40;
  // A hot bulb can boil at low pressure; its ratio is then beyond any air's, so the root lies below.
  return risingRoot(
    (bulbC) => {
      const bulbPa = wettedPressurePa({ surfaceC: bulbC, airC: tempC });
      if (bulbPa >= 0.9 * pressurePa) return 1;
      return bulbBalance({ tempC, bulbC, bulbRatio: ratioAt({ vapourPa: bulbPa, pressurePa }) }) - airRatio;
    },
    { low, high: tempC },
  );
}

/**
 * Relative humidity (fraction) from a psychrometer's dry and wet readings, or null where no air can give
 * that pair (wet above dry, or so far below that the air would hold less than no water).
 */
export function relativeHumidityFromWetBulb({
  tempC,
  wetBulbC: bulbC,
  pressurePa,
}: {
  tempC: number;
  wetBulbC: number;
  pressurePa: number;
}): number | null {
  requireWithin("tempC", tempC, { low: -60, high: 90, unit: "°C" });
  requireWithin("wetBulbC", bulbC, { low: -60, high: 90, unit: "°C" });
  if (bulbC > tempC) return null;
  const bulbPa = wettedPressurePa({ surfaceC: bulbC, airC: tempC });
  const ratio = bulbBalance({ tempC, bulbC, bulbRatio: ratioAt({ vapourPa: bulbPa, pressurePa }) });
  const rh = (ratio * pressurePa) / (molarRatio + ratio) / saturationPressurePa(tempC);
  // A bulb at the air's own temperature gives 1 but for the last digit.
  return rh < -1e-9 ? null : Math.min(1, Math.max(0, rh));
}

/** Humidity ratio of the air around a bulb that reads `bulbC`: ASHRAE 2017 ch. 1 eq. 33 (water), 35 (ice). */
function bulbBalance({
  tempC,
  bulbC,
  bulbRatio,
}: {
  tempC: number;
  bulbC: number;
  bulbRatio: number;
}): number {
  const sensible = 1.006 * (tempC - bulbC);
  return tempC < triplePointC
    ? ((2830 - 0.24 * bulbC) * bulbRatio - sensible) / (2830 + 1.86 * tempC - 2.1 * bulbC)
    : ((2501 - 2.326 * bulbC) * bulbRatio - sensible) / (2501 + 1.86 * tempC - 4.186 * bulbC);
}

function ratioAt({ vapourPa, pressurePa }: { vapourPa: number; pressurePa: number }): number {
  requireAirPressure(pressurePa);
  return (molarRatio * vapourPa) / (pressurePa - vapourPa);
}

/** Enthalpy of moist air, kJ per kg of dry air, zero at 0 °C: ASHRAE Fundamentals 2017 ch. 1 eq. 30. */
export function enthalpyKJKg({ tempC, ratio }: { tempC: number; ratio: number }): number {
  requireWithin("tempC", tempC, { low: -100, high: 373.9, unit: "°C" });
  requireWithin("ratio", ratio, { low: 0, high: 10, unit: "kg/kg" });
  return 1.006 * tempC + ratio * (2501 + 1.86 * tempC);
}

/** Water leaving a freely wet surface, kg/m²s, >= 0. */
export function wetFluxKgM2S(air: MovingAir & { readonly pocketSM?: number | undefined }): number {
  const { surfaceSM, pocketSM } = resistances(air);
  return saturationDeficitGM3(air) / 1000 / (surfaceSM + pocketSM);
}

/** Evaporation that a heat flow pays for, kg/m²h: film × (air − surface) / latent heat, the drying-book routine. */
export function evaporationFromHeatKgM2H({
  filmWM2K,
  tempC,
  surfaceC,
  latentJKg,
}: {
  filmWM2K: number;
  tempC: number;
  surfaceC: number;
  latentJKg: number;
}): number {
  requirePositive("filmWM2K", filmWM2K, { high: 500, unit: "W/m²K" });
  requireWithin("tempC", tempC, { low: -100, high: 1000, unit: "°C" });
  requireWithin("surfaceC", surfaceC, { low: -100, high: 1000, unit: "°C" });
  requireWithin("latentJKg", latentJKg, { low: 1e5, high: 1e7, unit: "J/kg (not kJ)" });
  return (3600 * filmWM2K * (tempC - surfaceC)) / latentJKg;
}
