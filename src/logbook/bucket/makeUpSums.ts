import type { BucketStanding } from "./bucketStanding.ts";
import type { Makings } from "../entries/bucketBodies.ts";
import { restore, type Restoring } from "../../physics/slurry/bucketMix.ts";
import type { CorrectionStep } from "../../physics/slurry/correctionAdvice.ts";
import { predictAfter, type Predicted } from "../../physics/slurry/correctionPredicted.ts";
import { makeUpWaterL, type Correction } from "../../physics/slurry/slurry.ts";
import { secondsAtReference } from "../../physics/slurry/waterViscosity.ts";

export const nothingIn: Makings = { flourKg: 0, solKg: 0, waterKg: 0 };

/** To ten grams, as a shop's scale tells it. */
const toScale = (kg: number): number => Math.round(kg * 100) / 100;

export const makingsOf = ({ flourKg, solKg, waterKg }: Makings, share = 1): Makings => ({
  flourKg: toScale(flourKg * share),
  solKg: toScale(solKg * share),
  waterKg: toScale(waterKg * share),
});

export const massOf = ({ flourKg, solKg, waterKg }: Makings): number => flourKg + solKg + waterKg;

/** What the last reading asks to be put in; null where it asks for nothing, or for another look first. */
export function askedMakings({ advice }: Pick<BucketStanding, "advice">): Makings | null {
  if (!advice.ok || !advice.correction.ok) return null;
  const add = advice.correction.advice.find(isAddition);
  if (add === undefined) return null;
  return add.code === "add-water"
    ? makingsOf({ ...nothingIn, waterKg: add.waterL })
    : makingsOf({ flourKg: add.flourKg, solKg: add.solKg ?? 0, waterKg: add.waterKg });
}

type Addition = Extract<CorrectionStep, { readonly code: "add-water" | "add-flour-and-binder" }>;
const isAddition = (advice: CorrectionStep): advice is Addition =>
  advice.code === "add-water" || advice.code === "add-flour-and-binder";

/** The last reading since it was made or added to that told of its density, with its seconds where it told them too. */
export function freshReading({ readings, bucket }: Pick<BucketStanding, "readings" | "bucket">) {
  const changedAt = Math.max(0, ...[...bucket.mixes, ...bucket.tops].map(({ at }) => at));
  return readings.findLast(({ at, density }) => at >= changedAt && density !== null) ?? null;
}

export type WaterSum = {
  readonly volumeL: number;
  readonly densityGCm3: number;
  readonly targetGCm3: number;
  readonly water: Correction<{ readonly waterL: number; readonly waterKg: number }>;
};

/** Make-up water by the density read last; null while one of the three figures is not known. */
export function waterByDensity(standing: BucketStanding): WaterSum | null {
  const densityGCm3 = freshReading(standing)?.density?.densityGCm3;
  const targetGCm3 = standing.aim.densityGCm3?.value;
  const volumeL = standing.volume?.volumeL;
  if (densityGCm3 === undefined || targetGCm3 === undefined || volumeL === undefined || volumeL <= 0)
    return null;
  return {
    volumeL,
    densityGCm3,
    targetGCm3,
    water: makeUpWaterL({ volumeL, densityGCm3, targetGCm3 }),
  };
}

/** Back to how it was made, by what went in and out; null without a ledger or a ratio. `addedSilica`: of the sol at hand. */
export function byComposition(
  { ledger, aim }: Pick<BucketStanding, "ledger" | "aim">,
  addedSilica: number,
): Restoring | null {
  if (ledger === null || aim.ratio === null) return null;
  const { startSilica, now } = ledger;
  if (startSilica < 0.02 || addedSilica < 0.02 || addedSilica > 0.6) return null;
  return restore({ now, ratio: aim.ratio.value, startSilica, addedSilica });
}

/** What it should read after this goes in; null where neither a reading nor the ledger tells where it starts from. */
export function foretold(standing: BucketStanding, makings: Makings): Predicted | null {
  const { aim, ledger, volume } = standing;
  const flourGCm3 = aim.flourGCm3?.value;
  if (flourGCm3 === undefined || volume === null || volume.volumeL <= 0 || massOf(makings) <= 0) return null;
  const fresh = freshReading(standing);
  const held = ledger?.densityGCm3 ?? null;
  const densityGCm3 = fresh?.density?.densityGCm3 ?? held;
  if (densityGCm3 === null || densityGCm3 <= 1) return null;
  const { volumeL } = volume;
  const { flourKg, solKg, waterKg } = makings;
  const newVolumeL = volumeL + flourKg / flourGCm3 + solKg / aim.solGCm3.value + waterKg;
  const otherKg = solKg + waterKg;
  const plain = {
    densityGCm3: (volumeL * densityGCm3 + flourKg + otherKg) / newVolumeL,
    newVolumeL,
    secondsBand: null,
  };
  const kind = fresh?.cup?.kind ?? null;
  const seconds = fresh?.seconds?.seconds;
  const slurryC = fresh?.reading.slurryC;
  if (kind === null || seconds === undefined || slurryC === undefined || aim.slurryC === null) return plain;
  if (slurryC < 5 || slurryC > 40 || aim.densityGCm3 === null) return plain;
  const there = secondsAtReference({ cup: kind, seconds, slurryC, referenceC: aim.slurryC.value });
  if (!there.ok) return plain;
  return predictAfter({
    cup: kind,
    viscosityMm2S: there.viscosityMm2S,
    densityGCm3,
    volumeL,
    flourGCm3,
    liquidGCm3: aim.solGCm3.value,
    target: { densityGCm3: aim.densityGCm3.value },
    added: { flourKg, otherKg, newVolumeL },
  });
}

/** Why nothing is to be added, whatever the sums say: gelling, or right as it is, or to be stirred and read first. */
export type Hold = "do-not-thin" | "leave-alone" | "read-again";

export function holdOf({ advice }: Pick<BucketStanding, "advice">): Hold | null {
  if (!advice.ok || !advice.correction.ok) return null;
  const codes = new Set(advice.correction.advice.map(({ code }) => code));
  if (codes.has("do-not-thin") || codes.has("gel-test")) return "do-not-thin";
  if (codes.has("leave-alone")) return "leave-alone";
  return codes.has("stir-and-read-again") || codes.has("clean-and-check-cup") ? "read-again" : null;
}
