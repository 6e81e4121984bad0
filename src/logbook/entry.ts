import type { AirClass } from "../trade/airClasses.ts";
import type { CoatKind, RecipeBody } from "../trade/coats.ts";
import type { GeometryClass } from "../trade/geometryClasses.ts";
import type { PatternMaterial } from "../trade/patternMaterials.ts";

/** One immutable line of the log. `at` is when it happened, `recordedAt` when it was written; both epoch ms. */
export type Entry = { readonly [T in EntryType]: EntryOf<T> }[EntryType];

export type EntryOf<T extends EntryType> = {
  readonly id: string;
  readonly stream: string;
  readonly type: T;
  readonly at: number;
  readonly recordedAt: number;
  /** IANA zone of the device when it wrote the line. */
  readonly zone: string;
  readonly device: string;
  /** Schema version the body was written in; older ones are lifted on read. */
  readonly version: number;
  readonly body: EntryBodies[T];
};

export type EntryType = keyof EntryBodies;

export type StreamKind = "piece" | "room" | "bucket" | "recipe" | "shop";

/** `piece/<id>`, `room/<id>`, `bucket/<id>`, `recipe/<id>`; the shop has one stream, `shop/own`. */
export const streamOf = (kind: StreamKind, id: string): string => `${kind}/${id}`;
export const shopStream = "shop/own";

export type WallPart =
  | { readonly kind: "flat"; readonly widthMm: number; readonly lengthMm: number }
  | { readonly kind: "round"; readonly diameterMm: number };

/** What is known of a piece beyond its name. A key that is absent is not known; null in a change clears it. */
export type PiecePlan = {
  readonly name: string;
  readonly material?: PatternMaterial | undefined;
  readonly alloyId?: string | undefined;
  readonly metalKg?: number | undefined;
  readonly metalLitre?: number | undefined;
  readonly headM?: number | undefined;
  readonly part?: WallPart | undefined;
  readonly areaM2?: number | undefined;
  readonly recipeId?: string | undefined;
  readonly geometry?: GeometryClass | undefined;
  readonly note?: string | undefined;
};
export type PlanChanges = { readonly [K in keyof PiecePlan]?: PiecePlan[K] | null };

/** What the maker was told and accepted with the same tap: a coat over one that was not dry. */
export type AcceptedDamp = {
  readonly coatId: string;
  /** Water still to go, as a share of what had to go, 0–1; null when it could not be reckoned. */
  readonly leftShare: number | null;
};

export type CrackKind = "hairline" | "open" | "chip" | "lift";
export type CrackStage = "coating" | "burnout" | "firing" | "other";

export type EntryBodies = {
  // piece
  readonly "piece-started": { readonly plan: PiecePlan; readonly roomId: string };
  readonly "piece-changed": { readonly changes: PlanChanges };
  readonly "piece-moved": { readonly roomId: string };
  readonly "coat-dipped": {
    /** 1 for the first coat on the piece, counting every coat that stands. */
    readonly number: number;
    /** Place in the recipe, 0-based; null for a coat beyond or beside the recipe. */
    readonly step: number | null;
    readonly kind: CoatKind;
    readonly stuccoId: string | null;
    readonly bucketId: string | null;
    readonly roomId: string;
    readonly prewet: boolean;
    readonly drainS?: number | undefined;
    readonly dipId?: string | undefined;
    readonly acceptedDamp?: AcceptedDamp | undefined;
    readonly note?: string | undefined;
    readonly photos?: readonly string[] | undefined;
  };
  /** A second dip of the coat that is outermost: more water, no new layer. */
  readonly "coat-redipped": { readonly coatId: string; readonly note?: string | undefined };
  readonly "coat-skipped": { readonly step: number; readonly reason: string };
  readonly "dryness-seen":
    | { readonly method: "touch"; readonly verdict: "dry" | "damp" | "wet"; readonly coatId: string }
    | { readonly method: "weight"; readonly massG: number; readonly coatId: string }
    | { readonly method: "surface"; readonly surfaceC: number; readonly coatId: string };
  readonly "wall-measured": { readonly wallMm: number; readonly where?: string | undefined };
  readonly "crack-found": {
    readonly kind: CrackKind;
    readonly stage: CrackStage;
    readonly where: string;
    readonly photos?: readonly string[] | undefined;
  };
  readonly "crack-patched": { readonly crackId: string; readonly how: string };
  readonly "wire-wrapped": { readonly note: string };
  readonly "review-signed": {
    readonly name: string;
    readonly verdict: "hold" | "watch" | "clear";
    /** Rules at hold that were passed, each with the written reason. */
    readonly passed: readonly { readonly rule: string; readonly reason: string }[];
    readonly safety: number | null;
  };
  readonly "burnout-started": { readonly note?: string | undefined };
  readonly "burnout-read": { readonly kilnC: number; readonly note?: string | undefined };
  readonly "burnout-ended": {
    readonly result: "clean" | "residue" | "stopped";
    readonly note?: string | undefined;
  };
  readonly "shell-fired": { readonly peakC: number; readonly holdMin: number };
  readonly "shell-preheated": { readonly shellC: number; readonly note?: string | undefined };
  readonly "metal-poured": {
    readonly metalC: number | null;
    readonly shellC: number | null;
    readonly massKg: number | null;
    /** Minutes from leaving the kiln to metal. */
    readonly outOfKilnMin: number | null;
    readonly note?: string | undefined;
  };
  readonly "shell-knocked-out": { readonly note?: string | undefined };
  readonly "piece-finished": { readonly note: string };
  readonly "outcome-told": {
    readonly result: "sound" | "flawed" | "lost";
    readonly defects: readonly string[];
    readonly note?: string | undefined;
    readonly photos?: readonly string[] | undefined;
  };
  readonly "piece-scrapped": { readonly reason: string };
  readonly "piece-archived": { readonly archived: boolean };
  readonly "note-written": { readonly text: string; readonly photos?: readonly string[] | undefined };
  // room
  readonly "room-set": {
    readonly name: string;
    readonly altitudeM: number;
    readonly retired?: boolean | undefined;
  };
  readonly "air-read": {
    readonly airC: number;
    readonly rh: number;
    readonly air: AirClass;
    readonly note?: string | undefined;
  };
  // bucket
  readonly "bucket-set": {
    readonly name: string;
    readonly use: "prime" | "backup" | "single" | "seal";
    readonly slurry: string;
    readonly retired?: boolean | undefined;
  };
  readonly "bucket-read": {
    readonly cup?: string | undefined;
    readonly cupS?: number | undefined;
    readonly slurryC?: number | undefined;
    readonly densityGCm3?: number | undefined;
    readonly pH?: number | undefined;
    readonly note?: string | undefined;
  };
  // recipe
  readonly "recipe-set": RecipeBody & {
    readonly copiedFrom?: string | undefined;
    readonly retired?: boolean | undefined;
  };
  // shop
  readonly "shop-figures-set": {
    /** Own drying factor: real hours divided by the model's. */
    readonly dryingFactor?: number | null | undefined;
    readonly morMPa?: number | null | undefined;
  };
  // any stream
  readonly "entry-struck": {
    readonly struckId: string;
    readonly reason: string;
    readonly replacedBy?: string | undefined;
  };
};

/** The order of a log: when it happened, then when it was written, then the id. */
export function compareEntries(
  a: Pick<Entry, "at" | "recordedAt" | "id">,
  b: Pick<Entry, "at" | "recordedAt" | "id">,
): number {
  return a.at - b.at || a.recordedAt - b.recordedAt || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);
}
