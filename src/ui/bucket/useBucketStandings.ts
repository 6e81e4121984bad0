import { useMemo } from "react";
import { bucketStandingOf, type BucketStanding } from "../../logbook/bucket/bucketStanding.ts";
import { useBuckets, useFigures } from "../base/state/live.ts";
import { useShop } from "../base/state/shop.tsx";
import { useNow } from "../base/state/useNow.ts";

/** Every bucket as it stands now, emptied ones too; undefined while they load. */
export function useBucketStandings(): readonly BucketStanding[] | undefined {
  const { clock } = useShop();
  const tick = useNow();
  const buckets = useBuckets();
  const shop = useFigures();
  return useMemo(
    () =>
      shop === undefined || buckets === undefined
        ? undefined
        : buckets.map((bucket) => bucketStandingOf(bucket, shop, Math.max(tick, clock()))),
    [buckets, shop, tick, clock],
  );
}
