import type { Mesh } from "./mesh.ts";
import { cross, length, minus, plus, times, type Vec3 } from "./vector.ts";

export type Sample = { readonly point: Vec3; readonly normal: Vec3 };

/** Middle and normal of triangle `t`, or null for one without an area. */
export function middleOf(mesh: Mesh, t: number): Sample | null {
  return sampleIn(mesh, t, 1 / 3, 1 / 3);
}

/**
 * `count` places spread evenly over the area of a mesh, the same ones every time: equal shares of area, and within a
 * triangle the R2 sequence (M. Roberts, The unreasonable effectiveness of quasirandom sequences, 2018).
 */
export function samplesOf(mesh: Mesh, count: number): readonly Sample[] {
  const triangles = mesh.idx.length / 3;
  const sums = new Float64Array(triangles);
  let area = 0;
  for (let t = 0; t < triangles; t++) sums[t] = area += areaOf(mesh, t);
  const samples: Sample[] = [];
  let t = 0;
  for (let n = 0; n < count; n++) {
    const upTo = ((n + 0.5) * area) / count;
    while (t < triangles - 1 && sums[t]! < upTo) t++;
    const a = (0.7548776662466927 * n + 0.5) % 1;
    const b = (0.5698402909980532 * n + 0.5) % 1;
    const sample = a + b > 1 ? sampleIn(mesh, t, 1 - a, 1 - b) : sampleIn(mesh, t, a, b);
    if (sample) samples.push(sample);
  }
  return samples;
}

function cornersOf({ pos, idx }: Mesh, t: number): readonly [Vec3, Vec3, Vec3] {
  const corner = (k: number): Vec3 => {
    const v = 3 * idx[3 * t + k]!;
    return [pos[v]!, pos[v + 1]!, pos[v + 2]!];
  };
  return [corner(0), corner(1), corner(2)];
}

/** Of triangle `t`. */
export function areaOf(mesh: Mesh, t: number): number {
  const [a, b, c] = cornersOf(mesh, t);
  return length(cross(minus(b, a), minus(c, a))) / 2;
}

function sampleIn(mesh: Mesh, t: number, u: number, v: number): Sample | null {
  const [a, b, c] = cornersOf(mesh, t);
  const ab = minus(b, a);
  const ac = minus(c, a);
  const normal = cross(ab, ac);
  const size = length(normal);
  if (!(size > 0)) return null;
  return { point: plus(a, plus(times(ab, u), times(ac, v))), normal: times(normal, 1 / size) };
}
