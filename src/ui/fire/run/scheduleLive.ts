import type { KilnReading } from "../../../physics/heat/runPosition.ts";
export type Live = {
  readonly startedAt: number;
  readonly now: number;
  readonly readings: readonly KilnReading[];
  /** Minute of the plan it has come to. */
  readonly nowMin: number;
};
