import type { Mesh } from "./mesh.ts";
import type { Vec3 } from "./vector.ts";

export type Raster = {
  readonly nu: number;
  readonly nv: number;
  readonly pitch: number;
  readonly u0: number;
  readonly v0: number;
};
export type Crossings = {
  readonly cell: Uint32Array;
  readonly at: Float64Array;
  readonly enters: Uint8Array;
  readonly count: number;
};

/**
 * Where columns pass triangles. Each row cuts an edge at a place computed from its ends in one fixed order, and
 * rows and columns belong to their lower end only, so that two triangles share every column at their edge
 * without gap or double.
 */
export function crossingsOf(
  idx: Uint32Array,
  uvw: Float64Array,
  { nu, nv, pitch, u0, v0 }: Raster,
): Crossings {
  let room = Math.max(1024, 4 * nu * nv);
  let cell = new Uint32Array(room);
  let at = new Float64Array(room);
  let enters = new Uint8Array(room);
  let count = 0;
  for (let t = 0; t < idx.length; t += 3) {
    const a = 3 * idx[t]!;
    const b = 3 * idx[t + 1]!;
    const c = 3 * idx[t + 2]!;
    const av = uvw[a + 1]!;
    const bv = uvw[b + 1]!;
    const cv = uvw[c + 1]!;
    // A row too many costs nothing: whether it cuts an edge is asked of the ends themselves.
    const j0 = Math.max(0, Math.ceil((Math.min(av, bv, cv) - v0) / pitch - 0.500001));
    const j1 = Math.min(nv - 1, Math.ceil((Math.max(av, bv, cv) - v0) / pitch - 0.499999));
    if (j0 > j1) continue;
    const au = uvw[a]!;
    const aw = uvw[a + 2]!;
    const eu = uvw[b]! - au;
    const ev = bv - av;
    const ew = uvw[b + 2]! - aw;
    const fu = uvw[c]! - au;
    const fv = cv - av;
    const fw = uvw[c + 2]! - aw;
    const nz = eu * fv - ev * fu;
    const slopeU = nz === 0 ? 0 : (ew * fv - ev * fw) / nz;
    const slopeV = nz === 0 ? 0 : (eu * fw - ew * fu) / nz;
    const lowW = Math.min(aw, aw + ew, aw + fw);
    const highW = Math.max(aw, aw + ew, aw + fw);
    for (let j = j0; j <= j1; j++) {
      const v = v0 + (j + 0.5) * pitch;
      let rising = 0;
      let falling = 0;
      for (let edge = 0; edge < 3; edge++) {
        const p = edge === 0 ? a : edge === 1 ? b : c;
        const q = edge === 0 ? b : edge === 1 ? c : a;
        const isBelow = uvw[p + 1]! <= v;
        if (isBelow === uvw[q + 1]! <= v) continue;
        if (isBelow) rising = cutAt(uvw, p, q, v);
        else falling = cutAt(uvw, p, q, v);
      }
      // Which edge lies left says whether it is seen from above or below: so slivers that rounding turns over cancel out.
      const from = Math.min(rising, falling);
      const to = Math.max(rising, falling);
      const i0 = Math.max(0, Math.ceil((from - u0) / pitch - 0.5));
      const i1 = Math.min(nu, Math.ceil((to - u0) / pitch - 0.5));
      for (let i = i0; i < i1; i++) {
        if (count === room) {
          room *= 2;
          cell = grown(cell, new Uint32Array(room));
          at = grown(at, new Float64Array(room));
          enters = grown(enters, new Uint8Array(room));
        }
        const w = aw + slopeU * (u0 + (i + 0.5) * pitch - au) + slopeV * (v - av);
        cell[count] = j * nu + i;
        at[count] = Math.min(highW, Math.max(lowW, w));
        enters[count++] = rising < falling ? 1 : 0;
      }
    }
  }
  return { cell, at, enters, count };
}

/** Where the row at `v` cuts the edge p–q, reckoned from the lower end whichever way the edge is given. */
function cutAt(uvw: Float64Array, p: number, q: number, v: number): number {
  const pv = uvw[p + 1]!;
  const qv = uvw[q + 1]!;
  return pv < qv
    ? uvw[p]! + ((uvw[q]! - uvw[p]!) * (v - pv)) / (qv - pv)
    : uvw[q]! + ((uvw[p]! - uvw[q]!) * (v - qv)) / (pv - qv);
}

function grown<Numbers extends { set(from: Numbers): void }>(from: Numbers, to: Numbers): Numbers {
  to.set(from);
  return to;
}

/** Every vertex along three axes, and the box of those that `idx` names. */
export function turnedInto(
  { pos, idx }: Mesh,
  axes: readonly [Vec3, Vec3, Vec3],
): { readonly uvw: Float64Array; readonly low: Vec3; readonly high: Vec3 } {
  const uvw = new Float64Array(pos.length);
  for (let at = 0; at < pos.length; at += 3) {
    for (let k = 0; k < 3; k++) {
      const axis = axes[k]!;
      uvw[at + k] = pos[at]! * axis[0] + pos[at + 1]! * axis[1] + pos[at + 2]! * axis[2];
    }
  }
  const low = [Infinity, Infinity, Infinity] as [number, number, number];
  const high = [-Infinity, -Infinity, -Infinity] as [number, number, number];
  for (const vertex of idx) {
    for (let k = 0; k < 3; k++) {
      const at = uvw[3 * vertex + k]!;
      if (at < low[k]!) low[k] = at;
      if (at > high[k]!) high[k] = at;
    }
  }
  return { uvw, low, high };
}
