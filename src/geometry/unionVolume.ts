import { dexelsOf } from "./dexels.ts";
import type { Mesh } from "./mesh.ts";

/** Columns over the longest side, and how many more where the two volumes part. */
const cells = { first: 256, second: 1024 };
/** Coarse columns err by about a thousandth on compact forms; beyond this share a second look is worth its time. */
const doubtful = 0.002;

/**
 * Volume of what lies inside a closed mesh, bodies that overlap counted once: the sum of upright columns of solid. Where
 * it parts from `signed`, the volume by the surface, it is done again finer. In the mesh's own unit.
 */
export function unionVolumeOf(mesh: Mesh, signed: number): number {
  const coarse = columnsOf(mesh, cells.first);
  return Math.abs(coarse - signed) <= doubtful * Math.abs(signed) ? coarse : columnsOf(mesh, cells.second);
}

function columnsOf(mesh: Mesh, across: number): number {
  const { pitch, bottom, top } = dexelsOf({ mesh, up: [0, 0, 1], cells: across });
  let columns = 0;
  for (let i = 0; i < bottom.length; i++) columns += top[i]! - bottom[i]!;
  return columns * pitch * pitch;
}
