import type { KilnRun } from "../../physics/heat/kilnRun.ts";
import { minutesWithin } from "./runHeat.ts";

/** Readings this near, K, to a hold's temperature count as held there: a controller's swing and its sensor (judgement). */
const nearHoldK = 15;

/** Minutes the readings show at a hold's temperature, and what all holds at that temperature ask for together. */
export type HeldStep = { readonly segment: number; readonly heldMin: number; readonly askedMin: number };

/** How long each hold of a run was held, by its readings; empty without a reading. Holds at one heat share its minutes. */
export function heldSteps({
  segments,
  readings,
}: Pick<KilnRun, "segments" | "readings">): readonly HeldStep[] {
  if (readings.length === 0) return [];
  const holds = segments.flatMap((part, segment) =>
    part.kind === "hold" && part.minutes > 0 ? [{ segment, atC: part.atC, minutes: part.minutes }] : [],
  );
  return holds.map(({ segment, atC }) => ({
    segment,
    heldMin: minutesWithin(readings, { lowC: atC - nearHoldK, highC: atC + nearHoldK }),
    askedMin: holds
      .filter((other) => Math.abs(other.atC - atC) <= nearHoldK)
      .reduce((sum, { minutes }) => sum + minutes, 0),
  }));
}
