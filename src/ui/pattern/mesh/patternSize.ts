import { treeSums, type TreeSums } from "../../../geometry/gatingBars.ts";
import { minus, type Vec3 } from "../../../geometry/vector.ts";
import { touchMm } from "../../../logbook/casting/gatingTree.ts";
import { barsOf, type PatternStudy } from "./patternStudy.ts";
import { hollowsOf, type StudyHollows } from "./studyHollows.ts";

/** A pattern in millimetres as it will be dipped and cast. */
export type PatternSize = {
  /**
   * Metal of the piece: overlapping bodies once, closed hollows as the maker says; null on an open mesh and until the
   * hollows are answered, whose range stands instead.
   */
  readonly volumeMm3: number | null;
  /** Both null where the surface contradicts itself. */
  readonly lowMm3: number | null;
  readonly highMm3: number | null;
  /** What the pattern itself is of, wax or print: never its hollows. */
  readonly patternMm3: number | null;
  /** Skin of the piece that is coated: of hollows too, unless they will be metal. */
  readonly areaMm2: number;
  /** The same with hollows that will be metal. */
  readonly outerMm2: number;
  readonly boxMm: Vec3;
  readonly hollows: StudyHollows | null;
  /** Sprue, runners, vents and feeders drawn on it; null where none is drawn, or they do not fit any more. */
  readonly tree: TreeSums | null;
  readonly gatingMm3: number;
  /** What the tree adds to the skin that is coated: its bars, less what their ends cover of the piece. */
  readonly gatingAreaMm2: number;
};

export function sizeOf(study: PatternStudy, mmPerUnit: number): PatternSize {
  const { volume, unionVolume, overlaps, openVolume, area, box } = study.found.measures;
  const cube = mmPerUnit ** 3;
  const hollows = hollowsOf(study, mmPerUnit);
  const solid = overlaps ? unionVolume : volume;
  const patternMm3 = solid === null ? null : solid * cube;
  const filledMm3 = patternMm3 === null ? null : patternMm3 + (hollows?.volumeMm3 ?? 0);
  const isAsked = hollows !== null && hollows.are === null;
  const volumeMm3 = isAsked ? null : hollows?.are === "metal" ? filledMm3 : patternMm3;
  const skinMm2 = area * mmPerUnit ** 2;
  const outerMm2 = skinMm2 - (hollows?.areaMm2 ?? 0);
  const bars = barsOf(study);
  const tree =
    bars.length === 0
      ? null
      : treeSums({
          bars,
          up: study.up,
          pieceVolume: volumeMm3 ?? 0,
          tapped: study.marks.map(({ point }) => point),
          touch: touchMm,
        });
  const [x, y, z] = minus(box.high, box.low);
  const open = (mm3: number | null | undefined): number | null => (mm3 == null ? null : mm3 * cube);
  return {
    volumeMm3,
    lowMm3: isAsked ? patternMm3 : open(openVolume?.low),
    highMm3: isAsked ? filledMm3 : open(openVolume?.high),
    patternMm3,
    areaMm2: hollows?.are === "metal" ? outerMm2 : skinMm2,
    outerMm2,
    boxMm: [x * mmPerUnit, y * mmPerUnit, z * mmPerUnit],
    hollows,
    tree,
    gatingMm3: tree?.barVolume ?? 0,
    gatingAreaMm2: tree === null ? 0 : Math.max(0, tree.coatedArea - tree.coveredArea),
  };
}
