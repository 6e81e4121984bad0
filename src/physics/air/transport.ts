import { kelvin, vapourPressurePa } from "./air.ts";
import { requireAirPressure, requireWithin } from "../stats/range.ts";

/** Specific heat of air at constant pressure, J/kgK (from memory of Incropera table A.4). */
export const airHeatCapacityJKgK = 1006;

/**
 * Diffusivity of water vapour in air, m²/s, −60 to 100 °C.
 *
 * Massman, Atmos. Environ. 32 (1998) 1111: 0.2178 cm²/s at 0 °C, exponent 1.81 (from memory of it).
 */
export function vapourDiffusivityM2S({ tempC, pressurePa }: { tempC: number; pressurePa: number }): number {
  requireWithin("tempC", tempC, { low: -60, high: 100, unit: "°C" });
  requireAirPressure(pressurePa);
  return 2.178e-5 * (kelvin(tempC) / 273.15) ** 1.81 * (101_325 / pressurePa);
}

/** Thermal conductivity of air, W/mK, −60 to 100 °C: a line through the table (from memory of Incropera table A.4). */
export function airConductivityWMK(tempC: number): number {
  requireWithin("tempC", tempC, { low: -60, high: 100, unit: "°C" });
  return 0.0241 + 7.3e-5 * tempC;
}

/** Latent heat of evaporation of water, J/kg, −60 to 100 °C; the usual line of meteorology, within 0.3 % to 60 °C. */
export function latentHeatJKg(tempC: number): number {
  requireWithin("tempC", tempC, { low: -60, high: 100, unit: "°C" });
  return 2.501e6 - 2361 * tempC;
}

/** Density of moist air, kg/m³: dry air and vapour as ideal gases. */
export function moistAirDensityKgM3({
  tempC,
  rh,
  pressurePa,
}: {
  tempC: number;
  rh: number;
  pressurePa: number;
}): number {
  requireAirPressure(pressurePa);
  const vapourPa = vapourPressurePa({ tempC, rh });
  return ((pressurePa - vapourPa) / 287.05 + vapourPa / 461.5) / kelvin(tempC);
}

/** Lewis number of vapour in this air, heat diffusivity over vapour diffusivity, about 0.86. */
export function lewisNumber(air: { tempC: number; rh: number; pressurePa: number }): number {
  const heatM2S = airConductivityWMK(air.tempC) / (moistAirDensityKgM3(air) * airHeatCapacityJKgK);
  return heatM2S / vapourDiffusivityM2S(air);
}
