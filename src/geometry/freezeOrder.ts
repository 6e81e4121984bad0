import { distanceField } from "./distanceField.ts";
import { hotSpotsOf, type Feed, type HotSpot } from "./hotSpots.ts";
import type { Mesh } from "./mesh.ts";
import { plateThickness } from "./poissonFreeze.ts";
import { between, type Steps } from "./steps.ts";
import { voxelsOf, type Grid } from "./voxels.ts";

export type FreezeOrder = {
  /** The last to freeze first. */
  readonly hotSpots: readonly HotSpot[];
  readonly grid: Grid;
  /** For every cell the plate that freezes with it, mesh units; 0 outside. */
  readonly plate: Float32Array;
};

type FreezeOrderFrom = {
  readonly mesh: Mesh;
  readonly cells: number;
  readonly feeds: readonly Feed[];
};

/**
 * What freezes after what, and whether each last place is fed on the way to it: a ranking by shape alone, with one metal
 * and one wall everywhere. 96 to 128 `cells` (8–512) are enough. `feeds`: where hot metal stays in reach.
 */
export function* freezeOrderSteps({ mesh, cells, feeds }: FreezeOrderFrom): Steps<FreezeOrder> {
  const voxels = voxelsOf({ mesh, up: [0, 0, 1], cells });
  const distance = yield* between(0.05, 0.2, distanceField(voxels));
  let most = 0;
  for (const far of distance) if (far > most) most = far;
  const plate = yield* between(0.2, 0.95, plateThickness({ voxels, most }));
  const { nu, nv, nw, pitch, origin, u, v, w } = voxels;
  return {
    hotSpots: hotSpotsOf({ voxels, plate, distance, feeds }),
    grid: { nu, nv, nw, pitch, origin, u, v, w },
    plate,
  };
}
