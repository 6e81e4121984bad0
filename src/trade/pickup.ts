import type { Basis } from "./published.ts";
import type { CoatPickup } from "../physics/slurry/stock.ts";
import type { CoatKind } from "./coats.ts";

/** What a drained coat keeps, by kind, until the shop has weighed its own. */
export type Pickup = Omit<CoatPickup, "buildMm"> & { readonly basis: Basis; readonly source: string };

const source =
  "common practice and derived, no source; about a fifth on the lean side; replace by own weighings";

/** Found with a fused silica slurry of this density; slurry scales with density. */
export const pickupGCm3 = 1.68;

export const pickups: Readonly<Record<CoatKind, Pickup>> = {
  prime: { slurryKgM2: 0.42, stuccoKgM2: 0.4, basis: "practice", source },
  intermediate: { slurryKgM2: 0.6, stuccoKgM2: 0.85, basis: "practice", source },
  backup: { slurryKgM2: 0.75, stuccoKgM2: 1.25, basis: "practice", source },
  seal: { slurryKgM2: 0.5, stuccoKgM2: 0, basis: "practice", source },
};

/** Shares lost on the way: drips and the bucket's wall; sand that misses. */
export const materialLoss = {
  slurry: { value: 0.15, basis: "practice", source: "common practice, no source" },
  stucco: { value: 0.1, basis: "practice", source: "common practice, no source" },
} as const;
