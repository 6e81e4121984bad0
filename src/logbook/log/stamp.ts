import type { Entry } from "../entries/entry.ts";
import { textHash } from "./textHash.ts";

/** Sums of two of these stay whole numbers. */
const span = 2 ** 52;

/**
 * The stamp of a stream: changes with every line that joins it or leaves it, and is the same for the same lines in
 * whatever order they came, on every device and after every rebuild. A line never changes, so id and times stand for it
 * (the demo comes again under the same ids at another time). Two logs of one stamp: one chance in 4.5e15.
 */
export const stampOf = (entries: readonly Line[]): number => entries.reduce(stampWith, 0);

/** The stamp with one line more. */
export const stampWith = (stamp: number, { id, at, recordedAt }: Line): number => {
  const text = `${id} ${at} ${recordedAt}`;
  const high = mixed(textHash(text, 0x811c9dc5));
  const low = mixed(textHash(text, 0x1234567));
  return (stamp + high * 2 ** 20 + (low >>> 12)) % span;
};

type Line = Pick<Entry, "id" | "at" | "recordedAt">;

/** Spreads each bit over all: the sum of two like ids must not be that of two others. The finalizer of MurmurHash3. */
function mixed(hash: number): number {
  let h = hash;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
}
