import { requirePositive, requireWithin } from "../stats/range.ts";

/** A pattern as the fire meets it. */
export type BurningPattern = {
  readonly massKg: number;
  readonly isWax: boolean;
  /** Where it is held to run out, °C; null where it never runs. */
  readonly drainC: number | null;
  /** Its smoke: from here it decomposes, to here it is gone but for carbon, °C. */
  readonly burnFromC: number;
  readonly burnToC: number;
  readonly heatMJKg: number;
  readonly airKgKg: number;
  readonly finishC: number;
  readonly finishMin: number;
  /** Lowest flash point, °C; left out where none is known. */
  readonly flashC?: number | undefined;
  /** Share of its mass that stays in the kiln and burns there; 1 unless given. */
  readonly staysShare?: number | undefined;
};

export type BurnAir = {
  readonly heatKW: number;
  readonly limitKW: number;
  readonly isTooMuch: boolean;
  /** Air to burn it all, kg, and while it burns, normal m³/h (0 °C, 1 atm). */
  readonly airKg: number;
  readonly airM3H: number;
};

/** Dry air at 0 °C and 101.325 kPa, kg/m³: ISO 2533. */
const airKgM3 = 1.293;
/** A flash burns wax in about this time, s, and plastic in twice it: common practice, no source. */
const flashWaxS = 300;
/** Heat a small kiln bears from a burning pattern: 150 kW/m³, no more than 30 kW; judgement, starting value. */
const heatKWPerM3 = 150;
const mostHeatKW = 30;

/** Heat release a kiln of a size bears, kW. */
export function heatLimitKW(volumeL: number): number {
  requirePositive("volumeL", volumeL, { high: 100_000, unit: "L" });
  return Math.min(mostHeatKW, (heatKWPerM3 * volumeL) / 1000);
}

/** Seconds a pattern burns when its shell is put into a hot kiln. */
export function flashBurnS(pattern: Pick<BurningPattern, "isWax">): number {
  return pattern.isWax ? flashWaxS : 2 * flashWaxS;
}

/** Mass of a pattern that burns in the kiln, kg: what does not run out of it. */
const burningKg = ({ massKg, staysShare = 1 }: Pick<BurningPattern, "massKg" | "staysShare">): number =>
  massKg * staysShare;

/** Heat a pattern gives off while what stays of it burns wholly in `burnS`, against the kiln's size, and the air that takes. */
export function burnAir({
  pattern,
  burnS,
  volumeL,
}: {
  pattern: Pick<BurningPattern, "massKg" | "heatMJKg" | "airKgKg" | "staysShare">;
  burnS: number;
  volumeL: number;
}): BurnAir {
  const { massKg, heatMJKg, airKgKg } = pattern;
  requireWithin("massKg", massKg, { low: 0, high: 1000, unit: "kg (not g)" });
  requireWithin("staysShare", pattern.staysShare ?? 1, { low: 0, high: 1, unit: "share" });
  requireWithin("heatMJKg", heatMJKg, { low: 0, high: 60, unit: "MJ/kg" });
  requireWithin("airKgKg", airKgKg, { low: 0, high: 35, unit: "kg/kg" });
  requirePositive("burnS", burnS, { high: 1e6, unit: "s" });
  const limitKW = heatLimitKW(volumeL);
  const burnsKg = burningKg(pattern);
  const heatKW = (burnsKg * heatMJKg * 1000) / burnS;
  const airKg = burnsKg * airKgKg;
  return {
    heatKW,
    limitKW,
    isTooMuch: heatKW > limitKW * (1 + 1e-9),
    airKg,
    airM3H: ((airKg / airKgM3) * 3600) / burnS,
  };
}

/** Refuses a pattern that is not of this world. */
export function requireBurning(pattern: BurningPattern): void {
  requireWithin("massKg", pattern.massKg, { low: 0, high: 1000, unit: "kg (not g)" });
  requireWithin("heatMJKg", pattern.heatMJKg, { low: 0, high: 60, unit: "MJ/kg" });
  requireWithin("airKgKg", pattern.airKgKg, { low: 0, high: 35, unit: "kg/kg" });
  requireWithin("burnFromC", pattern.burnFromC, { low: 20, high: 1500, unit: "°C" });
  requireWithin("burnToC", pattern.burnToC, { low: pattern.burnFromC, high: 1700, unit: "°C" });
  requireWithin("drainC", pattern.drainC ?? 20, { low: -40, high: 1500, unit: "°C" });
  requireWithin("finishC", pattern.finishC, { low: 0, high: 1700, unit: "°C" });
  requireWithin("finishMin", pattern.finishMin, { low: 0, high: 100_000, unit: "min" });
}

/** Steepest ramp through the smoke at which the heat release stays within the kiln's size, K/h. */
export function burnRateKPerH({ pattern, volumeL }: { pattern: BurningPattern; volumeL: number }): number {
  requireBurning(pattern);
  const heatKJ = burningKg(pattern) * pattern.heatMJKg * 1000;
  // Next to no heat sets no limit.
  if (heatKJ < 1e-9) return Infinity;
  return ((pattern.burnToC - pattern.burnFromC) * heatLimitKW(volumeL) * 3600) / heatKJ;
}
