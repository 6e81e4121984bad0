/** One step of the stored form: takes an entry as version `to − 1` wrote it, gives it as version `to` would have. */
export type Lift = {
  readonly to: number;
  /** What changed, in a few words. */
  readonly name: string;
  readonly lift: (entry: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>;
};

/** Every change of the stored form since version 1, in order, never edited once shipped. */
export const lifts: readonly Lift[] = [
  {
    // Bodies of version 1 stand as they are. The number went up so that a program of that version, which has no
    // words for what came with this one, sees that the log is newer than itself and says so.
    to: 2,
    name: "run, melt, pour, stock and packed readings added",
    lift: (entry) => entry,
  },
];

/** The version this program writes. */
export const schemaVersion = lifts.length + 1;

/** Lifts a stored entry to the present form; see `liftThrough`. */
export const liftEntry = (stored: unknown): unknown => liftThrough(lifts, stored);

/**
 * Walks a stored entry through the lifts it has not seen. What is no entry, or was written by a newer version,
 * comes back as it is: the gate behind this one judges it. Refuses a list whose numbers have a gap.
 */
export function liftThrough(list: readonly Lift[], stored: unknown): unknown {
  for (const [i, { to }] of list.entries())
    if (to !== i + 2) throw new RangeError(`lift ${i} must lead to version ${i + 2}, found ${to}`);
  if (!isRecord(stored)) return stored;
  const version = stored["version"];
  if (typeof version !== "number" || !Number.isInteger(version) || version < 1) return stored;
  return list
    .slice(version - 1)
    .reduce<Readonly<Record<string, unknown>>>(
      (entry, { to, lift }) => ({ ...lift(entry), version: to }),
      stored,
    );
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
