import type { Bucket } from "../piece/piece.ts";

/** The bucket as it stood at `now`, epoch ms: what came later is left out. Its targets are those last set. */
export function bucketUpTo(bucket: Bucket, now: number): Bucket {
  const past = <T extends { readonly at: number }>(all: readonly T[]): readonly T[] =>
    all.every(({ at }) => at <= now) ? all : all.filter(({ at }) => at <= now);
  const readings = past(bucket.readings);
  return {
    ...bucket,
    readings,
    last: readings.at(-1) ?? null,
    mixes: past(bucket.mixes),
    tops: past(bucket.tops),
    losses: past(bucket.losses),
    counts: past(bucket.counts),
    passes: past(bucket.passes),
  };
}
