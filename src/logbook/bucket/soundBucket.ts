import type { Makings } from "../entries/bucketBodies.ts";
import type { Bucket } from "../piece/piece.ts";
import { ranges, within } from "../entries/ranges.ts";

/** The bucket without the lots, losses and counts no bucket could have seen: what its sums take. */
export function soundBucket(bucket: Bucket): Bucket {
  const { mixes, tops, losses, counts } = bucket;
  return {
    ...bucket,
    mixes: kept(mixes, isSound),
    tops: kept(tops, isSound),
    losses: kept(losses, ({ litre }) => within(ranges.bucketL, litre)),
    counts: kept(counts, ({ litre }) => within(ranges.bucketL, litre)),
  };
}

/** The same list where all of it stays, so that whoever compares sees no change. */
const kept = <T>(all: readonly T[], stays: (one: T) => boolean): readonly T[] =>
  all.every(stays) ? all : all.filter(stays);

const isSound = ({
  flourKg,
  solKg,
  waterKg,
  solSilica,
}: Makings & { readonly solSilica?: number | undefined }): boolean =>
  [flourKg, solKg, waterKg].every((kg) => within(ranges.makingsKg, kg)) &&
  (solSilica === undefined || within(ranges.silica, solSilica));
