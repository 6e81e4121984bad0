import { MeshFault } from "../meshFault.ts";
import { cutPolygon } from "../polygon.ts";
import { weldMesh } from "../weld.ts";
import type { Mesh } from "../mesh.ts";
import { growingFloats, growingIndices, makeRoom } from "./growing.ts";
import { noFaces, outOfRange, refuseTooMany, widestCoordinate } from "./limits.ts";

/** Collects vertices and faces that name them, from a file that keeps the two apart. */
export type IndexedSurface = {
  readonly vertex: (x: number, y: number, z: number) => void;
  readonly triangle: (a: number, b: number, c: number) => void;
  /** The first `n` of `corners` make one face. */
  readonly face: (corners: Float64Array, n: number) => void;
  readonly vertices: () => number;
  readonly polygons: () => number;
  readonly dropped: () => number;
  readonly finish: () => Mesh;
};

/** An empty surface with room for about so many vertices and triangles. */
export function indexedSurface(room: { vertices: number; triangles: number }): IndexedSurface {
  const pos = growingFloats(3 * Math.min(6e6, room.vertices));
  const idx = growingIndices(3 * Math.min(12e6, room.triangles));
  let polygons = 0;
  let dropped = 0;

  function vertex(x: number, y: number, z: number): void {
    // Written so that NaN is refused.
    if (!(Math.abs(x) < widestCoordinate && Math.abs(y) < widestCoordinate && Math.abs(z) < widestCoordinate))
      throw outOfRange(
        [x, y, z].find((v) => !(Math.abs(v) < widestCoordinate)) ?? NaN,
        `of vertex ${pos.n / 3 + 1}`,
      );
    if (pos.n + 3 > pos.data.length) makeRoom(pos, 3);
    pos.data[pos.n] = x;
    pos.data[pos.n + 1] = y;
    pos.data[pos.n + 2] = z;
    pos.n += 3;
  }

  function triangle(a: number, b: number, c: number): void {
    if (!(a >= 0 && b >= 0 && c >= 0)) throw badIndex(Math.min(a, b, c), pos.n / 3);
    if (idx.n + 3 > idx.data.length) {
      refuseTooMany(idx.n / 3 + 1);
      makeRoom(idx, 3);
    }
    idx.data[idx.n] = a;
    idx.data[idx.n + 1] = b;
    idx.data[idx.n + 2] = c;
    idx.n += 3;
  }

  function face(corners: Float64Array, n: number): void {
    if (n === 3) return triangle(corners[0]!, corners[1]!, corners[2]!);
    if (n < 3) {
      dropped++;
      return;
    }
    polygons++;
    const places = new Float64Array(3 * n);
    for (let i = 0; i < n; i++) {
      const v = corners[i]!;
      if (!(v >= 0 && 3 * v < pos.n)) throw badIndex(v, pos.n / 3);
      for (let k = 0; k < 3; k++) places[3 * i + k] = pos.data[3 * v + k]!;
    }
    const cut = cutPolygon(places);
    for (let i = 0; i < cut.length; i += 3)
      triangle(corners[cut[i]!]!, corners[cut[i + 1]!]!, corners[cut[i + 2]!]!);
  }

  function finish(): Mesh {
    refuseTooMany(idx.n / 3);
    if (idx.n === 0)
      throw noFaces(pos.n === 0 ? "neither points nor faces" : `${pos.n / 3} points and no face`);
    const vertices = pos.n / 3;
    for (let i = 0; i < idx.n; i++) if (idx.data[i]! >= vertices) throw badIndex(idx.data[i]!, vertices);
    return weldMesh({ pos: pos.data.slice(0, pos.n), idx: idx.data.slice(0, idx.n) });
  }

  return {
    vertex,
    triangle,
    face,
    vertices: () => pos.n / 3,
    polygons: () => polygons,
    dropped: () => dropped,
    finish,
  };
}

export const badIndex = (index: number, vertices: number): MeshFault =>
  new MeshFault({
    code: "bad-index",
    found: `a face of vertex ${index + 1}`,
    expected: `one of the ${vertices} vertices before it`,
    remedy: "export the pattern again; the file is damaged",
  });
