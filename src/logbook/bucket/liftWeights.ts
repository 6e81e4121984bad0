import { brimNeededMl, brimShare } from "../../physics/metal/crucible.ts";
import { crucibleWithMetalKg } from "../../trade/lifting.ts";
import type { MeltFigures } from "../../trade/metals/alloy.ts";
import { fireFacts } from "../fire/fireFacts.ts";
import { startingTold } from "../pour/pourTold.ts";
import type { Furnace } from "../shop/shopThings.ts";
import type { Standing } from "../piece/standing.ts";

/**
 * Crucible with its metal, kg: the furnace's own crucible, else one just large enough to be lifted by tongs. Null
 * where the metal isn't known.
 */
export function crucibleLiftKg({
  metalKg,
  figures,
  furnace,
}: {
  readonly metalKg: number | null;
  readonly figures: Pick<MeltFigures, "crucibleKgM3"> | null;
  readonly furnace: Pick<Furnace, "crucibleL"> | null;
}): number | null {
  if (metalKg === null || !(metalKg > 0) || metalKg > 100_000) return null;
  const brimL =
    furnace?.crucibleL ??
    (figures === null
      ? 0
      : brimNeededMl({
          meltKg: metalKg,
          liquidKgM3: figures.crucibleKgM3.value,
          fillShare: brimShare.tongs,
        }) / 1000);
  return crucibleWithMetalKg({ metalKg, brimL });
}

/** A shell with its metal, kg; of a shell whose area nobody knows the metal alone. Null where the metal isn't known. */
export function shellLiftKg(standing: Standing, metalKg: number | null): number | null {
  if (metalKg === null) return null;
  const { shell } = fireFacts(standing, startingTold.family);
  return metalKg + (shell.source === "starting" ? 0 : shell.massKg);
}
