import { inscribedBalls } from "./inscribedBalls.ts";
import { distanceField } from "./distanceField.ts";
import type { Mesh } from "./mesh.ts";
import { firstExit, rayTreeOf } from "./rayTree.ts";
import { sphereDirections } from "./sphereDirections.ts";
import { between, type Steps } from "./steps.ts";
import type { Vec3 } from "./vector.ts";
import { voxelsOf } from "./voxels.ts";

/** A rod, tube or ball of the solid as the wall round it sees it: by the diameter inside. */
export type RoundSpan = { readonly point: Vec3; readonly diameter: number };

type RoundSpansFrom = { readonly mesh: Mesh; readonly cells: number };

/**
 * The widest round parts, the widest first: inscribed balls that the surface hugs. Half of all directions from the middle
 * of a rod meet the surface within 1.15 radii, all from that of a ball; a sixth between two flats, two fifths in a cube.
 */
export function* roundSpansSteps({ mesh, cells }: RoundSpansFrom): Steps<readonly RoundSpan[]> {
  const voxels = voxelsOf({ mesh, up: [0, 0, 1], cells });
  const distance = yield* between(0.1, 0.6, distanceField(voxels));
  const tree = rayTreeOf(mesh);
  yield 0.8;
  return inscribedBalls({ voxels, distance, tree }, 24).filter(({ point, diameter }) => {
    const least = 1e-6 * diameter;
    const near = looks.filter((along) => firstExit(tree, { from: point, along, least }) < 0.575 * diameter);
    return near.length > 0.44 * looks.length;
  });
}

const looks = sphereDirections(256);
