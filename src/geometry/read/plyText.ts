import { MeshFault } from "../meshFault.ts";
import { scanFloat, textOf } from "./floatScanner.ts";
import type { IndexedSurface } from "./indexed.ts";
import { cutShort } from "./limits.ts";
import { afterLastLine, inWholePieces } from "./pieces.ts";
import { cornersIn } from "./plyHeader.ts";
import type { PlyElement, PlyHeader } from "./plyHeader.ts";
import type { Reader } from "./reader.ts";

/** The body of a text PLY, one line an item. */
export function plyTextBody(header: PlyHeader, surface: IndexedSurface): Reader<void> {
  const cursor = { at: 0 };
  let element = 0;
  let item = 0;
  let corners = new Float64Array(64);

  function number(bytes: Uint8Array, from: number, end: number): number {
    let at = from;
    while (at < end && (bytes[at] === 32 || bytes[at] === 9)) at++;
    const value = scanFloat(bytes, at, end, cursor);
    if (Number.isNaN(value)) {
      const text = textOf(bytes, at, cursor.at);
      if (!/^[+-]?nan/i.test(text)) throw badItem(text, element, item);
    }
    return value;
  }

  function line(bytes: Uint8Array, from: number, end: number, { name, properties }: PlyElement): void {
    const ofCorners = name === "face" ? cornersIn({ name, count: 0, properties }) : -1;
    let [x, y, z] = [0, 0, 0];
    let n = 0;
    cursor.at = from;
    for (const [p, property] of properties.entries()) {
      const value = number(bytes, cursor.at, end);
      if (property.lengthKind === null) {
        if (property.name === "x") x = value;
        else if (property.name === "y") y = value;
        else if (property.name === "z") z = value;
        continue;
      }
      if (!(Number.isInteger(value) && value >= 0 && value <= end - from))
        throw badItem(String(value), element, item);
      if (p === ofCorners && value > corners.length) corners = new Float64Array(2 * value);
      for (let i = 0; i < value; i++) {
        const listed = number(bytes, cursor.at, end);
        if (p !== ofCorners) continue;
        if (!Number.isInteger(listed)) throw badItem(String(listed), element, item);
        corners[i] = listed;
      }
      if (p === ofCorners) n = value;
    }
    if (name === "vertex") surface.vertex(x, y, z);
    if (ofCorners >= 0) surface.face(corners, n);
  }

  const skipEmpty = (): void => {
    while (element < header.elements.length && item >= header.elements[element]!.count) {
      element++;
      item = 0;
    }
  };

  const pieces = inWholePieces(afterLastLine, (bytes, end) => {
    for (let from = 0; from < end;) {
      let to = from;
      while (to < end && bytes[to] !== 10 && bytes[to] !== 13) to++;
      let first = from;
      while (first < to && bytes[first]! <= 32) first++;
      from = to + 1;
      if (first === to) continue;
      skipEmpty();
      const current = header.elements[element];
      if (current === undefined) return;
      line(bytes, first, to, current);
      item++;
    }
  });

  function end(): void {
    pieces.feed(Uint8Array.of(10));
    skipEmpty();
    const current = header.elements[element];
    if (current !== undefined)
      throw cutShort(`${item} of ${current.name}`, `the ${current.count} its header counts`);
  }

  return { feed: pieces.feed, end };
}

const badItem = (found: string, element: number, item: number): MeshFault =>
  new MeshFault({
    code: "bad-number",
    found: `"${found.slice(0, 60)}" in line ${item + 1} of block ${element + 1}`,
    expected: "as many numbers as the header names",
    remedy: "export the pattern again, best as binary STL",
  });
