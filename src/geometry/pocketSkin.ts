import type { Mesh } from "./mesh.ts";
import { plus, times, type Vec3 } from "./vector.ts";
import type { Grid } from "./voxels.ts";

/**
 * A skin round the cells for which `isIn` is not 0, in the coordinates of the grid's mesh; null when there are none. Between
 * the middles of eight cells lies one corner of the skin, at the mean of the edges it cuts (surface nets, S. F. F. Gibson,
 * 1998). No cell at the rim of the grid may be in.
 */
export function pocketSkin(grid: Grid, isIn: ArrayLike<number>): Mesh | null {
  const { nu, nv } = grid;
  const steps = [1, nu, nu * nv] as const;
  const vertexOf = new Map<number, number>();
  const pos: number[] = [];
  const idx: number[] = [];
  const vertexAt = (cube: number): number => {
    const known = vertexOf.get(cube);
    if (known !== undefined) return known;
    const place = placeOf(grid, cornerIn(grid, cube, isIn));
    const next = pos.length / 3;
    pos.push(...place);
    vertexOf.set(cube, next);
    return next;
  };
  for (let cell = 0; cell < isIn.length; cell++) {
    if (!isIn[cell]) continue;
    for (const d of [0, 1, 2] as const) {
      const [e, f] = [steps[(d + 1) % 3]!, steps[(d + 2) % 3]!];
      for (const [from, isOutward] of [
        [cell, true],
        [cell - steps[d], false],
      ] as const) {
        const other = isOutward ? cell + steps[d] : from;
        if (isIn[other]) continue;
        const ring = [from - e - f, from - f, from, from - e].map(vertexAt);
        const [a, b, c, g] = (isOutward ? ring : ring.reverse()) as [number, number, number, number];
        idx.push(a, b, c, a, c, g);
      }
    }
  }
  return idx.length === 0 ? null : { pos: Float32Array.from(pos), idx: Uint32Array.from(idx), unit: "mm" };
}

/** In cells from the grid's origin: the mean of the cut edges of the cube between eight middles. */
function cornerIn({ nu, nv }: Grid, cube: number, isIn: ArrayLike<number>): Vec3 {
  const at = (i: number, j: number, k: number): boolean => Boolean(isIn[cube + i + nu * (j + nv * k)]);
  let sum: Vec3 = [0, 0, 0];
  let count = 0;
  const cut = (a: Vec3, b: Vec3): void => {
    if (at(...a) === at(...b)) return;
    sum = plus(sum, times(plus(a, b), 0.5));
    count++;
  };
  for (const p of [0, 1]) {
    for (const q of [0, 1]) {
      cut([0, p, q], [1, p, q]);
      cut([p, 0, q], [p, 1, q]);
      cut([p, q, 0], [p, q, 1]);
    }
  }
  const i = cube % nu;
  const row = (cube - i) / nu;
  const base: Vec3 = [i + 0.5, (row % nv) + 0.5, Math.floor(row / nv) + 0.5];
  return plus(base, times(sum, 1 / count));
}

function placeOf({ origin, u, v, w, pitch }: Grid, [i, j, k]: Vec3): Vec3 {
  return plus(plus(origin, times(u, i * pitch)), plus(times(v, j * pitch), times(w, k * pitch)));
}
