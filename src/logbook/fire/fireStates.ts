import type { EntryBodies } from "../entries/entry.ts";
import type { PourStep, RunSegment } from "../entries/fireBodies.ts";

type Dated<T> = T & { readonly id: string; readonly at: number };

/** `id` of one unpacked from a logger's block is `<entry>#<place>`. */
export type LoggedReading = { readonly id: string; readonly at: number; readonly kilnC: number };

/** A kiln run as its log tells it. Times are epoch ms. */
export type Run = {
  readonly id: string;
  readonly plan: Dated<EntryBodies["run-planned"]>;
  readonly pieceIds: readonly string[];
  /** The plan as it was last changed. */
  readonly segments: readonly RunSegment[];
  readonly changes: readonly { readonly id: string; readonly at: number; readonly note: string | null }[];
  readonly startedAt: number | null;
  /** The kiln when it was started; null when nobody looked. */
  readonly startedC: number | null;
  /** Single ones and those of loggers together, oldest first. */
  readonly readings: readonly LoggedReading[];
  /** Entries of readings that were written down after its end was, as a logger's file is; left out where there are none. */
  readonly lateIds?: readonly string[] | undefined;
  readonly stepsDone: readonly {
    readonly id: string;
    readonly at: number;
    /** Place among the segments as they stood then. */
    readonly segment: number;
    /** The instruction's code; null where that place held none. */
    readonly code: string | null;
    readonly note: string | null;
  }[];
  readonly ended: Dated<EntryBodies["run-ended"]> | null;
  readonly lastAt: number;
};

/** True for a plan of a run or a melt that was put away without ever being started. */
export const isPutAway = ({ startedAt, ended }: Pick<Run | Melt, "startedAt" | "ended">): boolean =>
  startedAt === null && ended !== null;

export type Melt = {
  readonly id: string;
  readonly plan: Dated<EntryBodies["melt-planned"]>;
  readonly pieceIds: readonly string[];
  readonly startedAt: number | null;
  readonly hotFurnace: boolean | null;
  /** The charge on the scale when the fire was lit, kg; null or, in a row of an older program, left out when it was not weighed. */
  readonly weighedKg?: number | null | undefined;
  readonly readings: readonly { readonly id: string; readonly at: number; readonly metalC: number }[];
  readonly ended: Dated<EntryBodies["melt-ended"]> | null;
  readonly lastAt: number;
};

/** A pour from its plan to its end; what befell each shell is in the piece's own log. */
export type Pour = {
  readonly id: string;
  readonly plan: Dated<EntryBodies["pour-planned"]>;
  readonly pieceIds: readonly string[];
  readonly steps: readonly PourStep[];
  readonly marks: readonly Dated<EntryBodies["pour-step-marked"]>[];
  /** The newest word on each item of the sheet, in the order they were first looked at. */
  readonly checks: readonly Dated<EntryBodies["pour-item-checked"]>[];
  readonly decided: Dated<EntryBodies["pour-decided"]> | null;
  readonly ended: Dated<EntryBodies["pour-ended"]> | null;
  readonly lastAt: number;
};
