import type { EntryType } from "../entries/entry.ts";
import { isTypeOfKind, type EntryIn } from "../entries/entryKinds.ts";
import type { Phase } from "../piece/piece.ts";

const coatable: readonly Phase[] = ["coating", "reviewed", "dewaxed", "burnt-out", "fired", "preheated"];
const unpoured: readonly Phase[] = [...coatable, "burnout"];
/** A second pour into the same shell has been known. */
const pourable: readonly Phase[] = [...unpoured, "poured"];
const filled: readonly Phase[] = ["poured", "knocked-out", "finished"];

/**
 * The phases an entry may fall in; null where any will do. The log is the truth, so only what can't have been is
 * refused: a coat round metal, a knock-out before a pour. A step left out is for the rules to warn of.
 */
const allowedPhases: { readonly [T in EntryIn<"piece">["type"]]: readonly Phase[] | null } = {
  "piece-started": null,
  "piece-changed": null,
  "piece-moved": null,
  "pattern-measured": null,
  "coat-dipped": coatable,
  "coat-redipped": coatable,
  "coat-skipped": coatable,
  "piece-weighed": coatable,
  "dryness-seen": unpoured,
  "hold-passed": unpoured,
  "wall-measured": null,
  "crack-found": null,
  "crack-patched": unpoured,
  "patch-dried": unpoured,
  "wire-wrapped": unpoured,
  "review-signed": ["coating", "reviewed"],
  "burnout-started": coatable,
  // A crack found in the kiln sends the piece back to coating while the kiln still runs.
  "burnout-read": ["burnout", "coating"],
  "burnout-ended": ["burnout", "coating"],
  dewaxed: ["coating", "reviewed", "dewaxed", "burnout", "preheated"],
  "shell-rinsed": coatable,
  "shell-inspected": unpoured,
  "shell-fired": unpoured,
  "shell-preheated": unpoured,
  "shell-out-of-kiln": pourable,
  "pour-begun": pourable,
  "metal-poured": pourable,
  "shell-knocked-out": ["poured"],
  "piece-finished": ["knocked-out"],
  "outcome-told": [...filled, "scrapped"],
  "piece-scrapped": [...unpoured, ...filled],
  "piece-archived": null,
  "note-written": null,
};

/** The phases this entry could fall in, when it can't fall in `phase`; null when it can. */
export function phasesInstead(type: EntryType, phase: Phase): readonly Phase[] | null {
  const allowed = isTypeOfKind(type, "piece") ? allowedPhases[type] : null;
  return allowed === null || allowed.includes(phase) ? null : allowed;
}
