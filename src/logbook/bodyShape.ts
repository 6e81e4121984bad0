import type { EntryBodies, EntryType } from "./entry.ts";

/** The keys a body must have to be of its type, so that a correction can't put one type's words in another's place. */
const neededKeys: { readonly [T in EntryType]: readonly (keyof EntryBodies[T] & string)[] } = {
  "piece-started": ["plan", "roomId"],
  "piece-changed": ["changes"],
  "piece-moved": ["roomId"],
  "coat-dipped": ["number", "step", "kind", "stuccoId", "bucketId", "roomId", "prewet"],
  "coat-redipped": ["coatId"],
  "coat-skipped": ["step", "reason"],
  "dryness-seen": ["method", "coatId"],
  "wall-measured": ["wallMm"],
  "crack-found": ["kind", "stage", "where"],
  "crack-patched": ["crackId", "how"],
  "wire-wrapped": ["note"],
  "review-signed": ["name", "verdict", "passed", "safety"],
  "burnout-started": [],
  "burnout-read": ["kilnC"],
  "burnout-ended": ["result"],
  "shell-fired": ["peakC", "holdMin"],
  "shell-preheated": ["shellC"],
  "metal-poured": ["metalC", "shellC", "massKg", "outOfKilnMin"],
  "shell-knocked-out": [],
  "piece-finished": ["note"],
  "outcome-told": ["result", "defects"],
  "piece-scrapped": ["reason"],
  "piece-archived": ["archived"],
  "note-written": ["text"],
  "room-set": ["name", "altitudeM"],
  "air-read": ["airC", "rh", "air"],
  "bucket-set": ["name", "use", "slurry"],
  "bucket-read": [],
  "recipe-set": ["name", "coats", "morMPa", "safetyFactor", "floorMm"],
  "shop-figures-set": [],
  "entry-struck": ["struckId", "reason"],
};

/** The first key the body lacks to be of this type; null when it has them all. */
export function lackingKey(type: EntryType, body: object): string | null {
  return neededKeys[type].find((key) => !Object.hasOwn(body, key)) ?? null;
}
