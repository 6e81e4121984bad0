import type { Fill } from "../../../geometry/fillFromGate.ts";

/** What comes first of all still has to differ from what never does. */
const earliest = 1 / 1024;

/**
 * The fill as pairs of 16-bit floats for a shader: when metal comes, 0–1, and 1 in a pocket. Spread two cells beyond the
 * solid by the mean of its neighbours, so that the skin of the piece, which lies at the edge of the cells, has a value.
 */
export function fillVolume({ grid, rank, pocketOf }: Pick<Fill, "grid" | "rank" | "pocketOf">): Uint16Array {
  const { nu, nv, nw } = grid;
  const when = Float32Array.from(rank, (value) => (value === 0 ? 0 : Math.max(earliest, value / 65_535)));
  const pocket = Float32Array.from(pocketOf, (value) => (value > 0 ? 1 : 0));
  const around = neighbours26(nu, nv);
  let edge: number[] = [];
  for (let cell = 0; cell < rank.length; cell++) if (rank[cell] !== 0) edge.push(cell);
  const isRim = (cell: number): boolean => {
    const i = cell % nu;
    const row = (cell - i) / nu;
    const [j, k] = [row % nv, Math.floor(row / nv)];
    return i < 1 || j < 1 || k < 1 || i > nu - 2 || j > nv - 2 || k > nw - 2;
  };
  for (let pass = 0; pass < 2; pass++) {
    const sums = new Map<number, { when: number; pocket: number; count: number }>();
    for (const cell of edge) {
      if (isRim(cell)) continue;
      for (const step of around) {
        const next = cell + step;
        if (when[next] !== 0) continue;
        const sum = sums.get(next) ?? { when: 0, pocket: 0, count: 0 };
        sum.when += when[cell]!;
        sum.pocket += pocket[cell]!;
        sum.count++;
        sums.set(next, sum);
      }
    }
    edge = [...sums.keys()];
    for (const [cell, sum] of sums) {
      when[cell] = sum.when / sum.count;
      pocket[cell] = sum.pocket / sum.count;
    }
  }
  const pairs = new Uint16Array(2 * rank.length);
  for (let cell = 0; cell < rank.length; cell++) {
    if (when[cell] === 0) continue;
    pairs[2 * cell] = halfOf(when[cell]!);
    pairs[2 * cell + 1] = halfOf(pocket[cell]!);
  }
  return pairs;
}

function neighbours26(nu: number, nv: number): readonly number[] {
  const steps: number[] = [];
  for (const k of [-1, 0, 1])
    for (const j of [-1, 0, 1]) for (const i of [-1, 0, 1]) steps.push(i + nu * (j + nv * k));
  return steps.filter((step) => step !== 0);
}

const single = new Float32Array(1);
const bits = new Uint32Array(single.buffer);

/** A number 0–1 as a 16-bit float (IEEE 754 binary16), cut off; below 2^-14 it is 0. */
export function halfOf(value: number): number {
  single[0] = value;
  const exponent = ((bits[0]! >>> 23) & 0xff) - 112;
  return exponent <= 0 ? 0 : (exponent << 10) | ((bits[0]! >>> 13) & 0x3ff);
}
