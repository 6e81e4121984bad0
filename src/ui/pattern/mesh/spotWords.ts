import type { PatternMaterial } from "../../../trade/patternMaterials.ts";
import type { Spot } from "./patternResults.ts";

/** What happens at a spot and what to do about it. */
export function spotWords({
  spot: { shape, isLast },
  what,
  isOpen,
  material,
}: {
  readonly spot: Pick<Spot, "shape" | "isLast">;
  readonly what: "air" | "plastic";
  readonly isOpen: boolean;
  readonly material: PatternMaterial | null;
}): string {
  const along = shape === "ridge" ? " along a ridge" : shape === "flat" ? " under a flat" : "";
  if (what === "air") {
    if (isOpen)
      return `Air leaves through the vent${along === "" ? "" : `; it collects${along}: keep that level or vent its ends too`}.`;
    if (isLast) return `The top${along}: needs a vent here.`;
    return `Air is trapped${along} and the metal stops below it. Vent it, or turn the piece.`;
  }
  const stuff = material === "wax" ? "wax" : material === null ? "pattern" : "plastic";
  if (isOpen) return `The ${stuff} leaves through the opening${along === "" ? "" : `; it collects${along}`}.`;
  if (isLast) return `The lowest place${along}: needs a drain here.`;
  return `The ${stuff} is trapped${along}${material === "wax" ? ", soaks in and burns late" : ", swells and burns in place, which may crack the shell"}. Drain it, or turn the piece.`;
}
