import { millisecondsInHour as hourMs } from "date-fns/constants";
import type { BucketHealth } from "../../physics/slurry/bucketHealth.ts";
import { bucketStandingOf } from "./bucketStanding.ts";
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
type Around = Pick<Surroundings, "buckets" | "shop">;

/** Dips of one quarter of an hour with nothing told in between are taken as one. */
const quarterMs = hourMs / 4;
/** A reason given for a visit holds as long as a visit lasts (judgement). */
const visitMs = 12 * hourMs;

/** One for each coat whose bucket is known; of any other nothing is said. */
export function dippedFrom(
  { coats }: Pick<Piece, "coats">,
  { buckets, shop }: Around,
): readonly DippedFrom[] {
  return coats.flatMap((coat) => {
    const bucket = coat.bucketId === null ? undefined : buckets.get(coat.bucketId);
    if (bucket === undefined) return [];
    const look = lookAt(bucket, shop, coat.dippedAt);
    const { id, name, passes } = bucket;
    const pass = passes.findLast(({ at }) => at <= coat.dippedAt && at > coat.dippedAt - visitMs);
    return [{ coat, bucket: { id, name }, ...look, reason: pass?.reason ?? null }];
  });
}

const looks = new WeakMap<
  Bucket,
  { readonly cups: Around["shop"]["cups"]; readonly at: Map<number, Look> }
>();

function lookAt(bucket: Bucket, shop: Around["shop"], dippedAt: number): Look {
  let kept = looks.get(bucket);
  if (kept?.cups !== shop.cups) {
    kept = { cups: shop.cups, at: new Map() };
    looks.set(bucket, kept);
  }
  const lastTold = linesOf(bucket).reduce((last, { at }) => (at <= dippedAt ? Math.max(last, at) : last), 0);
  const at = Math.max(lastTold, Math.floor(dippedAt / quarterMs) * quarterMs);
  const found = kept.at.get(at);
  if (found !== undefined) return found;
  const { health, bucket: then } = bucketStandingOf(bucket, shop, at);
  const look = { health, neverRead: then.readings.length === 0 };
  kept.at.set(at, look);
  return look;
}

/**
 * Changes whenever what is known of the buckets at this piece's dips may have changed, and not when a bucket is read
 * later. Much cheaper than looking.
 */
export function dippedFromMark(
  { coats }: Pick<Piece, "coats">,
  { buckets }: Pick<Around, "buckets">,
): string {
  const lastDips = new Map<string, number>();
  for (const { bucketId, dippedAt } of coats)
    if (bucketId !== null) lastDips.set(bucketId, Math.max(dippedAt, lastDips.get(bucketId) ?? dippedAt));
  return [...lastDips]
    .map(([id, until]) => {
      const bucket = buckets.get(id);
      if (bucket === undefined) return "";
      const { name, use, targets } = bucket;
      return JSON.stringify([name, use, targets, toldUntil(bucket, until)]);
    })
    .join();
}

const marks = new WeakMap<Bucket, readonly { readonly at: number; readonly mark: number }[]>();

/** A number that stands for all lines up to then: entries never change, so their ids tell them apart. */
function toldUntil(bucket: Bucket, until: number): number {
  let all = marks.get(bucket);
  if (all === undefined) {
    let mark = 0;
    all = linesOf(bucket)
      .toSorted((a, b) => a.at - b.at)
      .map(({ at, id }) => ({ at, mark: (mark = mixedIn(mark, id)) }));
    marks.set(bucket, all);
  }
  return all.findLast(({ at }) => at <= until)?.mark ?? 0;
}

/** FNV-1a, 32 bits. */
function mixedIn(mark: number, text: string): number {
  let hash = mark ^ 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return hash >>> 0;
}

const linesOf = ({ readings, mixes, tops, losses, counts, passes }: Bucket): readonly Line[] => [
  ...readings,
  ...mixes,
  ...tops,
  ...losses,
  ...counts,
  ...passes,
];
type Line = { readonly id: string; readonly at: number };
