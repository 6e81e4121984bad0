import type { Entry, EntryOf, EntryType } from "../entries/entry.ts";

/** The last entry of a type among those that stand, which are in order. */
export function lastOf<T extends EntryType>(standing: readonly Entry[], type: T): EntryOf<T> | undefined {
  return standing.findLast((entry): entry is Extract<Entry, { type: T }> & EntryOf<T> => entry.type === type);
}

/** A body under the id and the time of its entry. */
export const dated = <B extends object>({
  id,
  at,
  body,
}: {
  readonly id: string;
  readonly at: number;
  readonly body: B;
}): B & { readonly id: string; readonly at: number } => ({ ...body, id, at });
