import type { Mesh } from "../../src/geometry/mesh.ts";
import type { Vec3 } from "../../src/geometry/vector.ts";

/** Box [x0, x1, y0, y1, z0, z1]. */
export type Box = readonly [number, number, number, number, number, number];

/**
 * Boxes melted into one closed surface, `less` cut out of it: the space is divided at every face of every box
 * and only faces between full and empty cells are kept, so no two edges meet in a T.
 */
export function boxes(solid: readonly Box[], less: readonly Box[] = []): Mesh {
  const all = [...solid, ...less];
  const cuts = [0, 1, 2].map((axis) =>
    [...new Set(all.flatMap((b) => [b[2 * axis]!, b[2 * axis + 1]!]))].sort((a, b) => a - b),
  ) as [number[], number[], number[]];
  const within = (list: readonly Box[], p: Vec3): boolean =>
    list.some((b) => [0, 1, 2].every((k) => p[k]! > b[2 * k]! && p[k]! < b[2 * k + 1]!));
  const isFull = (cell: Vec3): boolean => {
    if (cell.some((c, k) => c < 0 || c >= cuts[k]!.length - 1)) return false;
    const p = cell.map((c, k) => (cuts[k]![c]! + cuts[k]![c + 1]!) / 2) as unknown as Vec3;
    return within(solid, p) && !within(less, p);
  };
  const pos: number[] = [];
  const idx: number[] = [];
  const known = new Map<string, number>();
  const corner = (c: readonly number[]): number => {
    const key = c.join();
    const before = known.get(key);
    if (before !== undefined) return before;
    pos.push(...c.map((at, k) => cuts[k]![at]!));
    known.set(key, pos.length / 3 - 1);
    return pos.length / 3 - 1;
  };
  const each = (cell: Vec3): void => {
    if (!isFull(cell)) return;
    for (let axis = 0; axis < 3; axis++) {
      for (const side of [0, 1]) {
        const next = cell.map((c, k) => (k === axis ? c + (side ? 1 : -1) : c)) as unknown as Vec3;
        if (isFull(next)) continue;
        const at = (a: number, b: number): number => {
          const c = [...cell];
          c[axis]! += side;
          c[(axis + 1) % 3]! += a;
          c[(axis + 2) % 3]! += b;
          return corner(c);
        };
        const [p, q, r, s] = [at(0, 0), at(1, 0), at(1, 1), at(0, 1)];
        idx.push(...(side ? [p, q, r, p, r, s] : [p, r, q, p, s, r]));
      }
    }
  };
  for (let i = 0; i < cuts[0].length; i++)
    for (let j = 0; j < cuts[1].length; j++) for (let k = 0; k < cuts[2].length; k++) each([i, j, k]);
  return mesh(pos, idx);
}

/** A ring of (radius, height) points turned about z in `around` steps; radius 0 closes to a point on the axis. */
export function turned(profile: readonly (readonly [r: number, z: number])[], around: number): Mesh {
  return tube({
    rings: around,
    sides: profile.length,
    closed: true,
    at: (ring, side) => {
      const [r, z] = profile[side]!;
      const angle = (2 * Math.PI * (ring % around)) / around;
      return [r * Math.cos(angle), r * Math.sin(angle), z];
    },
  });
}

/** A skin over rings of points; `closed` joins the last ring to the first, else both ends get lids. Triangles without area are dropped. */
export function tube({
  rings,
  sides,
  closed,
  at,
}: {
  rings: number;
  sides: number;
  closed: boolean;
  at: (ring: number, side: number) => Vec3;
}): Mesh {
  const pos: number[] = [];
  const idx: number[] = [];
  const known = new Map<string, number>();
  const point = (p: Vec3): number => {
    const key = p.map((c) => (Math.abs(c) < 1e-9 ? 0 : Math.fround(c))).join();
    const before = known.get(key);
    if (before !== undefined) return before;
    pos.push(...p.map((c) => (Math.abs(c) < 1e-9 ? 0 : c)));
    known.set(key, pos.length / 3 - 1);
    return pos.length / 3 - 1;
  };
  const grid = Array.from({ length: rings }, (_, ring) =>
    Array.from({ length: sides }, (_, side) => point(at(ring, side))),
  );
  const add = (a: number, b: number, c: number): void => {
    if (a !== b && b !== c && c !== a) idx.push(a, b, c);
  };
  for (let ring = 0; ring < (closed ? rings : rings - 1); ring++) {
    for (let side = 0; side < sides; side++) {
      const [here, there] = [grid[ring]!, grid[(ring + 1) % rings]!];
      const next = (side + 1) % sides;
      add(here[side]!, there[side]!, there[next]!);
      add(here[side]!, there[next]!, here[next]!);
    }
  }
  if (!closed) {
    for (let side = 1; side + 1 < sides; side++) {
      add(grid[0]![0]!, grid[0]![side]!, grid[0]![side + 1]!);
      const end = grid[rings - 1]!;
      add(end[0]!, end[side + 1]!, end[side]!);
    }
  }
  return mesh(pos, idx);
}

/** Points of an arc in the (radius, height) plane, angles from the radius axis, both ends included. */
export function arc(
  { r, z, radius, from, to }: { r: number; z: number; radius: number; from: number; to: number },
  steps: number,
): (readonly [number, number])[] {
  return Array.from({ length: steps + 1 }, (_, i) => {
    const angle = from + ((to - from) * i) / steps;
    return [r + radius * Math.cos(angle), z + radius * Math.sin(angle)] as const;
  });
}

export function together(...parts: readonly Mesh[]): Mesh {
  const pos: number[] = [];
  const idx: number[] = [];
  for (const part of parts) {
    const base = pos.length / 3;
    for (const c of part.pos) pos.push(c);
    for (const i of part.idx) idx.push(base + i);
  }
  return mesh(pos, idx);
}

export const turnedInsideOut = ({ pos, idx }: Mesh): Mesh => ({ pos, idx: idx.slice().reverse() });

export function moved({ pos, idx }: Mesh, to: (p: Vec3) => Vec3): Mesh {
  const out: number[] = [];
  for (let v = 0; v < pos.length; v += 3) out.push(...to([pos[v]!, pos[v + 1]!, pos[v + 2]!]));
  return { pos: Float32Array.from(out), idx };
}

/** Every triangle with corners of its own, as a file of loose facets has them. */
export const unwelded = ({ pos, idx }: Mesh): Mesh =>
  mesh(
    [...idx].flatMap((v) => [pos[3 * v]!, pos[3 * v + 1]!, pos[3 * v + 2]!]),
    [...idx.keys()],
  );

/** Every triangle cut into n · n like ones. */
export function refined({ pos, idx }: Mesh, n: number): Mesh {
  const out: number[] = [];
  for (let t = 0; t < idx.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => 3 * idx[t + k]!) as [number, number, number];
    const put = (i: number, j: number): void => {
      for (let k = 0; k < 3; k++)
        out.push(pos[a + k]! + ((pos[b + k]! - pos[a + k]!) * i + (pos[c + k]! - pos[a + k]!) * j) / n);
    };
    for (let i = 0; i < n; i++)
      for (let j = 0; i + j < n; j++) {
        for (const [u, v] of [[i, j], [i + 1, j], [i, j + 1]] as const) put(u, v); // prettier-ignore
        if (i + j + 2 > n) continue;
        for (const [u, v] of [[i + 1, j], [i + 1, j + 1], [i, j + 1]] as const) put(u, v); // prettier-ignore
      }
  }
  return mesh(out, [...Array(out.length / 3).keys()]);
}

/** Signed volume, the plain way. */
export function volumeOf({ pos, idx }: Mesh): number {
  let six = 0;
  for (let i = 0; i < idx.length; i += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => 3 * idx[i + k]!) as [number, number, number];
    six +=
      pos[a]! * (pos[b + 1]! * pos[c + 2]! - pos[b + 2]! * pos[c + 1]!) +
      pos[a + 1]! * (pos[b + 2]! * pos[c]! - pos[b]! * pos[c + 2]!) +
      pos[a + 2]! * (pos[b]! * pos[c + 1]! - pos[b + 1]! * pos[c]!);
  }
  return six / 6;
}

const mesh = (pos: readonly number[], idx: readonly number[]): Mesh => ({
  pos: Float32Array.from(pos),
  idx: Uint32Array.from(idx),
});
