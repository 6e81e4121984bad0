import type { MeltFigures } from "../../trade/metals/alloy.ts";
import { ladleUpToKg, type PourWay } from "../../trade/gatingFigures.ts";
import { crucibleLift } from "../../trade/lifting.ts";
import { crucibleLiftKg } from "../bucket/liftWeights.ts";

/** How a mass of metal, kg, is poured: on a hoist where its crucible hangs on one, by hand ladle while it is light, else in a shank. */
export function pourWayOf(massKg: number, figures: Pick<MeltFigures, "crucibleKgM3">): PourWay {
  const crucibleKg = crucibleLiftKg({ metalKg: massKg, figures, furnace: null }) ?? massKg;
  if (crucibleLift(crucibleKg) === "hoist") return "hoist";
  return massKg > ladleUpToKg.value ? "shank" : "ladle";
}
