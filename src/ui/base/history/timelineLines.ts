import { effective } from "../../../logbook/log/effective.ts";
import { compareEntries, type Entry, type EntryOf } from "../../../logbook/entries/entry.ts";

export type TimelineLine = {
  readonly entry: Entry;
  /** The strike that stands against it; null while the entry itself stands. */
  readonly strike: EntryOf<"entry-struck"> | null;
};

/** The log newest first; a strike is told with the entry it strikes, not as a line of its own. */
export function timelineLines(entries: readonly Entry[]): readonly TimelineLine[] {
  const standing = effective(entries);
  // In the log's order the last strike of an entry is the one that stands, if the entry does not.
  const strikes = new Map<string, EntryOf<"entry-struck">>();
  for (const entry of entries) {
    if (entry.type === "entry-struck") strikes.set(entry.body.struckId, entry);
  }
  const stands = new Set(standing.map((entry) => entry.id));
  return entries
    .filter((entry) => entry.type !== "entry-struck")
    .toSorted((a, b) => compareEntries(b, a))
    .map((entry) => ({ entry, strike: stands.has(entry.id) ? null : (strikes.get(entry.id) ?? null) }));
}
