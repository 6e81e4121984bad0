import type { Mesh } from "./mesh.ts";

/**
 * Gives equal points one number. `add` takes corners as the bits of their 32-bit coordinates, three each, and writes
 * a vertex number for each into `out` from `at`. Exact: no tolerance; −0 is 0.
 */
export type Welder = {
  readonly add: (bits: Int32Array, corners: number, out: Uint32Array, at: number) => void;
  readonly count: () => number;
  readonly positions: () => Float32Array<ArrayBuffer>;
};

const minusZero = -2147483648;

/** A welder with room for `expected` different points, growing as needed. */
export function createWelder(expected: number): Welder {
  let points = new Int32Array(3 * Math.max(64, Math.ceil(expected)));
  // Open addressing, at most half full; a slot holds the vertex number + 1, 0 is empty.
  let table = new Int32Array(2 ** Math.ceil(Math.log2(2 * Math.max(64, expected))));
  let n = 0;

  function reserve(corners: number): void {
    const wanted = n + corners;
    if (3 * wanted > points.length) {
      const wider = new Int32Array(Math.max(3 * wanted, Math.ceil(points.length * 1.5)));
      wider.set(points.subarray(0, 3 * n));
      points = wider;
    }
    if (2 * wanted <= table.length) return;
    table = new Int32Array(2 ** Math.ceil(Math.log2(2 * wanted)));
    const mask = table.length - 1;
    for (let i = 0; i < n; i++) {
      let slot = hashOf(points[3 * i]!, points[3 * i + 1]!, points[3 * i + 2]!) & mask;
      while (table[slot] !== 0) slot = (slot + 1) & mask;
      table[slot] = i + 1;
    }
  }

  function add(bits: Int32Array, corners: number, out: Uint32Array, at: number): void {
    reserve(corners);
    const seen = table;
    const known = points;
    const mask = seen.length - 1;
    for (let c = 0, b = 0; c < corners; c++, b += 3) {
      let x = bits[b]!;
      let y = bits[b + 1]!;
      let z = bits[b + 2]!;
      if (x === minusZero) x = 0;
      if (y === minusZero) y = 0;
      if (z === minusZero) z = 0;
      let slot = hashOf(x, y, z) & mask;
      for (;;) {
        const found = seen[slot]!;
        if (found === 0) {
          known[3 * n] = x;
          known[3 * n + 1] = y;
          known[3 * n + 2] = z;
          n++;
          seen[slot] = n;
          out[at + c] = n - 1;
          break;
        }
        const p = 3 * (found - 1);
        if (known[p] === x && known[p + 1] === y && known[p + 2] === z) {
          out[at + c] = found - 1;
          break;
        }
        slot = (slot + 1) & mask;
      }
    }
  }

  return { add, count: () => n, positions: () => new Float32Array(points.buffer.slice(0, 12 * n)) };
}

/** Mixes the bits of three floats; the steps are those of MurmurHash3's finaliser (A. Appleby, public domain). */
function hashOf(x: number, y: number, z: number): number {
  let h = Math.imul(x, 0x9e3779b1) ^ Math.imul(y, 0x85ebca6b) ^ Math.imul(z, 0xc2b2ae35);
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return h ^ (h >>> 16);
}

/** Which points go with which triangles without a double, so that nobody welds twice. A mesh is never changed in place. */
const known = new WeakMap<Uint32Array, Float32Array>();

/** The mesh, remembered as one that needs no weld. */
export function asWelded<Kind extends Mesh>(mesh: Kind): Kind {
  known.set(mesh.idx, mesh.pos);
  return mesh;
}

/**
 * The same surface with equal points made one and points of no triangle left out; the very mesh when there is
 * nothing to do. Triangles are kept as they are, also those a weld makes degenerate. A RangeError when a triangle
 * names a vertex that is not there.
 */
export function weldMesh(given: Mesh): Mesh {
  // Numbers of another width have other bits: a mesh from elsewhere may come in doubles or plain lists.
  const mesh = given.pos instanceof Float32Array ? given : { ...given, pos: Float32Array.from(given.pos) };
  const { pos, idx } = mesh;
  if (known.get(idx) === pos) return mesh;
  const vertices = Math.floor(pos.length / 3);
  const used = new Uint8Array(vertices);
  for (let i = 0; i < idx.length; i++) {
    const v = idx[i]!;
    if (v >= vertices) throw new RangeError(`a triangle names vertex ${v}, but there are ${vertices}`);
    used[v] = 1;
  }
  const bits = new Int32Array(pos.buffer, pos.byteOffset, 3 * vertices);
  const welder = createWelder(vertices);
  const renamed = new Uint32Array(vertices);
  const batch = 16_384;
  let unused = 0;
  for (let from = 0; from < vertices;) {
    if (used[from] === 0) {
      unused++;
      from++;
      continue;
    }
    let to = from + 1;
    while (to < vertices && to - from < batch && used[to] === 1) to++;
    welder.add(bits.subarray(3 * from, 3 * to), to - from, renamed, from);
    from = to;
  }
  if (unused === 0 && welder.count() === vertices) return asWelded(mesh);
  const welded = new Uint32Array(idx.length);
  for (let i = 0; i < idx.length; i++) welded[i] = renamed[idx[i]!]!;
  return asWelded({ ...mesh, pos: welder.positions(), idx: welded });
}

/** The surface without triangles that name a vertex twice, and how many there were. */
export function dropDegenerate(mesh: Mesh): { readonly mesh: Mesh; readonly degenerate: number } {
  const { idx } = mesh;
  let degenerate = 0;
  for (let i = 0; i + 2 < idx.length; i += 3)
    if (idx[i] === idx[i + 1] || idx[i + 1] === idx[i + 2] || idx[i + 2] === idx[i]) degenerate++;
  if (degenerate === 0 && idx.length % 3 === 0) return { mesh, degenerate };
  const kept = new Uint32Array(3 * (Math.floor(idx.length / 3) - degenerate));
  let n = 0;
  for (let i = 0; i + 2 < idx.length; i += 3) {
    const [a, b, c] = [idx[i]!, idx[i + 1]!, idx[i + 2]!];
    if (a === b || b === c || c === a) continue;
    kept[n++] = a;
    kept[n++] = b;
    kept[n++] = c;
  }
  const rest = { ...mesh, idx: kept };
  return { mesh: known.get(idx) === mesh.pos ? asWelded(rest) : rest, degenerate };
}
