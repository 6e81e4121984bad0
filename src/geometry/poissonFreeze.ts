import type { Steps } from "./steps.ts";
import { neighboursIn, type Voxels } from "./voxels.ts";

/**
 * How long each part of a solid stays liquid, as a ranking: u with −∇²u = 1 in the solid and 0 on its surface, given as
 * √(8u), the thickness of the endless plate whose middle has that u (t²/8). A sphere of radius r has r²/6 in its middle,
 * a rod r²/4: closed forms of the equation. Mesh units for every solid cell, 0 outside.
 *
 * Successive over-relaxation; the surface lies half a cell from the middle of the last one. `most` is the largest
 * distance to the surface, which sets how strongly to relax.
 */
export function* plateThickness({ voxels, most }: { voxels: Voxels; most: number }): Steps<Float32Array> {
  const { solid, count, pitch } = voxels;
  const steps = neighboursIn(voxels);
  const place = new Int32Array(solid.length).fill(-1);
  const cells = new Uint32Array(count);
  let n = 0;
  for (let cell = 0; cell < solid.length; cell++) {
    if (!solid[cell]) continue;
    place[cell] = n;
    cells[n++] = cell;
  }
  const beside = new Int32Array(6 * n);
  const share = new Float32Array(n);
  for (let i = 0; i < n; i++) {
    let weight = 0;
    for (let k = 0; k < 6; k++) {
      const other = place[cells[i]! + steps[k]!]!;
      // Cell n stands for the wall and stays 0.
      beside[6 * i + k] = other < 0 ? n : other;
      weight += other < 0 ? 2 : 1;
    }
    share[i] = 1 / weight;
  }
  yield 0.1;
  const u = new Float64Array(n + 1);
  const across = Math.max(2, (2 * most) / pitch);
  const relax = 2 / (1 + Math.sin(Math.PI / (across + 1)));
  for (let sweep = 0; sweep < 2000; sweep++) {
    let moved = 0;
    let highest = 0;
    for (let i = 0; i < n; i++) {
      const at = 6 * i;
      const around =
        u[beside[at]!]! +
        u[beside[at + 1]!]! +
        u[beside[at + 2]!]! +
        u[beside[at + 3]!]! +
        u[beside[at + 4]!]! +
        u[beside[at + 5]!]!;
      const change = relax * ((1 + around) * share[i]! - u[i]!);
      u[i]! += change;
      if (change > moved) moved = change;
      else if (-change > moved) moved = -change;
      if (u[i]! > highest) highest = u[i]!;
    }
    if (moved < 1e-5 * highest) break;
    yield 0.1 + 0.9 * (1 - 1 / (1 + sweep / 60));
  }
  const plate = new Float32Array(solid.length);
  for (let i = 0; i < n; i++) plate[cells[i]!] = Math.sqrt(8 * u[i]!) * pitch;
  return plate;
}
