import type { Mesh } from "../../src/geometry/mesh.ts";
import { cross, minus, plus, times, unit, type Vec3 } from "../../src/geometry/vector.ts";

/** A bumpy trefoil knot some 200 across, closed, of about so many triangles: many tops, thick and thin. */
export function knot(triangles: number): Mesh {
  const sides = Math.max(8, Math.round(Math.sqrt(triangles / 16)));
  const along = Math.round(triangles / 2 / sides);
  const pos = new Float32Array(3 * sides * along);
  const idx = new Uint32Array(6 * sides * along);
  const line = (t: number): Vec3 => [
    30 * (Math.sin(t) + 2 * Math.sin(2 * t)),
    30 * (Math.cos(t) - 2 * Math.cos(2 * t)),
    -40 * Math.sin(3 * t),
  ];
  for (let i = 0; i < along; i++) {
    const t = (2 * Math.PI * i) / along;
    const middle = line(t);
    const ahead = unit(minus(line(t + 1e-4), line(t - 1e-4)));
    const u = unit(cross(ahead, [0.13, 0.21, 1]));
    const v = cross(ahead, u);
    for (let j = 0; j < sides; j++) {
      const a = (2 * Math.PI * j) / sides;
      const radius = 14 + 3 * Math.sin(9 * t) + Math.sin(5 * a) * Math.cos(40 * t);
      const p = plus(middle, plus(times(u, radius * Math.cos(a)), times(v, radius * Math.sin(a))));
      pos.set(p, 3 * (i * sides + j));
      const [b, c, d] = [
        ((i + 1) % along) * sides + j,
        ((i + 1) % along) * sides + ((j + 1) % sides),
        i * sides + ((j + 1) % sides),
      ];
      idx.set([i * sides + j, c, b, i * sides + j, d, c], 6 * (i * sides + j));
    }
  }
  return { pos, idx };
}
