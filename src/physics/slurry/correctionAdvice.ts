import { predictAfter } from "./correctionPredicted.ts";
import type { Predicted } from "./correctionPredicted.ts";
import type { Composition } from "./bucketMix.ts";
import { restore } from "./bucketMix.ts";
import { requirePositive, requireWithin } from "../stats/range.ts";
import { flourToLift, makeUpWaterL } from "./slurry.ts";
import { requireDensity, requireVolume } from "./sol.ts";
import { alongsideK, secondsAtReference } from "./waterViscosity.ts";

/** What was read, and what this bucket should read. */
export type CorrectionCase = {
  readonly cup: string;
  readonly seconds: number;
  readonly slurryC: number;
  readonly referenceC: number;
  /** Target band of the seconds at the reference temperature. */
  readonly bandS: { readonly lowS: number; readonly highS: number };
  /** Null where it was not weighed. */
  readonly densityGCm3: number | null;
  readonly target: { readonly densityGCm3: number; readonly plusMinusGCm3: number };
  readonly volumeL: number;
  readonly flourGCm3: number;
  /** Density of the liquid as it was made up: the sol's. */
  readonly liquidGCm3: number;
  /** The bucket's running composition with the start it should go back to; null where none was kept. */
  readonly composition: {
    readonly now: Composition;
    readonly ratio: number;
    readonly startSilica: number;
    readonly addedSilica: number;
  } | null;
  /** Stirred up and read again since the last doubtful reading. */
  readonly stirred: boolean;
};

/** One thing to do, in order. Amounts are to be added in halves and read again; never a base or a biocide: that is the binder maker's to say. */
export type CorrectionStep =
  | {
      readonly code: "bring-to-temperature";
      readonly slurryC: number;
      readonly referenceC: number;
      readonly secondsThere: number;
    }
  | { readonly code: "weigh-density" }
  | { readonly code: "leave-alone" }
  | {
      readonly code: "add-water";
      readonly waterL: number;
      readonly newVolumeL: number;
      readonly predicted: Predicted;
    }
  | { readonly code: "do-not-thin" }
  | { readonly code: "gel-test" }
  | { readonly code: "clean-and-check-cup" }
  | { readonly code: "stir-and-read-again" }
  | { readonly code: "let-air-out-and-weigh-again" }
  | { readonly code: "weigh-liquor" }
  | { readonly code: "let-water-dry-off"; readonly surplusWaterKg: number }
  | {
      readonly code: "add-flour-and-binder";
      readonly flourKg: number;
      /** Null where no composition was kept: the liquor's silica tells how much binder. */
      readonly solKg: number | null;
      readonly waterKg: number;
      readonly predicted: Predicted | null;
    };

export type Reading = "low" | "right" | "high";

export type CorrectionPlan =
  | {
      readonly ok: true;
      /** Seconds at the reference temperature against the band, density against the target; null unweighed. */
      readonly seconds: Reading;
      readonly density: Reading | null;
      readonly advice: readonly CorrectionStep[];
    }
  | Extract<ReturnType<typeof secondsAtReference>, { readonly ok: false }>;

/**
 * What to do at the bucket, in the order temperature, density, viscosity (common practice; the order's logic derived).
 *
 * Thick and dense: water was lost. Thick at the right density: not water, so don't thin it; gel test. Thin and
 * light: over-watered or settled. Light but not thin: air, or gelling. A reading off the reference by more than
 * 2 K is judged by what it would read there, and comes with the advice to bring it there.
 */
export function correctionAdvice(from: CorrectionCase): CorrectionPlan {
  requireCase(from);
  const there = secondsAtReference(from);
  if (!there.ok) return there;
  const seconds = against(there.seconds, from.bandS);
  const { densityGCm3: target, plusMinusGCm3 } = from.target;
  const density =
    from.densityGCm3 === null
      ? null
      : against(from.densityGCm3, { lowS: target - plusMinusGCm3, highS: target + plusMinusGCm3 });
  const off = Math.abs(from.slurryC - from.referenceC) > alongsideK + 1e-9;
  const { slurryC, referenceC } = from;
  const warm: readonly CorrectionStep[] = off
    ? [{ code: "bring-to-temperature", slurryC, referenceC, secondsThere: there.seconds }]
    : [];
  return { ok: true, seconds, density, advice: [...warm, ...steps({ from, seconds, density, there })] };
}

function steps({
  from,
  seconds,
  density,
  there,
}: {
  from: CorrectionCase;
  seconds: Reading;
  density: Reading | null;
  there: { readonly viscosityMm2S: number };
}): readonly CorrectionStep[] {
  if (density === null || from.densityGCm3 === null)
    return [{ code: seconds === "right" ? "leave-alone" : "weigh-density" }];
  const densityGCm3 = from.densityGCm3;
  switch (density) {
    case "high":
      // Dense yet thin contradicts itself: fallen stucco, or a wrong reading.
      if (seconds === "low") return [{ code: "stir-and-read-again" }, { code: "clean-and-check-cup" }];
      return [
        ...waterFor({ from, densityGCm3, viscosityMm2S: there.viscosityMm2S }),
        // Dense but no thicker: water is one cause, flour or fallen stucco another; the liquor tells them apart.
        ...(seconds === "right" ? [{ code: "weigh-liquor" } as const] : []),
      ];
    case "right":
      if (seconds === "right") return [{ code: "leave-alone" }];
      if (seconds === "low") return [{ code: "clean-and-check-cup" }];
      return [{ code: "do-not-thin" }, { code: "gel-test" }];
    case "low":
      if (seconds !== "low")
        return [
          { code: "let-air-out-and-weigh-again" },
          ...(seconds === "high" ? [{ code: "do-not-thin" } as const] : []),
          { code: "gel-test" },
        ];
      if (!from.stirred) return [{ code: "stir-and-read-again" }];
      return flourFor({ from, densityGCm3, viscosityMm2S: there.viscosityMm2S });
  }
}

type Amounts = { from: CorrectionCase; densityGCm3: number; viscosityMm2S: number };

function waterFor({ from, densityGCm3, viscosityMm2S }: Amounts): readonly CorrectionStep[] {
  const targetGCm3 = from.target.densityGCm3;
  const water = makeUpWaterL({ volumeL: from.volumeL, densityGCm3, targetGCm3 });
  if (!water.ok) return [];
  const { waterL, newVolumeL } = water;
  const added = { flourKg: 0, otherKg: water.waterKg, newVolumeL };
  const predicted = predictAfter({ ...from, densityGCm3, viscosityMm2S, added });
  return [{ code: "add-water", waterL, newVolumeL, predicted }];
}

function flourFor({ from, densityGCm3, viscosityMm2S }: Amounts): readonly CorrectionStep[] {
  if (from.composition !== null) {
    const back = restore(from.composition);
    if (!back.ok) return [{ code: "let-water-dry-off", surplusWaterKg: back.surplusWaterKg }];
    const { flourKg, solKg, waterKg } = back;
    return [{ code: "add-flour-and-binder", flourKg, solKg, waterKg, predicted: null }];
  }
  const targetGCm3 = from.target.densityGCm3;
  const flour = flourToLift({ ...from, densityGCm3, targetGCm3 });
  if (!flour.ok) return [{ code: "weigh-liquor" }];
  const { flourKg, newVolumeL } = flour;
  const added = { flourKg, otherKg: 0, newVolumeL };
  const predicted = predictAfter({ ...from, densityGCm3, viscosityMm2S, added });
  return [
    { code: "weigh-liquor" },
    { code: "add-flour-and-binder", flourKg, solKg: null, waterKg: 0, predicted },
  ];
}

function against(value: number, { lowS, highS }: { lowS: number; highS: number }): Reading {
  const slack = 1e-9 * Math.abs(value);
  if (value < lowS - slack) return "low";
  return value > highS + slack ? "high" : "right";
}

function requireCase({ bandS, target, volumeL, flourGCm3, liquidGCm3, densityGCm3 }: CorrectionCase): void {
  requirePositive("lowS", bandS.lowS, { high: bandS.highS, unit: "s" });
  requirePositive("plusMinusGCm3", target.plusMinusGCm3, { high: 1, unit: "g/cm³" });
  requireDensity("target", target.densityGCm3);
  requireDensity("flourGCm3", flourGCm3);
  requireDensity("liquidGCm3", liquidGCm3);
  if (densityGCm3 !== null) requireDensity("densityGCm3", densityGCm3);
  requireWithin("highS", bandS.highS, { low: bandS.lowS, high: 3600, unit: "s" });
  requireVolume(volumeL);
}
