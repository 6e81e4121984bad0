import { MeshFault } from "../meshFault.ts";
import { scanFloat, textOf } from "./floatScanner.ts";
import { badIndex, indexedSurface } from "./indexed.ts";
import { inWholePieces } from "./pieces.ts";
import { notesOf } from "./reader.ts";
import type { ReadMesh, Reader } from "./reader.ts";

const [backslash, hash, minus, lowerF, lowerV] = [92, 35, 45, 102, 118];
const isLineEnd = (byte: number | undefined): boolean => byte === 10 || byte === 13;

/**
 * OBJ: vertices and faces, with negative indices, texture and normal indices passed over, polygons cut, lines
 * carried on by a backslash. Everything else in it is not shape and is skipped. It names no unit.
 */
export function objReader(sizeBytes: number): Reader<ReadMesh> {
  const surface = indexedSurface({ vertices: sizeBytes / 70, triangles: sizeBytes / 38 });
  const cursor = { at: 0 };
  let corners = new Float64Array(64);

  /** Past blanks and carried-on line ends, to the next thing on this line. */
  function skipBlanks(bytes: Uint8Array, from: number, end: number): number {
    let at = from;
    while (at < end) {
      const byte = bytes[at]!;
      if (byte === 32 || byte === 9) at++;
      else if (byte === backslash && isLineEnd(bytes[at + 1]))
        at += bytes[at + 1] === 13 && bytes[at + 2] === 10 ? 3 : 2;
      else break;
    }
    return at;
  }

  function readVertex(bytes: Uint8Array, from: number, end: number): number {
    let at = skipBlanks(bytes, from, end);
    const x = scanFloat(bytes, at, end, cursor);
    at = skipBlanks(bytes, cursor.at, end);
    const y = scanFloat(bytes, at, end, cursor);
    at = skipBlanks(bytes, cursor.at, end);
    const z = scanFloat(bytes, at, end, cursor);
    if (Number.isNaN(x + y + z)) throw badVertex(bytes, from, end, surface.vertices());
    surface.vertex(x, y, z);
    return cursor.at;
  }

  function readFace(bytes: Uint8Array, from: number, end: number): number {
    let n = 0;
    let at = from;
    for (;;) {
      at = skipBlanks(bytes, at, end);
      const byte = bytes[at];
      if (at >= end || isLineEnd(byte) || byte === hash) break;
      const back = byte === minus;
      if (back) at++;
      let index = 0;
      const first = at;
      for (; at < end; at++) {
        const digit = bytes[at]! - 48;
        if (digit < 0 || digit > 9) break;
        index = index * 10 + digit;
      }
      if (at === first || index === 0 || index > 4e9) throw badCorner(bytes, first, end, surface.vertices());
      while (at < end && bytes[at]! > 32 && bytes[at] !== backslash) at++;
      if (n === corners.length) {
        const wider = new Float64Array(2 * n);
        wider.set(corners);
        corners = wider;
      }
      corners[n++] = back ? surface.vertices() - index : index - 1;
      if (back && index > surface.vertices())
        throw badIndex(surface.vertices() - index - 1, surface.vertices());
    }
    surface.face(corners, n);
    return at;
  }

  function skipLine(bytes: Uint8Array, from: number, end: number): number {
    let at = from;
    for (;;) {
      while (at < end && !isLineEnd(bytes[at])) at++;
      if (at >= end || bytes[at - 1] !== backslash || bytes[from] === hash) return at;
      at = skipBlanks(bytes, at - 1, end);
    }
  }

  const pieces = inWholePieces(afterLastWholeLine, (bytes, end) => {
    let at = 0;
    while (at < end) {
      const byte = bytes[at]!;
      if (byte <= 32) {
        at++;
        continue;
      }
      const alone =
        at + 1 < end && (bytes[at + 1] === 32 || bytes[at + 1] === 9 || bytes[at + 1] === backslash);
      if (byte === lowerV && alone) at = readVertex(bytes, at + 1, end);
      else if (byte === lowerF && alone) at = readFace(bytes, at + 1, end);
      at = skipLine(bytes, at, end);
    }
  });

  function end(): ReadMesh {
    pieces.feed(Uint8Array.of(10));
    pieces.feed(Uint8Array.of(10));
    return {
      ...surface.finish(),
      unit: null,
      format: "obj",
      notes: notesOf({ "polygons-split": surface.polygons(), "facets-dropped": surface.dropped() }),
    };
  }

  return { feed: pieces.feed, end };
}

/** Just after the last line end that no backslash carries on. */
function afterLastWholeLine(bytes: Uint8Array): number {
  for (let at = bytes.length; at > 0; at--) {
    if (!isLineEnd(bytes[at - 1])) continue;
    // A return may be the first half of a line end whose second half is still to come.
    if (at === bytes.length && bytes[at - 1] === 13) continue;
    let before = at - 1;
    if (bytes[before] === 10 && bytes[before - 1] === 13) before--;
    if (bytes[before - 1] !== backslash) return at;
  }
  return 0;
}

const badVertex = (bytes: Uint8Array, from: number, end: number, vertices: number): MeshFault =>
  new MeshFault({
    code: "bad-number",
    found: `"${lineAt(bytes, from, end)}" for vertex ${vertices + 1}`,
    expected: "three numbers with a decimal point",
    remedy: "export the pattern again, best as binary STL",
  });

const badCorner = (bytes: Uint8Array, from: number, end: number, vertices: number): MeshFault =>
  new MeshFault({
    code: "bad-index",
    found: `the corner "${textOf(bytes, from, Math.min(end, from + 20)).split(/\s/)[0]}" of a face`,
    expected: `a vertex number 1–${vertices} or one counted back`,
    remedy: "export the pattern again; the file is damaged",
  });

const lineAt = (bytes: Uint8Array, from: number, end: number): string =>
  (textOf(bytes, from, Math.min(end, from + 60)).split(/[\r\n]/)[0] ?? "").trim();
