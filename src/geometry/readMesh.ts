import { MeshFault } from "./meshFault.ts";
import { objReader } from "./read/obj.ts";
import { join } from "./read/pieces.ts";
import { plyReader } from "./read/ply.ts";
import type { ReadMesh, Reader } from "./read/reader.ts";
import { sniffBytes, sniffFormat } from "./read/sniff.ts";
import { stlBinaryReader } from "./read/stlBinary.ts";
import { stlTextReader } from "./read/stlText.ts";
import { threeMfReader } from "./read/threeMf.ts";

/**
 * Reads the file of a pattern: STL (binary or text), OBJ, PLY (text or binary) or 3MF, told apart by content, then by
 * name. Gives points welded, in the file's own unit and place; `unit` is null where the format names none. Throws a
 * MeshFault for a file that cannot be trusted.
 *
 * Fed slice by slice in order: as soon as the first kilobyte is there the format is chosen by it. A slice may be reused
 * after `feed` returns. `sizeBytes` is the whole file's.
 */
export function openMeshReader(name: string, sizeBytes: number): Reader<ReadMesh> {
  let head: Uint8Array | null = new Uint8Array(0);
  let reader: Reader<ReadMesh> | null = null;

  function open(first: Uint8Array): Reader<ReadMesh> {
    const format = sniffFormat(first, name, sizeBytes);
    const opened = readerOf(format, sizeBytes);
    head = null;
    reader = opened;
    opened.feed(format === "obj" || format === "stl-text" ? first.subarray(markBytes(first)) : first);
    return opened;
  }

  return {
    feed: (bytes) => {
      if (reader !== null) return reader.feed(bytes);
      const first = head === null || head.length === 0 ? bytes : join(head, bytes);
      if (first.length < sniffBytes) head = first.slice();
      else open(first);
    },
    end: () => {
      if (reader !== null) return reader.end();
      if (head === null || head.length === 0)
        throw new MeshFault({
          code: "empty-file",
          found: "a file of 0 bytes",
          expected: "a mesh",
          remedy: "copy or export it again",
        });
      return open(head).end();
    },
  };
}

function readerOf(format: ReturnType<typeof sniffFormat>, sizeBytes: number): Reader<ReadMesh> {
  switch (format) {
    case "stl-binary":
      return stlBinaryReader(sizeBytes);
    case "stl-text":
      return stlTextReader(sizeBytes);
    case "obj":
      return objReader(sizeBytes);
    case "ply":
      return plyReader(sizeBytes);
    case "3mf":
      return threeMfReader();
  }
}

/** Length of a UTF-8 mark before the text. */
const markBytes = (head: Uint8Array): number =>
  head[0] === 0xef && head[1] === 0xbb && head[2] === 0xbf ? 3 : 0;
