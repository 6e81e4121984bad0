import { countTips } from "./findTips.ts";
import type { Mesh } from "./mesh.ts";
import { sphereDirections } from "./sphereDirections.ts";
import type { Steps } from "./steps.ts";
import { surfaceOf } from "./surface.ts";
import { inOrder, undominated } from "./undominated.ts";
import { dot, minus, plus, squareTo, times, unit, type Vec3 } from "./vector.ts";

/** A way to hang the piece, and what it costs. */
export type Attitude = {
  /** Direction of the mesh that points up. */
  readonly up: Vec3;
  /** Tips for air, and tips for plastic: each wants one opening. */
  readonly vents: number;
  readonly drains: number;
  /** Height of the piece so hung: the head it makes of itself, mesh units. */
  readonly head: number;
};

type SearchFrom = {
  readonly mesh: Mesh;
  /** A lighter copy for the search, some 20 000 triangles; at 5000 it misses tips. The mesh itself when it is small. */
  readonly light?: Mesh | undefined;
  readonly minRise: number;
  readonly minVolume: number;
  /** Coarse directions, 200 unless given. */
  readonly directions?: number | undefined;
};

/**
 * Ways to hang a piece none of which beats another in vents, drains and head together (heads within 2 % of the size count
 * as equal): the fewest openings first, of as many the least head, and where that too is equal fewer vents. 200 directions on
 * the light mesh; 12 more round each of the best so found; all that nothing beats again on the mesh itself.
 */
export function* searchAttitudesSteps({
  mesh,
  light = mesh,
  minRise,
  minVolume,
  directions = 200,
}: SearchFrom): Steps<readonly Attitude[]> {
  const { size } = surfaceOf(light);
  const judge = (on: Mesh, up: Vec3): Attitude => judged({ mesh: on, up, minRise, minVolume });
  const seen: Attitude[] = [];
  for (const [n, up] of [...sixFaces, ...sphereDirections(directions)].entries()) {
    seen.push(judge(light, up));
    yield (0.55 * n) / (directions + 6);
  }
  const front = undominated(seen, size);
  const others = inOrder(seen).filter((attitude) => !front.includes(attitude));
  const best = [...front, ...others.slice(0, Math.max(0, leastRefined - front.length))];
  for (const [n, { up }] of best.entries()) {
    for (const near of around(up)) seen.push(judge(light, near));
    yield 0.55 + (0.3 * (n + 1)) / best.length;
  }
  const final: Attitude[] = [];
  const finalists = undominated(seen, size);
  for (const [n, attitude] of finalists.entries()) {
    final.push(light === mesh ? attitude : judge(mesh, attitude.up));
    yield 0.85 + (0.15 * (n + 1)) / finalists.length;
  }
  return undominated(final, size);
}

/** Where fewer than this beat all others, the search looks closer round the next ones too. */
const leastRefined = 10;

/** Vents, drains and head of one attitude. */
export function judged({
  mesh,
  up,
  minRise,
  minVolume,
}: {
  mesh: Mesh;
  up: Vec3;
  minRise: number;
  minVolume: number;
}): Attitude {
  const upward = unit(up);
  const vents = countTips({ mesh, up: upward, minRise, minVolume });
  const drains = countTips({ mesh, up: times(upward, -1), minRise, minVolume });
  return { up: upward, vents, drains, head: heightOf(mesh, upward) };
}

/** Head of metal over a point, mesh units, never below 0: from the level in the cup (a height along up) down to it. */
export function headAt({ up, cupLevel, point }: { up: Vec3; cupLevel: number; point: Vec3 }): number {
  return Math.max(0, cupLevel - dot(unit(up), point));
}

function heightOf(mesh: Mesh, up: Vec3): number {
  const { pos } = surfaceOf(mesh);
  let low = Infinity;
  let high = -Infinity;
  for (let at = 0; at < pos.length; at += 3) {
    const h = pos[at]! * up[0] + pos[at + 1]! * up[1] + pos[at + 2]! * up[2];
    if (h < low) low = h;
    if (h > high) high = h;
  }
  return high - low;
}

/** Twelve directions in two rings, at 0.06 and 0.12 rad: half way to the next of 200 coarse ones. */
function around(up: Vec3): readonly Vec3[] {
  const [u, v] = squareTo(up);
  return Array.from({ length: 12 }, (_, n) => {
    const angle = (Math.PI * n) / 6;
    const lean = n % 2 === 0 ? 0.06 : 0.12;
    return unit(plus(up, plus(times(u, lean * Math.cos(angle)), times(v, lean * Math.sin(angle)))));
  });
}

const sixFaces: readonly Vec3[] = [0, 1, 2].flatMap((k) => {
  const axis: Vec3 = [k === 0 ? 1 : 0, k === 1 ? 1 : 0, k === 2 ? 1 : 0];
  return [axis, minus([0, 0, 0], axis)];
});
