import type { CoatKind } from "./coats.ts";
import type { Published } from "./published.ts";

/**
 * Hours a coat dries at the least before the next one goes on, whatever the room's air says. A strength test backs
 * the four hours of a backup: Dooley & Everden, INCAST Nov 2020 p. 20, green strength + 55 % from 1 h to 4 h between
 * coats, flat after.
 */
export const leastDryH = {
  prime: { value: 2, basis: "practice", source: "common practice, no source; 1.5–4 h" },
  intermediate: { value: 3, basis: "practice", source: "common practice, no source; 2–4 h" },
  backup: { value: 4, basis: "practice", source: "common practice, no source; 3–8 h" },
  seal: { value: 4, basis: "judgement", source: "judgement: between coats a seal dip dries like a backup" },
} as const satisfies Readonly<Record<CoatKind, Published>>;

/** How a shell's slowest place counts for its last drying. */
export type FinalDryPlace = "open" | "deep" | "blind";

/**
 * Hours a last coat hangs before fire at the least: `dryAirH` in air no damper than `practice.finalDryRh`, else
 * `dampAirH`. A corner counts as open, a hollow or a thick wall as deep.
 */
export const finalDryH = {
  open: {
    dryAirH: {
      value: 12,
      basis: "practice",
      source: "common practice, no source; 12–24 h open, 24–72 h deep or thick",
    },
    dampAirH: { value: 24, basis: "practice", source: "common practice, no source; 12–24 h open" },
  },
  deep: {
    dryAirH: { value: 24, basis: "practice", source: "common practice, no source; 24–72 h deep or thick" },
    dampAirH: { value: 72, basis: "practice", source: "common practice, no source; 24–72 h deep or thick" },
  },
  blind: {
    dryAirH: { value: 48, basis: "practice", source: "common practice, no source; 24–72 h deep or thick" },
    dampAirH: { value: 72, basis: "practice", source: "common practice, no source; 24–72 h deep or thick" },
  },
} as const satisfies Readonly<
  Record<FinalDryPlace, { readonly dryAirH: Published; readonly dampAirH: Published }>
>;
