import { effective } from "../log/effective.ts";
import type { Entry, EntryOf } from "../entries/entry.ts";
import { isOfKind, type EntryIn } from "../entries/entryKinds.ts";
import type { Pour } from "../fire/fireStates.ts";
import { dated } from "../log/lastOf.ts";

/** The pour its entries tell, or null while nothing that stands plans it. Total: no sequence of entries throws. */
export const foldPour = (id: string, entries: readonly Entry[]): Pour | null =>
  pourFrom(id, effective(entries));

/** The same from the entries that stand, in order. */
export function pourFrom(id: string, entries: readonly Entry[]): Pour | null {
  const standing = entries.filter((entry) => isOfKind(entry, "pour"));
  const plan = standing.find((entry) => entry.type === "pour-planned");
  if (plan === undefined) return null;
  return standing.filter((entry) => entry !== plan).reduce(evolvePour, newPour(id, plan));
}

const newPour = (id: string, planned: EntryOf<"pour-planned">): Pour => ({
  id,
  plan: dated(planned),
  pieceIds: planned.body.pieceIds,
  steps: planned.body.steps,
  marks: [],
  checks: [],
  decided: null,
  ended: null,
  lastAt: planned.at,
});

function evolvePour(before: Pour, entry: EntryIn<"pour">): Pour {
  const pour = { ...before, lastAt: Math.max(before.lastAt, entry.at) };
  switch (entry.type) {
    case "pour-step-marked":
      return { ...pour, marks: [...pour.marks, dated(entry)] };
    case "pour-item-checked":
      return { ...pour, checks: checked(pour.checks, dated(entry)) };
    case "pour-decided":
      return { ...pour, decided: dated(entry) };
    case "pour-ended":
      return { ...pour, ended: pour.ended ?? dated(entry) };
    case "pour-planned":
      return pour;
  }
}

function checked(checks: Pour["checks"], check: Pour["checks"][number]): Pour["checks"] {
  const known = checks.some(({ item }) => item === check.item);
  return known ? checks.map((one) => (one.item === check.item ? check : one)) : [...checks, check];
}
