import type { BucketStanding } from "../../../logbook/bucket/bucketStanding.ts";
import { takenBy } from "../../../logbook/bucket/dippedOut.ts";
import type { Bucket, Shop } from "../../../logbook/piece/piece.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useNow } from "../../base/state/useNow.ts";
import type { DipSession } from "../../../logbook/dip/dipSession.ts";
import { readAgain, type ReadAgain } from "../../../logbook/dip/readAgain.ts";
import type { DipVisit } from "./useDipVisit.ts";

const noGains: ReadonlyMap<string, never> = new Map<string, never>();

/** Whether the bucket of this visit wants reading again; what went out is calculated without own weighings, near enough. */
export function useReadAgain({
  session,
  visit,
  look,
  shop,
  buckets,
}: {
  readonly session: DipSession;
  readonly visit: DipVisit;
  readonly look: BucketStanding | undefined;
  readonly shop: Shop;
  readonly buckets: readonly Bucket[];
}): ReadAgain | null {
  const { clock } = useShop();
  const tick = useNow();
  const { tiles, standingOf } = visit;
  const now = Math.max(tick, clock());
  const pieces = tiles.flatMap(({ pieceId }) => standingOf(pieceId)?.piece ?? []);
  const around = { buckets: new Map(buckets.map((bucket) => [bucket.id, bucket])), shop, gains: noGains };
  const dips = takenBy(pieces, around).dips.filter(({ bucketId }) => bucketId === session.bucketId);
  return look === undefined ? null : readAgain(look, { startedAt: session.startedAt, now, dips });
}
