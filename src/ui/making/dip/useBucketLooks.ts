import { useMemo } from "react";
import { bucketStandingOf, type BucketStanding } from "../../../logbook/bucket/bucketStanding.ts";
import type { Bucket, Shop } from "../../../logbook/piece/piece.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useNow } from "../../base/state/useNow.ts";

export type BucketLooks = ReadonlyMap<string, BucketStanding>;

/** Where each bucket stands now, by its id. */
export function useBucketLooks(
  buckets: readonly Bucket[],
  shop: Pick<Shop, "cups" | "bucketLimits">,
): BucketLooks {
  const { clock } = useShop();
  const tick = useNow();
  return useMemo(() => {
    const now = Math.max(tick, clock());
    return new Map(buckets.map((bucket) => [bucket.id, bucketStandingOf(bucket, shop, now)]));
  }, [buckets, shop, tick, clock]);
}
