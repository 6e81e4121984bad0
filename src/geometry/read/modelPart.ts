import { MeshFault } from "../meshFault.ts";
import type { LengthUnit } from "../mesh.ts";
import { scanFloat, textOf } from "./floatScanner.ts";
import { growingFloats, growingIndices, makeRoom } from "./growing.ts";
import { outOfRange, refuseTooMany, widestCoordinate } from "./limits.ts";
import type { Reader } from "./reader.ts";
import { attributeOf, nameOf, tagScanner } from "./tags.ts";
import type { Tag } from "./tags.ts";

/** Twelve numbers of 3MF, row by row: where x, y and z point, and the shift. */
export type Placement = readonly number[];
export type Placed = { readonly path: string; readonly id: string; readonly placement: Placement | null };
export type ModelObject = {
  readonly id: string;
  readonly isSupport: boolean;
  readonly pos: ReturnType<typeof growingFloats>;
  readonly idx: ReturnType<typeof growingIndices>;
  readonly components: Placed[];
};
export type ModelPart = {
  readonly path: string;
  unit: LengthUnit;
  readonly objects: Map<string, ModelObject>;
  readonly items: Placed[];
};

const units: Readonly<Record<string, LengthUnit>> = {
  micron: "micron",
  millimeter: "mm",
  centimeter: "cm",
  inch: "inch",
  foot: "foot",
  meter: "m",
};
const mostObjects = 100_000;
const [letterX, letterZ, letterV, digit1, digit3] = [120, 122, 118, 49, 51];

/** Reads one model of a 3MF archive into `part` (3MF core specification 1.3, chapters 3 and 4). */
export function modelReader(part: ModelPart): Reader<void> {
  const cursor = { at: 0 };
  const three = new Float64Array(3);
  let prefix = 0;
  let object: ModelObject | null = null;
  let objects = 0;

  /** Numbers of the attributes x, y, z or v1, v2, v3, whatever their order. */
  function threeOf(tag: Tag, ofVertices: boolean): void {
    const { bytes, spans } = tag;
    let seen = 0;
    for (let i = 0; i < 4 * tag.attributes; i += 4) {
      const from = spans[i]!;
      const size = spans[i + 1]! - from;
      let axis = -1;
      if (ofVertices) {
        if (size === 1 && bytes[from]! >= letterX && bytes[from]! <= letterZ) axis = bytes[from]! - letterX;
      } else if (
        size === 2 &&
        bytes[from] === letterV &&
        bytes[from + 1]! >= digit1 &&
        bytes[from + 1]! <= digit3
      )
        axis = bytes[from + 1]! - digit1;
      if (axis < 0) continue;
      let start = spans[i + 2]!;
      const end = spans[i + 3]!;
      while (start < end && bytes[start]! <= 32) start++;
      three[axis] = scanFloat(bytes, start, end, cursor);
      seen |= 1 << axis;
    }
    if (seen !== 7 || Number.isNaN(three[0]! + three[1]! + three[2]!)) throw badTag(tag);
  }

  function vertex(tag: Tag, { pos }: ModelObject): void {
    threeOf(tag, true);
    if (pos.n + 3 > pos.data.length) makeRoom(pos, 3);
    for (let k = 0; k < 3; k++) {
      const value = three[k]!;
      if (!(Math.abs(value) < widestCoordinate)) throw outOfRange(value, `of vertex ${pos.n / 3 + 1}`);
      pos.data[pos.n + k] = value;
    }
    pos.n += 3;
  }

  function triangle(tag: Tag, { idx }: ModelObject): void {
    threeOf(tag, false);
    if (idx.n + 3 > idx.data.length) {
      refuseTooMany(idx.n / 3 + 1);
      makeRoom(idx, 3);
    }
    for (let k = 0; k < 3; k++) {
      const value = three[k]!;
      if (!(Number.isInteger(value) && value >= 0 && value < 2 ** 32)) throw badTag(tag);
      idx.data[idx.n + k] = value;
    }
    idx.n += 3;
  }

  function openObject(tag: Tag): void {
    const id = attributeOf(tag, "id");
    if (id === null || part.objects.has(id) || ++objects > mostObjects) throw badTag(tag);
    const type = attributeOf(tag, "type") ?? "model";
    object = {
      id,
      isSupport: type === "support" || type === "solidsupport",
      pos: growingFloats(64),
      idx: growingIndices(64),
      components: [],
    };
    part.objects.set(id, object);
  }

  function placed(tag: Tag): Placed {
    const id = attributeOf(tag, "objectid");
    if (id === null || ++objects > mostObjects) throw badTag(tag);
    const path = attributeOf(tag, "path")?.replace(/^\//, "").toLowerCase() ?? part.path;
    return { path, id, placement: placementOf(tag) };
  }

  function other(tag: Tag): void {
    const name = nameOf(tag);
    if (name === "model" || name.endsWith(":model")) {
      prefix = name.length - "model".length;
      const named = attributeOf(tag, "unit") ?? "millimeter";
      const unit = units[named];
      if (unit === undefined) throw badTag(tag);
      part.unit = unit;
      return;
    }
    switch (name.slice(prefix)) {
      case "object":
        return openObject(tag);
      case "component":
        if (object === null) throw badTag(tag);
        object.components.push(placed(tag));
        return;
      case "item":
        part.items.push(placed(tag));
    }
  }

  function close(tag: Tag): void {
    if (nameOf(tag).slice(prefix) !== "object" || object === null) return;
    const { id, pos, idx } = object;
    for (let i = 0; i < idx.n; i++)
      if (idx.data[i]! >= pos.n / 3)
        throw badScene(`vertex ${idx.data[i]} in object ${id} of ${pos.n / 3} vertices`);
    object = null;
  }

  return tagScanner((tag) => {
    if (tag.closing) return tag.nameTo - tag.nameFrom < 20 ? close(tag) : undefined;
    if (object !== null) {
      const from = tag.nameFrom + prefix;
      const size = tag.nameTo - from;
      if (size === 6 && isNamed(tag, from, vertexName)) return vertex(tag, object);
      if (size === 8 && isNamed(tag, from, triangleName)) return triangle(tag, object);
    }
    other(tag);
  });
}

const bytesOfName = (name: string): Uint8Array => Uint8Array.from(name, (letter) => letter.charCodeAt(0));
const vertexName = bytesOfName("vertex");
const triangleName = bytesOfName("triangle");

function isNamed({ bytes, nameFrom }: Tag, from: number, name: Uint8Array): boolean {
  // A prefix that is not the model's own means another specification's element of the same name.
  if (from > nameFrom && bytes[from - 1] !== 58) return false;
  for (let i = 0; i < name.length; i++) if (bytes[from + i] !== name[i]) return false;
  return true;
}

function placementOf(tag: Tag): Placement | null {
  const text = attributeOf(tag, "transform");
  if (text === null) return null;
  const numbers = text.trim().split(/\s+/).map(Number);
  if (numbers.length !== 12 || numbers.some((n) => !Number.isFinite(n))) throw badTag(tag);
  return numbers;
}

export const badScene = (found: string): MeshFault =>
  new MeshFault({
    code: "bad-scene",
    found,
    expected: "objects put together as 3MF describes it",
    remedy: "export the pattern again, or as binary STL",
  });

const badTag = (tag: Tag): MeshFault =>
  badScene(
    `<${textOf(tag.bytes, tag.nameFrom, Math.min(tag.bytes.length, tag.nameFrom + 80)).split(">")[0]}>`,
  );
