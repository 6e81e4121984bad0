import { edgeRings } from "./edgeRings.ts";
import { descending } from "./order.ts";
import type { Surface } from "./surface.ts";
import type { Vec3 } from "./vector.ts";

type Region = { readonly idx: Uint32Array; readonly normal: Vec3; readonly area: number };

/**
 * The largest connected parts of a surface whose triangles look within `withinRad` of one direction, that of the largest
 * triangle not yet taken. `most` of them, the largest area first.
 */
export function flatRegions(
  surface: Surface,
  { withinRad, most }: { withinRad: number; most: number },
): readonly Region[] {
  const { idx } = surface;
  const ring = edgeRings(surface);
  // The seed that last went over an edge: one of thousands of faces is gone over once for all of them.
  const overBy = new Int32Array(idx.length).fill(-1);
  const { normals, areas } = facesOf(surface);
  const least = Math.cos(withinRad);
  const taken = new Uint8Array(areas.length);
  let largest: { triangles: number[]; area: number; seed: number }[] = [];
  for (const seed of descending(areas)) {
    if (taken[seed] || !(areas[seed]! > 0)) continue;
    taken[seed] = 1;
    const triangles = [seed];
    let area = 0;
    for (const t of triangles) {
      area += areas[t]!;
      for (let k = 0; k < 3; k++) {
        const from = 3 * t + k;
        if (overBy[from] === seed) continue;
        overBy[from] = seed;
        for (let corner = ring[from]!; corner !== from; corner = ring[corner]!) {
          overBy[corner] = seed;
          const next = Math.floor(corner / 3);
          if (taken[next]) continue;
          const facing =
            normals[3 * next]! * normals[3 * seed]! +
            normals[3 * next + 1]! * normals[3 * seed + 1]! +
            normals[3 * next + 2]! * normals[3 * seed + 2]!;
          if (facing < least && areas[next]! > 0) continue;
          taken[next] = 1;
          triangles.push(next);
        }
      }
    }
    if (largest.length === most && area <= largest[most - 1]!.area) continue;
    largest.push({ triangles, area, seed });
    largest = largest.sort((a, b) => b.area - a.area).slice(0, most);
  }
  return largest.map(({ triangles, area, seed }) => ({
    idx: Uint32Array.from(triangles.flatMap((t) => [idx[3 * t]!, idx[3 * t + 1]!, idx[3 * t + 2]!])),
    normal: [normals[3 * seed]!, normals[3 * seed + 1]!, normals[3 * seed + 2]!],
    area,
  }));
}

function facesOf({ pos, idx }: Surface): { normals: Float64Array; areas: Float64Array } {
  const normals = new Float64Array(idx.length);
  const areas = new Float64Array(idx.length / 3);
  for (let t = 0; t < areas.length; t++) {
    const a = 3 * idx[3 * t]!;
    const b = 3 * idx[3 * t + 1]!;
    const c = 3 * idx[3 * t + 2]!;
    const ux = pos[b]! - pos[a]!;
    const uy = pos[b + 1]! - pos[a + 1]!;
    const uz = pos[b + 2]! - pos[a + 2]!;
    const vx = pos[c]! - pos[a]!;
    const vy = pos[c + 1]! - pos[a + 1]!;
    const vz = pos[c + 2]! - pos[a + 2]!;
    const nx = uy * vz - uz * vy;
    const ny = uz * vx - ux * vz;
    const nz = ux * vy - uy * vx;
    const twice = Math.hypot(nx, ny, nz);
    areas[t] = twice / 2;
    normals[3 * t] = nx / (twice || 1);
    normals[3 * t + 1] = ny / (twice || 1);
    normals[3 * t + 2] = nz / (twice || 1);
  }
  return { normals, areas };
}
