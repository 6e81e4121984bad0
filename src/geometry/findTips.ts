import { branchVolume, unseen } from "./branchVolume.ts";
import { joinTree } from "./joinTree.ts";
import type { Mesh } from "./mesh.ts";
import { pointAt, surfaceOf, type Surface } from "./surface.ts";
import { topOf } from "./tipTop.ts";
import { dot, minus, unit, type Vec3 } from "./vector.ts";

/** A local top of the solid: unvented, the air below it stays down to the saddle. */
export type Tip = {
  /** On the surface, where a vent would stand: the middle of a flat top or a ridge. */
  readonly point: Vec3;
  /** point · up, in mesh coordinates. */
  readonly height: number;
  /** Down to the saddle; for the highest tip of a body, down to the body's lowest point. */
  readonly rise: number;
  /** Height of the saddle, in mesh coordinates along `up`. */
  readonly saddle: number;
  /** Of what lies between saddle and tip; the highest tip of a body has the whole body's. */
  readonly volume: number;
  /** The highest of its body. */
  readonly whole: boolean;
  readonly shape: "point" | "ridge" | "flat";
  /** Places of equal height along a ridge or round a flat top, in order along it; empty for a point. */
  readonly ridge: readonly Vec3[];
};

/**
 * Where air stays when metal rises along `up`: tops of the solid from a join tree of its surface, the highest
 * first. Tops that rise less than `minRise` or hold less than `minVolume` (both 0 or more, mesh units) are
 * noise, and so is the ceiling of a hollow, whose face looks down. Drains: the same with `up` negated.
 *
 * Where vents belong does not hang on the gate: a pocket's top is always a local top of the solid. What it cannot
 * see: bodies that pass through each other, and voids that are surfaces of their own; `trappedVolume` does.
 */
export function findTips({ minRise, ...from }: TipsFrom): readonly Tip[] {
  const { surface, tree, upward, level, kept } = upwardBranches({ minRise, ...from });
  const zero = dot(surface.middle, upward);
  return kept
    .map(({ branch, volume }): Tip => {
      const height = tree.heights[branch.tip]! + zero;
      const saddle = tree.heights[branch.saddle]! + zero;
      const rise = height - saddle;
      const within = Math.min(rise / 4, level);
      // What rises less than asked is noise: half of that may lie in the roughness of a flat top.
      const most = Math.min(rise / 4, minRise / 2);
      const top = topOf({ surface, tree, tip: branch.tip, up: upward, within, most, least: 2 * minRise });
      return { ...top, height, saddle, rise, volume, whole: branch.whole };
    })
    .sort((a, b) => b.height - a.height);
}

/** How many tips `findTips` would list, without their shapes: for a search over many directions. */
export const countTips = (from: TipsFrom): number => upwardBranches(from).kept.length;

type TipsFrom = {
  readonly mesh: Mesh;
  readonly up: Vec3;
  readonly minRise: number;
  readonly minVolume: number;
};

function upwardBranches({ mesh, up, minRise, minVolume }: TipsFrom) {
  const surface = surfaceOf(mesh);
  const upward = unit(up);
  const tree = joinTree({ surface, up: upward, minRise: atLeastZero("minRise", minRise) });
  atLeastZero("minVolume", minVolume);
  // Heights this close are one level: a hundredth of the rise asked for, or rounding.
  const level = Math.max(minRise / 100, 1e-5 * surface.size);
  const seen = unseen(surface);
  const kept = tree.branches
    .filter(({ tip }) => opensUpward({ surface, v: tip, up: upward }))
    .map((branch) => ({
      branch,
      volume: branchVolume({ surface, tree, branch, up: upward, blur: level, seen }),
    }))
    .filter(({ volume }) => volume > 0 && volume >= minVolume);
  return { surface, tree, upward, level, kept };
}

/**
 * Whether there is air just above a local top: the angle-weighted normal looks up. The nearest surface to a point
 * straight above a top is the top itself, for which this sign is exact (Bærentzen & Aanæs, Signed distance
 * computation using the angle weighted pseudonormal, 2005).
 */
function opensUpward({ surface, v, up }: { surface: Surface; v: number; up: Vec3 }): boolean {
  const { pos, idx, start, around } = surface;
  let sum = 0;
  for (let at = start[v]!; at < start[v + 1]!; at++) {
    const t = 3 * around[at]!;
    const k = idx[t] === v ? 0 : idx[t + 1] === v ? 1 : 2;
    const here = pointAt(pos, v);
    const a = minus(pointAt(pos, idx[t + ((k + 1) % 3)]!), here);
    const b = minus(pointAt(pos, idx[t + ((k + 2) % 3)]!), here);
    const nx = a[1] * b[2] - a[2] * b[1];
    const ny = a[2] * b[0] - a[0] * b[2];
    const nz = a[0] * b[1] - a[1] * b[0];
    const twice = Math.hypot(nx, ny, nz);
    if (twice > 0) sum += (Math.atan2(twice, dot(a, b)) * (nx * up[0] + ny * up[1] + nz * up[2])) / twice;
  }
  return sum > 0;
}

function atLeastZero(name: string, value: number): number {
  if (!(value >= 0)) throw new RangeError(`${name} must be 0 or more, found ${value}`);
  return value;
}
