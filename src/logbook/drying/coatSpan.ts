import type { WetLayer as WetCoat } from "../../physics/drying/coat.ts";
import type { ShareEvidence } from "../../physics/evidence/shareEvidence.ts";
import type { Said, Unsaid } from "./coatSaid.ts";
import type { Stay } from "../air/hanging.ts";
import type { DrynessSeen } from "../piece/piece.ts";
import type { SlowPlaces } from "./slowPlace.ts";

/** What weighings of a coat are held against. */
export type CoatWeights = {
  /** The piece before this dip, g; null where it was not weighed, or did not hang dry then. */
  readonly dryG: number | null;
  readonly waterFraction: number;
  /** Water of the coat by area and recipe, g; null where the area is not known. */
  readonly byAreaG: number | null;
  /** Surface of the piece; null where it is not known. */
  readonly areaM2: number | null;
  /** A seal coat: what is drained is all there is. */
  readonly hasStucco: boolean;
};

/** A coat since its dip, or its last further dip, as its observations are read against it. */
export type CoatSpan = {
  readonly wet: WetCoat;
  /** When the slurry went on, epoch ms. */
  readonly from: number;
  readonly stays: readonly Stay[];
  /** Oldest first, none before `from`. */
  readonly seen: readonly DrynessSeen[];
  readonly weights: CoatWeights;
  readonly places: SlowPlaces;
  /** Nine in ten coats of this kind dry faster than by this factor, before anything is seen of this one. */
  readonly slowFactor: number;
};

/** An observation that speaks of the water left, with what it said. */
export type UsedObservation = {
  readonly seen: DrynessSeen;
  readonly said: Said;
  readonly evidence: ShareEvidence;
};
/** One that says nothing, with the reason. */
export type UnusedObservation = { readonly seen: DrynessSeen; readonly why: Unsaid };
