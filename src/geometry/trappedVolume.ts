import { cellsAt, placeIn, type Dexels } from "./dexels.ts";
import { heldIn, type Outlet } from "./intervalTree.ts";
import { dot, type Vec3 } from "./vector.ts";

export type Pocket = {
  /** Cubed mesh units. */
  readonly volume: number;
  /** Heights along up, mesh coordinates: its highest place, and the level below which air gets out. */
  readonly top: number;
  readonly level: number;
  /** Within a pitch of its highest place. */
  readonly point: Vec3;
  /** It has a vent, but a lower one: this is what stays above the vent. */
  readonly vented: boolean;
};

export type Trapped = {
  readonly total: number;
  /** The largest first. Less than 8 cubes of the pitch is the raster's own grain and only counts in `total`. */
  readonly pockets: readonly Pocket[];
  /** Width of a column: what is thinner across is not seen. */
  readonly pitch: number;
  /** Of the whole solid, overlaps once. */
  readonly solidVolume: number;
  readonly columns: number;
  /** Columns through an open or turned skin; a share of many makes the answer doubtful. */
  readonly badColumns: number;
};

/**
 * Air that stays in the solid when metal rises evenly along `up`, with vents at points of its surface; without a
 * vent all of it stays. Plastic that stays when it runs out: the same with `up` negated and drains for vents.
 *
 * The gate is not in it: with weirs inside, `fillFromGateSteps` may give more or less. A vent further than 3 pitches
 * from the solid is a RangeError. On columns already cut: moving a vent costs a few milliseconds.
 */
export function trappedInDexels({ dexels, vents }: { dexels: Dexels; vents: readonly Vec3[] }): Trapped {
  const { pitch, nu, nv } = dexels;
  const blur = pitch / 4;
  const held = heldIn({ columns: dexels, outlets: vents.map((vent) => outletAt(dexels, vent)), blur });
  const zero = dot(dexels.origin, dexels.w);
  let total = 0;
  const pockets: Pocket[] = [];
  for (const { volume, top, level, topNode, vented } of held) {
    total += volume * pitch * pitch;
    if (top - level < blur || volume < 8 * pitch) continue;
    const c = columnOf(dexels, topNode);
    pockets.push({
      volume: volume * pitch * pitch,
      top: top + zero,
      level: level + zero,
      point: placeIn(dexels, (c % nu) + 0.5, Math.floor(c / nu) + 0.5, top),
      vented,
    });
  }
  let solid = 0;
  for (let k = 0; k < dexels.top.length; k++) solid += dexels.top[k]! - dexels.bottom[k]!;
  return {
    total,
    pockets: pockets.sort((a, b) => b.volume - a.volume),
    pitch,
    solidVolume: solid * pitch * pitch,
    columns: nu * nv,
    badColumns: dexels.badColumns,
  };
}

/** The interval nearest to a point, or one that stands higher within a pitch and a half of the point: vents are wider than that. */
function outletAt(dexels: Dexels, vent: Vec3): Outlet {
  const { nu, nv, pitch, start, bottom, top } = dexels;
  const [u, v, height] = cellsAt(dexels, vent);
  const near: { node: number; apart: number }[] = [];
  for (let j = Math.max(0, Math.floor(v - 3)); j <= Math.min(nv - 1, v + 3); j++) {
    for (let i = Math.max(0, Math.floor(u - 3)); i <= Math.min(nu - 1, u + 3); i++) {
      for (let node = start[j * nu + i]!; node < start[j * nu + i + 1]!; node++) {
        const beyond = Math.max(0, bottom[node]! - height, height - top[node]!) / pitch;
        const apart = Math.hypot(i + 0.5 - u, j + 0.5 - v, beyond);
        if (apart <= 3) near.push({ node, apart });
      }
    }
  }
  if (near.length === 0)
    throw new RangeError(`a vent must lie on the solid, found [${vent.join(", ")}] outside it`);
  const nearest = near.reduce((a, b) => (b.apart < a.apart ? b : a)).apart;
  const { node } = near
    .filter(({ apart }) => apart <= nearest + 1)
    .reduce((a, b) => (top[b.node]! > top[a.node]! ? b : a));
  return { node, level: Math.min(top[node]!, Math.max(bottom[node]!, height)) };
}

/** Column of an interval, by halving. */
function columnOf({ start, nu, nv }: Dexels, node: number): number {
  let low = 0;
  let high = nu * nv;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (start[middle]! <= node) low = middle;
    else high = middle;
  }
  return low;
}
