import { bucketLeft, type BucketLeft } from "../../../logbook/bucket/bucketLeft.ts";
import type { BucketStanding } from "../../../logbook/bucket/bucketStanding.ts";
import type { TakenData } from "../../../storage/taken.ts";

/** How far this bucket goes, by the density read last, else by what went in. */
export function bucketLeftOf(
  { bucket, volume, aim, ledger, last }: BucketStanding,
  { taken, pieces, recipes }: TakenData,
): BucketLeft | null {
  const densityGCm3 = last?.density?.densityGCm3 ?? ledger?.densityGCm3 ?? aim.densityGCm3?.value;
  if (volume === null || densityGCm3 === undefined) return null;
  return bucketLeft({
    bucketId: bucket.id,
    taken,
    pieces,
    recipes,
    volumeL: volume.volumeL,
    leastL: aim.leastL ?? 0,
    densityGCm3,
  });
}
