import { millisecondsInHour as hourMs } from "date-fns/constants";
import { leastDryH } from "../../trade/dryMinimums.ts";
import type { Bucket, Coat, Recipe, Shop } from "../piece/piece.ts";
import { ranges, within } from "../entries/ranges.ts";
import type { DryMinimum } from "../piece/standing.ts";

/** When a coat was last wetted, epoch ms: its dip, or the last further one. */
export const wettedAt = ({ dippedAt, redips }: Coat): number =>
  redips.reduce((last, { at }) => Math.max(last, at), dippedAt);

/**
 * How long a coat dries at the least before the next one, from when it was last wetted. The most specific figure
 * counts: the recipe's for its step, the bucket's, the shop's for the kind, the starting value. One out of range is
 * passed over.
 */
export function dryMinimum(
  coat: Coat,
  {
    recipe,
    buckets,
    shop,
  }: {
    readonly recipe: Recipe | null;
    readonly buckets: ReadonlyMap<string, Pick<Bucket, "targets">>;
    readonly shop: Pick<Shop, "leastDryH">;
  },
): DryMinimum {
  const step = coat.step === null ? undefined : recipe?.coats[coat.step];
  const told = [
    { from: "recipe", hours: step?.leastDryH },
    { from: "bucket", hours: buckets.get(coat.bucketId ?? "")?.targets.leastDryH },
    { from: "shop", hours: shop.leastDryH?.[coat.kind] },
    { from: "starting", hours: leastDryH[coat.kind].value },
  ] as const;
  const { from, hours } = told.find((one) => within(ranges.leastDryH, one.hours)) ?? told[3];
  return { from, hours: hours ?? 0, until: wettedAt(coat) + (hours ?? 0) * hourMs };
}
