import { saturationDeficitGM3 } from "../air/air.ts";
import type { WetLayer } from "./coat.ts";
import { readyWaterKgM2 } from "./coat.ts";
import type { Air, Resistances } from "../air/film.ts";
import { condensationKgM2S, resistances } from "../air/film.ts";
import { waterAfterDose } from "./front.ts";
import { requirePositive, requireWithin } from "../stats/range.ts";

/**
 * Above this no coat is called ready: pores of 2–5 nm between sol grains keep or take back water
 * (Kelvin radius 4.8 nm at 80 %). At 80 % itself a time is still given.
 */
export const tooDampRh = 0.8;

/**
 * Below this a wet surface counts as freezing, °C: frost breaks a silica sol, and what froze wet has no strength. A
 * kelvin above 0 °C for the error of the room's sensors. Common practice, no source.
 */
export const frostC = 1;

/** In too damp air the last tenth of the critical water stays; an estimate from the same Kelvin radii. */
const heldShare = 0.1;

/**
 * A stretch of constant air. Film and pocket override those of the whole call. `surfaceC` is the shell's own
 * temperature where it is known to be cold (carried in from a shed): under the dew point water settles on it.
 */
export type DryingInterval = Air & {
  readonly durationS: number;
  readonly filmWM2K?: number | undefined;
  readonly pocketSM?: number | undefined;
  readonly surfaceC?: number | undefined;
};

/** What one stretch of air does to any coat: its pull, the water it lays down, what it says of readiness. */
export type DryStep = {
  readonly durationS: number;
  readonly deficitKgM3: number;
  readonly settlingKgM2S: number;
  readonly parts: Resistances;
  readonly says: "drying" | "air-too-damp" | "condensing" | "frost";
};

/** Reads one stretch of air; refuses a negative duration and air out of range. */
export function dryStep(interval: DryingInterval, whole: { filmWM2K: number; pocketSM: number }): DryStep {
  requireWithin("durationS", interval.durationS, { low: 0, high: 1e10, unit: "s" });
  const air = {
    tempC: interval.tempC,
    rh: interval.rh,
    pressurePa: interval.pressurePa,
    filmWM2K: interval.filmWM2K ?? whole.filmWM2K,
    pocketSM: interval.pocketSM ?? whole.pocketSM,
  };
  const { surfaceC } = interval;
  const settlingKgM2S = surfaceC === undefined ? 0 : Math.max(0, condensationKgM2S({ ...air, surfaceC }));
  // On a surface under the dew point nothing dries, whatever the room's deficit.
  const deficitKgM3 = settlingKgM2S > 0 ? 0 : saturationDeficitGM3(air) / 1000;
  const parts = resistances(air);
  const coldestC = Math.min(parts.wetSurfaceC, surfaceC ?? Infinity);
  return {
    durationS: interval.durationS,
    deficitKgM3,
    settlingKgM2S,
    parts,
    says:
      coldestC < frostC
        ? "frost"
        : deficitKgM3 <= 0
          ? "condensing"
          : air.rh > tooDampRh
            ? "air-too-damp"
            : "drying",
  };
}

/** Water of the coat at the end of one stretch, kg/m². */
export function waterAfterStep(
  step: DryStep,
  { coat, waterKgM2, resistanceFactor }: { coat: WetLayer; waterKgM2: number; resistanceFactor: number },
): number {
  requireWithin("waterKgM2", waterKgM2, { low: 0, high: 1e15, unit: "kg/m²" });
  // Frozen or not, on a surface under the dew point water settles.
  if (step.deficitKgM3 <= 0) return waterKgM2 + step.settlingKgM2S * step.durationS;
  const held = Math.max(readyWaterKgM2(coat), heldShare * coat.criticalKgM2);
  requirePositive("resistanceFactor", resistanceFactor, { high: 1e6, unit: "" });
  const dose = (step.deficitKgM3 * step.durationS) / resistanceFactor;
  const floorKgM2 = step.says === "air-too-damp" ? held : 0;
  return waterAfterDose({ waterKgM2, dose, floorKgM2 }, coat, step.parts);
}
