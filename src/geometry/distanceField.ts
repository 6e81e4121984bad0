import type { Steps } from "./steps.ts";
import type { Voxels } from "./voxels.ts";

/**
 * For every solid cell the distance to the surface, mesh units: exact between middles of cells, less half a cell, so
 * right to about half a cell. 0 outside. Squared distances axis by axis as lower envelopes of parabolas
 * (Felzenszwalb & Huttenlocher, Distance transforms of sampled functions, 2012).
 */
export function* distanceField({ nu, nv, nw, pitch, solid }: Voxels): Steps<Float32Array> {
  const field = new Float32Array(solid.length);
  const far = nu * nu + nv * nv + nw * nw;
  const longest = Math.max(nu, nv, nw);
  const work = {
    line: new Float64Array(longest),
    at: new Int32Array(longest),
    edge: new Float64Array(longest + 1),
  };
  // Along u a cell is empty or not: two plain passes do.
  for (let row = 0; row < field.length; row += nu) {
    let since = longest;
    for (let i = 0; i < nu; i++) {
      since = solid[row + i] ? since + 1 : 0;
      field[row + i] = since;
    }
    since = longest;
    for (let i = nu - 1; i >= 0; i--) {
      since = solid[row + i] ? since + 1 : 0;
      const least = Math.min(since, field[row + i]!);
      field[row + i] = Math.min(far, least * least);
    }
  }
  yield 0.2;
  for (let k = 0; k < nw; k++) {
    for (let i = 0; i < nu; i++) envelope(field, k * nu * nv + i, nu, nv, work);
    if (k % 16 === 0) yield 0.2 + (0.4 * k) / nw;
  }
  for (let j = 0; j < nv; j++) {
    for (let i = 0; i < nu; i++) envelope(field, j * nu + i, nu * nv, nw, work);
    if (j % 16 === 0) yield 0.6 + (0.4 * j) / nv;
  }
  for (let cell = 0; cell < field.length; cell++) {
    if (solid[cell]) field[cell] = (Math.sqrt(field[cell]!) - 0.5) * pitch;
  }
  return field;
}

/** The same in a plane: for every cell that is 1 in `isIn` the distance to the edge of the shape, in cells. */
export function planeDistance(isIn: Uint8Array, { nu, nv }: { nu: number; nv: number }): Float32Array {
  const longest = Math.max(nu, nv);
  const work = {
    line: new Float64Array(longest),
    at: new Int32Array(longest),
    edge: new Float64Array(longest + 1),
  };
  const field = Float32Array.from(isIn, (inside) => (inside ? longest * longest : 0));
  for (let j = 0; j < nv; j++) envelope(field, j * nu, 1, nu, work);
  for (let i = 0; i < nu; i++) envelope(field, i, nu, nv, work);
  return field.map((square) => (square > 0 ? Math.sqrt(square) - 0.5 : 0));
}

type Work = { readonly line: Float64Array; readonly at: Int32Array; readonly edge: Float64Array };

/** Lower envelope of the parabolas that stand on one line of the field, written back over it. */
function envelope(
  field: Float32Array,
  first: number,
  step: number,
  n: number,
  { line, at, edge }: Work,
): void {
  let any = false;
  for (let q = 0; q < n; q++) {
    line[q] = field[first + q * step]!;
    if (line[q]! > 0) any = true;
  }
  if (!any) return;
  let k = 0;
  at[0] = 0;
  edge[0] = -Infinity;
  edge[1] = Infinity;
  for (let q = 1; q < n; q++) {
    let cut = meet(line, at[k]!, q);
    while (cut <= edge[k]!) cut = meet(line, at[--k]!, q);
    at[++k] = q;
    edge[k] = cut;
    edge[k + 1] = Infinity;
  }
  k = 0;
  for (let q = 0; q < n; q++) {
    while (edge[k + 1]! < q) k++;
    field[first + q * step] = (q - at[k]!) ** 2 + line[at[k]!]!;
  }
}

const meet = (line: Float64Array, p: number, q: number): number =>
  (line[q]! + q * q - line[p]! - p * p) / (2 * (q - p));
