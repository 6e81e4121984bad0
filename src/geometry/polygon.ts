/**
 * Cuts a flat polygon into triangles, each three places in `corners` (x, y, z each). A convex one is fanned; another is
 * cut ear by ear (G. Meisters, Polygons Have Ears, 1975) in the plane its area faces; one that crosses itself is fanned,
 * which keeps the border right.
 */
export function cutPolygon(corners: Float64Array): readonly number[] {
  const n = corners.length / 3;
  if (n === 3) return [0, 1, 2];
  const flat = flatten(corners);
  return isConvex(flat) ? fan(n) : (earsOf(flat) ?? fan(n));
}

/**
 * Triangles of a polygon seen in the plane its area faces, whether it is flat or not, cutting the sharpest ear first so that
 * the surface stays small; any number of corners. Each turns left or is a line, so together they have the polygon's own area
 * and cover it once; corners in a line and those a bridge to a hole passes twice are kept. Null when it crosses itself.
 */
export function earsOf(flat: Float64Array): readonly number[] | null {
  const n = flat.length / 2;
  const ring = ringOf(n);
  const { before, after } = ring;
  const isDent = Uint8Array.from({ length: n }, (_, b) =>
    turn(flat, before[b]!, b, after[b]!) <= 0 ? 1 : 0,
  );
  const dents = dentGrid(flat, isDent);
  const heap = shortestFirst();
  /** Ears that a dent stands in, listed at that dent: looked at again when it is one no more. */
  const firstWaiting = new Int32Array(n).fill(-1);
  const nextWaiting = new Int32Array(n).fill(-1);
  const chord = (b: number): number => {
    const [a, c] = [before[b]!, after[b]!];
    return Math.hypot(flat[2 * a]! - flat[2 * c]!, flat[2 * a + 1]! - flat[2 * c + 1]!);
  };
  const offer = (b: number): void => {
    if (isDent[b] === 0) heap.push(chord(b), b);
  };
  const release = (d: number): void => {
    isDent[d] = 0;
    for (let b = firstWaiting[d]!; b >= 0;) {
      const following = nextWaiting[b]!;
      nextWaiting[b] = -1;
      if (!ring.isCut(b)) offer(b);
      b = following;
    }
    firstWaiting[d] = -1;
  };
  const cut: number[] = [];
  const cutOff = (b: number): void => {
    const [a, c] = [before[b]!, after[b]!];
    cut.push(a, b, c);
    ring.cut(b);
    release(b);
    for (const v of [a, c]) {
      const bends = turn(flat, before[v]!, v, after[v]!);
      if (bends > 0 && isDent[v] === 1) release(v);
      else isDent[v] = bends > 0 ? 0 : 1;
      offer(v);
    }
  };
  for (let b = 0; b < n; b++) offer(b);
  let left = n;
  for (; left > 3; left--) {
    let ear: number | null = null;
    for (let found = heap.pop(); found !== null && ear === null; found = heap.pop()) {
      const { key, item: b } = found;
      // Listed with a neighbour it no longer has, or waiting already.
      if (ring.isCut(b) || isDent[b] === 1 || key !== chord(b)) continue;
      const d = dents.within(before[b]!, b, after[b]!, isDent);
      if (d === null) {
        ear = b;
        break;
      }
      nextWaiting[b] = firstWaiting[d]!;
      firstWaiting[d] = b;
    }
    ear ??= ring.find((b) => turn(flat, before[b]!, b, after[b]!) === 0);
    if (ear === null) return null;
    cutOff(ear);
  }
  const b = ring.find(() => true)!;
  if (turn(flat, before[b]!, b, after[b]!) < 0) return null;
  return [...cut, before[b]!, b, after[b]!];
}

/** Corners in a ring from which one after the other is cut. */
function ringOf(n: number) {
  const before = Int32Array.from({ length: n }, (_, i) => (i + n - 1) % n);
  const after = Int32Array.from({ length: n }, (_, i) => (i + 1) % n);
  const gone = new Uint8Array(n);
  let first = 0;
  return {
    before,
    after,
    isCut: (b: number): boolean => gone[b] === 1,
    cut: (b: number): void => {
      gone[b] = 1;
      after[before[b]!] = after[b]!;
      before[after[b]!] = before[b]!;
      first = after[b]!;
    },
    find: (is: (b: number) => boolean): number | null => {
      for (let b = first; ;) {
        if (is(b)) return b;
        b = after[b]!;
        if (b === first) return null;
      }
    },
  };
}

/** The dents of a polygon in squares of the plane, some one a square. */
function dentGrid(flat: Float64Array, isDent: Uint8Array) {
  const dents = [...isDent.keys()].filter((v) => isDent[v] === 1);
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let v = 0; v < isDent.length; v++) {
    x0 = Math.min(x0, flat[2 * v]!);
    y0 = Math.min(y0, flat[2 * v + 1]!);
    x1 = Math.max(x1, flat[2 * v]!);
    y1 = Math.max(y1, flat[2 * v + 1]!);
  }
  const side = Math.min(1024, Math.max(1, Math.ceil(Math.sqrt(dents.length))));
  const column = (x: number): number => Math.min(side - 1, Math.floor(((x - x0) / (x1 - x0 || 1)) * side));
  const row = (y: number): number => Math.min(side - 1, Math.floor(((y - y0) / (y1 - y0 || 1)) * side));
  const squares = Array.from({ length: side * side }, (): number[] => []);
  for (const d of dents) squares[row(flat[2 * d + 1]!) * side + column(flat[2 * d]!)]!.push(d);

  /** One in or on the triangle; null when there is none. At a corner of it, it bounds another part of the polygon. */
  function within(a: number, b: number, c: number, stillDent: Uint8Array): number | null {
    const xs = [flat[2 * a]!, flat[2 * b]!, flat[2 * c]!];
    const ys = [flat[2 * a + 1]!, flat[2 * b + 1]!, flat[2 * c + 1]!];
    const lastRow = row(Math.max(...ys));
    const lastColumn = column(Math.max(...xs));
    for (let j = row(Math.min(...ys)); j <= lastRow; j++)
      for (let i = column(Math.min(...xs)); i <= lastColumn; i++)
        for (const d of squares[j * side + i]!) {
          if (stillDent[d] === 0 || !isInside(flat, a, b, c, d)) continue;
          const [x, y] = [flat[2 * d]!, flat[2 * d + 1]!];
          if (!xs.some((at, k) => at === x && ys[k] === y)) return d;
        }
    return null;
  }
  return { within };
}

/** A heap that gives the item with the least key first. */
function shortestFirst() {
  const keys: number[] = [];
  const items: number[] = [];
  const swap = (i: number, k: number): void => {
    [keys[i], keys[k]] = [keys[k]!, keys[i]!];
    [items[i], items[k]] = [items[k]!, items[i]!];
  };
  return {
    push: (key: number, item: number): void => {
      let at = keys.push(key) - 1;
      items.push(item);
      for (; at > 0 && keys[(at - 1) >> 1]! > keys[at]!; at = (at - 1) >> 1) swap(at, (at - 1) >> 1);
    },
    pop: (): { readonly key: number; readonly item: number } | null => {
      if (keys.length === 0) return null;
      swap(0, keys.length - 1);
      const found = { key: keys.pop()!, item: items.pop()! };
      for (let at = 0; ;) {
        let least = at;
        for (const child of [2 * at + 1, 2 * at + 2])
          if (child < keys.length && keys[child]! < keys[least]!) least = child;
        if (least === at) return found;
        swap(at, least);
        at = least;
      }
    },
  };
}

/** Twice the area of a triangle of the plane, positive when it turns left. */
function turn(flat: Float64Array, a: number, b: number, c: number): number {
  const [ax, ay] = [flat[2 * a]!, flat[2 * a + 1]!];
  return (flat[2 * b]! - ax) * (flat[2 * c + 1]! - ay) - (flat[2 * b + 1]! - ay) * (flat[2 * c]! - ax);
}

const isInside = (flat: Float64Array, a: number, b: number, c: number, d: number): boolean =>
  turn(flat, a, b, d) >= 0 && turn(flat, b, c, d) >= 0 && turn(flat, c, a, d) >= 0;

function isConvex(flat: Float64Array): boolean {
  const n = flat.length / 2;
  for (let i = 0; i < n; i++) if (turn(flat, i, (i + 1) % n, (i + 2) % n) < 0) return false;
  return true;
}

const fan = (n: number): readonly number[] =>
  Array.from({ length: n - 2 }, (_, i) => [0, i + 1, i + 2]).flat();

/**
 * The polygon in the plane across its greatest area component, turning left. Newell's sums give the direction
 * (M. Newell's method, in Sutherland, Sproull & Schumacker, Computing Surveys 6, 1974).
 */
export function flatten(corners: Float64Array): Float64Array {
  const n = corners.length / 3;
  const area = [0, 0, 0];
  const [ox, oy, oz] = [corners[0]!, corners[1]!, corners[2]!];
  for (let i = 0; i < n; i++) {
    const [a, b] = [3 * i, 3 * ((i + 1) % n)];
    const [ax, ay, az] = [corners[a]! - ox, corners[a + 1]! - oy, corners[a + 2]! - oz];
    const [bx, by, bz] = [corners[b]! - ox, corners[b + 1]! - oy, corners[b + 2]! - oz];
    area[0]! += ay * bz - az * by;
    area[1]! += az * bx - ax * bz;
    area[2]! += ax * by - ay * bx;
  }
  const sizes = area.map(Math.abs);
  const across = sizes.indexOf(Math.max(...sizes));
  const [u, v] =
    area[across]! >= 0 ? [(across + 1) % 3, (across + 2) % 3] : [(across + 2) % 3, (across + 1) % 3];
  const flat = new Float64Array(2 * n);
  for (let i = 0; i < n; i++) {
    flat[2 * i] = corners[3 * i + u]!;
    flat[2 * i + 1] = corners[3 * i + v]!;
  }
  return flat;
}
