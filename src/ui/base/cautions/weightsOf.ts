import { crucibleLiftKg, shellLiftKg } from "../../../logbook/bucket/liftWeights.ts";
import { ownAlloy, ownMeltFigures } from "../../../logbook/shop/ownAlloy.ts";
import type { RackItem } from "../state/live.ts";
import { metalOf } from "../../../logbook/piece/pieceMetal.ts";
import type { Weights } from "./liftWords.ts";

/** What is lifted for one piece, by its plan. */
export function weightsOf({ standing }: RackItem): Weights {
  const { piece, shop } = standing;
  const alloyId = piece.plan.alloyId ?? "";
  const metalKg = metalOf(piece, ownAlloy(alloyId, shop));
  return {
    crucibleKg: crucibleLiftKg({ metalKg, figures: ownMeltFigures(alloyId, shop), furnace: null }),
    shellKg: shellLiftKg(standing, metalKg),
  };
}
