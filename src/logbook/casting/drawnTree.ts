import type { GatingBar } from "../../geometry/gatingBars.ts";
import { dot, length, minus, plus, times, unit, type Vec3 } from "../../geometry/vector.ts";
import { touchMm } from "./gatingTree.ts";
import type { Mark } from "./mark.ts";

/** How the piece hung, and where its first gate was, when its tree was drawn. */
export type DrawnFor = {
  readonly up: Vec3;
  readonly mmPerUnit: number;
  /** Highest place of the piece along up, mesh mm as it is scaled now. */
  readonly highMm: number;
  /** From there up to the level in the cup, as it was asked for. */
  readonly cupMm: number;
  /** The sprue comes down beside it; null for a tree without a gate. */
  readonly gate: Pick<Mark, "id" | "point"> | null;
  /** Changed since in a way that the bars could not follow. */
  readonly isOutdated?: true | undefined;
};

/** A tree with what it stands on, as the piece hangs now. */
export type Tree = {
  readonly marks: readonly Mark[];
  readonly bars: readonly GatingBar[];
  readonly drawnFor?: DrawnFor | undefined;
  readonly up: Vec3;
  /** From the highest place of the piece up to the level in the cup, as it was asked for. */
  readonly cupMm: number;
};

/** Why a tree does not fit its piece any more. */
export type Misfit = "turned" | "scaled" | "gate" | "marks" | "cup";

/** What is wrong between a tree and its piece; null where nothing is, or no tree is drawn. */
export function misfitOf(tree: Tree, mmPerUnit: number): Misfit | null {
  if (tree.bars.length === 0) return null;
  const { up, mmPerUnit: drawnMm, cupMm, gate, isOutdated } = drawnForOf(tree, mmPerUnit);
  if (dot(up, tree.up) < 1 - 1e-9) return "turned";
  if (Math.abs(drawnMm / mmPerUnit - 1) > 1e-9) return "scaled";
  const now = firstGate(tree);
  if (gate?.id !== now?.id || (gate !== null && now !== null && !isSame(gate.point, now.point)))
    return "gate";
  if (isOutdated === true) return "marks";
  return cupMm === tree.cupMm ? null : "cup";
}

/** A tree of an older app tells by its own cup and vents how the piece hung. */
export function drawnForOf(tree: Tree, mmPerUnit: number): DrawnFor {
  if (tree.drawnFor !== undefined) return tree.drawnFor;
  const seen = standingUp(tree);
  const up = seen === null || dot(seen, tree.up) > aboutUpright ? tree.up : seen;
  const gate = firstGate(tree);
  const isReached = gate !== null && tree.bars.some((bar) => standsOn(bar, gate));
  const level = cupTopMm(tree.bars, up) ?? ventTopMm(tree.bars, up);
  return {
    up,
    mmPerUnit,
    highMm: (level ?? 0) - tree.cupMm,
    cupMm: tree.cupMm,
    gate: gate === null ? null : { id: isReached ? gate.id : "", point: gate.point },
  };
}

/** Drawn by hand, a cup or a rod may lean by a degree. */
const aboutUpright = Math.cos(Math.PI / 180);

function standingUp({ bars, marks }: Tree): Vec3 | null {
  const cup = bars.find(({ kind }) => kind === "cup");
  if (cup !== undefined) return unit(minus(cup.to, cup.from));
  const vents = marks.filter(({ kind }) => kind === "vent");
  const rod = bars.find((bar) => bar.kind === "vent" && vents.some((vent) => standsOn(bar, vent)));
  return rod === undefined ? null : unit(minus(rod.to, rod.from));
}

export const firstGate = ({ marks }: Pick<Tree, "marks">): Mark | null =>
  marks.find(({ kind }) => kind === "gate") ?? null;

/** Level of metal in the cup that is drawn, along up; null without a cup. */
export const cupTopMm = (bars: readonly GatingBar[], up: Vec3): number | null => topOf(bars, "cup", up);
const ventTopMm = (bars: readonly GatingBar[], up: Vec3): number | null => topOf(bars, "vent", up);

function topOf(bars: readonly GatingBar[], wanted: GatingBar["kind"], up: Vec3): number | null {
  const ends = bars
    .filter(({ kind }) => kind === wanted)
    .flatMap(({ from, to }) => [dot(from, up), dot(to, up)]);
  return ends.length === 0 ? null : Math.max(...ends);
}

/** Whether a bar goes with a mark: as it was drawn, or in an older tree by where it ends. */
export const standsOn = (bar: GatingBar, { id, point }: Pick<Mark, "id" | "point">): boolean =>
  bar.markId === undefined ? isAt(bar.from, point) || isAt(bar.to, point) : bar.markId === id;

export const isAt = (a: Vec3, b: Vec3): boolean => length(minus(a, b)) <= touchMm;
const isSame = (a: Vec3, b: Vec3): boolean => length(minus(a, b)) <= 1e-6 * (1 + length(a));

/** Marks, bars and what the tree was drawn for, moved together about the middle of the mesh. */
export function scaledTree<T extends Tree>(tree: T, by: number): T {
  const moved = (p: Vec3): Vec3 => times(p, by);
  const { drawnFor } = tree;
  return {
    ...tree,
    marks: tree.marks.map((mark) => ({ ...mark, point: moved(mark.point) })),
    bars: tree.bars.map((bar) => ({ ...bar, from: moved(bar.from), to: moved(bar.to) })),
    ...(drawnFor === undefined
      ? {}
      : {
          drawnFor: {
            ...drawnFor,
            highMm: by * drawnFor.highMm,
            gate: drawnFor.gate === null ? null : { ...drawnFor.gate, point: moved(drawnFor.gate.point) },
          },
        }),
  };
}

/** The way a bar goes, of length 1. */
export const wayOf = ({ from, to }: Pick<GatingBar, "from" | "to">): Vec3 => unit(minus(to, from));

/** A point raised along up to a level. */
export const raisedTo = (p: Vec3, up: Vec3, levelMm: number): Vec3 =>
  plus(p, times(up, levelMm - dot(p, up)));
