import { millisecondsInDay as dayMs, millisecondsInWeek as weekMs } from "date-fns/constants";
import type { BucketFacts } from "../../physics/slurry/bucketFacts.ts";
import type { BucketCheck, BucketHealth } from "../../physics/slurry/bucketHealth.ts";
import { bucketHealth } from "../../physics/slurry/bucketHealth.ts";
import type { Steadiness } from "../../physics/slurry/cupReading.ts";
import { learnedLoss, type TopUp } from "../../physics/air/evaporation.ts";
import { firstMakeLeft } from "../../physics/slurry/stock.ts";
import { afterAddition, bucketAdvice, type AfterAddition, type BucketAdvice } from "./bucketAdvice.ts";
import { bucketAim, type BucketAim } from "./bucketAim.ts";
import { bucketSegments, type BucketSegment } from "./bucketChart.ts";
import {
  bucketChecksDue,
  bucketFacts,
  bucketMixing,
  bucketSteadiness,
  type BucketMixing,
} from "./bucketChecks.ts";
import { bucketLedger, type BucketLedger, type DipOut } from "./bucketLedger.ts";
import { bucketReading, type ReadingStanding } from "./bucketReading.ts";
import { bucketUpTo } from "./bucketUpTo.ts";
import { soundBucket } from "./soundBucket.ts";
import type { Bucket, Shop } from "../piece/piece.ts";

/** What is in it, L, and how that is known: what was written down, the last count, or its full mark. */
export type BucketVolume = { readonly volumeL: number; readonly basis: "ledger" | "counted" | "full" };

export type BucketTurnover = {
  /** Share of it used and replaced a week, since it was made. */
  readonly weeklyShare: number;
  /** Share of the first make still in it. */
  readonly firstMakeLeft: number;
};

/** Where one bucket stands at `now`: its log, its targets and the shop's cups put together. Rules read this, pages show it. */
export type BucketStanding = {
  readonly bucket: Bucket;
  readonly now: number;
  readonly aim: BucketAim;
  /** Oldest first. */
  readonly readings: readonly ReadingStanding[];
  readonly last: ReadingStanding | null;
  readonly segments: readonly BucketSegment[];
  readonly ledger: BucketLedger | null;
  readonly volume: BucketVolume | null;
  readonly learned: {
    readonly lidOn: ReturnType<typeof learnedLoss>;
    readonly lidOff: ReturnType<typeof learnedLoss>;
  };
  readonly facts: BucketFacts;
  readonly health: BucketHealth;
  /** Nothing was ever told of it, targets, readings or makings: a newcomer's bucket. */
  readonly isUntold: boolean;
  readonly mixing: BucketMixing | null;
  readonly steadiness: Steadiness;
  readonly madeAt: number | null;
  readonly ageDays: number | null;
  /** Null within its first week, and where its volume isn't known. */
  readonly turnover: BucketTurnover | null;
  readonly checksDue: readonly BucketCheck[];
  readonly advice: BucketAdvice;
  readonly afterAddition: AfterAddition | null;
};

/**
 * A bucket at `now`, epoch ms. `dips` is the slurry that went out on pieces, where it is known. Total: figures no
 * bucket could have are left out of the sums. Targets are those last set, whenever that was.
 */
export function bucketStandingOf(
  whole: Bucket,
  shop: Pick<Shop, "cups" | "bucketLimits">,
  now: number,
  dips: readonly DipOut[] = [],
): BucketStanding {
  const bucket = soundBucket(bucketUpTo(whole, now));
  const aim = bucketAim(bucket, shop);
  const readings = bucket.readings.map((reading) => bucketReading(reading, { aim, shop }));
  const segments = bucketSegments(bucket, readings);
  const ledger = bucketLedger(bucket, { aim, readings, dips: dips.filter(({ at }) => at <= now) });
  const volume = volumeOf(bucket, ledger);
  const madeAt = bucket.mixes.at(-1)?.at ?? null;
  const ageDays = madeAt === null ? null : (now - madeAt) / dayMs;
  const turnover = turnoverOf(bucket, { volume, now });
  const mixing = bucketMixing(bucket, { now, own: shop.bucketLimits });
  const steadiness = bucketSteadiness(bucket, { readings, now });
  const facts = bucketFacts({
    bucket,
    aim,
    readings,
    segments,
    mixing,
    steady: steadiness.steady,
    startSilica: ledger?.startSilica ?? null,
    ageDays,
    weeklyShare: turnover?.weeklyShare ?? null,
    now,
  });
  const topUps = topUpsOf(bucket);
  return {
    bucket,
    now,
    aim,
    readings,
    last: readings.at(-1) ?? null,
    segments,
    ledger,
    volume,
    learned: { lidOn: learnedLoss({ topUps, lid: "on" }), lidOff: learnedLoss({ topUps, lid: "off" }) },
    facts,
    health: bucketHealth(facts, aim.limits),
    isUntold:
      Object.values(bucket.targets).every((target) => target === undefined) &&
      bucket.readings.length + bucket.mixes.length + bucket.tops.length === 0,
    mixing,
    steadiness,
    madeAt,
    ageDays,
    turnover,
    checksDue: bucketChecksDue(readings, now),
    advice: bucketAdvice({ bucket, aim, readings, ledger, volumeL: volume?.volumeL ?? null }),
    afterAddition: afterAddition(bucket, { readings, aim }),
  };
}

function volumeOf({ mixes, counts, targets }: Bucket, ledger: BucketLedger | null): BucketVolume | null {
  // What has dried off since does not fill the bucket any more.
  if (ledger !== null)
    return { volumeL: Math.max(0, ledger.volumeL - (ledger.waterLostKg ?? 0)), basis: "ledger" };
  const madeAt = mixes.at(-1)?.at ?? Number.NEGATIVE_INFINITY;
  const count = counts.findLast(({ at }) => at >= madeAt);
  if (count !== undefined) return { volumeL: count.litre, basis: "counted" };
  return targets.fullL === undefined ? null : { volumeL: targets.fullL, basis: "full" };
}

/** What was put in anew since it was made, over what it holds: what goes out is put back sooner or later (judgement). */
function turnoverOf(
  { mixes, tops }: Bucket,
  { volume, now }: { readonly volume: BucketVolume | null; readonly now: number },
): BucketTurnover | null {
  const madeAt = mixes.at(-1)?.at;
  if (madeAt === undefined || volume === null || volume.volumeL <= 0 || now - madeAt < weekMs) return null;
  const weeks = (now - madeAt) / weekMs;
  const freshKg = tops
    .filter(({ at, why }) => at > madeAt && why !== "evaporation")
    .reduce((sum, { flourKg, solKg }) => sum + flourKg + solKg, 0);
  const wholeKg = tops.length === 0 ? 1 : massIn(mixes.at(-1), volume.volumeL);
  const weeklyShare = Math.min(1, freshKg / wholeKg / weeks);
  return { weeklyShare, firstMakeLeft: firstMakeLeft({ weeklyShare, weeks }) };
}

/** kg in the bucket: as it was made, by litres where both are told. */
function massIn(mix: Bucket["mixes"][number] | undefined, volumeL: number): number {
  if (mix === undefined) return volumeL;
  const madeKg = mix.flourKg + mix.solKg + mix.waterKg;
  return mix.litre !== undefined && mix.litre > 0 ? (madeKg / mix.litre) * volumeL : madeKg;
}

/** Water made up for evaporation, over the days since it was last made or added to. */
function topUpsOf({ mixes, tops }: Bucket): readonly TopUp[] {
  const changes = [...mixes, ...tops].map(({ at }) => at);
  return tops.flatMap(({ at, why, waterKg, lid }) => {
    const before = changes.filter((time) => time < at);
    if (why !== "evaporation" || lid === undefined || before.length === 0) return [];
    return [{ waterL: waterKg, days: (at - Math.max(...before)) / dayMs, lid }];
  });
}
