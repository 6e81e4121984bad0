import type { Alloy } from "../trade/alloys.ts";
import type { StuccoFamily } from "../trade/shellThermal.ts";
import { fireFacts } from "./fireFacts.ts";
import type { Standing } from "./standing.ts";

export type MetalHeat =
  | { readonly verdict: "ok" | "too-cold" | "too-hot"; readonly lowC: number; readonly highC: number }
  | { readonly verdict: "not-known" };

/** Metal at this heat, °C, against both ends of its alloy's pouring range, the ends included; source with the alloy's figures. */
export function pourHeatOf(alloy: Alloy | null, metalC: number): MetalHeat {
  if (alloy === null) return { verdict: "not-known" };
  const [lowC, highC] = [alloy.pourLowC.value, alloy.pourHighC.value];
  return { verdict: metalC < lowC ? "too-cold" : metalC > highC ? "too-hot" : "ok", lowC, highC };
}

/** Whether any water can be in the shell: `fired` since it was last wetted, else by its drying. */
export function waterOf(standing: Standing, family: StuccoFamily): "fired" | "dry-by-drying" | "damp" {
  const { state, source } = fireFacts(standing, family).damp;
  if (state !== "dry") return "damp";
  return source === "fired" ? "fired" : "dry-by-drying";
}
