import type { Alloy } from "../../trade/metals/alloy.ts";
import type { Piece } from "./piece.ts";

/** Metal a piece asks for, casting and gating, kg, by its plan; null where the plan doesn't say. */
export function metalOf({ plan }: Pick<Piece, "plan">, alloy: Alloy | null): number | null {
  if (plan.metalKg !== undefined && plan.metalKg > 0) return plan.metalKg;
  return plan.metalLitre === undefined || alloy === null
    ? null
    : (plan.metalLitre * alloy.solidKgM3.value) / 1000;
}

/** The largest that a plan says, kg: one that has both kilograms and litres may be told two things. */
export function mostMetalOf({ plan }: Pick<Piece, "plan">, alloy: Alloy): number | null {
  const said = [
    plan.metalKg ?? 0,
    plan.metalLitre === undefined ? 0 : (plan.metalLitre * alloy.solidKgM3.value) / 1000,
  ].filter((kg) => kg > 0);
  return said.length === 0 ? null : Math.max(...said);
}

/** Two figures that differ by less, a share, are one that was rounded: four figures are kept. */
const roundedBy = 0.0005;

/** What a plan's metal would be lowered from, kg, by saving `toKg`; null where it would not be. */
export function loweredFrom(piece: Pick<Piece, "plan">, alloy: Alloy, toKg: number): number | null {
  const planKg = mostMetalOf(piece, alloy);
  return planKg !== null && toKg < planKg * (1 - roundedBy) ? planKg : null;
}

/** So near to its mesh, a share, that a plan's metal is the mesh's: rounding, and a density put right. Judgement. */
const nearMesh = 0.01;

/**
 * How well a plan's metal is known, which decides the margin of a charge: as it was saved with it; measured where it is
 * the metal of the mesh with its tree; else a guess.
 */
export function metalKnownOf(
  { plan, patterns }: Pick<Piece, "plan" | "patterns">,
  alloy: Alloy | null,
): NonNullable<Piece["plan"]["metalKnown"]> {
  if (plan.metalKnown !== undefined) return plan.metalKnown;
  const mesh = patterns.at(-1);
  const kg = metalOf({ plan }, alloy);
  if (kg === null || alloy === null || mesh === undefined || mesh.volumeMm3 === null) return "guessed";
  const meshKg = ((mesh.volumeMm3 + (mesh.gatingMm3 ?? 0)) * alloy.solidKgM3.value) / 1e9;
  return Math.abs(kg - meshKg) <= nearMesh * meshKg ? "measured" : "guessed";
}
