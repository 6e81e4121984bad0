import { MeshFault } from "../meshFault.ts";
import { asWelded, createWelder } from "../weld.ts";
import { scanFloat, textOf } from "./floatScanner.ts";
import { growingIndices, makeRoom } from "./growing.ts";
import { cutShort, noFaces, outOfRange, refuseTooMany, widestCoordinate } from "./limits.ts";
import { afterLastLine, inWholePieces } from "./pieces.ts";
import { notesOf } from "./reader.ts";
import type { ReadMesh, Reader } from "./reader.ts";

/** About what one facet takes in text, to guess the room wanted. */
const bytesPerFacet = 220;
const batchCorners = 24_576;
const [lowerS, lowerF, lowerV, lowerE] = [115, 102, 118, 101];

/**
 * Text STL, word by word: indents and case do not matter, normals are not read. Facets are counted one by one: one of
 * more than three corners is fanned, one of fewer left out, both noted.
 */
export function stlTextReader(sizeBytes: number): Reader<ReadMesh> {
  const bits = new Int32Array(3 * batchCorners);
  const floats = new Float32Array(bits.buffer);
  const welder = createWelder(Math.min(5e6, sizeBytes / bytesPerFacet) * 0.52);
  const idx = growingIndices(Math.min(15e6, (3 * sizeBytes) / bytesPerFacet));
  const cursor = { at: 0 };
  const first = new Float64Array(3);
  const last = new Float64Array(3);
  const corner = new Float64Array(3);
  let batched = 0;
  let missing = 0;
  let corners = 0;
  const counted = { facets: 0, polygons: 0, dropped: 0, ended: 0 };

  function flush(): void {
    makeRoom(idx, batched);
    welder.add(bits, batched, idx.data, idx.n);
    idx.n += batched;
    batched = 0;
    refuseTooMany(idx.n / 3);
  }

  function triangle(): void {
    if (batched + 3 > batchCorners) flush();
    const at = 3 * batched;
    for (let k = 0; k < 3; k++) {
      floats[at + k] = first[k]!;
      floats[at + 3 + k] = last[k]!;
      floats[at + 6 + k] = corner[k]!;
    }
    batched += 3;
  }

  function closeCorner(): void {
    if (corners >= 2) triangle();
    const to = corners === 0 ? first : last;
    for (let k = 0; k < 3; k++) to[k] = corner[k]!;
    corners++;
  }

  function closeFacet(): void {
    if (missing > 0) throw badNumber("the end of the facet", counted.facets);
    if (corners === 0) return;
    counted.facets++;
    if (corners > 3) counted.polygons++;
    if (corners < 3) counted.dropped++;
    corners = 0;
  }

  function coordinate(bytes: Uint8Array, from: number, end: number): number {
    const value = scanFloat(bytes, from, end, cursor);
    if (!(Math.abs(value) < widestCoordinate)) {
      const text = textOf(bytes, from, cursor.at);
      if (Number.isNaN(value) && !/^[+-]?(nan|inf)/i.test(text)) throw badNumber(`"${text}"`, counted.facets);
      throw outOfRange(value, `in facet ${counted.facets + 1}`);
    }
    corner[3 - missing] = value;
    missing--;
    if (missing === 0) closeCorner();
    return cursor.at;
  }

  /** Acts on the word at `from` and gives where to go on. */
  function word(bytes: Uint8Array, from: number, end: number): number {
    let to = from + 1;
    while (to < end && bytes[to]! > 32) to++;
    const size = to - from;
    const letter = bytes[from]! | 32;
    if (letter === lowerV && size === 6) missing = 3;
    else if (letter === lowerF && size === 5) closeFacet();
    else if (letter === lowerE && size === 8 && (bytes[from + 3]! | 32) === lowerF) closeFacet();
    else if (
      (letter === lowerS && size === 5) ||
      (letter === lowerE && size === 8 && isEndSolid(bytes, from))
    ) {
      closeFacet();
      if (letter === lowerE) counted.ended++;
      while (to < end && bytes[to] !== 10 && bytes[to] !== 13) to++;
    }
    return to;
  }

  const pieces = inWholePieces(afterLastLine, (bytes, end) => {
    let at = 0;
    while (at < end) {
      if (bytes[at]! <= 32) at++;
      else if (missing > 0) at = coordinate(bytes, at, end);
      else at = word(bytes, at, end);
    }
  });

  function end(): ReadMesh {
    pieces.feed(Uint8Array.of(10));
    if (missing > 0 || corners > 0)
      throw cutShort(`an end inside facet ${counted.facets + 1}`, "whole facets and endsolid");
    flush();
    if (idx.n === 0)
      throw noFaces(counted.facets === 0 ? "a text STL without a facet" : "no facet of three corners");
    return asWelded({
      pos: welder.positions(),
      idx: idx.data.slice(0, idx.n),
      unit: null,
      format: "stl-text",
      notes: notesOf({
        "polygons-split": counted.polygons,
        "facets-dropped": counted.dropped,
        "end-missing": counted.ended === 0 ? 1 : 0,
      }),
    });
  }

  return { feed: pieces.feed, end };
}

const isEndSolid = (bytes: Uint8Array, from: number): boolean => (bytes[from + 3]! | 32) === lowerS;

const badNumber = (found: string, facets: number): MeshFault =>
  new MeshFault({
    code: "bad-number",
    found: `${found} in facet ${facets + 1}`,
    expected: "three numbers with a decimal point after each vertex",
    remedy: "export the pattern again, best as binary STL",
  });
