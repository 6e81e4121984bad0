import type { Vec3 } from "./vector.ts";

/** The time goes with the cube of the rim. */
const mostCorners = 300;

/**
 * Triangles over a rim of `places` (x, y, z each), of all ways to cut it the one whose weight is least (G. Barequet &
 * M. Sharir, Filling gaps in the boundary of a polyhedron, CAGD 12, 1995): `by: "area"` the smallest surface, `by: "bend"`
 * the one whose sharpest fold, those to the faces beyond the rim included, is slightest, then the smallest (P. Liepa,
 * Filling holes in meshes, 2003). `beyond` has those faces' normals by the corner their edge starts at, null where
 * unknown. Null for a rim of too many corners.
 */
export function leastCap(
  places: Float64Array,
  { by, beyond }: { by: "area" | "bend"; beyond: readonly (Vec3 | null)[] },
): readonly number[] | null {
  const n = places.length / 3;
  if (n < 3 || n > mostCorners) return null;
  const area = new Float64Array(n * n);
  const bend = new Float64Array(n * n).fill(-1);
  const apex = new Int32Array(n * n).fill(-1);
  // Normal of the triangle on the inner side of each chord, and of the face beyond each edge of the rim.
  const normals = new Float64Array(3 * n * n);
  for (const [i, normal] of beyond.entries()) {
    const edge = i === n - 1 ? n - 1 : i * n + i + 1;
    if (normal !== null) normals.set(normal, 3 * edge);
  }
  const normal: [number, number, number] = [0, 0, 0];

  /** −1 where the triangle lies flat to what is beyond a chord, 1 where it folds back; −1 where nothing is known. */
  function fold(chord: number, size: number): number {
    const [x, y, z] = [normals[3 * chord]!, normals[3 * chord + 1]!, normals[3 * chord + 2]!];
    const other = Math.sqrt(x * x + y * y + z * z);
    if (other === 0) return -1;
    return size === 0 ? 1 : -(x * normal[0] + y * normal[1] + z * normal[2]) / (other * size);
  }

  function face(a: number, b: number, c: number): number {
    const [ax, ay, az] = [places[3 * a]!, places[3 * a + 1]!, places[3 * a + 2]!];
    const [ux, uy, uz] = [places[3 * b]! - ax, places[3 * b + 1]! - ay, places[3 * b + 2]! - az];
    const [vx, vy, vz] = [places[3 * c]! - ax, places[3 * c + 1]! - ay, places[3 * c + 2]! - az];
    normal[0] = uy * vz - uz * vy;
    normal[1] = uz * vx - ux * vz;
    normal[2] = ux * vy - uy * vx;
    return Math.sqrt(normal[0] * normal[0] + normal[1] * normal[1] + normal[2] * normal[2]);
  }

  for (let span = 2; span < n; span++)
    for (let a = 0; a + span < n; a++) {
      const c = a + span;
      let [leastArea, leastBend, best] = [Infinity, Infinity, a + 1];
      for (let b = a + 1; b < c; b++) {
        const [left, right] = [a * n + b, b * n + c];
        const size = face(a, b, c);
        const sum = size / 2 + area[left]! + area[right]!;
        let worst = 0;
        if (by === "bend") {
          worst = Math.max(fold(left, size), fold(right, size), bend[left]!, bend[right]!);
          if (span === n - 1) worst = Math.max(worst, fold(n - 1, size));
        }
        if (worst > leastBend || (worst === leastBend && sum >= leastArea)) continue;
        [leastArea, leastBend, best] = [sum, worst, b];
      }
      const chord = a * n + c;
      area[chord] = leastArea;
      bend[chord] = leastBend;
      apex[chord] = best;
      if (span === n - 1) continue;
      face(a, best, c);
      normals.set(normal, 3 * chord);
    }
  return trianglesOf(apex, n);
}

function trianglesOf(apex: Int32Array, n: number): readonly number[] {
  const cut: number[] = [];
  const open: [number, number][] = [[0, n - 1]];
  for (let pair = open.pop(); pair !== undefined; pair = open.pop()) {
    const [a, c] = pair;
    if (c - a < 2) continue;
    const b = apex[a * n + c]!;
    cut.push(a, b, c);
    open.push([a, b], [b, c]);
  }
  return cut;
}
