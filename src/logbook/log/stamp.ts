import type { Entry } from "../entries/entry.ts";
import { textHash } from "./textHash.ts";

/** Stamps and their sums stay below this; sums of two of these are still whole numbers. */
export const stampSpan = 2 ** 52;

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
  return (stamp + wide(high, low)) % stampSpan;
};

const wide = (high: number, low: number): number => high * 2 ** 20 + (low >>> 12);

const scratch = new DataView(new ArrayBuffer(8));

/** A stamp of numbers and a word, the same on every device. It is kept in the log, so what it gives never changes. */
export function stampOfNumbers(numbers: readonly number[], word: string): number {
  let high = textHash(word, 0x811c9dc5);
  let low = textHash(word, 0x1234567);
  for (const number of numbers) {
    scratch.setFloat64(0, number);
    for (const half of [scratch.getUint32(0), scratch.getUint32(4)]) {
      high = mixed(high ^ half);
      low = mixed((low + Math.imul(half, 0x9e3779b1)) >>> 0);
    }
  }
  return wide(high, low) % stampSpan;
}

type Line = Pick<Entry, "id" | "at" | "recordedAt">;

/** Spreads each bit over all: the sum of two like ids must not be that of two others. The finalizer of MurmurHash3. */
function mixed(hash: number): number {
  let h = hash;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
}
