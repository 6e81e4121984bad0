import type { CoatKind } from "../trade/coats.ts";
import type { AcceptedDamp, CrackKind, CrackStage, EntryBodies, PiecePlan } from "./entry.ts";

/** Where a piece stands in its life. It can go back: a crack in burnout returns it to `coating`. */
export type Phase =
  | "coating"
  | "reviewed"
  | "burnout"
  | "burnt-out"
  | "fired"
  | "preheated"
  | "poured"
  | "knocked-out"
  | "finished"
  | "scrapped";

export type Coat = {
  readonly id: string;
  readonly number: number;
  readonly step: number | null;
  readonly kind: CoatKind;
  readonly stuccoId: string | null;
  readonly bucketId: string | null;
  readonly roomId: string;
  readonly prewet: boolean;
  /** When the slurry went on. */
  readonly dippedAt: number;
  /** Later dips of the same coat; each adds water. */
  readonly redips: readonly { readonly id: string; readonly at: number }[];
  readonly acceptedDamp: AcceptedDamp | null;
  readonly note: string | null;
  readonly photos: readonly string[];
  /** True for a coat put on after a burnout: such a wall has no pattern behind it any more. */
  readonly afterBurnout: boolean;
};

export type DrynessSeen = EntryBodies["dryness-seen"] & { readonly id: string; readonly at: number };
export type Crack = {
  readonly id: string;
  readonly at: number;
  readonly kind: CrackKind;
  readonly stage: CrackStage;
  readonly where: string;
  readonly photos: readonly string[];
  /** True when it was found after a burnout had begun. */
  readonly afterBurnout: boolean;
  readonly patched: { readonly id: string; readonly at: number; readonly how: string } | null;
};

/** A piece as its log tells it. Times are epoch ms. */
export type Piece = {
  readonly id: string;
  readonly plan: PiecePlan;
  readonly phase: Phase;
  readonly startedAt: number;
  /** Where it hung and since when, in order; never empty. */
  readonly rooms: readonly { readonly roomId: string; readonly from: number }[];
  readonly coats: readonly Coat[];
  readonly skipped: readonly {
    readonly id: string;
    readonly step: number;
    readonly at: number;
    readonly reason: string;
  }[];
  readonly dryness: readonly DrynessSeen[];
  readonly wall: readonly {
    readonly id: string;
    readonly at: number;
    readonly wallMm: number;
    readonly where: string | null;
    readonly coats: number;
  }[];
  readonly cracks: readonly Crack[];
  readonly wires: readonly { readonly id: string; readonly at: number; readonly note: string }[];
  readonly reviews: readonly (EntryBodies["review-signed"] & {
    readonly id: string;
    readonly at: number;
    readonly coats: number;
  })[];
  readonly burnouts: readonly {
    readonly id: string;
    readonly startedAt: number;
    readonly readings: readonly { readonly id: string; readonly at: number; readonly kilnC: number }[];
    readonly ended: {
      readonly id: string;
      readonly at: number;
      readonly result: "clean" | "residue" | "stopped";
    } | null;
  }[];
  readonly firings: readonly {
    readonly id: string;
    readonly at: number;
    readonly peakC: number;
    readonly holdMin: number;
  }[];
  readonly preheats: readonly { readonly id: string; readonly at: number; readonly shellC: number }[];
  readonly pours: readonly (EntryBodies["metal-poured"] & { readonly id: string; readonly at: number })[];
  readonly outcome: (EntryBodies["outcome-told"] & { readonly id: string; readonly at: number }) | null;
  readonly archived: boolean;
  readonly lastAt: number;
};

export type Room = {
  readonly id: string;
  readonly name: string;
  readonly altitudeM: number;
  readonly retired: boolean;
  readonly last: AirReading | null;
};
export type AirReading = EntryBodies["air-read"] & { readonly id: string; readonly at: number };

export type Bucket = {
  readonly id: string;
  readonly name: string;
  readonly use: "prime" | "backup" | "single" | "seal";
  readonly slurry: string;
  readonly retired: boolean;
  readonly last: (EntryBodies["bucket-read"] & { readonly id: string; readonly at: number }) | null;
};

export type Recipe = EntryBodies["recipe-set"] & {
  readonly id: string;
  /** True while it is one of the starting recipes, unchanged. */
  readonly starting: boolean;
};

/** The shop's own figures; null where the starting value still serves. */
export type Shop = {
  readonly dryingFactor: number | null;
  readonly morMPa: number | null;
};
