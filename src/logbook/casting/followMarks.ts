import { toAxis, type GatingBar } from "../../geometry/gatingBars.ts";
import { dot, length, minus, plus, type Vec3 } from "../../geometry/vector.ts";
import {
  cupTopMm,
  drawnForOf,
  firstGate,
  isAt,
  misfitOf,
  raisedTo,
  standsOn,
  wayOf,
  type DrawnFor,
  type Tree,
} from "./drawnTree.ts";
import { gateBar, lengthOf, rodOf, touchMm } from "./gatingTree.ts";
import type { Mark } from "./mark.ts";

/** Shorter than this, mm, a bar is none: the starting tree draws it no shorter either. */
const leastMm = 1;

/**
 * Other marks: the bar of a mark taken away goes, that of one moved goes with it, a new one gets the bar a starting tree
 * would give it. Sprue and cup can't follow their gate round the piece: a tree whose first gate moves, comes or goes does
 * not fit any more, and one that does not fit only loses bars.
 */
export function followMarks<T extends Tree>(tree: T, marks: readonly Mark[], mmPerUnit: number): T {
  const next = { ...tree, marks };
  if (tree.bars.length === 0) return next;
  const frame = drawnForOf(tree, mmPerUnit);
  const isLeft = ({ id }: Mark): boolean => marks.some((mark) => mark.id === id);
  const gone = tree.marks.filter((mark) => !isLeft(mark));
  const kept = tree.bars.filter((bar) => !gone.some((mark) => standsOn(bar, mark)));
  if (kept.length === 0) return withBars(next, [], undefined);
  const changed = marks.filter((mark) => {
    const before = tree.marks.find(({ id }) => id === mark.id);
    return (
      before === undefined || length(minus(before.point, mark.point)) > 0 || before.normal !== mark.normal
    );
  });
  if (changed.length === 0) return withBars(next, kept, frame);
  if (misfitOf(tree, mmPerUnit) !== null) return withBars(next, kept, { ...frame, isOutdated: true });
  const cupLevelMm = cupTopMm(kept, frame.up) ?? frame.highMm + tree.cupMm;
  const bars = changed.reduce(
    (all: readonly GatingBar[], mark) =>
      barsWith(all, {
        mark,
        before: tree.marks.find(({ id }) => id === mark.id) ?? null,
        first: firstGate(tree),
        at: { up: frame.up, cupLevelMm },
      }),
    kept,
  );
  return withBars(next, bars, frame);
}

function withBars<T extends Tree>(tree: T, bars: readonly GatingBar[], drawnFor: DrawnFor | undefined): T {
  const { drawnFor: _, ...rest } = tree;
  // The rest of T is all of it but an optional key, which is put back where there is one.
  return { ...(rest as T), bars, ...(bars.length === 0 || drawnFor === undefined ? {} : { drawnFor }) };
}

type Change = {
  readonly mark: Mark;
  readonly before: Mark | null;
  readonly first: Mark | null;
  readonly at: { readonly up: Vec3; readonly cupLevelMm: number };
};

function barsWith(bars: readonly GatingBar[], { mark, before, first, at }: Change): readonly GatingBar[] {
  const newId = (): string => `bar of ${mark.id}`;
  const own = before === null ? [] : bars.filter((bar) => standsOn(bar, before));
  if (before !== null && own.length > 0)
    return bars.flatMap((bar) => (own.includes(bar) ? movedBar(bar, { mark, before, at, bars }) : [bar]));
  if (mark.kind === "gate") {
    // The first gate is the trunk's; a tree without one gets none by itself.
    const trunk =
      first === null || mark.id === first.id ? undefined : bars.find((bar) => standsOn(bar, first));
    if (first === null || trunk === undefined || before !== null) return bars;
    const foot = isAt(trunk.to, first.point) ? trunk.from : trunk.to;
    return [...bars, gateBar(mark, { foot, isFirst: false }, newId())];
  }
  // A bar the maker took away stays away; one that only had no room before is drawn.
  if (before !== null && rodOf(before, at, newId).length > 0) return bars;
  return [...bars, ...rodOf(mark, at, newId)];
}

/** A bar on a mark that went elsewhere; none where no room is left for it. */
function movedBar(
  bar: GatingBar,
  { mark, before, at, bars }: Omit<Change, "first" | "before"> & { before: Mark; bars: readonly GatingBar[] },
): readonly GatingBar[] {
  const isFrom = isAt(bar.from, before.point);
  const far = isFrom ? bar.to : bar.from;
  const to = farEnd(far, { bar, mark, before, at, bars });
  if (length(minus(to, mark.point)) <= leastMm || dot(minus(to, mark.point), minus(far, before.point)) <= 0)
    return [];
  return [isFrom ? { ...bar, from: mark.point, to } : { ...bar, from: to, to: mark.point }];
}

function farEnd(
  far: Vec3,
  {
    bar,
    mark,
    before,
    at,
    bars,
  }: { bar: GatingBar; mark: Mark; before: Mark; at: Change["at"]; bars: readonly GatingBar[] },
): Vec3 {
  if (mark.kind === "gate") return far;
  const leans = (other: GatingBar): boolean => Math.abs(dot(wayOf(other), at.up)) < upright;
  const isJoined = bars.some(
    (other) => other !== bar && isWay(other) && leans(other) && toAxis(other, far) <= touchMm,
  );
  if (isJoined) return far;
  if (mark.kind === "vent" && !leans(bar)) return raisedTo(mark.point, at.up, dot(far, at.up));
  // As it would be drawn now, but as long as it was; one drawn another way goes along as it is.
  const asDrawn = rodOf(before, at, () => bar.id)[0];
  const drawnNow = rodOf(mark, at, () => bar.id)[0];
  if (
    asDrawn !== undefined &&
    drawnNow !== undefined &&
    dot(wayOf(asDrawn), unitFrom(before.point, far)) > upright
  )
    return plus(mark.point, scaledTo(minus(drawnNow.to, drawnNow.from), lengthOf(bar)));
  return plus(far, minus(mark.point, before.point));
}

/** Metal comes through it to the piece. */
const isWay = ({ kind }: GatingBar): boolean => kind === "runner" || kind === "gate" || kind === "sprue";
const upright = 1 - 1e-9;
const scaledTo = (way: Vec3, long: number): Vec3 => {
  const by = long / length(way);
  return [way[0] * by, way[1] * by, way[2] * by];
};
const unitFrom = (from: Vec3, to: Vec3): Vec3 => scaledTo(minus(to, from), 1);

/**
 * Another level in the cup, above the highest place of the piece: cup, sprue and the rods that end at the level are drawn
 * up or down. Where a bar would vanish, or one would have to come, they stay, and the tree does not fit until a level is
 * asked for that it can follow: a number being typed goes through such levels.
 */
export function followCup<T extends Tree>(tree: T, cupMm: number, mmPerUnit: number): T {
  const next = { ...tree, cupMm };
  if (tree.bars.length === 0) return next;
  const frame = drawnForOf(tree, mmPerUnit);
  const misfit = misfitOf(tree, mmPerUnit);
  if (misfit !== null && misfit !== "cup") return withBars(next, tree.bars, frame);
  const { up, highMm } = frame;
  const level = cupTopMm(tree.bars, up) ?? highMm + frame.cupMm;
  const lift = highMm + cupMm - level;
  const cups = tree.bars.filter(({ kind }) => kind === "cup");
  const feet = cups.map((cup) => (dot(cup.from, up) < dot(cup.to, up) ? cup.from : cup.to));
  const isLifted = (p: Vec3): boolean =>
    !tree.marks.some(({ point }) => isAt(point, p)) &&
    (Math.abs(dot(p, up) - level) <= touchMm || feet.some((foot) => isAt(foot, p)));
  const lifted = (p: Vec3): Vec3 => (isLifted(p) ? raisedTo(p, up, dot(p, up) + lift) : p);
  const bars = tree.bars.map((bar) => ({ ...bar, from: lifted(bar.from), to: lifted(bar.to) }));
  const isSound = bars.every(
    (bar, n) => lengthOf(bar) > leastMm && dot(wayOf(bar), wayOf(tree.bars[n]!)) > 0,
  );
  const hasTrunk = cups.length === 0 || tree.bars.some(({ kind }) => kind === "sprue");
  const comes = tree.marks.some(
    (mark) =>
      rodOf(mark, { up, cupLevelMm: level }, String).length <
      rodOf(mark, { up, cupLevelMm: level + lift }, String).length,
  );
  return lift === 0 || (isSound && hasTrunk && !comes)
    ? withBars(next, bars, { ...frame, cupMm })
    : withBars(next, tree.bars, frame);
}
