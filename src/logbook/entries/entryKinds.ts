import { bodiesByKind } from "./allBodies.ts";
import type { Entry, EntryType, StreamKind } from "./entry.ts";

type ByKind = typeof bodiesByKind;
type KindOf<T extends EntryType> = {
  readonly [K in keyof ByKind]: T extends keyof ByKind[K] ? K : never;
}[keyof ByKind];

/** Which stream an entry type belongs in; strikes go in any. */
export const kindOfType = Object.fromEntries(
  Object.entries(bodiesByKind).flatMap(([kind, bodies]) => Object.keys(bodies).map((type) => [type, kind])),
) as unknown as { readonly [T in EntryType]: KindOf<T> };

/** Entries of one kind of stream; strikes are of none. */
export type EntryIn<K extends StreamKind> = Extract<Entry, { readonly type: keyof ByKind[K] }>;

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
} as const satisfies { readonly [K in StreamKind]?: keyof ByKind[K] };

export const isStart = (type: EntryType): boolean => Object.values<EntryType>(startOfKind).includes(type);

/** True for a type this version knows; a log from a newer one may hold others. */
export function isKnownType(type: string): type is EntryType {
  return Object.hasOwn(kindOfType, type);
}

const kinds = Object.keys(bodiesByKind).filter((kind): kind is StreamKind => kind !== "any");

/** The two halves of `piece/<id>`; the id may hold slashes of its own. Null for what is no stream. */
export function parseStream(stream: string): { readonly kind: StreamKind; readonly id: string } | null {
  const cut = stream.indexOf("/");
  const kind = kinds.find((known) => known === stream.slice(0, cut));
  const id = stream.slice(cut + 1);
  return cut < 1 || kind === undefined || id === "" ? null : { kind, id };
}
