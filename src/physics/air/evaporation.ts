import { humidityRatio, saturationPressurePa, vapourPressurePa } from "./air.ts";
import { requireAirPressure, requirePositive, requireWithin } from "../stats/range.ts";
import { latentHeatJKg, moistAirDensityKgM3 } from "./transport.ts";

/** Room air over an open bucket: °C, fraction, Pa; and the slurry's surface, °C. */
export type OverBucket = {
  readonly airC: number;
  readonly rh: number;
  readonly pressurePa: number;
  readonly surfaceC: number;
};

/**
 * Water lost from still water under still air, kg/m²h, never below 0 (a cold surface in damp air gains).
 *
 * M. M. Shah, ASHRAE Transactions 120(2), SE-14-001 (2014), undisturbed pools (equations from memory): the larger
 * of natural convection and 5·10⁻⁵ of the pressure difference in Pa. Found within 18 % on pools of 0.07 to
 * 425 m²; a bucket of 30 cm is the smallest of them. 0–60 °C.
 */
export function stillLossKgM2H(over: OverBucket): number {
  requireOver(over);
  const { airC, rh, pressurePa, surfaceC } = over;
  const room = { tempC: airC, rh, pressurePa };
  const surface = { tempC: surfaceC, rh: 1, pressurePa };
  const lift = moistAirDensityKgM3(room) - moistAirDensityKgM3(surface);
  const ratios = humidityRatio(surface) - humidityRatio(room);
  const rising = lift > 0 ? 35 * moistAirDensityKgM3(surface) * Math.cbrt(lift) * ratios : 0;
  return Math.max(0, rising, 5e-5 * pullPa(over));
}

/**
 * Water lost under moving air, kg/m²h, never below 0: Carrier's form in the ASHRAE Handbook HVAC Applications (from
 * memory), (pw − pr)·(0.089 + 0.0782·v)/latent heat. v 0–3 m/s, 0–60 °C. Reads about three times Shah's.
 */
export function movingLossKgM2H(over: OverBucket & { readonly speedMS: number }): number {
  requireOver(over);
  requireWithin("speedMS", over.speedMS, { low: 0, high: 3, unit: "m/s" });
  const perSecond = (pullPa(over) * (0.089 + 0.0782 * over.speedMS)) / latentHeatJKg(over.surfaceC);
  return Math.max(0, 3600 * perSecond);
}

const pullPa = ({ surfaceC, airC, rh }: OverBucket): number =>
  saturationPressurePa(surfaceC) - vapourPressurePa({ tempC: airC, rh });

/** Share of the loss a lid leaves: common practice, no source. */
export const lidLeaves = 0.1;

/** First guess of a bucket's loss, L/day: still air to moving air, an order of magnitude and no more. */
export function modelLossLDay({
  areaM2,
  speedMS,
  lid,
  over,
}: {
  areaM2: number;
  speedMS: number;
  lid: "on" | "off";
  over: OverBucket;
}): { readonly lowLDay: number; readonly highLDay: number } {
  requirePositive("areaM2", areaM2, { high: 100, unit: "m²" });
  const share = (lid === "on" ? lidLeaves : 1) * 24 * areaM2;
  const still = share * stillLossKgM2H(over);
  const moving = share * movingLossKgM2H({ ...over, speedMS });
  return { lowLDay: Math.min(still, moving), highLDay: Math.max(still, moving) };
}

/** Water put back and the days it made up for, all of them with the lid on, or off. */
export type TopUp = { readonly waterL: number; readonly days: number; readonly lid: "on" | "off" };

const fewestTopUps = 3;
/** Two top-ups within a second are one. */
const leastDays = 1e-5;
const lastTopUps = 5;

/**
 * The bucket's own loss, L/day, with the lid on or off: the median of its last five top-ups (in order of time),
 * litres over days. Null below three, where only a model can guess. Top-ups of no days are skipped.
 */
export function learnedLoss({ topUps, lid }: { topUps: readonly TopUp[]; lid: "on" | "off" }): {
  readonly lossLDay: number | null;
  readonly topUps: number;
} {
  for (const { days } of topUps) requireWithin("days", days, { low: 0, high: 100_000, unit: "days" });
  const rates = topUps
    .filter((each) => each.lid === lid && each.days > leastDays)
    .slice(-lastTopUps)
    .map(({ waterL, days }) => {
      requireWithin("waterL", waterL, { low: 0, high: 10_000, unit: "L" });
      return waterL / days;
    });
  if (rates.length < fewestTopUps) return { lossLDay: null, topUps: rates.length };
  return { lossLDay: medianOf(rates), topUps: rates.length };
}

function medianOf(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  const upper = sorted[half] ?? 0;
  return sorted.length % 2 === 1 ? upper : ((sorted[half - 1] ?? upper) + upper) / 2;
}

function requireOver({ airC, surfaceC, pressurePa }: OverBucket): void {
  requireAirPressure(pressurePa);
  requireWithin("airC", airC, { low: 0, high: 60, unit: "°C" });
  requireWithin("surfaceC", surfaceC, { low: 0, high: 60, unit: "°C" });
}
