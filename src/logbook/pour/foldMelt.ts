import { effective } from "../log/effective.ts";
import type { Entry, EntryOf } from "../entries/entry.ts";
import { isOfKind, type EntryIn } from "../entries/entryKinds.ts";
import type { Melt } from "../fire/fireStates.ts";
import { dated } from "../log/lastOf.ts";

/** The melt its entries tell, or null while nothing that stands plans it. Total: no sequence of entries throws. */
export const foldMelt = (id: string, entries: readonly Entry[]): Melt | null =>
  meltFrom(id, effective(entries));

/** The same from the entries that stand, in order. */
export function meltFrom(id: string, entries: readonly Entry[]): Melt | null {
  const standing = entries.filter((entry) => isOfKind(entry, "melt"));
  const plan = standing.find((entry) => entry.type === "melt-planned");
  if (plan === undefined) return null;
  return standing.filter((entry) => entry !== plan).reduce(evolveMelt, newMelt(id, plan));
}

const newMelt = (id: string, planned: EntryOf<"melt-planned">): Melt => ({
  id,
  plan: dated(planned),
  pieceIds: planned.body.pieceIds,
  startedAt: null,
  hotFurnace: null,
  weighedKg: null,
  readings: [],
  ended: null,
  lastAt: planned.at,
});

function evolveMelt(before: Melt, entry: EntryIn<"melt">): Melt {
  const { id, at } = entry;
  const melt = { ...before, lastAt: Math.max(before.lastAt, at) };
  switch (entry.type) {
    case "melt-started":
      if (melt.startedAt !== null) return melt;
      return {
        ...melt,
        startedAt: at,
        hotFurnace: entry.body.hotFurnace,
        weighedKg: entry.body.weighedKg ?? null,
      };
    case "melt-read":
      return { ...melt, readings: [...melt.readings, { id, at, metalC: entry.body.metalC }] };
    case "melt-ended":
      return { ...melt, ended: melt.ended ?? dated(entry) };
    case "melt-planned":
      return melt;
  }
}
