import { barSums } from "../../../geometry/gatingBars.ts";
import { minus, type Vec3 } from "../../../geometry/vector.ts";
import type { PatternStudy } from "./patternStudy.ts";

/** A pattern in millimetres as it will be dipped. */
export type PatternSize = {
  /** Overlapping bodies once; null on an open mesh, whose range stands instead. */
  readonly volumeMm3: number | null;
  /** Both null where the surface contradicts itself. */
  readonly lowMm3: number | null;
  readonly highMm3: number | null;
  readonly areaMm2: number;
  readonly boxMm: Vec3;
  /** Sprue, runners, vents and feeders drawn on it. */
  readonly gatingMm3: number;
};

export function sizeOf(study: Pick<PatternStudy, "found" | "bars">, mmPerUnit: number): PatternSize {
  const { volume, unionVolume, overlaps, openVolume, area, box } = study.found.measures;
  const cube = mmPerUnit ** 3;
  const solid = overlaps ? unionVolume : volume;
  const [x, y, z] = minus(box.high, box.low);
  return {
    volumeMm3: solid === null ? null : solid * cube,
    lowMm3: openVolume?.low == null ? null : openVolume.low * cube,
    highMm3: openVolume?.high == null ? null : openVolume.high * cube,
    areaMm2: area * mmPerUnit ** 2,
    boxMm: [x * mmPerUnit, y * mmPerUnit, z * mmPerUnit],
    gatingMm3: study.bars.reduce(
      (sum, bar) => sum + barSums(bar, { freeFrom: false, freeTo: false }).volume,
      0,
    ),
  };
}
