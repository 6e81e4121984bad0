import { type FiringFor, type FiringLimits, firingLimits } from "../../physics/heat/firingLimits.ts";
import { planFiring, type FiringRefusal } from "../../physics/heat/firingSchedule.ts";
import { burningPatternOf, firingShellOf } from "../../trade/firingFigures.ts";
import type { RunBasis, RunPurpose } from "../entries/fireBodies.ts";
import type { Segment } from "../../physics/heat/firingSegments.ts";
import { kilnEnergy } from "../../physics/heat/kilnPower.ts";
import type { Run } from "./fireStates.ts";

/** The plan's question in the words of physics; null for a pattern nobody knows how it burns. */
export function firingForOf(
  purpose: RunPurpose,
  { basis, startC }: { readonly basis: RunBasis; readonly startC: number },
): FiringFor | null {
  const { pattern, wallMm, family, seenAbove1100, greenShare, preheatC, fireC, waxLeaves, isFilm, ...same } =
    basis;
  const burning = pattern && burningPatternOf(pattern.material, pattern.massKg, { waxLeaves, isFilm });
  if (pattern !== null && burning === null) return null;
  return {
    ...same,
    purpose: purpose === "firing" ? "fire" : purpose,
    pattern: burning,
    waxLeaves: burning?.isWax === true ? waxLeaves : undefined,
    shell: firingShellOf(family, { wallMm, seenAbove1100, greenShare }),
    seenAbove1100,
    startC,
    preheatC: preheatC ?? undefined,
    fireC: fireC ?? undefined,
  };
}

/** Why this run should not begin in a kiln that is at `kilnC`; null where nothing speaks against it, or nothing is known. */
export function startRefusal({ basis, purpose }: Run["plan"], kilnC: number): FiringRefusal | null {
  const asked = basis === undefined ? null : firingForOf(purpose, { basis, startC: kilnC });
  const made = asked && sumOrNull(() => planFiring(asked));
  return made?.kind === "refused" ? made : null;
}

/** The limits a planned run is held against; null where its plan does not say what it was made for. */
export function runLimits({ basis, purpose, startC }: Run["plan"]): FiringLimits | null {
  const asked = basis === undefined ? null : firingForOf(purpose, { basis, startC });
  return asked && sumOrNull(() => firingLimits(asked));
}

/** Energy of steps in the kiln a run was planned for, kWh; null where no kiln has the figures of the plan. */
export const energyKWhOf = (
  { kiln, shellKg }: Pick<RunBasis, "kiln" | "shellKg">,
  { segments, startC }: { readonly segments: readonly Segment[]; readonly startC: number },
): number | null => sumOrNull(() => kilnEnergy({ segments, startC, kiln, loadKg: shellKg }).energyKWh);

function sumOrNull<T>(sum: () => T): T | null {
  try {
    return sum();
  } catch (error) {
    // The log takes a wider range of figures than any kiln or wall has; those say nothing.
    if (error instanceof RangeError) return null;
    throw error;
  }
}
