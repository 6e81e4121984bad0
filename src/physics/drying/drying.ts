import { saturationDeficitGM3 } from "../air/air.ts";
import type { Coat } from "./coat.ts";
import { readyWaterKgM2, requireCoat } from "./coat.ts";
import type { DryingInterval, DryStep } from "./dryStep.ts";
import { dryStep, frostC, tooDampRh, waterAfterStep } from "./dryStep.ts";
import type { MovingAir } from "../air/film.ts";
import { meanResistances, resistances } from "../air/film.ts";
import { doseBetween } from "./front.ts";
import { requirePositive } from "../stats/range.ts";

/** kg·s/m³ to the g·h/m³ that is shown. */
const shownDose = (dose: number): number => (dose * 1000) / 3600;

export type DryingResult = {
  /** Water at the end of the intervals, kg/m². */
  readonly waterKgM2: number;
  /** Time from which the coat stays ready to the end of the intervals, s; null where it is not. */
  readonly readyAfterS: number | null;
  /** Why not ready: what the last air does. "history-ends": it was drying, and would go on. */
  readonly reason: null | "air-too-damp" | "condensing" | "frost" | "history-ends";
  /** ∫Δρ dt of the room's air up to ready or to the end, g·h/m³. */
  readonly doseSuppliedGHM3: number;
  /**
   * The dose from the starting water to ready, g·h/m³, at resistances averaged with the supplied dose as
   * weight, times the resistance factor; null where no air was given. Equals the supplied one at ready in
   * constant air, and is near it in a changing one.
   */
  readonly doseNeededGHM3: number | null;
  /** Water settled, or the air took none, in some interval before ready or the end. */
  readonly condensed: boolean;
  /** The water at the end of each interval. */
  readonly points: readonly { readonly afterS: number; readonly waterKgM2: number }[];
};

/**
 * Hours until a coat is ready in constant air, >= 0, or null where it never will be: rh above 0.80, or a wet
 * surface below 1 °C, where the sol freezes.
 *
 * Series resistances with a receding front (see `front.ts`); within 2 % of a full
 * numerical solution in shop air. The
 * figures that go in leave the absolute time uncertain by a factor of about 1.45: show a range.
 */
export function dryingHours(from: Coat & MovingAir & { readonly pocketSM: number }): number | null {
  requireCoat(from);
  const parts = resistances(from);
  const deficitKgM3 = saturationDeficitGM3(from) / 1000;
  if (from.rh > tooDampRh || deficitKgM3 <= 0 || parts.wetSurfaceC < frostC) return null;
  const dose = doseBetween({ fromKgM2: from.waterKgM2, toKgM2: readyWaterKgM2(from) }, from, parts);
  return dose / deficitKgM3 / 3600;
}

/**
 * Walks a coat through a history of air: exact in each interval, so splitting one changes nothing.
 *
 * `resistanceFactor` is the shop's own factor on time (1 = none): every deficit is divided by it. Too damp air
 * still takes water, down to its last tenth, but readiness is called only in an interval at or under 80 %.
 * Water that settles again goes back into the pores (see `front.ts`) and takes a readiness back if it lifts
 * the coat over its mark. A coat that froze while wet is never ready after it. No air at all judges nothing: not
 * ready, "history-ends".
 */
export function dryThrough({
  coat,
  filmWM2K,
  pocketSM,
  intervals,
  resistanceFactor = 1,
}: {
  readonly coat: Coat;
  readonly filmWM2K: number;
  readonly pocketSM: number;
  readonly intervals: readonly DryingInterval[];
  readonly resistanceFactor?: number | undefined;
}): DryingResult {
  requireCoat(coat);
  requirePositive("resistanceFactor", resistanceFactor, { high: 10_000, unit: "" });
  const readyKgM2 = readyWaterKgM2(coat);
  const points: { afterS: number; waterKgM2: number }[] = [];
  const steps: DryStep[] = [];
  let waterKgM2 = coat.waterKgM2;
  let afterS = 0;
  let isFrozen = false;
  let ready: { afterS: number; upTo: readonly DryStep[] } | null = null;
  for (const interval of intervals) {
    const step = dryStep(interval, { filmWM2K, pocketSM });
    const endKgM2 = waterAfterStep(step, { coat, waterKgM2, resistanceFactor });
    if (endKgM2 > waterKgM2 && endKgM2 > readyKgM2) ready = null;
    if (step.says === "frost" && step.durationS > 0 && ready === null) isFrozen = true;
    if (ready === null && !isFrozen && endKgM2 <= readyKgM2 && step.says === "drying" && step.durationS > 0) {
      const dose = doseBetween({ fromKgM2: waterKgM2, toKgM2: readyKgM2 }, coat, step.parts);
      // The last digit must not put ready past the end of the interval.
      const durationS = Math.min(step.durationS, (resistanceFactor * dose) / step.deficitKgM3);
      ready = { afterS: afterS + durationS, upTo: [...steps, { ...step, durationS }] };
    }
    steps.push(step);
    waterKgM2 = endKgM2;
    afterS += step.durationS;
    points.push({ afterS, waterKgM2 });
  }
  const counted = (ready?.upTo ?? steps).filter((step) => step.durationS > 0);
  const last = steps.findLast((step) => step.durationS > 0);
  const parts = meanOver(counted);
  const range = { fromKgM2: coat.waterKgM2, toKgM2: readyKgM2 };
  return {
    waterKgM2,
    readyAfterS: ready?.afterS ?? null,
    reason: ready
      ? null
      : isFrozen
        ? "frost"
        : last === undefined || last.says === "drying"
          ? "history-ends"
          : last.says,
    doseSuppliedGHM3: shownDose(counted.reduce((sum, step) => sum + step.deficitKgM3 * step.durationS, 0)),
    doseNeededGHM3: parts && shownDose(resistanceFactor * doseBetween(range, coat, parts)),
    condensed: counted.some((step) => step.says === "condensing"),
    points,
  };
}

/** Weighted by the dose; by time as long as the air gave none. */
function meanOver(steps: readonly DryStep[]) {
  const byDose = steps.map(({ parts, deficitKgM3, durationS }) => ({
    parts,
    weight: deficitKgM3 * durationS,
  }));
  return (
    meanResistances(byDose) ??
    meanResistances(steps.map(({ parts, durationS }) => ({ parts, weight: durationS })))
  );
}
