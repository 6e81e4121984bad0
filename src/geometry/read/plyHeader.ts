import { MeshFault } from "../meshFault.ts";
import { textOf } from "./floatScanner.ts";
import { noFaces } from "./limits.ts";

export type PlyNumber = "int8" | "uint8" | "int16" | "uint16" | "int32" | "uint32" | "float32" | "float64";
export type PlyProperty = {
  readonly name: string;
  readonly kind: PlyNumber;
  /** The kind of a list's length; null for a single number. */
  readonly lengthKind: PlyNumber | null;
};
export type PlyElement = {
  readonly name: string;
  readonly count: number;
  readonly properties: readonly PlyProperty[];
};
export type PlyHeader = {
  readonly layout: "text" | "little" | "big";
  readonly elements: readonly PlyElement[];
  /** Where the header ends, bytes. */
  readonly size: number;
};

const kinds: Readonly<Record<string, PlyNumber>> = {
  char: "int8",
  uchar: "uint8",
  short: "int16",
  ushort: "uint16",
  int: "int32",
  uint: "uint32",
  float: "float32",
  double: "float64",
  int8: "int8",
  uint8: "uint8",
  int16: "int16",
  uint16: "uint16",
  int32: "int32",
  uint32: "uint32",
  float32: "float32",
  float64: "float64",
};

export const bytesOf: Readonly<Record<PlyNumber, number>> = {
  int8: 1,
  uint8: 1,
  int16: 2,
  uint16: 2,
  int32: 4,
  uint32: 4,
  float32: 4,
  float64: 8,
};

const longestHeader = 65_536;
const layouts: Readonly<Record<string, PlyHeader["layout"]>> = {
  ascii: "text",
  binary_little_endian: "little",
  binary_big_endian: "big",
};

/** The header at the front of a PLY file; null while its end has not arrived. */
export function plyHeaderOf(bytes: Uint8Array): PlyHeader | null {
  const lines: string[] = [];
  const elements: { name: string; count: number; properties: PlyProperty[] }[] = [];
  let layout: PlyHeader["layout"] | undefined;
  let from = 0;
  for (;;) {
    const to = lineEnd(bytes, from);
    if (to >= Math.min(bytes.length, longestHeader)) {
      if (bytes.length >= longestHeader) throw badHeader("no end_header in its first 64 KB");
      return null;
    }
    const line = textOf(bytes, from, to).trim();
    // A return may be half of a line end.
    if (bytes[to] === 13 && to + 1 >= bytes.length) return null;
    from = to + (bytes[to] === 13 && bytes[to + 1] === 10 ? 2 : 1);
    const [word, ...rest] = line.split(/\s+/);
    lines.push(line);
    if (word === "end_header") break;
    if (word === "format") layout = layouts[rest[0] ?? ""];
    if (word === "element") elements.push({ name: rest[0] ?? "", count: Number(rest[1]), properties: [] });
    if (word === "property") elements.at(-1)?.properties.push(propertyOf(rest, line));
  }
  if (layout === undefined) throw badHeader("no format it names");
  checkElements(elements);
  return { layout, elements, size: from };
}

function propertyOf(words: readonly string[], line: string): PlyProperty {
  const isList = words[0] === "list";
  const kind = kinds[words[isList ? 2 : 0] ?? ""];
  const lengthKind = isList ? kinds[words[1] ?? ""] : null;
  if (kind === undefined || lengthKind === undefined) throw badHeader(`the line "${line.slice(0, 80)}"`);
  if (lengthKind === "float32" || lengthKind === "float64")
    throw badHeader(`the line "${line.slice(0, 80)}"`);
  return { name: words[isList ? 3 : 1] ?? "", kind, lengthKind };
}

function checkElements(elements: readonly PlyElement[]): void {
  const odd = elements.find(({ count }) => !(Number.isSafeInteger(count) && count >= 0));
  if (odd !== undefined) throw badHeader(`${odd.count} of ${odd.name}`);
  const vertex = elements.find(({ name }) => name === "vertex");
  const names =
    vertex?.properties.filter(({ lengthKind }) => lengthKind === null).map(({ name }) => name) ?? [];
  if (!["x", "y", "z"].every((axis) => names.includes(axis))) throw badHeader("vertices without x, y and z");
  const faces = elements.find(({ name }) => name === "face");
  if (faces === undefined || faces.count === 0 || cornersIn(faces) < 0)
    throw noFaces(`${vertex?.count ?? 0} points and no face`);
}

/** Which property of an element lists its corners; −1 for none. */
export const cornersIn = (element: PlyElement): number =>
  element.properties.findIndex(
    ({ name, lengthKind }) => lengthKind !== null && (name === "vertex_indices" || name === "vertex_index"),
  );

function lineEnd(bytes: Uint8Array, from: number): number {
  let at = from;
  while (at < bytes.length && bytes[at] !== 10 && bytes[at] !== 13) at++;
  return at;
}

const badHeader = (found: string): MeshFault =>
  new MeshFault({
    code: "bad-header",
    found,
    expected: "the header of a PLY mesh",
    remedy: "export the pattern again, or as binary STL",
  });
