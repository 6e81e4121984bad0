import type { StuccoFamily } from "../../trade/shellThermal.ts";
import { fireFacts } from "../fire/fireFacts.ts";
import { pourHeatCheck, pourHeatOf } from "./pourHeat.ts";
import type { PourSupply } from "./pourSupply.ts";
import type { Standing } from "../piece/standing.ts";

export type MetalHeat =
  | { readonly verdict: "ok" | "too-cold" | "too-hot"; readonly lowC: number; readonly highC: number }
  | { readonly verdict: "not-known" };

/** Metal at this heat, °C, against both ends of what its alloy and the thinnest of these sections take (`pourHeatCheck`). */
export function metalHeatOf(
  { alloy, figures, shells }: Pick<PourSupply, "alloy" | "figures" | "shells">,
  metalC: number,
): MetalHeat {
  if (alloy === null) return { verdict: "not-known" };
  const sections = shells.flatMap(({ thinnestMm }) => thinnestMm ?? []);
  const thinnestMm = sections.length === 0 || sections.length < shells.length ? null : Math.min(...sections);
  const { leastC, highC, startC } = pourHeatOf({ alloy, figures, thinnestMm });
  const { is } = pourHeatCheck({ alloy, figures, thinnestMm, metalC });
  return { verdict: is, lowC: leastC, highC: Math.max(highC, startC) };
}

/** Whether any water can be in the shell: `fired` since it was last wetted, else by its drying. */
export function waterOf(standing: Standing, family: StuccoFamily): "fired" | "dry-by-drying" | "damp" {
  const { state, source } = fireFacts(standing, family).damp;
  if (state !== "dry") return "damp";
  return source === "fired" ? "fired" : "dry-by-drying";
}
