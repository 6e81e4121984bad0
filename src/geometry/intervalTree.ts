import { descending } from "./order.ts";
import { rootOf } from "./unionFind.ts";

/** Columns as the join tree reads them: intervals of column c are `start[c] … start[c + 1] - 1`. */
export type Columns = {
  readonly nu: number;
  readonly nv: number;
  readonly start: Uint32Array;
  readonly bottom: Float64Array;
  readonly top: Float64Array;
};

/** A way out: an interval, and the height within it from which on, downwards, air can leave. */
export type Outlet = { readonly node: number; readonly level: number };

/** What stays above a level. Volume and mouth in columns: multiply by pitch². */
export type HeldAbove = {
  readonly volume: number;
  /** Columns open at the level. */
  readonly mouth: number;
  readonly top: number;
  readonly topNode: number;
  readonly level: number;
  /** It holds an outlet, but a lower one: this is what lies above it. */
  readonly vented: boolean;
};

type Part = Omit<HeldAbove, "vented"> & { readonly parts: readonly [Part, Part] | null };

/**
 * Join tree of columns, from the top down: an interval appears at its top, joins what it overlaps in the four
 * columns beside it, and ends at its bottom. Whatever has no outlet when it meets something that has one is
 * held there, and so is what lies above an outlet. Two unvented parts that met within `blur` of that level are
 * told apart, for on a flat palm they only seem to meet first. `columnOf[node]` is the column of an interval.
 */
export function heldIn({
  columns,
  outlets,
  blur,
}: {
  columns: Columns;
  outlets: readonly Outlet[];
  blur: number;
}): readonly HeldAbove[] {
  const { nu, nv, start, bottom, top } = columns;
  const n = top.length;
  const columnOf = columnsOf(columns);
  const keys = new Float64Array(2 * n + outlets.length);
  keys.set(top);
  outlets.forEach(({ level }, k) => (keys[n + k] = level));
  keys.set(bottom, n + outlets.length);
  const order = descending(keys);

  const parent = new Int32Array(n).fill(-1);
  const open = new Uint32Array(n);
  const sumTops = new Float64Array(n);
  const closed = new Float64Array(n);
  const highest = new Uint32Array(n);
  const hasOutlet = new Uint8Array(n);
  // Columns of one flat top differ by rounding; they hold nothing.
  const grain = blur / 250;
  const lastMeeting: (readonly [Part, Part] | undefined)[] = [];
  const held: HeldAbove[] = [];

  const partAt = (root: number, level: number): Part => ({
    volume: closed[root]! + sumTops[root]! - open[root]! * level,
    mouth: open[root]!,
    top: top[highest[root]!]!,
    topNode: highest[root]!,
    level,
    parts: lastMeeting[root] ?? null,
  });
  const hold = (root: number, level: number, vented: boolean): void => {
    if (top[highest[root]!]! - level <= grain) return;
    for (const { parts: _, ...part } of toldApart(partAt(root, level), blur)) {
      if (part.top - level > grain) held.push({ ...part, level, vented });
    }
  };
  const join = (a: number, b: number, level: number): number => {
    if (hasOutlet[a] !== hasOutlet[b]) hold(hasOutlet[a] ? b : a, level, false);
    const [keep, gone] = top[highest[a]!]! >= top[highest[b]!]! ? [a, b] : [b, a];
    if (!hasOutlet[a] && !hasOutlet[b]) {
      // Grains that begin and end within the blur are the raster's, not the shape's.
      const rises = top[highest[gone]!]! - level > 4 * blur;
      if (rises) lastMeeting[keep] = [partAt(keep, level), partAt(gone, level)];
    }
    parent[gone] = keep;
    open[keep]! += open[gone]!;
    sumTops[keep]! += sumTops[gone]!;
    closed[keep]! += closed[gone]!;
    hasOutlet[keep] = hasOutlet[a]! | hasOutlet[b]!;
    return keep;
  };
  const appear = (node: number): void => {
    parent[node] = node;
    open[node] = 1;
    sumTops[node] = top[node]!;
    highest[node] = node;
    let root = node;
    const column = columnOf[node]!;
    const i = column % nu;
    for (let side = 0; side < 4; side++) {
      if (side === 0 ? i === 0 : side === 1 && i === nu - 1) continue;
      const beside = column + (side === 0 ? -1 : side === 1 ? 1 : side === 2 ? -nu : nu);
      if (beside < 0 || beside >= nu * nv) continue;
      for (let other = start[beside]!; other < start[beside + 1]!; other++) {
        if (parent[other]! < 0 || !(bottom[other]! < top[node]!)) continue;
        const theirs = rootOf(parent, other);
        if (theirs !== root) root = join(root, theirs, top[node]!);
      }
    }
  };
  const end = (node: number): void => {
    const root = rootOf(parent, node);
    open[root]!--;
    sumTops[root]! -= top[node]!;
    closed[root]! += top[node]! - bottom[node]!;
    if (open[root] === 0 && !hasOutlet[root]) hold(root, bottom[node]!, false);
  };
  for (const event of order) {
    if (event < n) appear(event);
    else if (event >= n + outlets.length) end(event - n - outlets.length);
    else {
      const { node, level } = outlets[event - n]!;
      const root = rootOf(parent, node);
      if (!hasOutlet[root]) hold(root, level, true);
      hasOutlet[root] = 1;
    }
  }
  return held;
}

/** A held part and, where it met its like just above, the parts it is made of; what lies between goes to the larger. */
function toldApart(whole: Part, blur: number): readonly Part[] {
  const level = whole.level;
  const todo: Part[] = [whole];
  const apart: Part[] = [];
  while (todo.length > 0) {
    const part = todo.pop()!;
    const meeting = part.parts;
    if (!meeting || !(meeting[0].level - level <= blur)) {
      apart.push(part);
      continue;
    }
    const [a, b] = meeting;
    const between = part.volume - a.volume - b.volume;
    const [large, small] = a.volume >= b.volume ? [a, b] : [b, a];
    todo.push({ ...large, volume: large.volume + between }, small);
  }
  return apart;
}

function columnsOf({ nu, nv, start, top }: Columns): Uint32Array {
  const columnOf = new Uint32Array(top.length);
  for (let c = 0; c < nu * nv; c++) columnOf.fill(c, start[c], start[c + 1]);
  return columnOf;
}
