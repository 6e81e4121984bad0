import type { Attitude } from "../../../geometry/attitude.ts";
import { withoutHollows } from "../../../geometry/closedHollows.ts";
import type { GatingBar } from "../../../geometry/gatingBars.ts";
import type { HotSpot } from "../../../geometry/hotSpots.ts";
import { lengthUnitMm } from "../../../geometry/lengthUnit.ts";
import type { LengthUnit, Mesh } from "../../../geometry/mesh.ts";
import { scaleFactor, type Scale } from "../../../geometry/scaleMesh.ts";
import type { Vec3 } from "../../../geometry/vector.ts";
import { patternScale } from "../../../physics/metal/shrinkScale.ts";
import type { PatternMaterial } from "../../../trade/patternMaterials.ts";
import type { OpenedPattern } from "../../../workers/pattern/openedPattern.ts";
import {
  cupTopMm,
  drawnForOf,
  firstGate,
  misfitOf,
  scaledTree,
  standsOn,
  type DrawnFor,
  type Misfit,
} from "../../../logbook/casting/drawnTree.ts";
import { followCup, followMarks } from "../../../logbook/casting/followMarks.ts";
import { startingTree, type HangsAt } from "../../../logbook/casting/gatingTree.ts";
import type { Mark, MarkKind } from "../../../logbook/casting/mark.ts";
import { noResults, type Shape, type UpResults } from "./patternResults.ts";

/**
 * All that is known of a pattern on this device, kept whole so that it opens at once. Mesh mm: the file's axes, from the
 * middle of its box, in millimetres as the pattern will be dipped; marks, bars and results are in mesh mm.
 * `file`, `found` and `display` are in the file's own unit, about the middle.
 */
export type PatternStudy = {
  /** SHA-256 of the file, hex. */
  readonly id: string;
  readonly name: string;
  readonly sumsVersion: number;
  readonly file: OpenedPattern["file"];
  readonly found: OpenedPattern["found"];
  /** Every hole was closed because the maker said so. */
  readonly holesClosed: boolean;
  /** Open edges a hair apart were joined because the maker said so. */
  readonly seamsJoined: boolean;
  /** Null until the maker has said, where the file does not. */
  readonly unit: LengthUnit | null;
  readonly scale: Scale;
  /** Made larger by what the metal shrinks, a share by the rule; null as it is. */
  readonly shrinkShare: number | null;
  readonly alloyId: string | null;
  readonly material: PatternMaterial | null;
  readonly recipeId: string | null;
  readonly up: Vec3;
  /** From the highest place of the piece up to the level in the cup. */
  readonly cupMm: number;
  readonly marks: readonly Mark[];
  readonly bars: readonly GatingBar[];
  /** Left out without bars, and where an older app drew them. */
  readonly drawnFor?: DrawnFor | undefined;
  /** What becomes of closed hollows: metal all through, or opened and filled with shell; left out until the maker has said. */
  readonly hollowsAre?: "metal" | "core" | undefined;
  readonly shape: Shape | null;
  /** Newest first; the one in use is `resultsFor(study)`. */
  readonly byUp: readonly UpResults[];
  readonly attitudes: readonly Attitude[] | null;
  /** What freezes last, for the gates and feeders `key` names; null until the maker had it reckoned. */
  readonly hot: { readonly key: string; readonly spots: readonly HotSpot[] } | null;
  /** Null unless the maker asked to keep the file itself. */
  readonly original: Blob | null;
};

/** Where a mark is put without a thickness told: common practice, no source. */
export const markDiameterMm: Readonly<Record<MarkKind, number>> = { gate: 12, vent: 4, drain: 6, feeder: 15 };

/** Tips that rise less, mm, or hold less, mm³, are noise. */
export const tipLimits = { minRise: 2, minVolume: 50 } as const;
export const startingCupMm = 100;
const mostKept = 6;

export function studyOf(opened: OpenedPattern, name: string, version: number): PatternStudy {
  return {
    id: opened.id,
    name,
    sumsVersion: version,
    file: opened.file,
    found: opened.found,
    holesClosed: false,
    seamsJoined: false,
    unit: opened.file.unit,
    scale: { kind: "percent", percent: 100 },
    shrinkShare: null,
    alloyId: null,
    material: null,
    recipeId: null,
    up: [0, 0, 1],
    cupMm: startingCupMm,
    marks: [],
    bars: [],
    shape: null,
    byUp: [],
    attitudes: null,
    hot: null,
    original: null,
  };
}

/** Millimetres for one unit of the file, scale and shrink included; null while its unit is not known. */
export function mmPerUnitOf({
  unit,
  scale,
  shrinkShare,
}: Pick<PatternStudy, "unit" | "scale" | "shrinkShare">): number | null {
  if (unit === null) return null;
  const shrink = shrinkShare === null ? 1 : patternScale({ shrinkShare, convention: "rule" });
  return lengthUnitMm[unit] * scaleFactor(scale) * shrink;
}

/**
 * Unit, scale or shrink changed: marks and bars move with the mesh, but bars keep their thickness, so a tree does not fit
 * until the scale is put back; what was found is asked again.
 */
export function resized(
  study: PatternStudy,
  change: Partial<Pick<PatternStudy, "unit" | "scale" | "shrinkShare">>,
): PatternStudy {
  const next = { ...study, ...change };
  const [before, after] = [mmPerUnitOf(study), mmPerUnitOf(next)];
  if (before === null || after === null || before === after) return next;
  // A tree of an older app is first told what it was drawn for, or its thickness would count at any size.
  const known = study.bars.length === 0 ? next : { ...next, drawnFor: drawnForOf(study, before) };
  return { ...scaledTree(known, after / before), ...noResults };
}

/** Another direction of the mesh points up, of length 1; results found for it before are in use again. */
export const turned = (study: PatternStudy, up: Vec3): PatternStudy => ({ ...study, up });

/** The marks of a study changed, and the bars of its tree with them. */
const marked = (study: PatternStudy, marks: readonly Mark[]): PatternStudy =>
  followMarks(study, marks, mmPerUnitOf(study) ?? 1);

export const withMark = (study: PatternStudy, mark: Mark): PatternStudy =>
  marked(study, [...study.marks.filter(({ id }) => id !== mark.id), mark]);

export const withoutMark = (study: PatternStudy, id: string): PatternStudy =>
  marked(
    study,
    study.marks.filter((mark) => mark.id !== id),
  );

export const movedMark = (
  study: PatternStudy,
  id: string,
  to: Pick<Mark, "point" | "normal">,
): PatternStudy =>
  marked(
    study,
    study.marks.map((mark) => (mark.id === id ? { ...mark, ...to } : mark)),
  );

/** Another level in the cup, mm above the highest place of the piece; a drawn cup goes with it. */
export const withCup = (study: PatternStudy, cupMm: number): PatternStudy =>
  followCup(study, cupMm, mmPerUnitOf(study) ?? 1);

/** A starting tree on what is placed, in place of the one drawn before. */
export const withTree = (study: PatternStudy, at: HangsAt, newId: () => string): PatternStudy =>
  withBars({ ...study, bars: [] }, startingTree(study.marks, at, newId), at.highMm);

/**
 * Bars put, changed or taken away by hand. The first bar makes it a tree for the piece as it hangs now, whose highest
 * place is `highMm` along up; one put to the first gate makes it a tree for that gate.
 */
export function withBars(
  study: PatternStudy,
  bars: readonly GatingBar[],
  highMm: number | null,
): PatternStudy {
  const { drawnFor: _, ...rest } = study;
  if (bars.length === 0) return { ...rest, bars };
  const mmPerUnit = mmPerUnitOf(study) ?? 1;
  const first = firstGate(study);
  const gate = first === null ? null : { id: first.id, point: first.point };
  if (study.bars.length === 0 && highMm !== null)
    return { ...rest, bars, drawnFor: { up: study.up, mmPerUnit, highMm, cupMm: study.cupMm, gate } };
  const frame = drawnForOf(study.bars.length === 0 ? { ...rest, bars } : study, mmPerUnit);
  const isReached = gate !== null && bars.some((bar) => !study.bars.includes(bar) && standsOn(bar, gate));
  return { ...rest, bars, drawnFor: isReached ? { ...frame, gate } : frame };
}

/**
 * Level of metal in the cup along up, mesh mm: of the cup that is drawn, else as high above the highest place of the piece,
 * `highMm`, as it was asked for.
 */
export const cupLevelOf = (study: PatternStudy, highMm: number): number =>
  cupTopMm(barsOf(study), study.up) ?? highMm + study.cupMm;

/** What a change of what is placed, of the size or of the way to hang can be taken back to. */
export type Placed = Pick<
  PatternStudy,
  "marks" | "bars" | "drawnFor" | "up" | "cupMm" | "unit" | "scale" | "shrinkShare"
>;

export const placedOf = ({ marks, bars, drawnFor, up, cupMm, unit, scale, shrinkShare }: Placed): Placed => ({
  marks,
  bars,
  drawnFor,
  up,
  cupMm,
  unit,
  scale,
  shrinkShare,
});

export function restored(now: PatternStudy, placed: Placed): PatternStudy {
  const back = { ...now, ...placed };
  return mmPerUnitOf(back) === mmPerUnitOf(now) ? back : { ...back, ...noResults };
}

/** Why the tree does not fit the piece any more; null where it does, or none is drawn. */
export const treeMisfit = (study: PatternStudy): Misfit | null => misfitOf(study, mmPerUnitOf(study) ?? 1);

/** Bars that count: none while the tree does not fit. */
export const barsOf = (study: PatternStudy): readonly GatingBar[] =>
  treeMisfit(study) === null ? study.bars : [];

export const pointsOf = ({ marks }: Pick<PatternStudy, "marks">, kind: MarkKind): readonly Vec3[] =>
  marks.filter((mark) => mark.kind === kind).map(({ point }) => point);

/** What is known for the way the piece hangs now. */
export const resultsFor = ({ byUp, up }: Pick<PatternStudy, "byUp" | "up">): UpResults | null =>
  byUp.find((one) => one.up.every((value, k) => Math.abs(value - up[k]!) < 1e-6)) ?? null;

export function withResults(study: PatternStudy, results: UpResults): PatternStudy {
  const others = study.byUp.filter((one) => one !== resultsFor({ byUp: study.byUp, up: results.up }));
  return { ...study, byUp: [results, ...others].slice(0, mostKept) };
}

/** The display copy in mesh mm; hollows that will be metal are not in it. */
export function displayInMm(
  { found, hollowsAre }: Pick<PatternStudy, "found" | "hollowsAre">,
  mmPerUnit: number,
): Mesh {
  const shown = hollowsAre === "metal" ? withoutHollows(found.display) : found.display;
  return { ...shown, pos: shown.pos.map((at) => at * mmPerUnit), unit: "mm" };
}
