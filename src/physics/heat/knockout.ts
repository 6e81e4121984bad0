import { requirePositive, requireWithin } from "../stats/range.ts";

export type Knockout = {
  readonly timeS: number;
  /** "cooling": the metal's temperature decides; "floor": ten times the freezing does; "floor-only": no cooling was reckoned. */
  readonly decidedBy: "cooling" | "floor" | "floor-only";
};

/**
 * Time from pour to a safe knock-out, s: until the core is below its family's limit, and never before ten times the
 * freezing (common practice, no source). `coolS` is null where no cooling was reckoned: then only the floor speaks.
 */
export function knockoutTime({ freezeS, coolS }: { freezeS: number; coolS: number | null }): Knockout {
  requirePositive("freezeS", freezeS, { high: 1e7, unit: "s" });
  const floorS = 10 * freezeS;
  if (coolS === null) return { timeS: floorS, decidedBy: "floor-only" };
  requireWithin("coolS", coolS, { low: 0, high: 1e8, unit: "s" });
  return coolS > floorS ? { timeS: coolS, decidedBy: "cooling" } : { timeS: floorS, decidedBy: "floor" };
}
