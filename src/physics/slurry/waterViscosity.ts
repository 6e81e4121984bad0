import { requirePositive, requireWithin } from "../stats/range.ts";
import { cupSeconds, cupViscosityMm2S } from "./slurry.ts";
import type { CupRefusal } from "./slurry.ts";

/** Viscosity of water at room pressure, mPa·s, 0–60 °C: IAPWS SR6-08(2011), correlation in T/300 K (from memory of it; checked against CRC in the tests). */
export function waterViscosityMPaS(waterC: number): number {
  requireWithin("waterC", waterC, { low: 0, high: 60, unit: "°C" });
  const t = (waterC + 273.15) / 300;
  return (280.68 * t ** -1.9 + 511.45 * t ** -7.7 + 61.131 * t ** -19.6 + 0.45903 * t ** -40) / 1000;
}

/** Further than this from the reference, K, a reading is drawn hollow and never joins the chart (starting value). */
export const alongsideK = 2;

export type SecondsAtReference =
  | {
      readonly ok: true;
      readonly seconds: number;
      readonly viscosityMm2S: number;
      /** The reading was taken too far from the reference to count as measured. */
      readonly hollow: boolean;
    }
  | CupRefusal;

/**
 * The seconds the same slurry would read at the reference temperature, to first order: the carrier is water, so
 * ν goes with water's viscosity, about −2.3 % a kelvin at 20 °C (derived). 5–40 °C.
 */
export function secondsAtReference({
  cup,
  seconds,
  slurryC,
  referenceC,
}: {
  cup: string;
  seconds: number;
  slurryC: number;
  referenceC: number;
}): SecondsAtReference {
  requireWithin("slurryC", slurryC, { low: 5, high: 40, unit: "°C" });
  requireWithin("referenceC", referenceC, { low: 5, high: 40, unit: "°C" });
  const read = cupViscosityMm2S({ cup, seconds });
  if (!read.ok) return read;
  const viscosityMm2S = viscosityAtMm2S({ viscosityMm2S: read.viscosityMm2S, slurryC, referenceC });
  const there = cupSeconds({ cup, viscosityMm2S });
  if (!there.ok) return there;
  const hollow = Math.abs(slurryC - referenceC) > alongsideK + 1e-9;
  return { ok: true, seconds: there.seconds, viscosityMm2S, hollow };
}

/** Kinematic viscosity carried from the slurry's temperature to another, mm²/s; see `secondsAtReference`. */
export function viscosityAtMm2S({
  viscosityMm2S,
  slurryC,
  referenceC,
}: {
  viscosityMm2S: number;
  slurryC: number;
  referenceC: number;
}): number {
  requirePositive("viscosityMm2S", viscosityMm2S, { high: 1e6, unit: "mm²/s" });
  return (viscosityMm2S * waterViscosityMPaS(referenceC)) / waterViscosityMPaS(slurryC);
}
