import { MeshFault } from "../meshFault.ts";
import type { IndexedSurface } from "./indexed.ts";
import { cutShort, longestPiece } from "./limits.ts";
import { join } from "./pieces.ts";
import { bytesOf, cornersIn } from "./plyHeader.ts";
import type { PlyElement, PlyHeader, PlyNumber } from "./plyHeader.ts";
import type { Reader } from "./reader.ts";

type Body = { readonly view: DataView; readonly little: boolean };

function numberAt({ view, little }: Body, kind: PlyNumber, at: number): number {
  switch (kind) {
    case "int8":
      return view.getInt8(at);
    case "uint8":
      return view.getUint8(at);
    case "int16":
      return view.getInt16(at, little);
    case "uint16":
      return view.getUint16(at, little);
    case "int32":
      return view.getInt32(at, little);
    case "uint32":
      return view.getUint32(at, little);
    case "float32":
      return view.getFloat32(at, little);
    case "float64":
      return view.getFloat64(at, little);
  }
}

/** The body of a binary PLY: records of any kinds of number, with lists, in either byte order. */
export function plyBinaryBody(header: PlyHeader, surface: IndexedSurface): Reader<void> {
  const little = header.layout === "little";
  const plans = header.elements.map(planOf);
  let kept: Uint8Array = new Uint8Array(0);
  let element = 0;
  let item = 0;
  let corners = new Float64Array(64);

  /** Reads one record with lists; where it ends, or −1 when not all of it is there. */
  function record(body: Body, from: number, plan: Plan): number {
    let at = from;
    let n = 0;
    const room = body.view.byteLength;
    for (const [p, { kind, lengthKind }] of plan.element.properties.entries()) {
      const size = bytesOf[kind];
      if (lengthKind === null) {
        at += size;
        continue;
      }
      if (at + bytesOf[lengthKind] > room) return -1;
      const length = numberAt(body, lengthKind, at);
      at += bytesOf[lengthKind];
      if (length < 0 || length * size > longestPiece) throw badList(length, plan.element.name, item);
      if (at + length * size > room) return -1;
      if (p === plan.corners) {
        if (length > corners.length) corners = new Float64Array(2 * length);
        for (let i = 0; i < length; i++) corners[i] = numberAt(body, kind, at + i * size);
        n = length;
      }
      at += length * size;
    }
    if (at > room) return -1;
    if (plan.corners >= 0) surface.face(corners, n);
    return at;
  }

  function fixedRecords(body: Body, from: number, plan: Plan, number: number): void {
    if (plan.axes === null) return;
    const [x, y, z] = plan.axes;
    if (x.kind === "float32" && y.kind === "float32" && z.kind === "float32") {
      const { view, little } = body;
      for (let i = 0, at = from; i < number; i++, at += plan.stride)
        surface.vertex(
          view.getFloat32(at + x.offset, little),
          view.getFloat32(at + y.offset, little),
          view.getFloat32(at + z.offset, little),
        );
      return;
    }
    for (let i = 0, at = from; i < number; i++, at += plan.stride)
      surface.vertex(
        numberAt(body, x.kind, at + x.offset),
        numberAt(body, y.kind, at + y.offset),
        numberAt(body, z.kind, at + z.offset),
      );
  }

  /** The commonest record by far: a byte that says three, and three whole numbers. */
  function triangle({ view, little }: Body, at: number): number {
    surface.triangle(
      view.getInt32(at + 1, little),
      view.getInt32(at + 5, little),
      view.getInt32(at + 9, little),
    );
    return at + 13;
  }

  /** Takes whole records from the front of the bytes; gives where the first unread one starts. */
  function take(bytes: Uint8Array): number {
    const body = { view: new DataView(bytes.buffer, bytes.byteOffset, bytes.length), little };
    let at = 0;
    for (;;) {
      const plan = plans[element];
      if (plan === undefined) return bytes.length;
      const left = plan.element.count - item;
      if (plan.stride > 0) {
        const number = Math.min(left, Math.floor((bytes.length - at) / plan.stride));
        fixedRecords(body, at, plan, number);
        at += number * plan.stride;
        item += number;
      } else if (plan.element.properties.length > 0) {
        while (item < plan.element.count) {
          const next =
            plan.isPlain && isTriangle(body.view, at) ? triangle(body, at) : record(body, at, plan);
          if (next < 0) break;
          at = next;
          item++;
        }
      } else item = plan.element.count;
      if (item < plan.element.count) return at;
      element++;
      item = 0;
    }
  }

  function feed(bytes: Uint8Array): void {
    const joined = kept.length === 0 ? bytes : join(kept, bytes);
    kept = joined.slice(take(joined));
  }

  function end(): void {
    const plan = plans[element];
    if (plan !== undefined && plan.element.count > 0)
      throw cutShort(`${item} of ${plan.element.name}`, `the ${plan.element.count} its header counts`);
  }

  return { feed, end };
}

type Axis = { readonly kind: PlyNumber; readonly offset: number };
type Plan = {
  readonly element: PlyElement;
  /** Bytes of a record, 0 where lists make it vary. */
  readonly stride: number;
  readonly axes: readonly [Axis, Axis, Axis] | null;
  readonly corners: number;
  /** Faces of nothing but corners: a byte and that many 32-bit numbers. */
  readonly isPlain: boolean;
};

const isTriangle = (view: DataView, at: number): boolean =>
  at + 13 <= view.byteLength && view.getUint8(at) === 3;

function planOf(element: PlyElement): Plan {
  const varies = element.properties.some(({ lengthKind }) => lengthKind !== null);
  const offsets = new Map<string, Axis>();
  let stride = 0;
  for (const { name, kind } of element.properties) {
    offsets.set(name, { kind, offset: stride });
    stride += bytesOf[kind];
  }
  const [x, y, z] = [offsets.get("x"), offsets.get("y"), offsets.get("z")];
  const isVertex = element.name === "vertex" && x !== undefined && y !== undefined && z !== undefined;
  if (isVertex && varies)
    throw new MeshFault({
      code: "bad-header",
      found: "vertices with lists in them",
      expected: "vertices of single numbers",
      remedy: "export the pattern again, or as binary STL",
    });
  return {
    element,
    stride: varies ? 0 : stride,
    axes: isVertex ? [x, y, z] : null,
    corners: element.name === "face" ? cornersIn(element) : -1,
    isPlain: element.name === "face" && element.properties.length === 1 && isPlainList(element.properties[0]),
  };
}

const isPlainList = (property: PlyElement["properties"][number] | undefined): boolean =>
  property !== undefined &&
  property.lengthKind !== null &&
  bytesOf[property.lengthKind] === 1 &&
  (property.kind === "int32" || property.kind === "uint32") &&
  cornersIn({ name: "face", count: 1, properties: [property] }) === 0;

const badList = (length: number, name: string, item: number): MeshFault =>
  new MeshFault({
    code: "bad-size",
    found: `a list of ${length} in ${name} ${item + 1}`,
    expected: "lists of a few",
    remedy: "export the pattern again; the file is damaged",
  });
