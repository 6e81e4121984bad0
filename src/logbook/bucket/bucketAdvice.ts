import { millisecondsInDay as dayMs } from "date-fns/constants";
import type { CorrectionPlan } from "../../physics/slurry/correctionAdvice.ts";
import { correctionAdvice } from "../../physics/slurry/correctionAdvice.ts";
import type { PredictionMet } from "../../physics/slurry/correctionPredicted.ts";
import { predictionMet } from "../../physics/slurry/correctionPredicted.ts";
import type { BucketAim } from "./bucketAim.ts";
import type { BucketLedger } from "./bucketLedger.ts";
import { lastChangeAt } from "./bucketLedger.ts";
import type { ReadingStanding } from "./bucketReading.ts";
import type { Bucket, BucketTop } from "../piece/piece.ts";

/** What a correction can't be reckoned without. */
export type AdviceLack =
  | "reading"
  | "slurry-temperature"
  | "own-temperature"
  | "cup"
  | "band"
  | "density-target"
  | "flour"
  | "volume";

export type BucketAdvice =
  | { readonly ok: true; readonly correction: CorrectionPlan; readonly readingId: string }
  | { readonly ok: false; readonly missing: readonly AdviceLack[] };

/** What to do by the last reading since the bucket was made or added to. */
export function bucketAdvice({
  bucket,
  aim,
  readings,
  ledger,
  volumeL,
}: {
  readonly bucket: Bucket;
  readonly aim: BucketAim;
  readonly readings: readonly ReadingStanding[];
  readonly ledger: BucketLedger | null;
  readonly volumeL: number | null;
}): BucketAdvice {
  const changedAt = lastChangeAt(bucket) ?? Number.NEGATIVE_INFINITY;
  const fresh = readings.filter(({ at, seconds }) => at >= changedAt && seconds !== null);
  const last = fresh.at(-1);
  if (last?.seconds == null) return { ok: false, missing: ["reading"] };
  const { slurryC } = last.reading;
  const kind = last.cup?.kind ?? null;
  const isSameKind = aim.cup === null || aim.cup.kind === kind;
  const lacks: Readonly<Record<Exclude<AdviceLack, "reading">, boolean>> = {
    "slurry-temperature": slurryC === undefined || slurryC < 5 || slurryC > 40,
    "own-temperature": aim.slurryC === null,
    cup: kind === null || !isSameKind,
    band: aim.bandS === null,
    "density-target": aim.densityGCm3 === null,
    flour: aim.flourGCm3 === null,
    volume: volumeL === null || volumeL <= 0,
  };
  const missing = (Object.keys(lacks) as (keyof typeof lacks)[]).filter((lack) => lacks[lack]);
  if (
    missing.length > 0 ||
    slurryC === undefined ||
    kind === null ||
    aim.slurryC === null ||
    aim.bandS === null ||
    aim.densityGCm3 === null ||
    aim.flourGCm3 === null ||
    volumeL === null
  )
    return { ok: false, missing };
  const densityGCm3 =
    fresh.findLast(({ at, density }) => density !== null && at > last.at - dayMs / 2)?.density?.densityGCm3 ??
    null;
  const startSilica = ledger?.startSilica ?? 0;
  const canRestore =
    ledger !== null && aim.ratio !== null && startSilica >= 0.02 && aim.solSilica.value >= 0.02;
  const correction = correctionAdvice({
    cup: kind,
    seconds: last.seconds.seconds,
    slurryC,
    referenceC: aim.slurryC.value,
    bandS: aim.bandS,
    densityGCm3,
    target: { densityGCm3: aim.densityGCm3.value, plusMinusGCm3: aim.limits.densityGCm3.fit },
    volumeL,
    flourGCm3: aim.flourGCm3.value,
    liquidGCm3: aim.solGCm3.value,
    composition:
      canRestore && aim.ratio !== null
        ? { now: ledger.now, ratio: aim.ratio.value, startSilica, addedSilica: aim.solSilica.value }
        : null,
    // Read twice within a day since the last addition: it was stirred in between.
    stirred: fresh.some(({ at }) => at < last.at && at > last.at - dayMs),
  });
  return { ok: true, correction, readingId: last.reading.id };
}

/** The last addition that foretold a reading, with the first reading after it and how the two agree. */
export type AfterAddition = {
  readonly top: BucketTop;
  readonly expected: { readonly densityGCm3: number | null; readonly cupS: number | null };
  /** Null until it was read again. */
  readonly read: ReadingStanding | null;
  readonly met: PredictionMet | null;
};

export function afterAddition(
  { tops }: Pick<Bucket, "tops">,
  { readings, aim }: { readonly readings: readonly ReadingStanding[]; readonly aim: BucketAim },
): AfterAddition | null {
  const top = tops.findLast(
    ({ expected }) => expected?.densityGCm3 !== undefined || expected?.cupS !== undefined,
  );
  if (top === undefined) return null;
  const { densityGCm3, cupS } = top.expected ?? {};
  const next = tops.find(({ at }) => at > top.at)?.at ?? Number.POSITIVE_INFINITY;
  const read =
    readings.find(({ at, density, seconds }) => at > top.at && at <= next && (density ?? seconds) !== null) ??
    null;
  const expected = { densityGCm3: densityGCm3 ?? null, cupS: cupS ?? null };
  if (read === null) return { top, expected, read, met: null };
  const met = predictionMet({
    predicted: {
      densityGCm3: densityGCm3 ?? 1,
      newVolumeL: 0,
      secondsBand: cupS === undefined ? null : { lowS: cupS, likelyS: cupS, highS: cupS },
    },
    densityGCm3: densityGCm3 === undefined ? null : (read.density?.densityGCm3 ?? null),
    secondsThere: read.seconds === null ? null : (read.seconds.atReferenceS ?? read.seconds.seconds),
    plusMinusGCm3: aim.limits.densityGCm3.fit,
  });
  return { top, expected, read, met };
}
