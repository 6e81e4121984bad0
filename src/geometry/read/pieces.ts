import { MeshFault } from "../meshFault.ts";
import { longestPiece } from "./limits.ts";

/**
 * Passes slices on in whole pieces. `wholeUntil` says where the last whole piece in the bytes ends; what follows is
 * kept and put before the next slice. A MeshFault when one piece grows beyond all reason.
 */
export function inWholePieces(
  wholeUntil: (bytes: Uint8Array) => number,
  take: (bytes: Uint8Array, end: number) => void,
): { readonly feed: (bytes: Uint8Array) => void } {
  let kept = new Uint8Array(0);
  return {
    feed: (bytes) => {
      const joined = kept.length === 0 ? bytes : join(kept, bytes);
      const end = wholeUntil(joined);
      if (joined.length - end > longestPiece)
        throw new MeshFault({
          code: "too-much-inside",
          found: `${joined.length - end} bytes without an end of line`,
          expected: `lines of at most ${longestPiece} bytes`,
          remedy: "export the pattern again, or in another format",
        });
      if (end > 0) take(joined, end);
      kept = joined.slice(end);
    },
  };
}

export function join(first: Uint8Array, second: Uint8Array): Uint8Array<ArrayBuffer> {
  const both = new Uint8Array(first.length + second.length);
  both.set(first);
  both.set(second, first.length);
  return both;
}

/** Just after the last line end, 0 when there is none. */
export function afterLastLine(bytes: Uint8Array): number {
  let at = bytes.length;
  while (at > 0 && bytes[at - 1] !== 10 && bytes[at - 1] !== 13) at--;
  return at;
}
