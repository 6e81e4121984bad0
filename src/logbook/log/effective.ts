import type { Entry, EntryOf } from "../entries/entry.ts";
import { compareEntries } from "../entries/entry.ts";
import { isKnownType } from "../entries/entryKinds.ts";

type Strike = EntryOf<"entry-struck">;

/** What stands of a log, and where a struck id went. */
export type Settled = {
  /** In order of the log, without what was struck and without the strikes themselves. */
  readonly standing: readonly Entry[];
  /** The strike that took each struck entry out, by the struck entry's id. */
  readonly strikes: ReadonlyMap<string, Strike>;
  /** The id that now stands for this one: a corrected entry's replacement, else the id itself. */
  readonly follow: (id: string) => string;
};

/**
 * Settles strikes, and strikes of strikes, whatever order the entries come in.
 *
 * A strike counts only in its own stream and only while no counting strike strikes it, so striking a strike
 * restores what it took. Strikes that strike each other in a ring count for nothing. Entries given twice count
 * once; entries of a type this version does not know are left out.
 */
export const settle = (entries: readonly Entry[]): Settled =>
  settleOrdered([...entries].sort(compareEntries));

/** The same for entries that are in the order of the log already. */
export function settleOrdered(entries: readonly Entry[]): Settled {
  const byId = new Map<string, Entry>();
  for (const entry of entries) if (isKnownType(entry.type) && !byId.has(entry.id)) byId.set(entry.id, entry);
  const ordered = [...byId.values()];
  const aimed = ordered.filter(
    (entry): entry is Strike =>
      entry.type === "entry-struck" && byId.get(entry.body.struckId)?.stream === entry.stream,
  );
  const strikes = countingStrikes(aimed);
  const replacedBy = (id: string): string | undefined => strikes.get(id)?.body.replacedBy;
  return {
    standing: ordered.filter(({ id, type }) => type !== "entry-struck" && !strikes.has(id)),
    strikes,
    follow: (id) => followed(id, replacedBy),
  };
}

/** The entries that stand, in order of the log: no struck ones, no strikes. */
export const effective = (entries: readonly Entry[]): readonly Entry[] => settle(entries).standing;

/** Rounds of "a strike that nothing open strikes counts, and voids its mark"; what is left over is a ring. */
function countingStrikes(strikes: readonly Strike[]): ReadonlyMap<string, Strike> {
  const counting = new Map<string, Strike>();
  let open = strikes;
  for (;;) {
    const struck = new Set(open.map(({ body }) => body.struckId));
    const free = open.filter(({ id }) => !struck.has(id));
    if (free.length === 0) return counting;
    for (const strike of free)
      if (!counting.has(strike.body.struckId)) counting.set(strike.body.struckId, strike);
    open = open.filter(({ id }) => struck.has(id) && !counting.has(id));
  }
}

function followed(id: string, replacedBy: (id: string) => string | undefined): string {
  const seen = new Set<string>();
  let at = id;
  for (;;) {
    const next = replacedBy(at);
    if (next === undefined || seen.has(next)) return at;
    seen.add(next);
    at = next;
  }
}
