import { millisecondsInDay as dayMs, millisecondsInHour as hourMs } from "date-fns/constants";
import type { BucketFacts } from "../../physics/slurry/bucketFacts.ts";
import type { BucketCheck } from "../../physics/slurry/bucketHealth.ts";
import { checksDue } from "../../physics/slurry/bucketHealth.ts";
import { steadiness, type Steadiness } from "../../physics/slurry/cupReading.ts";
import { checkEveryDays } from "../../trade/bucketLimits.ts";
import type { BucketAim } from "./bucketAim.ts";
import type { BucketSegment } from "./bucketChart.ts";
import type { OwnBucketLimits } from "../entries/bucketLimitRules.ts";
import { countedBucketLimits } from "./bucketLimits.ts";
import { lastChangeAt } from "./bucketLedger.ts";
import type { ReadingStanding } from "./bucketReading.ts";
import type { Bucket, BucketReading } from "../piece/piece.ts";

/** A reading serves for a session: so long, h, it counts as "today" wherever the clock stands (judgement). */
const checkHoldsH = 12;
/** A bucket settles so soon after it was made, or added to; later, three readings tell of use (judgement). */
const madeSettlesMs = 4 * dayMs;
const addedSettlesMs = dayMs;

export type BucketMixing = {
  /** Hours since it was made or added to, of whichever asks for the longest wait still. */
  readonly hours: number;
  readonly neededH: number;
  readonly because: "made" | "flour-added" | "water-added";
};

/** Null where nobody told when it was made. */
export function bucketMixing(
  { mixes, tops, use }: Bucket,
  { now, own }: { readonly now: number; readonly own: OwnBucketLimits | undefined },
): BucketMixing | null {
  const { primeMadeH, backupMadeH, flourAddedH, waterAddedH } = countedBucketLimits(own);
  const mix = mixes.at(-1);
  const hoursSince = (at: number): number => (now - at) / hourMs;
  const made = use === "prime" || use === "single" ? primeMadeH : backupMadeH;
  const waits: readonly BucketMixing[] = [
    ...(mix ? [{ hours: hoursSince(mix.at), neededH: made, because: "made" } as const] : []),
    ...tops
      .filter(({ at }) => mix === undefined || at > mix.at)
      .map(({ at, flourKg }) => {
        const [neededH, because] =
          flourKg > 0 ? ([flourAddedH, "flour-added"] as const) : ([waterAddedH, "water-added"] as const);
        return { hours: hoursSince(at), neededH, because };
      }),
  ];
  const left = ({ hours, neededH }: BucketMixing): number => neededH - hours;
  return waits.reduce<BucketMixing | null>(
    (longest, wait) => (longest !== null && left(longest) >= left(wait) ? longest : wait),
    null,
  );
}

/**
 * Whether it has settled since it was made or added to; nothing is said of one that was left alone for longer. Each
 * cup speaks for itself: the one read last that has three readings, else the one read last.
 */
export function bucketSteadiness(
  bucket: Bucket,
  { readings, now }: { readonly readings: readonly ReadingStanding[]; readonly now: number },
): Steadiness {
  const since = lastChangeAt(bucket);
  const settlesMs = since === bucket.mixes.at(-1)?.at ? madeSettlesMs : addedSettlesMs;
  const isSettling = since !== null && now - since <= settlesMs;
  const byCup = new Map<string | null, { hours: number; seconds: number }[]>();
  for (const { at, cup, seconds } of (isSettling ? readings : []).toReversed()) {
    if (seconds === null || since === null || at < since) continue;
    const key = cup?.key ?? null;
    const known = byCup.get(key) ?? [];
    byCup.set(key, known);
    known.push({ hours: at / hourMs, seconds: seconds.atReferenceS ?? seconds.seconds });
  }
  const told = [...byCup.values()].map((of) => steadiness(of));
  return told.find(({ steady }) => steady !== null) ?? told[0] ?? steadiness([]);
}

type Known = {
  readonly bucket: Bucket;
  readonly aim: BucketAim;
  readonly readings: readonly ReadingStanding[];
  readonly segments: readonly BucketSegment[];
  readonly mixing: BucketMixing | null;
  readonly steady: boolean | null;
  readonly startSilica: number | null;
  readonly ageDays: number | null;
  readonly weeklyShare: number | null;
  readonly now: number;
};

/** What is known at `now`. Seconds, density and temperature count from the last addition on, all else from the batch on. */
export function bucketFacts(known: Known): BucketFacts {
  const { bucket, aim, readings, now } = known;
  const madeAt = bucket.mixes.at(-1)?.at ?? Number.NEGATIVE_INFINITY;
  const changedAt = lastChangeAt(bucket) ?? madeAt;
  const sessionAt = now - checkHoldsH * hourMs;
  const ofBatch = readings.filter(({ at }) => at >= madeAt);
  const sinceChange = readings.filter(({ at }) => at >= changedAt);
  const today = sinceChange.filter(({ at }) => at > sessionAt);
  const timed = sinceChange.findLast(({ seconds }) => seconds !== null) ?? null;
  const slurryC = lastTold(today, ({ reading }) => reading.slurryC);
  const plates = ofBatch.flatMap(({ plateKgM2 }) => (plateKgM2 === null ? [] : [plateKgM2]));
  return {
    checkedToday: today.some(({ seconds }) => seconds !== null),
    slurryC,
    ownC: aim.slurryC?.value ?? null,
    seconds: comparableSeconds(timed, aim),
    bandS: aim.bandS,
    chartRules: rulesOf(known.segments, timed),
    densityGCm3: lastTold(sinceChange, ({ density }) => density?.densityGCm3),
    targetGCm3: aim.densityGCm3?.value ?? null,
    pH: lastTold(ofBatch, ({ reading }) => reading.pH),
    pHDropWeek: pHDropWeek(ofBatch),
    liquorSilica: lastTold(sinceChange, ({ silica }) => silica),
    startSilica: known.startSilica ?? aim.solSilica.value,
    gel: lastTold(ofBatch, ({ reading }) => gelOf(reading)),
    plateKgM2: plates.at(-1) ?? null,
    ownPlateKgM2: plates.length < 4 ? null : mean(plates.slice(0, -1)),
    bacteriaPerMl: lastTold(ofBatch, ({ reading }) => reading.bacteriaPerMl),
    seen: seenIn(ofBatch),
    ageDays: known.ageDays,
    weeklyShare: known.weeklyShare,
    mixed: known.mixing,
    steady: known.steady,
  };
}

/** Seconds told in the band's own kind of cup; another kind says nothing of the band. */
function comparableSeconds(timed: ReadingStanding | null, { cup }: BucketAim): number | null {
  if (timed?.seconds == null) return null;
  const other =
    cup !== null && timed.cup !== null && timed.cup.key !== cup.key && timed.cup.kind !== cup.kind;
  return other ? null : (timed.seconds.atReferenceS ?? timed.seconds.seconds);
}

function rulesOf(segments: readonly BucketSegment[], timed: ReadingStanding | null): readonly number[] {
  const last = segments.at(-1);
  const index = (last?.charted.length ?? 0) - 1;
  if (timed === null || last?.charted[index]?.id !== timed.reading.id) return [];
  return (last.chart?.signals ?? []).filter((signal) => signal.index === index).map(({ rule }) => rule);
}

/** How far pH sank from the oldest to the newest of the last eight days' readings; null with one, or all of one day. */
function pHDropWeek(readings: readonly ReadingStanding[]): number | null {
  const told = readings.flatMap(({ at, reading: { pH } }) => (pH === undefined ? [] : [{ at, pH }]));
  const last = told.at(-1);
  if (last === undefined) return null;
  const first = told.find(({ at }) => at >= last.at - 8 * dayMs);
  return first === undefined || last.at - first.at < dayMs / 2 ? null : first.pH - last.pH;
}

function gelOf({ gelledAfterH, liquidForH }: BucketReading): BucketFacts["gel"] {
  if (gelledAfterH !== undefined) return { hours: gelledAfterH, gelled: true };
  return liquidForH === undefined ? null : { hours: liquidForH, gelled: false };
}

/** Each sign as it was last told of: smell stays until it is smelt to be gone. */
function seenIn(readings: readonly ReadingStanding[]): BucketFacts["seen"] {
  const told = (of: (reading: BucketReading) => boolean | undefined): boolean =>
    lastTold(readings, ({ reading }) => of(reading)) ?? false;
  const signs = [
    ["foul-smell", ({ smell }: BucketReading) => (smell === undefined ? undefined : smell === "foul")],
    ["skin", ({ skin }: BucketReading) => skin],
    ["lumps", ({ lumps }: BucketReading) => lumps],
    ["foam", ({ foam }: BucketReading) => foam],
  ] as const;
  return signs.filter(([, of]) => told(of)).map(([sign]) => sign);
}

/** Checks that are due by the starting intervals. Bacteria are asked for only in a bucket where they were looked for once. */
export function bucketChecksDue(readings: readonly ReadingStanding[], now: number): readonly BucketCheck[] {
  const since = (has: (standing: ReadingStanding) => boolean): number | null => {
    const at = readings.findLast(has)?.at;
    return at === undefined ? null : (now - at) / dayMs;
  };
  const hasRead = (key: keyof BucketReading): number | null =>
    since(({ reading }) => reading[key] !== undefined);
  // A check a session is done once it was done within the session.
  const session = (days: number | null): number | null =>
    days !== null && days * 24 < checkHoldsH ? 0 : days;
  return checksDue({
    daysSince: {
      temperature: session(hasRead("slurryC")),
      seconds: session(since(({ seconds }) => seconds !== null)),
      density: session(since(({ density }) => density !== null)),
      pH: hasRead("pH"),
      liquor: hasRead("liquorGCm3"),
      gel: since(({ reading }) => gelOf(reading) !== null),
      plate: since(({ plateKgM2 }) => plateKgM2 !== null),
      bacteria: hasRead("bacteriaPerMl"),
      look: session(
        since(({ reading: { smell, skin, lumps, foam } }) =>
          [smell, skin, lumps, foam].some((told) => told !== undefined),
        ),
      ),
    },
    everyDays: { ...checkEveryDays, temperature: 0.5, seconds: 0.5, density: 0.5, look: 0.5 },
    polymer: readings.some(({ reading }) => reading.bacteriaPerMl !== undefined),
  });
}

function lastTold<T>(
  readings: readonly ReadingStanding[],
  of: (standing: ReadingStanding) => T | null | undefined,
): T | null {
  for (const standing of readings.toReversed()) {
    const told = of(standing);
    if (told !== null && told !== undefined) return told;
  }
  return null;
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
