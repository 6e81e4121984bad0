import { bodyFault } from "../entries/checkBody.ts";
import { effective } from "./effective.ts";
import type { Entry } from "../entries/entry.ts";

/** A number of the log outside what the sums take, with the line it stands in. `key` is the field as the checks name it. */
export type LeftOut = {
  readonly entryId: string;
  readonly at: number;
  readonly key: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
};

/**
 * The lines that stand of a log and hold a number the sums leave out, oldest first, the first such number of each.
 * A form never takes one; it comes by a backup, a file written by hand, or limits that were wider once.
 */
export function leftOutOf(entries: readonly Entry[]): readonly LeftOut[] {
  return effective(entries).flatMap((entry): readonly LeftOut[] => {
    const fault = bodyFault(entry.type, entry.body);
    if (fault?.code !== "out-of-range") return [];
    const { field: key, found: value, low, high } = fault;
    return [{ entryId: entry.id, at: entry.at, key, value, low, high }];
  });
}
