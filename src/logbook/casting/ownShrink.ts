import { learnShrink, type LearnedShrink } from "../../physics/metal/shrinkScale.ts";
import type { Shop } from "../piece/piece.ts";

/** The shop's own shrink of an alloy, by how its castings were held; how many pieces are still wanting where there are too few. */
export function ownShrink({
  shop,
  alloyId,
  held,
}: {
  readonly shop: Shop;
  readonly alloyId: string;
  readonly held: "free" | "restrained";
}): LearnedShrink {
  return learnShrink(shop.shrinks.filter((seen) => seen.alloyId === alloyId && seen.held === held));
}
