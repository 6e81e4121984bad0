import { noHollows } from "../../../geometry/closedHollows.ts";
import { volumeRouteError } from "../../../trade/volumeRoutes.ts";
import type { PatternStudy } from "./patternStudy.ts";

/** Voids of the pattern that no slurry reaches, and what the maker says becomes of them. */
export type StudyHollows = {
  readonly count: number;
  readonly volumeMm3: number;
  /** Skin in them; null where overlapping bodies shut them in, whose skins can't be told apart. */
  readonly areaMm2: number | null;
  /** Null until it is answered. */
  readonly are: NonNullable<PatternStudy["hollowsAre"]> | null;
};

/** Null where there are none, or so little that the volume of any mesh is less well known; and on an open mesh. */
export function hollowsOf(
  { found, shape, hollowsAre }: Pick<PatternStudy, "found" | "shape" | "hollowsAre">,
  mmPerUnit: number,
): StudyHollows | null {
  const { volume, unionVolume, overlaps } = found.measures;
  const solid = overlaps ? unionVolume : volume;
  if (solid === null) return null;
  const are = hollowsAre ?? null;
  const { count, volume: held, area } = found.hollows ?? noHollows;
  const least = volumeRouteError.mesh.value * solid * mmPerUnit ** 3;
  const volumeMm3 = held * mmPerUnit ** 3;
  if (count > 0 && !overlaps)
    return volumeMm3 < least ? null : { count, volumeMm3, areaMm2: area * mmPerUnit ** 2, are };
  const shut = (shape?.recesses ?? []).filter(({ kind }) => kind === "closed");
  const shutMm3 = shut.reduce((sum, recess) => sum + recess.volume, 0);
  return shut.length === 0 || shutMm3 < least
    ? null
    : { count: shut.length, volumeMm3: shutMm3, areaMm2: null, are };
}
