import type { BarKind, GatingBar } from "../../geometry/gatingBars.ts";
import { dot, length, minus, plus, squareTo, times, unit, type Vec3 } from "../../geometry/vector.ts";
import type { Mark } from "./mark.ts";

/** Sizes a bar of each kind is begun with, mm, where it begins and at its end: common practice, no source. */
export const startingMm: Readonly<Record<BarKind, { readonly fromMm: number; readonly toMm: number }>> = {
  cup: { fromMm: 28, toMm: 80 },
  sprue: { fromMm: 26, toMm: 18 },
  runner: { fromMm: 18, toMm: 16 },
  gate: { fromMm: 18, toMm: 12 },
  vent: { fromMm: 4, toMm: 4 },
  feeder: { fromMm: 20, toMm: 30 },
  drain: { fromMm: 6, toMm: 6 },
};
const cupTallMm = 60;
const clearMm = 35;
const drainLongMm = 30;

/** Ends this near to a mark or to another bar's axis are joined, mm. */
export const touchMm = 2;

export type HangsAt = {
  readonly up: Vec3;
  /** Along up, mesh mm: highest place of the piece and the level in the cup. */
  readonly highMm: number;
  readonly cupLevelMm: number;
  /** Half the width of the piece across up. */
  readonly reachMm: number;
};

type NewId = () => string;
const round = (diameter: number) => ({ kind: "round", diameter }) as const;

export function newBar(
  { kind, from, to, markId }: Pick<GatingBar, "kind" | "from" | "to" | "markId">,
  diameters: { readonly fromMm: number; readonly toMm: number },
  id: string,
): GatingBar {
  return {
    id,
    kind,
    from,
    to,
    fromSection: round(diameters.fromMm),
    toSection: round(diameters.toMm),
    ...(markId === undefined ? {} : { markId }),
  };
}

/**
 * A plain tree on what was tapped: a cup over a sprue that comes down beside the piece, a bar from its foot to every gate,
 * a rod up from every vent, a feeder on its place, a rod down from every drain. A start, not advice.
 */
export function startingTree(marks: readonly Mark[], at: HangsAt, newId: NewId): readonly GatingBar[] {
  const gates = marks.filter(({ kind }) => kind === "gate");
  const rods = marks.flatMap((mark) => rodOf(mark, at, newId));
  const [first] = gates;
  if (first === undefined) return rods;
  const foot = plus(first.point, times(outward(first, at), asideMm(first, at)));
  const raised = (level: number): Vec3 => plus(foot, times(at.up, level - dot(foot, at.up)));
  const cupFoot = raised(at.cupLevelMm - cupTallMm);
  const bar = (kind: BarKind, from: Vec3, to: Vec3): GatingBar =>
    newBar({ kind, from, to }, startingMm[kind], newId());
  const isBelow = dot(foot, at.up) < at.cupLevelMm - cupTallMm - 1;
  return [
    bar("cup", cupFoot, raised(at.cupLevelMm)),
    ...(isBelow ? [bar("sprue", cupFoot, foot)] : []),
    ...gates.map((gate, n) => gateBar(gate, { foot, isFirst: n === 0 }, newId())),
    ...rods,
  ];
}

/** From the sprue's foot to a gate. */
export function gateBar(
  { id: markId, point, diameterMm }: Mark,
  { foot, isFirst }: { readonly foot: Vec3; readonly isFirst: boolean },
  id: string,
): GatingBar {
  const sizes = { fromMm: startingMm.gate.fromMm, toMm: diameterMm };
  return newBar({ kind: isFirst ? "gate" : "runner", from: foot, to: point, markId }, sizes, id);
}

/** One bar on one mark; a gate has none of its own, nor a vent that stands no lower than the level in the cup. */
export function rodOf(
  { id: markId, kind, point, normal, diameterMm }: Mark,
  { up, cupLevelMm }: Pick<HangsAt, "up" | "cupLevelMm">,
  newId: NewId,
): readonly GatingBar[] {
  const even = { fromMm: diameterMm, toMm: diameterMm };
  const toLevel = cupLevelMm - dot(point, up);
  if (kind === "vent" && toLevel > 1)
    return [newBar({ kind, from: point, to: plus(point, times(up, toLevel)), markId }, even, newId())];
  if (kind === "feeder") {
    const leaning = unit(plus(normal ?? up, times(up, 1.2)));
    const to = plus(point, times(leaning, 1.5 * startingMm.feeder.toMm));
    return [newBar({ kind, from: point, to, markId }, startingMm.feeder, newId())];
  }
  if (kind === "drain")
    return [newBar({ kind, from: point, to: plus(point, times(up, -drainLongMm)), markId }, even, newId())];
  return [];
}

/** Level away from the piece at a mark: by its normal where the tap gave one that leans out, else away from the middle. */
function outward({ point, normal }: Mark, { up }: HangsAt): Vec3 {
  for (const way of [normal ?? point, point]) {
    const level = minus(way, times(up, dot(way, up)));
    if (length(level) > 1e-3 * length(way) && length(level) > 1e-9) return unit(level);
  }
  return squareTo(up)[0];
}

/** So far aside that sprue and cup stand clear of the piece. */
function asideMm(mark: Mark, at: HangsAt): number {
  const way = outward(mark, at);
  return Math.max(clearMm, at.reachMm + startingMm.cup.toMm / 2 - dot(mark.point, way));
}

/** A bar made longer or shorter at its far end; never shorter than a millimetre. */
export function withLength(bar: GatingBar, lengthMm: number): GatingBar {
  const along = unit(minus(bar.to, bar.from));
  return { ...bar, to: plus(bar.from, times(along, Math.max(1, lengthMm))) };
}

export const lengthOf = (bar: Pick<GatingBar, "from" | "to">): number => length(minus(bar.to, bar.from));

/** Diameter of a round, or of the round of the same area. */
export function diameterOf(section: GatingBar["fromSection"]): number {
  return section.kind === "round"
    ? section.diameter
    : 2 * Math.sqrt((section.width * section.height) / Math.PI);
}
