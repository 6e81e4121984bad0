import { trappedCells } from "../../geometry/escapeLevel.ts";
import type { Mesh } from "../../geometry/mesh.ts";
import { negated, type Vec3 } from "../../geometry/vector.ts";
import { neighboursIn, voxelsOf, type Voxels } from "../../geometry/voxels.ts";
import { tipLimits } from "./patternStudy.ts";
import { pocketSkin } from "../scene/pocketSkin.ts";

/** Fewer cells together are the raster's own grain, and what is thinner than a tip must rise is none. */
const leastCells = 8;

/** Where more than this share stays, the picture of it would be the piece itself, and hide what little stays elsewhere. */
const mostShare = 0.5;

/** Skin of what stays above an even level, for the picture; null when nothing does, or nearly all. */
export function trappedSkin({
  mesh,
  up,
  openings,
  cells,
}: {
  mesh: Mesh;
  up: Vec3;
  openings: readonly Vec3[];
  cells: number;
}): Mesh | null {
  if (openings.length === 0) return null;
  const voxels = voxelsOf({ mesh, up, cells });
  const { isTrapped, volume } = trappedCells({ voxels, vents: openings });
  if (volume > mostShare * voxels.count * voxels.pitch ** 3) return null;
  return pocketSkin(voxels, withoutGrain(voxels, isTrapped));
}

/** The same for plastic, which runs the other way. */
export const heldPlasticSkin = ({ up, ...from }: Parameters<typeof trappedSkin>[0]): Mesh | null =>
  trappedSkin({ ...from, up: negated(up) });

function withoutGrain(voxels: Voxels, isIn: Uint8Array): Uint8Array {
  const left = Uint8Array.from(isIn);
  const kept = new Uint8Array(isIn.length);
  const steps = neighboursIn(voxels);
  for (let seed = 0; seed < left.length; seed++) {
    if (!left[seed]) continue;
    left[seed] = 0;
    const group = [seed];
    for (const cell of group) {
      for (const step of steps) {
        if (!left[cell + step]) continue;
        left[cell + step] = 0;
        group.push(cell + step);
      }
    }
    // The last cells of the grid are its highest: a group is as tall as from its first cell to its last.
    const layer = voxels.nu * voxels.nv;
    let last = seed;
    for (const cell of group) last = Math.max(last, cell);
    const tall = (Math.floor(last / layer) - Math.floor(seed / layer) + 1) * voxels.pitch;
    if (group.length >= leastCells && tall >= tipLimits.minRise) for (const cell of group) kept[cell] = 1;
  }
  return kept;
}
