import type { EntryType, StreamKind } from "./entry.ts";

/** Which stream an entry type belongs in; strikes go in any. */
export const kindOfType: Readonly<Record<EntryType, StreamKind | "any">> = {
  "piece-started": "piece",
  "piece-changed": "piece",
  "piece-moved": "piece",
  "coat-dipped": "piece",
  "coat-redipped": "piece",
  "coat-skipped": "piece",
  "dryness-seen": "piece",
  "wall-measured": "piece",
  "crack-found": "piece",
  "crack-patched": "piece",
  "wire-wrapped": "piece",
  "review-signed": "piece",
  "burnout-started": "piece",
  "burnout-read": "piece",
  "burnout-ended": "piece",
  "shell-fired": "piece",
  "shell-preheated": "piece",
  "metal-poured": "piece",
  "shell-knocked-out": "piece",
  "piece-finished": "piece",
  "outcome-told": "piece",
  "piece-scrapped": "piece",
  "piece-archived": "piece",
  "note-written": "piece",
  "room-set": "room",
  "air-read": "room",
  "bucket-set": "bucket",
  "bucket-read": "bucket",
  "recipe-set": "recipe",
  "shop-figures-set": "shop",
  "entry-struck": "any",
};

/** True for a type this version knows; a log from a newer one may hold others. */
export function isKnownType(type: string): type is EntryType {
  return Object.hasOwn(kindOfType, type);
}

const kinds: readonly StreamKind[] = ["piece", "room", "bucket", "recipe", "shop"];

/** The two halves of `piece/<id>`; the id may hold slashes of its own. Null for what is no stream. */
export function parseStream(stream: string): { readonly kind: StreamKind; readonly id: string } | null {
  const cut = stream.indexOf("/");
  const kind = kinds.find((known) => known === stream.slice(0, cut));
  const id = stream.slice(cut + 1);
  return cut < 1 || kind === undefined || id === "" ? null : { kind, id };
}
