import { readInto } from "./lentBytes.ts";

/** As much of a file as is asked of the browser at a time, bytes; a single larger part is read as a whole. */
export const windowBytes = 4_000_000;

/** A large file, read through one window that moves along it. */
export type FileWindow = {
  readonly file: Blob;
  /**
   * The bytes from `at` on, fewer where the file ends; lent until `work` ends and not to be kept. One loan at a time:
   * a second waits for the first, so `work` must not ask for another.
   */
  readonly lend: <T>(
    at: number,
    bytes: number,
    work: (bytes: Uint8Array<ArrayBuffer>) => T | Promise<T>,
  ) => Promise<T>;
};

/**
 * Opens a window on a file. Each stretch is read into the same buffer, and its neighbours need no reading of their own:
 * a slice, a stream and a buffer for every photo left the browser garbage faster than it cleared it away.
 */
export function windowOn(file: Blob): FileWindow {
  let buffer = new ArrayBuffer(0);
  let [start, end] = [0, 0];
  const stretch = async (at: number, bytes: number): Promise<Uint8Array<ArrayBuffer>> => {
    const until = Math.min(file.size, at + bytes);
    if (at < start || until > end) {
      const wanted = Math.min(file.size - at, Math.max(bytes, windowBytes));
      [start, end] = [0, 0];
      buffer = await readInto(file.slice(at, at + wanted), buffer);
      [start, end] = [at, at + wanted];
    }
    return new Uint8Array(buffer, at - start, until - at);
  };
  let last: Promise<unknown> = Promise.resolve();
  return {
    file,
    lend: (at, bytes, work) => {
      const loan = last.then(async () => work(await stretch(Math.min(at, file.size), bytes)));
      last = loan.catch(() => undefined);
      return loan;
    },
  };
}
