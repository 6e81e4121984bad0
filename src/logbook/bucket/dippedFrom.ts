import { millisecondsInHour as hourMs } from "date-fns/constants";
import type { BucketHealth } from "../../physics/slurry/bucketHealth.ts";
import { bucketStandingOf } from "./bucketStanding.ts";
import { shopStream, streamOf } from "../entries/entry.ts";
import type { Memo } from "../log/memo.ts";
import { makeMemo, remembered } from "../log/memo.ts";
import type { Bucket, Coat, Piece } from "../piece/piece.ts";
import type { Surroundings } from "../piece/surroundings.ts";

/** The bucket one coat came from, as it was when the coat was dipped. */
export type DippedFrom = {
  readonly coat: Coat;
  readonly bucket: Pick<Bucket, "id" | "name">;
  readonly health: BucketHealth;
  /** True when nobody had read this bucket even once by then. */
  readonly neverRead: boolean;
  /** What was written at the bucket for going on all the same. */
  readonly reason: string | null;
};

type Look = Pick<DippedFrom, "health" | "neverRead">;
type Around = Pick<Surroundings, "buckets" | "shop" | "stamps">;

/** Dips of one quarter of an hour with nothing told in between are taken as one. */
const quarterMs = hourMs / 4;
/** A reason given for a visit holds as long as a visit lasts (judgement). */
const visitMs = 12 * hourMs;

/** One for each coat whose bucket is known; of any other nothing is said. */
export function dippedFrom(
  { coats }: Pick<Piece, "coats">,
  around: Around,
  memo: Memo = makeMemo(),
): readonly DippedFrom[] {
  return coats.flatMap((coat) => {
    const bucket = coat.bucketId === null ? undefined : around.buckets.get(coat.bucketId);
    if (bucket === undefined) return [];
    const look = lookAt(bucket, coat.dippedAt, around, memo);
    const { id, name, passes } = bucket;
    const pass = passes.findLast(({ at }) => at <= coat.dippedAt && at > coat.dippedAt - visitMs);
    return [{ coat, bucket: { id, name }, ...look, reason: pass?.reason ?? null }];
  });
}

function lookAt(bucket: Bucket, dippedAt: number, { shop, stamps }: Around, memo: Memo): Look {
  const lastTold = linesOf(bucket).reduce((last, { at }) => (at <= dippedAt ? Math.max(last, at) : last), 0);
  const at = Math.max(lastTold, Math.floor(dippedAt / quarterMs) * quarterMs);
  const grounds = [stamps?.get(streamOf("bucket", bucket.id)) ?? bucket, stamps?.get(shopStream) ?? shop];
  return remembered<Look>({ memo, kind: "look", id: `${bucket.id} ${at}` }, grounds, () => {
    const { health, bucket: then } = bucketStandingOf(bucket, shop, at);
    return { health, neverRead: then.readings.length === 0 };
  });
}

const linesOf = ({ readings, mixes, tops, losses, counts, passes }: Bucket): readonly Line[] => [
  ...readings,
  ...mixes,
  ...tops,
  ...losses,
  ...counts,
  ...passes,
];
type Line = { readonly at: number };
