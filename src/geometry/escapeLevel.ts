import type { Vec3 } from "./vector.ts";
import { neighboursIn, ventCells, type Voxels } from "./voxels.ts";

/**
 * Air that stays above an even level of metal, cell by cell: air has to dive to get out, and the best way is the
 * one whose lowest place is highest. Cells above that place keep their air. For drawing what `trappedVolume` counts;
 * `isTrapped` is 1 for such cells. Volume in cubed mesh units.
 */
export function trappedCells({ voxels, vents }: { voxels: Voxels; vents: readonly Vec3[] }): {
  readonly volume: number;
  readonly isTrapped: Uint8Array;
} {
  const { nw, solid, pitch } = voxels;
  const layer = voxels.nu * voxels.nv;
  const steps = neighboursIn(voxels);
  const isTrapped = Uint8Array.from(solid);
  const seen = new Uint8Array(solid.length);
  const waiting: number[][] = Array.from({ length: nw }, () => []);
  for (const vent of vents) {
    for (const cell of ventCells(voxels, vent)) {
      if (seen[cell]) continue;
      seen[cell] = 1;
      waiting[Math.floor(cell / layer)]!.push(cell);
    }
  }
  let volume = voxels.count;
  for (let level = nw - 1; level >= 0; level--) {
    const here = waiting[level]!;
    while (here.length > 0) {
      const cell = here.pop()!;
      const height = Math.floor(cell / layer);
      if (height <= level) {
        isTrapped[cell] = 0;
        volume--;
      }
      for (const step of steps) {
        const next = cell + step;
        if (!solid[next] || seen[next]) continue;
        seen[next] = 1;
        // No way out is higher than its lowest place, here or on the way.
        waiting[Math.min(level, Math.floor(next / layer))]!.push(next);
      }
    }
  }
  return { volume: volume * pitch ** 3, isTrapped };
}
