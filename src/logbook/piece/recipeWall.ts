import type { RecipeCoat } from "../../trade/coats.ts";
import { sealMm, stuccoOf } from "../../trade/stuccos.ts";

export type RecipeWall = { readonly mm: number; readonly lowMm: number; readonly highMm: number };

/** Wall a coat gives by the table; null for a stucco the table does not know. */
export function coatMm({ stuccoId }: Pick<RecipeCoat, "stuccoId">): RecipeWall | null {
  const build = stuccoId === null ? sealMm : (stuccoOf(stuccoId)?.mmPerCoat ?? null);
  return build === null ? null : { mm: build.value, lowMm: build.low, highMm: build.high };
}

/** Wall the coats give together, mm, with the least and most to allow for; null when one of them is not in the table. */
export function wallOf(coats: readonly Pick<RecipeCoat, "stuccoId">[]): RecipeWall | null {
  let wall: RecipeWall = { mm: 0, lowMm: 0, highMm: 0 };
  for (const coat of coats) {
    const one = coatMm(coat);
    if (one === null) return null;
    wall = { mm: wall.mm + one.mm, lowMm: wall.lowMm + one.lowMm, highMm: wall.highMm + one.highMm };
  }
  return wall;
}
