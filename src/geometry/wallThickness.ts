import { dexelsOf } from "./dexels.ts";
import { distanceField } from "./distanceField.ts";
import { inscribedBalls, type Ball } from "./inscribedBalls.ts";
import { localThickness } from "./localThickness.ts";
import type { Mesh } from "./mesh.ts";
import { isBuried, rayTreeOf } from "./rayTree.ts";
import { between, type Steps } from "./steps.ts";
import { areaOf, middleOf, samplesOf, type Sample } from "./surfaceSamples.ts";
import { thinPlacesOf, type ThinPlace } from "./thinPlaces.ts";
import { cellOf, voxelsIn, type Voxels } from "./voxels.ts";

export type WallThickness = {
  /** The thinnest first; each stands for its neighbourhood. */
  readonly thin: readonly ThinPlace[];
  /** Largest balls that fit, the largest first, at most 8, well apart. */
  readonly thick: readonly Ball[];
  /** Half the surface is thinner than this. */
  readonly median: number;
  /** For every triangle of `on`; 0 for one without an area or where no ray comes out. */
  readonly field: Float32Array;
  /** Edge of a cell. A thickness below `resolvable`, three of them, is only as good as the rays. */
  readonly pitch: number;
  readonly resolvable: number;
};

type WallThicknessFrom = {
  readonly mesh: Mesh;
  readonly cells: number;
  /** Mesh to colour, when it is not the one measured: a lighter copy in the same coordinates. */
  readonly on?: Mesh | undefined;
  /** Places of the surface to look at for thin ones. */
  readonly samples?: number | undefined;
};

/**
 * Thin and thick places of a solid, in mesh units. Thin: straight through a wall, whose faces lie within 30° of parallel,
 * and no more than the ball that fits behind it, so that a rod counts by its width and not by its length.
 * Thick: largest inscribed balls. `cells` (8–512) along the longest side of the box.
 */
export function* wallThicknessSteps({
  mesh,
  cells,
  on = mesh,
  samples = 12_000,
}: WallThicknessFrom): Steps<WallThickness> {
  if (!(cells >= 8 && cells <= 512)) throw new RangeError(`cells must be 8–512, found ${cells}`);
  const voxels = voxelsIn(dexelsOf({ mesh, up: [0, 0, 1], cells, by: "box" }));
  yield 0.05;
  const tree = rayTreeOf(mesh);
  const distance = yield* between(0.1, 0.3, distanceField(voxels));
  const solid = { voxels, distance, tree };
  const thick = inscribedBalls(solid, 8);
  yield 0.35;
  const looked = [];
  for (const [n, sample] of samplesOf(mesh, samples).entries()) {
    const outward = { from: sample.point, along: sample.normal, least: 1e-5 * voxels.nu * voxels.pitch };
    const local = isBuried(tree, outward) ? null : localThickness(solid, sample);
    if (local) looked.push({ ...sample, ...local });
    if (n % 1000 === 999) yield 0.35 + (0.25 * n) / samples;
  }
  const resolvable = 3 * voxels.pitch;
  looked.sort((a, b) => a.thickness - b.thickness);
  // What a ball by cells saw lengthwise other rays see across, and finer; at a rim or in a crease nothing is a wall.
  const walls = looked.filter(({ isWall }) => isWall);
  const thin = thinPlacesOf({ looked: walls, resolvable, most: 12 });
  const triangles = on.idx.length / 3;
  const field = new Float32Array(triangles);
  const alike = new Map<number, number>();
  for (let t = 0; t < triangles; t++) {
    const sample = middleOf(on, t);
    if (sample) {
      // Thousands of slivers at one point would each ask all of them: the first in a cell answers for those that look its way.
      const key = areaOf(on, t) < voxels.pitch ** 2 ? keyOf(voxels, sample) : null;
      const known = key === null ? undefined : alike.get(key);
      field[t] = known ?? localThickness(solid, sample)?.thickness ?? 0;
      if (key !== null && known === undefined) alike.set(key, field[t]!);
    }
    if (t % 5000 === 4999) yield 0.6 + (0.4 * t) / triangles;
  }
  const median = looked[looked.length >> 1]?.thickness ?? 0;
  return { thin, thick, median, field, pitch: voxels.pitch, resolvable };
}

/** A number for the cell a sample lies in and for where it looks, to about 7°; null outside the cells. */
function keyOf(voxels: Voxels, { point, normal }: Sample): number | null {
  const cell = cellOf(voxels, point);
  if (cell === null) return null;
  const look = normal.reduce((sum, along) => 16 * sum + Math.min(15, Math.floor(8 * (along + 1))), 0);
  return 4096 * cell + look;
}
