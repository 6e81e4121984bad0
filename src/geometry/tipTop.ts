import type { JoinTree } from "./joinTree.ts";
import { pointAt, type Surface } from "./surface.ts";
import { cross, dot, length, minus, plus, squareTo, times, type Vec3 } from "./vector.ts";

type Top = {
  readonly point: Vec3;
  readonly shape: "point" | "ridge" | "flat";
  readonly ridge: readonly Vec3[];
};

/**
 * What the top of a tip looks like. A long narrow one is a ridge, a broad one flat. The places within `within` of its height
 * that hang together with it are the top, or those within twice that and on, up to `most`, as far as the top is as wide with
 * twice the depth again: so a flat is found through the noise of a scan, while a dome, wider by 1.4 with twice the depth,
 * stays what it was. A dome of radius r is 2√(2·r·within) wide: asked for a rise of 2 mm, one of radius 100 is still a point.
 */
export function topOf({
  within,
  most,
  ...tip
}: Looked & { readonly within: number; readonly most: number }): Top {
  let top = placesIn({ ...tip, within });
  let flat = top;
  for (let depth = within; 2 * depth <= most; depth *= 2) {
    const deeper = placesIn({ ...tip, within: 2 * depth });
    const isSteady = deeper.long < steady * top.long && deeper.wide < steady * Math.max(top.wide, tip.least);
    if (isSteady && top.long >= tip.least) flat = top;
    top = deeper;
  }
  return shapeOf(tip, flat);
}

/** How little a top may widen with twice the depth to be a flat or a ridge; judgement between 1 and the 1.4 of a dome. */
const steady = 1.15;

type Looked = {
  readonly surface: Surface;
  readonly tree: JoinTree;
  readonly tip: number;
  readonly up: Vec3;
  /** A top less wide is a point. */
  readonly least: number;
};

type Places = {
  readonly points: readonly Vec3[];
  /** Triangles of which all three corners are there. */
  readonly flats: ReadonlySet<number>;
  readonly along: Vec3;
  readonly long: number;
  readonly wide: number;
};

function placesIn({ surface, tree, tip, up, within }: Looked & { readonly within: number }): Places {
  const { pos, idx, start, around } = surface;
  const level = tree.heights[tip]! - within;
  const found = new Set([tip]);
  const flats = new Set<number>();
  for (const v of found) {
    for (let at = start[v]!; at < start[v + 1]!; at++) {
      const t = 3 * around[at]!;
      let high = 0;
      for (let k = 0; k < 3; k++) {
        if (tree.heights[idx[t + k]!]! < level) continue;
        high++;
        found.add(idx[t + k]!);
      }
      if (high === 3) flats.add(t);
    }
  }
  const points = [...found].map((v) => pointAt(pos, v));
  const along = widest(points, up);
  return { points, flats, along, long: span(points, along), wide: span(points, cross(up, along)) };
}

function shapeOf({ surface, tip, least }: Looked, { points, flats, along, long, wide }: Places): Top {
  if (points.length === 1 || long < least)
    return { point: pointAt(surface.pos, tip), shape: "point", ridge: [] };
  const inOrder = points.toSorted((a, b) => dot(a, along) - dot(b, along));
  const shape = wide < 0.15 * long ? "ridge" : "flat";
  const point = shape === "flat" ? middleOfFlats(surface, flats, inOrder) : middleOf(inOrder);
  return { point, shape, ridge: thinned(inOrder, 64) };
}

/** The middle of the flat where that lies on it, else of its largest triangle. */
function middleOfFlats({ pos, idx }: Surface, flats: ReadonlySet<number>, points: readonly Vec3[]): Vec3 {
  let sum: Vec3 = [0, 0, 0];
  let area = 0;
  let largest = 0;
  let ofLargest = middleOf(points);
  const corners = [...flats].map(
    (t) => [0, 1, 2].map((k) => pointAt(pos, idx[t + k]!)) as [Vec3, Vec3, Vec3],
  );
  for (const [a, b, c] of corners) {
    const size = length(cross(minus(b, a), minus(c, a)));
    const middle = times(plus(a, plus(b, c)), 1 / 3);
    sum = plus(sum, times(middle, size));
    area += size;
    if (size > largest) [largest, ofLargest] = [size, middle];
  }
  if (!(area > 0)) return ofLargest;
  const middle = times(sum, 1 / area);
  return corners.some((corner) => covers(corner, middle)) ? middle : ofLargest;
}

/** Whether a point over or in the plane of a triangle lies within it, edges included. */
function covers([a, b, c]: readonly [Vec3, Vec3, Vec3], p: Vec3): boolean {
  const normal = cross(minus(b, a), minus(c, a));
  const slack = -1e-6 * dot(normal, normal);
  const side = (from: Vec3, to: Vec3): boolean =>
    dot(cross(minus(to, from), minus(p, from)), normal) >= slack;
  return side(a, b) && side(b, c) && side(c, a);
}

/** Of points in order along a ridge: the one nearest the middle, or the middle of the two round it where they stand far apart. */
function middleOf(points: readonly Vec3[]): Vec3 {
  const first = points[0]!;
  const last = points.at(-1)!;
  const middle = times(plus(first, last), 0.5);
  let best = first;
  for (const p of points) if (length(minus(p, middle)) < length(minus(best, middle))) best = p;
  return length(minus(best, middle)) > 0.25 * length(minus(last, first)) ? middle : best;
}

/** The horizontal direction in which points lie furthest apart, of 32. */
function widest(points: readonly Vec3[], up: Vec3): Vec3 {
  const [u, v] = squareTo(up);
  let best = u;
  let most = -1;
  for (let i = 0; i < 32; i++) {
    const angle = (Math.PI * i) / 32;
    const along = plus(times(u, Math.cos(angle)), times(v, Math.sin(angle)));
    const wide = span(points, along);
    if (wide > most) [most, best] = [wide, along];
  }
  return best;
}

function span(points: readonly Vec3[], along: Vec3): number {
  let low = Infinity;
  let high = -Infinity;
  for (const p of points) {
    const at = dot(p, along);
    low = Math.min(low, at);
    high = Math.max(high, at);
  }
  return high - low;
}

const thinned = (points: readonly Vec3[], most: number): readonly Vec3[] =>
  points.length <= most
    ? points
    : Array.from({ length: most }, (_, i) => points[Math.round((i * (points.length - 1)) / (most - 1))]!);
