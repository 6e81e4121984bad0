import { useMemo } from "react";
import { bucketStandingOf, type BucketStanding } from "../../logbook/bucket/bucketStanding.ts";
import { dipsFrom } from "../../logbook/bucket/dippedOut.ts";
import type { Entry } from "../../logbook/entries/entry.ts";
import type { TakenData } from "../../storage/taken.ts";
import { useBucket, useFigures } from "../base/state/live.ts";
import { useShop } from "../base/state/shop.tsx";
import { useNow } from "../base/state/useNow.ts";
import { useTaken } from "../shop/stock/useTaken.ts";

export type BucketFound = {
  readonly standing: BucketStanding;
  readonly entries: readonly Entry[];
  /** What left it, and the other buckets, on pieces. */
  readonly dipped: TakenData;
};

/** One bucket as it stands now, with its log; null when there is none of that id, undefined while it loads. */
export function useBucketStanding(id: string): BucketFound | null | undefined {
  const { clock } = useShop();
  const tick = useNow();
  const found = useBucket(id);
  const shop = useFigures();
  const dipped = useTaken();
  return useMemo(() => {
    if (found === null) return null;
    if (found === undefined || shop === undefined || dipped === undefined) return undefined;
    const now = Math.max(tick, clock());
    const standing = bucketStandingOf(found.bucket, shop, now, dipsFrom(dipped.taken, id));
    return { standing, entries: found.entries, dipped };
  }, [found, shop, dipped, id, tick, clock]);
}
