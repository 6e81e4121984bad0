import { trappedCells } from "./escapeLevel.ts";
import type { Mesh } from "./mesh.ts";
import type { Steps } from "./steps.ts";
import { negated, type Vec3 } from "./vector.ts";
import { neighboursIn, voxelsOf, type Voxels } from "./voxels.ts";
import { pocketSkin } from "./pocketSkin.ts";

/** Fewer cells together are the raster's own grain. */
const leastCells = 8;

/** Where more than this share stays, the picture of it would be the piece itself, and hide what little stays elsewhere. */
const mostShare = 0.5;

/** Mesh units; what is less tall than `minRise` is not drawn. */
type HeldFrom = {
  readonly mesh: Mesh;
  readonly up: Vec3;
  readonly cells: number;
  readonly minRise: number;
};

/** Skins of the air and the plastic that stay, for a picture; an even level of metal, up and turned over. */
export function* heldSkinsSteps({
  vents,
  openings,
  ...from
}: HeldFrom & {
  readonly vents: readonly Vec3[];
  /** What lets plastic out. */
  readonly openings: readonly Vec3[];
}): Steps<{ readonly air: Mesh | null; readonly plastic: Mesh | null }> {
  const air = quietly(() => heldSkin({ ...from, openings: vents }));
  yield 0.5;
  const plastic = quietly(() => heldSkin({ ...from, up: negated(from.up), openings }));
  return { air, plastic };
}

/** A mark that no cell lies near, on a wall thinner than a cell, draws nothing. */
function quietly(draw: () => Mesh | null): Mesh | null {
  try {
    return draw();
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

/** Null when nothing stays, or nearly all. */
function heldSkin({
  mesh,
  up,
  openings,
  cells,
  minRise,
}: HeldFrom & { readonly openings: readonly Vec3[] }): Mesh | null {
  if (openings.length === 0) return null;
  const voxels = voxelsOf({ mesh, up, cells });
  const { isTrapped, volume } = trappedCells({ voxels, vents: openings });
  if (volume > mostShare * voxels.count * voxels.pitch ** 3) return null;
  return pocketSkin(voxels, withoutGrain(voxels, { isIn: isTrapped, minRise }));
}

function withoutGrain(voxels: Voxels, { isIn, minRise }: { isIn: Uint8Array; minRise: number }): Uint8Array {
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
    if (group.length >= leastCells && tall >= minRise) for (const cell of group) kept[cell] = 1;
  }
  return kept;
}
