import type { Attitude } from "../../../geometry/attitude.ts";
import type { GatingBar } from "../../../geometry/gatingBars.ts";
import type { HotSpot } from "../../../geometry/hotSpots.ts";
import { lengthUnitMm } from "../../../geometry/lengthUnit.ts";
import type { LengthUnit, Mesh } from "../../../geometry/mesh.ts";
import { scaleFactor, type Scale } from "../../../geometry/scaleMesh.ts";
import type { Vec3 } from "../../../geometry/vector.ts";
import { patternScale } from "../../../physics/metal/shrinkScale.ts";
import type { PatternMaterial } from "../../../trade/patternMaterials.ts";
import type { OpenedPattern } from "../../../workers/pattern/openedPattern.ts";
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

/** Unit, scale or shrink changed: marks and bars move with the mesh; what was found is asked again. */
export function resized(
  study: PatternStudy,
  change: Partial<Pick<PatternStudy, "unit" | "scale" | "shrinkShare">>,
): PatternStudy {
  const next = { ...study, ...change };
  const [before, after] = [mmPerUnitOf(study), mmPerUnitOf(next)];
  if (before === null || after === null || before === after) return next;
  const by = after / before;
  const moved = (p: Vec3): Vec3 => [p[0] * by, p[1] * by, p[2] * by];
  return {
    ...next,
    marks: study.marks.map((mark) => ({ ...mark, point: moved(mark.point) })),
    bars: study.bars.map((bar) => ({ ...bar, from: moved(bar.from), to: moved(bar.to) })),
    ...noResults,
  };
}

/** Another direction of the mesh points up, of length 1; results found for it before are in use again. */
export const turned = (study: PatternStudy, up: Vec3): PatternStudy => ({ ...study, up });

export const withMark = (study: PatternStudy, mark: Mark): PatternStudy => ({
  ...study,
  marks: [...study.marks.filter(({ id }) => id !== mark.id), mark],
});

export const withoutMark = (study: PatternStudy, id: string): PatternStudy => ({
  ...study,
  marks: study.marks.filter((mark) => mark.id !== id),
});

export const movedMark = (
  study: PatternStudy,
  id: string,
  to: Pick<Mark, "point" | "normal">,
): PatternStudy => ({
  ...study,
  marks: study.marks.map((mark) => (mark.id === id ? { ...mark, ...to } : mark)),
});

export const pointsOf = ({ marks }: Pick<PatternStudy, "marks">, kind: MarkKind): readonly Vec3[] =>
  marks.filter((mark) => mark.kind === kind).map(({ point }) => point);

/** What is known for the way the piece hangs now. */
export const resultsFor = ({ byUp, up }: Pick<PatternStudy, "byUp" | "up">): UpResults | null =>
  byUp.find((one) => one.up.every((value, k) => Math.abs(value - up[k]!) < 1e-6)) ?? null;

export function withResults(study: PatternStudy, results: UpResults): PatternStudy {
  const others = study.byUp.filter((one) => one !== resultsFor({ byUp: study.byUp, up: results.up }));
  return { ...study, byUp: [results, ...others].slice(0, mostKept) };
}

/** The display copy in mesh mm. */
export function displayInMm({ found }: Pick<PatternStudy, "found">, mmPerUnit: number): Mesh {
  return { ...found.display, pos: found.display.pos.map((at) => at * mmPerUnit), unit: "mm" };
}
