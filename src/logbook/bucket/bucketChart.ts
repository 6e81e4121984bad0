import type { IndividualsChart } from "../../physics/slurry/controlChart.ts";
import { individualsChart } from "../../physics/slurry/controlChart.ts";
import type { BucketCup } from "./bucketCups.ts";
import type { ReadingStanding } from "./bucketReading.ts";
import type { Bucket } from "../piece/piece.ts";

/** Seconds as found. A hollow one was read too far from the bucket's temperature: it is shown as it would read there, and not charted. */
export type ChartPoint = {
  readonly id: string;
  readonly at: number;
  readonly seconds: number;
  readonly hollow: boolean;
  /** Topped up since the point before it. */
  readonly afterCorrection: boolean;
};

/** One batch read with one cup: limits of its own. */
export type BucketSegment = {
  readonly because: "first" | "new-batch" | "other-cup";
  readonly cup: BucketCup | null;
  /** All of its readings, hollow ones among them. */
  readonly points: readonly ChartPoint[];
  /** Those the chart's indexes count. */
  readonly charted: readonly ChartPoint[];
  /** Null below two charted readings. */
  readonly chart: IndividualsChart | null;
};

type Found = { readonly standing: ReadingStanding; readonly seconds: number; readonly hollow: boolean };

/** As-found readings in order, broken at each new batch and each change of cup. */
export function bucketSegments(
  { mixes, tops }: Pick<Bucket, "mixes" | "tops">,
  readings: readonly ReadingStanding[],
): readonly BucketSegment[] {
  const runs: { because: BucketSegment["because"]; found: Found[] }[] = [];
  let before: ReadingStanding | null = null;
  for (const standing of readings) {
    const { seconds, reading, at, cup } = standing;
    if (seconds === null || reading.asLeft === true) continue;
    const isNewBatch = before !== null && between(mixes, before.at, at);
    const isOtherCup = before !== null && before.cup?.key !== cup?.key;
    const found = {
      standing,
      hollow: seconds.hollow,
      seconds: seconds.hollow && seconds.atReferenceS !== null ? seconds.atReferenceS : seconds.seconds,
    };
    const run = runs.at(-1);
    if (run === undefined || isNewBatch || isOtherCup) {
      const because = before === null ? "first" : isNewBatch ? "new-batch" : "other-cup";
      runs.push({ because, found: [found] });
    } else run.found.push(found);
    before = standing;
  }
  return runs.map(({ because, found }) => segmentOf({ because, found, tops }));
}

function segmentOf({
  because,
  found,
  tops,
}: {
  readonly because: BucketSegment["because"];
  readonly found: readonly Found[];
  readonly tops: Bucket["tops"];
}): BucketSegment {
  const points = found.map(({ standing: { reading, at }, seconds, hollow }, i) => {
    const last = found[i - 1]?.standing.at;
    return {
      id: reading.id,
      at,
      seconds,
      hollow,
      afterCorrection: last !== undefined && between(tops, last, at),
    };
  });
  const charted = points.filter(({ hollow }) => !hollow);
  // A correction before a hollow reading lies before the next charted one too.
  const correctedBefore = charted.flatMap(({ at }, i) => {
    const last = charted[i - 1];
    return last !== undefined && between(tops, last.at, at) ? [i] : [];
  });
  return {
    because,
    cup: found[0]?.standing.cup ?? null,
    points,
    charted,
    chart: individualsChart(
      charted.map(({ seconds }) => seconds),
      { correctedBefore },
    ),
  };
}

const between = (all: readonly { readonly at: number }[], from: number, to: number): boolean =>
  all.some(({ at }) => at > from && at <= to);
