import { bodiesOf } from "./bodies.ts";
import { holdersOf, mostNested, sumBodies, type BodySum } from "./bodyHolders.ts";
import type { Mesh } from "./mesh.ts";

/**
 * Turns bodies that are inside out, from the outermost inward. One with nothing solid round it looks outward: what lies in
 * the open, and what lies loose in a void. One within solid keeps how it lies to the body round it: turned the other way it
 * is a void, turned the same way a body that runs into it. So a file inside out as a whole gives the solid of the right one.
 * Gives the very mesh and 0 when none is turned.
 */
export function turnOutward(mesh: Mesh): { readonly mesh: Mesh; readonly bodies: number } {
  const { count, ofTriangle } = bodiesOf(mesh);
  const bodies = sumBodies(mesh, count, ofTriangle);
  const wrong = count > mostNested ? ofWhole(bodies) : wrongOf(bodies, holdersOf(mesh, bodies, ofTriangle));
  const turned = wrong.filter(Boolean).length;
  if (turned === 0) return { mesh, bodies: 0 };
  const idx = mesh.idx.slice();
  for (let t = 0; t < ofTriangle.length; t++) {
    if (wrong[ofTriangle[t]!] !== true) continue;
    idx[3 * t + 1] = mesh.idx[3 * t + 2]!;
    idx[3 * t + 2] = mesh.idx[3 * t + 1]!;
  }
  return { mesh: { ...mesh, idx }, bodies: turned };
}

function ofWhole(bodies: readonly BodySum[]): readonly boolean[] {
  const isInsideOut = bodies.reduce((sum, { volume }) => sum + volume, 0) < 0;
  return bodies.map(() => isInsideOut);
}

/** `holders` are the bodies round each. */
function wrongOf(bodies: readonly BodySum[], holders: readonly (readonly number[])[]): readonly boolean[] {
  const wrong = bodies.map(() => false);
  const looksIn = (b: number): boolean => bodies[b]!.volume < 0 !== wrong[b];
  const inward = [...bodies.keys()].sort((a, b) => holders[a]!.length - holders[b]!.length);
  for (const b of inward) {
    const round = holders[b]!;
    const solid = round.reduce((sum, holder) => sum + (looksIn(holder) ? -1 : 1), 0);
    if (solid <= 0) {
      wrong[b] = bodies[b]!.volume < 0;
      continue;
    }
    const nearest = round.reduce((a, c) => (holders[c]!.length > holders[a]!.length ? c : a));
    wrong[b] = wrong[nearest]!;
  }
  return wrong;
}
