import { sha256Stream } from "./sha256.ts";

/** A file up to this size is read and digested at once; a larger one slice by slice. */
export const mostAtOnce = 33_554_432;
export const sliceBytes = 1_048_576;

/** Takes a file's slices in order, as it is read, and gives the id it is kept by: 64 hex digits. */
export type FileId = {
  readonly feed: (slice: Uint8Array<ArrayBuffer>) => void;
  readonly end: () => Promise<string>;
};

/**
 * Of a file in one slice its SHA-256; of one in several the SHA-256 of its slices' digests one after the other, since the
 * platform's digest takes no stream and this costs less than reading. Large files were once kept by the plain SHA-256 of
 * the whole: where `kept` has ids that this file may have, that is worked out beside it, and is the id when it is one of them.
 */
export function fileId(kept: readonly string[]): FileId {
  const digests: Promise<ArrayBuffer>[] = [];
  const plain = kept.length === 0 ? null : sha256Stream();
  return {
    feed: (slice) => {
      digests.push(crypto.subtle.digest("SHA-256", slice));
      plain?.feed(slice);
    },
    end: async () => {
      const [first, ...others] = await Promise.all(digests);
      if (first === undefined) return hex(await crypto.subtle.digest("SHA-256", new Uint8Array()));
      const before = plain?.end();
      if (before !== undefined && kept.includes(before)) return before;
      if (others.length === 0) return hex(first);
      const all = new Uint8Array(32 * (others.length + 1));
      for (const [n, digest] of [first, ...others].entries()) all.set(new Uint8Array(digest), 32 * n);
      return hex(await crypto.subtle.digest("SHA-256", all));
    },
  };
}

const hex = (digest: ArrayBuffer): string =>
  Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, "0")).join("");
