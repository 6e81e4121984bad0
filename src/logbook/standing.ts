import type { AirClass } from "../trade/airClasses.ts";
import type { RecipeCoat } from "../trade/coats.ts";
import type { AirReading, Coat, DrynessSeen, Piece, Recipe, Room, Shop } from "./piece.ts";

/** All that the sums need beside the piece itself. */
export type Surroundings = {
  readonly rooms: ReadonlyMap<string, Room>;
  /** Readings of each room, oldest first, reaching back a day before the first coat of any piece asked about. */
  readonly readings: ReadonlyMap<string, readonly AirReading[]>;
  readonly recipes: ReadonlyMap<string, Recipe>;
  readonly shop: Shop;
};

export type NoReadyReason = "no-readings" | "air-too-damp" | "condensing" | "beyond-forecast";

/** What is known of one coat's drying, up to the next coat or to now. */
export type CoatDrying = {
  readonly coat: Coat;
  readonly targetDryness: number;
  /** Water to go, as a share of what must go, at the next coat or at now: 1 when wet, 0 when dry, null when not known. */
  readonly leftShare: number | null;
  readonly waterKgM2: number | null;
  /** Water the coat started with, its own and what was carried over from beneath. */
  readonly startKgM2: number;
  readonly carriedKgM2: number;
  readonly depthM: number;
  readonly readyAt: {
    readonly early: number | null;
    readonly likely: number | null;
    readonly late: number | null;
  };
  readonly reason: NoReadyReason | null;
  readonly basis: {
    readonly readings: number;
    /** Age of the newest reading used, ms before now (a covered coat: before the next dip); null when there is none. */
    readonly lastReadingAgeMs: number | null;
    readonly longestGapMs: number;
    readonly forecast: "repeat-yesterday" | "hold-last" | null;
    readonly ownFactor: number | null;
    readonly air: AirClass | null;
  };
  readonly doseNeededGHM3: number | null;
  readonly doseSuppliedGHM3: number;
  readonly condensed: boolean;
  /** The evidence that overrides the model, the newest that speaks of this coat; null when only the model speaks. */
  readonly evidence: { readonly says: "dry" | "wet"; readonly seen: DrynessSeen } | null;
  /** `dry` and `wet` are certain enough to act on; `maybe` lies within the spread. */
  readonly verdict: "dry" | "maybe" | "wet" | "unknown";
  /** Water left against time for the picture: epoch ms and kg/m². */
  readonly curve: readonly { readonly at: number; readonly waterKgM2: number }[];
};

export type WallStanding = {
  /** Wall by the coats' table or own caliper readings, mm. */
  readonly reachedMm: number;
  readonly perCoatMm: readonly number[];
  /** `measured` when a caliper reading carries the figure. */
  readonly basis: "table" | "measured";
  /** Null with the missing figures when it can't be judged. */
  readonly judged: null | {
    readonly headPressurePa: number;
    readonly morMPa: number;
    readonly morHalved: boolean;
    readonly requiredMm: number;
    readonly requiredLowMm: number;
    readonly requiredHighMm: number;
    readonly floorMm: number;
    readonly safety: number;
    readonly safetyLow: number;
    readonly safetyHigh: number;
    readonly band: "carries" | "marginal" | "thin" | "fails";
    readonly coatsToAdd: number;
  };
  readonly missing: readonly ("alloy" | "head" | "part" | "coats")[];
};

/** Where one piece stands at `now`: the log, the recipe and the room put together. Rules read this, the page shows it. */
export type Standing = {
  readonly piece: Piece;
  readonly now: number;
  readonly recipe: Recipe | null;
  readonly room: Room | null;
  readonly readings: readonly AirReading[];
  readonly shop: Shop;
  readonly drying: readonly CoatDrying[];
  /** The outermost coat's drying; null before the first coat. */
  readonly outer: CoatDrying | null;
  /** The coat the recipe wants next; null when the recipe is done or there is none. */
  readonly next: (RecipeCoat & { readonly step: number; readonly number: number }) | null;
  readonly coatsDone: number;
  readonly coatsPlanned: number | null;
  readonly wall: WallStanding;
  readonly action: NextAction;
};

/** The one thing to do next, in the order of the rack: hands first. */
export type NextAction =
  | {
      readonly kind: "dip";
      readonly readiness: "ready" | "maybe" | "drying" | "unknown";
      readonly at: number | null;
    }
  | { readonly kind: "final-dry"; readonly at: number | null }
  | { readonly kind: "mend" }
  | { readonly kind: "review" }
  | { readonly kind: "burn-out" }
  | { readonly kind: "end-burnout" }
  | { readonly kind: "fire" }
  | { readonly kind: "preheat" }
  | { readonly kind: "pour" }
  | { readonly kind: "knock-out" }
  | { readonly kind: "finish" }
  | { readonly kind: "tell-outcome" }
  | { readonly kind: "none" };
