import type { Alloy } from "../../trade/metals/alloy.ts";
import type { Piece } from "./piece.ts";

/** Metal a piece asks for, casting and gating, kg, by its plan; null where the plan doesn't say. */
export function metalOf({ plan }: Piece, alloy: Alloy | null): number | null {
  if (plan.metalKg !== undefined && plan.metalKg > 0) return plan.metalKg;
  return plan.metalLitre === undefined || alloy === null
    ? null
    : (plan.metalLitre * alloy.solidKgM3.value) / 1000;
}

/** The same as a volume, L: the plan's own, else its mass over the alloy's density; null where the plan says neither. */
export function metalLitreOf({ plan }: Pick<Piece, "plan">, alloy: Alloy | null): number | null {
  if (plan.metalLitre !== undefined) return plan.metalLitre;
  return plan.metalKg === undefined || alloy === null ? null : (plan.metalKg / alloy.solidKgM3.value) * 1000;
}
