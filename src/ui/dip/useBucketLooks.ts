import { useMemo } from "react";
import { bucketStandingOf, type BucketStanding } from "../../logbook/bucketStanding.ts";
import type { Bucket, Shop } from "../../logbook/piece.ts";
import { useShop } from "../app/shop.tsx";
import { useNow } from "../app/useNow.ts";

export type BucketLooks = ReadonlyMap<string, BucketStanding>;

/** Where each bucket stands now, by its id. */
export function useBucketLooks(buckets: readonly Bucket[], shop: Pick<Shop, "cups">): BucketLooks {
  const { clock } = useShop();
  const tick = useNow();
  return useMemo(() => {
    const now = Math.max(tick, clock());
    return new Map(buckets.map((bucket) => [bucket.id, bucketStandingOf(bucket, shop, now)]));
  }, [buckets, shop, tick, clock]);
}
