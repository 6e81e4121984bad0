import { builtInBucket, unusedBucket } from "../piece/builtIns.ts";
import { effective } from "../log/effective.ts";
import type { Entry, EntryBodies } from "../entries/entry.ts";
import { isOfKind, type EntryIn } from "../entries/entryKinds.ts";
import { dated, lastOf } from "../log/lastOf.ts";
import type { Bucket } from "../piece/piece.ts";

/** The bucket; null for one that is neither built in nor ever named. Total, in whatever order the entries come. */
export const foldBucket = (id: string, entries: readonly Entry[]): Bucket | null =>
  bucketFrom(id, effective(entries));

/** Whether there is such a bucket, built in or named; what is in it is not looked at. */
export const hasBucket = (id: string, standing: readonly Entry[]): boolean =>
  builtInBucket(id) !== null || lastOf(standing, "bucket-set") !== undefined;

/** The same from the entries that stand, in order. */
export function bucketFrom(id: string, standing: readonly Entry[]): Bucket | null {
  const set = lastOf(standing, "bucket-set");
  const from = set ? emptyBucket(id, set.body) : builtInBucket(id);
  return from && standing.filter((entry) => isOfKind(entry, "bucket")).reduce<Bucket>(evolveBucket, from);
}

function emptyBucket(id: string, body: EntryBodies["bucket-set"]): Bucket {
  const { name, use, slurry, retired = false, ...targets } = body;
  return { ...unusedBucket, id, name, use, slurry, retired, targets };
}

function evolveBucket(bucket: Bucket, entry: EntryIn<"bucket">): Bucket {
  switch (entry.type) {
    case "bucket-set":
      // The last one was taken for the start: it replaces those before it.
      return bucket;
    case "bucket-read": {
      const last = dated(entry);
      return { ...bucket, last, readings: [...bucket.readings, last] };
    }
    case "bucket-mixed":
      return { ...bucket, mixes: [...bucket.mixes, dated(entry)] };
    case "bucket-topped":
      return { ...bucket, tops: [...bucket.tops, dated(entry)] };
    case "bucket-lost":
      return { ...bucket, losses: [...bucket.losses, dated(entry)] };
    case "bucket-counted":
      return { ...bucket, counts: [...bucket.counts, dated(entry)] };
    case "bucket-passed":
      return { ...bucket, passes: [...bucket.passes, dated(entry)] };
  }
}
