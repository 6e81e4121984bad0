import type { Mesh } from "./mesh.ts";
import type { Vec3 } from "./vector.ts";

export type Box = {
  readonly low: Vec3;
  readonly high: Vec3;
  readonly middle: Vec3;
  readonly diagonal: number;
};

/** Moments of inertia per unit of density: ∫(y² + z²)dV and so on; products as ∫xy dV. Length to the fifth. */
export type Inertia = {
  readonly xx: number;
  readonly yy: number;
  readonly zz: number;
  readonly xy: number;
  readonly yz: number;
  readonly zx: number;
};

export type MassProperties = {
  readonly box: Box;
  readonly area: number;
  /** Signed: negative when the surface is inside out, and without meaning when it is open. */
  readonly volume: number;
  /** Centre of the volume; null where the volume is 0. */
  readonly centre: Vec3 | null;
  /** About the middle of the box. */
  readonly inertia: Inertia;
};

/** Box of the corners that triangles use; a RangeError for a mesh without triangles. */
export function boxOf({ pos, idx }: Mesh): Box {
  let [x0, y0, z0, x1, y1, z1] = [Infinity, Infinity, Infinity, -Infinity, -Infinity, -Infinity];
  for (let i = 0; i < idx.length; i++) {
    const at = 3 * idx[i]!;
    const [x, y, z] = [pos[at]!, pos[at + 1]!, pos[at + 2]!];
    if (x < x0) x0 = x;
    if (x > x1) x1 = x;
    if (y < y0) y0 = y;
    if (y > y1) y1 = y;
    if (z < z0) z0 = z;
    if (z > z1) z1 = z;
  }
  if (!(x1 >= x0)) throw new RangeError(`a mesh must have triangles, found ${idx.length / 3}`);
  return {
    low: [x0, y0, z0],
    high: [x1, y1, z1],
    middle: [(x0 + x1) / 2, (y0 + y1) / 2, (z0 + z1) / 2],
    diagonal: Math.hypot(x1 - x0, y1 - y0, z1 - z0),
  };
}

/**
 * Volume, area, centre and inertia from the tetrahedra between each triangle and the middle of the box (F. Tonon,
 * Explicit exact formulas for the 3-D tetrahedron inertia tensor, J. Math. Stat. 1, 2005), in double precision with
 * compensated sums of short blocks (A. Neumaier, ZAMM 54, 1974). In the mesh's own unit.
 */
export function massPropertiesOf(mesh: Mesh): MassProperties {
  const { idx } = mesh;
  const box = boxOf(mesh);
  const [ox, oy, oz] = box.middle;
  // Area, volume, three first and six second moments: each a sum and what rounding took from it.
  const sums = new Float64Array(11);
  const lost = new Float64Array(11);
  const block = new Float64Array(11);
  for (let from = 0; from < idx.length; from += 3 * blockTriangles) {
    sumBlock(mesh, box.middle, { from, to: Math.min(idx.length, from + 3 * blockTriangles) }, block);
    for (let k = 0; k < 11; k++) {
      const term = block[k]!;
      const before = sums[k]!;
      const after = before + term;
      lost[k]! += Math.abs(before) >= Math.abs(term) ? before - after + term : term - after + before;
      sums[k] = after;
    }
  }
  const total = (k: number): number => sums[k]! + lost[k]!;
  const six = total(1);
  const [xx, yy, zz] = [total(5) / 120, total(6) / 120, total(7) / 120];
  return {
    box,
    area: total(0) / 2,
    volume: six / 6,
    centre:
      six === 0 ? null : [ox + total(2) / (4 * six), oy + total(3) / (4 * six), oz + total(4) / (4 * six)],
    inertia: {
      xx: yy + zz,
      yy: zz + xx,
      zz: xx + yy,
      xy: total(8) / 120,
      yz: total(9) / 120,
      zx: total(10) / 120,
    },
  };
}

/** So few that adding them up plainly loses nothing that shows. */
const blockTriangles = 64;

function sumBlock(
  { pos, idx }: Mesh,
  [ox, oy, oz]: Vec3,
  { from, to }: { from: number; to: number },
  sums: Float64Array,
): void {
  let [area, six, mx, my, mz] = [0, 0, 0, 0, 0];
  let [xx, yy, zz, xy, yz, zx] = [0, 0, 0, 0, 0, 0];
  for (let i = from; i < to; i += 3) {
    const [a, b, c] = [3 * idx[i]!, 3 * idx[i + 1]!, 3 * idx[i + 2]!];
    const ax = pos[a]! - ox;
    const ay = pos[a + 1]! - oy;
    const az = pos[a + 2]! - oz;
    const bx = pos[b]! - ox;
    const by = pos[b + 1]! - oy;
    const bz = pos[b + 2]! - oz;
    const cx = pos[c]! - ox;
    const cy = pos[c + 1]! - oy;
    const cz = pos[c + 2]! - oz;
    const nx = (by - ay) * (cz - az) - (bz - az) * (cy - ay);
    const ny = (bz - az) * (cx - ax) - (bx - ax) * (cz - az);
    const nz = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
    // Six times the tetrahedron's volume.
    const v = ax * nx + ay * ny + az * nz;
    const sx = ax + bx + cx;
    const sy = ay + by + cy;
    const sz = az + bz + cz;
    area += Math.sqrt(nx * nx + ny * ny + nz * nz);
    six += v;
    mx += v * sx;
    my += v * sy;
    mz += v * sz;
    xx += v * (sx * sx + ax * ax + bx * bx + cx * cx);
    yy += v * (sy * sy + ay * ay + by * by + cy * cy);
    zz += v * (sz * sz + az * az + bz * bz + cz * cz);
    xy += v * (sx * sy + ax * ay + bx * by + cx * cy);
    yz += v * (sy * sz + ay * az + by * bz + cy * cz);
    zx += v * (sz * sx + az * ax + bz * bx + cz * cx);
  }
  sums[0] = area;
  sums[1] = six;
  sums[2] = mx;
  sums[3] = my;
  sums[4] = mz;
  sums[5] = xx;
  sums[6] = yy;
  sums[7] = zz;
  sums[8] = xy;
  sums[9] = yz;
  sums[10] = zx;
}
