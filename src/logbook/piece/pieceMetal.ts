import type { Alloy } from "../../trade/metals/alloy.ts";
import type { Piece } from "./piece.ts";

/** A mass of solid metal, kg, as a volume, L. */
export const litreOfKg = (kg: number, alloy: Alloy): number => (kg / alloy.solidKgM3.value) * 1000;

/** A volume of solid metal, L, as a mass, kg. */
const kgOfLitre = (litre: number, alloy: Alloy): number => (litre * alloy.solidKgM3.value) / 1000;

/** Metal a piece asks for, casting and gating, kg, by its plan; null where the plan doesn't say. */
export function metalOf({ plan }: Pick<Piece, "plan">, alloy: Alloy | null): number | null {
  if (plan.metalKg !== undefined && plan.metalKg > 0) return plan.metalKg;
  return plan.metalLitre === undefined || alloy === null ? null : kgOfLitre(plan.metalLitre, alloy);
}

/** The largest that a plan says, kg: one that has both kilograms and litres may be told two things. */
export function mostMetalOf({ plan }: Pick<Piece, "plan">, alloy: Alloy): number | null {
  const said = [plan.metalKg ?? 0, kgOfLitre(plan.metalLitre ?? 0, alloy)].filter((kg) => kg > 0);
  return said.length === 0 ? null : Math.max(...said);
}

/** Two figures that differ by less, a share, are one that was rounded: four figures are kept. */
const roundedBy = 0.0005;

/** What a plan's metal would be lowered from, kg, by saving `toKg`; null where it would not be. */
export function loweredFrom(piece: Pick<Piece, "plan">, alloy: Alloy, toKg: number): number | null {
  const planKg = mostMetalOf(piece, alloy);
  return planKg !== null && toKg < planKg * (1 - roundedBy) ? planKg : null;
}

/** The same of a plan saved by volume, L; without an alloy only litres can be set beside litres. */
export function loweredFromLitre(
  piece: Pick<Piece, "plan">,
  alloy: Alloy | null,
  toLitre: number,
): number | null {
  if (alloy === null) {
    const planLitre = piece.plan.metalLitre ?? 0;
    return toLitre < planLitre * (1 - roundedBy) ? planLitre : null;
  }
  const fromKg = loweredFrom(piece, alloy, kgOfLitre(toLitre, alloy));
  return fromKg === null ? null : litreOfKg(fromKg, alloy);
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

/** The same as a volume, L: the plan's own, else its mass over the alloy's density; null where the plan says neither. */
export function metalLitreOf({ plan }: Pick<Piece, "plan">, alloy: Alloy | null): number | null {
  if (plan.metalLitre !== undefined) return plan.metalLitre;
  const kg = metalOf({ plan }, alloy);
  return kg === null || alloy === null ? null : litreOfKg(kg, alloy);
}
