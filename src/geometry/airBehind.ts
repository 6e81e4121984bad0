import type { Steps } from "./steps.ts";
import { rootOf } from "./unionFind.ts";
import { neighboursIn, type Voxels } from "./voxels.ts";

/**
 * The cells whose air had no way to a vent when metal came to them. Played backwards: cells are given back to the
 * air, and what hangs together is one air space. All cells of one level are given back together, else part of a
 * flat surface of metal would seem to shut off the rest.
 */
export function* airBehind({
  voxels,
  order,
  batches,
  isVent,
}: {
  voxels: Voxels;
  /** Cells in the order in which metal takes them. */
  order: Uint32Array;
  /** Where a level begins in `order`; the last is its length. */
  batches: Uint32Array;
  /** 1 for cells that a vent opens. */
  isVent: Uint8Array;
}): Steps<number[]> {
  const steps = neighboursIn(voxels);
  const place = new Int32Array(voxels.solid.length).fill(-1);
  for (let at = 0; at < order.length; at++) place[order[at]!] = at;
  const parent = new Int32Array(order.length);
  const hasVent = new Uint8Array(order.length);
  const trapped: number[] = [];
  let sinceYield = 0;
  for (let b = batches.length - 2; b >= 0; b--) {
    const from = batches[b]!;
    const to = batches[b + 1]!;
    for (let at = from; at < to; at++) {
      parent[at] = at;
      hasVent[at] = isVent[order[at]!]!;
    }
    for (let at = from; at < to; at++) {
      let root = rootOf(parent, at);
      for (const step of steps) {
        const other = place[order[at]! + step]!;
        if (other < from) continue;
        const theirs = rootOf(parent, other);
        if (theirs === root) continue;
        // Later cells are the bigger, older part: hang the younger under it.
        const [keep, gone] = theirs > root ? [theirs, root] : [root, theirs];
        parent[gone] = keep;
        hasVent[keep]! |= hasVent[gone]!;
        root = keep;
      }
    }
    for (let at = from; at < to; at++) if (!hasVent[rootOf(parent, at)]) trapped.push(order[at]!);
    sinceYield += to - from;
    if (sinceYield > 500_000) {
      sinceYield = 0;
      yield 0.6 + 0.3 * (1 - from / order.length);
    }
  }
  return trapped;
}
