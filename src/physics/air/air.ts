import { requireAirPressure, requireFigures, requireFraction, requireWithin } from "../stats/range.ts";
import { risingRoot } from "../stats/root.ts";

/** Triple point of water, °C and Pa: Wexler, J. Res. NBS 80A (1976) 775. Ice and water curves meet here. */
export const triplePointC = 0.01;
const triplePointPa = 611.657;

/** Gas constant of water vapour, J/kgK. */
const vapourGasConstant = 461.5;

/** Ratio of the molar masses of water and dry air: ASHRAE Fundamentals 2017 ch. 1 eq. 20. */
const molarRatio = 0.621945;

/** Kelvin, from 0 K to 10 000 °C. */
export function kelvin(tempC: number): number {
  requireWithin("tempC", tempC, { low: -273.15, high: 10_000, unit: "°C" });
  return tempC + 273.15;
}

/**
 * Saturation vapour pressure, Pa, −100 to 373.9 °C: over water from 0.01 °C up, over ice below.
 *
 * Water: IAPWS SR1-86(1992) eq. 1. Ice: IAPWS R14-08(2011) eq. 6. The two meet at the triple point.
 * Refuses a temperature outside the range (kelvin or °F given by mistake are mostly caught).
 */
export function saturationPressurePa(tempC: number): number {
  requireWithin("tempC", tempC, { low: -100, high: 373.9, unit: "°C" });
  return tempC < triplePointC ? overIcePa(tempC) : overWaterPa(tempC);
}

/**
 * Saturation vapour pressure over liquid water, Pa, −50 to 373.9 °C, supercooled water included.
 *
 * IAPWS SR1-86(1992) eq. 1; below 0.01 °C that is an extrapolation, within 0.1 % of Murphy & Koop,
 * Q. J. R. Meteorol. Soc. 131 (2005) 1539 eq. 10 down to −20 °C (checked in the tests).
 */
export function saturationPressureWaterPa(tempC: number): number {
  requireWithin("tempC", tempC, { low: -50, high: 373.9, unit: "°C" });
  return overWaterPa(tempC);
}

/**
 * Saturation pressure, Pa, over the water that wets a surface standing in air of `airC`.
 *
 * In air above freezing the film counts as liquid even where it is a little below 0 °C: such a film is
 * usually supercooled. In air below freezing it is ice. One branch per air keeps wet-bulb and drying
 * free of jumps. (Just below 0 °C both are legal and differ by up to 0.4 K of wet bulb.) −100 to 373.9 °C.
 */
export function wettedPressurePa({ surfaceC, airC }: { surfaceC: number; airC: number }): number {
  requireWithin("surfaceC", surfaceC, { low: -100, high: 373.9, unit: "°C" });
  requireWithin("airC", airC, { low: -100, high: 373.9, unit: "°C" });
  return airC < triplePointC ? overIcePa(surfaceC) : overWaterPa(surfaceC);
}

/**
 * Vapour pressure of the air, Pa.
 *
 * Convention of all doors here: rh is relative to `saturationPressurePa`, so below 0.01 °C to ice, as in
 * the ASHRAE tables. Sensors and weather services refer rh to liquid water also below 0 °C: pass such a
 * reading through `rhOverIce` first.
 */
export function vapourPressurePa({ tempC, rh }: { tempC: number; rh: number }): number {
  requireFraction("rh", rh);
  return rh * saturationPressurePa(tempC);
}

/**
 * The rh (fraction, at most 1) our doors expect, from a sensor's rh over liquid water.
 *
 * Unchanged from 0.01 °C up. Below, air saturated over water is supersaturated over ice; that is cut to 1.
 * The sensor convention is the WMO's (from memory of WMO-No. 8 annex 4.B).
 */
export function rhOverIce({ tempC, rh }: { tempC: number; rh: number }): number {
  requireFraction("rh", rh);
  if (tempC >= triplePointC) return rh;
  return Math.min(1, (rh * saturationPressureWaterPa(tempC)) / saturationPressurePa(tempC));
}

/** Density of the water vapour in the air, kg/m³ (ideal gas). */
export function vapourDensityKgM3({ tempC, rh }: { tempC: number; rh: number }): number {
  return vapourPressurePa({ tempC, rh }) / (vapourGasConstant * kelvin(tempC));
}

/** Density of vapour at a given vapour pressure, kg/m³ (ideal gas); above −273 °C. A difference of pressures gives one of densities. */
export function densityOfVapour({ tempC, vapourPa }: { tempC: number; vapourPa: number }): number {
  requireFigures({ vapourPa });
  requireWithin("tempC", tempC, { low: -273, high: 10_000, unit: "°C" });
  return vapourPa / (vapourGasConstant * kelvin(tempC));
}

/** How much water a cubic metre of this air could still take up, g/m³, >= 0: the pull that dries a coat. */
export function saturationDeficitGM3({ tempC, rh }: { tempC: number; rh: number }): number {
  return 1000 * (vapourDensityKgM3({ tempC, rh: 1 }) - vapourDensityKgM3({ tempC, rh }));
}

/**
 * Dew point, °C; below 0.01 °C the frost point, over ice.
 *
 * null for air so dry that its frost point lies under −100 °C (rh 0 above all): there is none in range.
 */
export function dewPointC({ tempC, rh }: { tempC: number; rh: number }): number | null {
  const vapourPa = vapourPressurePa({ tempC, rh });
  if (vapourPa < overIcePa(-100)) return null;
  if (rh === 1) return tempC;
  const wanted = Math.log(vapourPa);
  return risingRoot((t) => Math.log(saturationPressurePa(t)) - wanted, { low: -100, high: tempC });
}

/** Humidity ratio, kg of water per kg of dry air: ASHRAE Fundamentals 2017 ch. 1 eq. 20. Refuses air that boils. */
export function humidityRatio({
  tempC,
  rh,
  pressurePa,
}: {
  tempC: number;
  rh: number;
  pressurePa: number;
}): number {
  return ratioAt({ vapourPa: vapourPressurePa({ tempC, rh }), pressurePa });
}

/** Pressure of the standard atmosphere, Pa, −5000 to 11 000 m: ASHRAE Fundamentals 2017 ch. 1 eq. 3. */
export function pressureAtAltitudePa(altitudeM: number): number {
  requireWithin("altitudeM", altitudeM, { low: -5000, high: 11_000, unit: "m" });
  return 101_325 * (1 - 2.25577e-5 * altitudeM) ** 5.2559;
}

function ratioAt({ vapourPa, pressurePa }: { vapourPa: number; pressurePa: number }): number {
  requireAirPressure(pressurePa);
  if (vapourPa >= pressurePa)
    throw new RangeError(`vapour pressure must be under the air's ${pressurePa} Pa, found ${vapourPa}`);
  return (molarRatio * vapourPa) / (pressurePa - vapourPa);
}

function overWaterPa(tempC: number): number {
  const critical = 647.096;
  const u = 1 - kelvin(tempC) / critical;
  const half = Math.sqrt(u);
  const u3 = u * u * u;
  const sum =
    -7.85951783 * u +
    1.84408259 * u * half +
    -11.7866497 * u3 +
    22.6807411 * u3 * half +
    -15.9618719 * u3 * u +
    1.80122502 * u3 * u3 * u * half;
  return 22.064e6 * Math.exp((critical / kelvin(tempC)) * sum);
}

function overIcePa(tempC: number): number {
  const x = kelvin(tempC) / kelvin(triplePointC);
  const sum = -21.2144006 * x ** 0.00333333333 + 27.3203819 * x ** 1.20666667 - 6.1059813 * x ** 1.70333333;
  return triplePointPa * Math.exp(sum / x);
}
