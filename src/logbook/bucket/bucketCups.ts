import type { CupId } from "../../physics/slurry/viscosityCups.ts";
import { isCupId } from "../../physics/slurry/viscosityCups.ts";
import { cupOf, cups } from "../../trade/cups.ts";
import type { Shop } from "../piece/piece.ts";

/** A cup as it was told. Two cups are the same only by `key`; `kind` is null for one the table does not know. */
export type BucketCup = {
  readonly key: string;
  /** The shop's own cup, or the kind itself where it has none on its wall; null for a cup told in words. */
  readonly id: string | null;
  readonly kind: CupId | null;
  readonly name: string;
};

/** The cup of a target or a reading; null where none was told. An id is a cup on the shop's wall, or a kind of the table. */
export function bucketCup(
  { cupId, cup }: { readonly cupId?: string | undefined; readonly cup?: string | undefined },
  shop: Pick<Shop, "cups">,
): BucketCup | null {
  if (cupId !== undefined) {
    const own = shop.cups.find(({ id }) => id === cupId);
    if (own !== undefined)
      return { key: own.id, id: own.id, kind: isCupId(own.cup) ? own.cup : null, name: own.name };
    const known = cupOf(cupId);
    if (known !== null) return { key: known.id, id: known.id, kind: known.id, name: known.label };
    return { key: cupId, id: cupId, kind: null, name: cup ?? cupId };
  }
  const words = cup?.trim() ?? "";
  if (words === "") return null;
  const named = cups.find(({ id, label }) => [id, label.toLowerCase()].includes(words.toLowerCase()));
  return { key: named?.id ?? words.toLowerCase(), id: null, kind: named?.id ?? null, name: words };
}
