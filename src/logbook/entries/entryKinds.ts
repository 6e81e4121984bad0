import type { BucketBodies } from "./bucketBodies.ts";
import type { Entry, EntryType, StreamKind } from "./entry.ts";
import type { MeltBodies, PourBodies, RunBodies } from "./fireBodies.ts";
import type { PieceBodies } from "./pieceBodies.ts";
import type { RecipeBodies, RoomBodies, ShopBodies } from "./shopBodies.ts";

type BodiesOf = {
  readonly piece: PieceBodies;
  readonly room: RoomBodies;
  readonly bucket: BucketBodies;
  readonly recipe: RecipeBodies;
  readonly shop: ShopBodies;
  readonly run: RunBodies;
  readonly melt: MeltBodies;
  readonly pour: PourBodies;
};
type KindOf<T extends EntryType> =
  { readonly [K in StreamKind]: T extends keyof BodiesOf[K] ? K : never }[StreamKind] | AnyKind<T>;
type AnyKind<T extends EntryType> = T extends "entry-struck" ? "any" : never;

/** Which stream an entry type belongs in; strikes go in any. */
export const kindOfType: { readonly [T in EntryType]: KindOf<T> } = {
  "piece-started": "piece",
  "piece-changed": "piece",
  "piece-moved": "piece",
  "pattern-measured": "piece",
  "coat-dipped": "piece",
  "coat-redipped": "piece",
  "coat-skipped": "piece",
  "piece-weighed": "piece",
  "dryness-seen": "piece",
  "hold-passed": "piece",
  "wall-measured": "piece",
  "crack-found": "piece",
  "crack-patched": "piece",
  "wire-wrapped": "piece",
  "review-signed": "piece",
  "burnout-started": "piece",
  "burnout-read": "piece",
  "burnout-ended": "piece",
  dewaxed: "piece",
  "shell-rinsed": "piece",
  "shell-inspected": "piece",
  "shell-fired": "piece",
  "shell-preheated": "piece",
  "shell-out-of-kiln": "piece",
  "pour-begun": "piece",
  "metal-poured": "piece",
  "shell-knocked-out": "piece",
  "piece-finished": "piece",
  "outcome-told": "piece",
  "piece-scrapped": "piece",
  "piece-archived": "piece",
  "note-written": "piece",
  "room-set": "room",
  "air-read": "room",
  "air-logged": "room",
  "bucket-set": "bucket",
  "bucket-read": "bucket",
  "bucket-mixed": "bucket",
  "bucket-topped": "bucket",
  "bucket-lost": "bucket",
  "bucket-counted": "bucket",
  "bucket-passed": "bucket",
  "recipe-set": "recipe",
  "shop-figures-set": "shop",
  "drying-pair-judged": "shop",
  "cup-set": "shop",
  "material-set": "shop",
  "stock-moved": "shop",
  "kiln-set": "shop",
  "furnace-set": "shop",
  "alloy-set": "shop",
  "shrink-measured": "shop",
  "run-planned": "run",
  "run-changed": "run",
  "run-started": "run",
  "run-read": "run",
  "run-logged": "run",
  "run-step-done": "run",
  "run-ended": "run",
  "melt-planned": "melt",
  "melt-started": "melt",
  "melt-read": "melt",
  "melt-ended": "melt",
  "pour-planned": "pour",
  "pour-step-marked": "pour",
  "pour-item-checked": "pour",
  "pour-decided": "pour",
  "pour-ended": "pour",
  "entry-struck": "any",
};

/** Entries of one kind of stream; strikes are of none. */
export type EntryIn<K extends StreamKind> = Extract<Entry, { readonly type: keyof BodiesOf[K] }>;

export const isTypeOfKind = <K extends StreamKind>(type: EntryType, kind: K): type is EntryIn<K>["type"] =>
  kindOfType[type] === kind;

export const isOfKind = <K extends StreamKind>(entry: Entry, kind: K): entry is EntryIn<K> =>
  kindOfType[entry.type] === kind;

/** The entry each of these streams begins with; the others are there from the first word on. */
export const startOfKind = {
  piece: "piece-started",
  run: "run-planned",
  melt: "melt-planned",
  pour: "pour-planned",
} as const satisfies { readonly [K in StreamKind]?: keyof BodiesOf[K] };

export const isStart = (type: EntryType): boolean => Object.values<EntryType>(startOfKind).includes(type);

/** True for a type this version knows; a log from a newer one may hold others. */
export function isKnownType(type: string): type is EntryType {
  return Object.hasOwn(kindOfType, type);
}

const kinds = [
  "piece",
  "room",
  "bucket",
  "recipe",
  "shop",
  "run",
  "melt",
  "pour",
] as const satisfies readonly StreamKind[];

/** The two halves of `piece/<id>`; the id may hold slashes of its own. Null for what is no stream. */
export function parseStream(stream: string): { readonly kind: StreamKind; readonly id: string } | null {
  const cut = stream.indexOf("/");
  const kind = kinds.find((known) => known === stream.slice(0, cut));
  const id = stream.slice(cut + 1);
  return cut < 1 || kind === undefined || id === "" ? null : { kind, id };
}
