import type { VolumeRoute } from "./patternVolume.ts";
import { requirePositive, requireWithin } from "../stats/range.ts";

/** A volume by one route with the error to expect of it, a fraction of itself. */
export type VolumeFound = {
  readonly route: VolumeRoute;
  readonly volumeCm3: number;
  readonly errorShare: number;
};

/** Two routes further apart than both their errors explain: one of them is wrong. */
export type Disagreement = {
  readonly used: VolumeRoute;
  readonly other: VolumeRoute;
  /** The other over the used, less one. */
  readonly differenceShare: number;
  readonly explainedShare: number;
};

export type VolumeChosen = {
  readonly used: VolumeFound;
  readonly why: "only-one" | "least-error";
  readonly others: readonly VolumeFound[];
  readonly disagreements: readonly Disagreement[];
};

/** Where two routes promise the same, the earlier is the better. */
const better: readonly VolumeRoute[] = ["mesh", "hydrostatic", "displacement", "slicer", "pattern-weight"];

/** Which of several volumes to use, why, and which others it can't be squared with; null where none was found. */
export function chooseVolume(found: readonly VolumeFound[]): VolumeChosen | null {
  for (const { volumeCm3, errorShare } of found) {
    requirePositive("volumeCm3", volumeCm3, { high: 1e7, unit: "cm³" });
    requireWithin("errorShare", errorShare, { low: 0, high: 1, unit: "(a fraction, not percent)" });
  }
  const [used, ...others] = [...found].sort(
    (a, b) => a.errorShare - b.errorShare || better.indexOf(a.route) - better.indexOf(b.route),
  );
  if (used === undefined) return null;
  return {
    used,
    why: others.length === 0 ? "only-one" : "least-error",
    others,
    disagreements: others.flatMap((other) => disagreement(used, other)),
  };
}

function disagreement(used: VolumeFound, other: VolumeFound): readonly Disagreement[] {
  const differenceShare = other.volumeCm3 / used.volumeCm3 - 1;
  const explainedShare = used.errorShare + (other.errorShare * other.volumeCm3) / used.volumeCm3;
  return Math.abs(differenceShare) <= explainedShare
    ? []
    : [{ used: used.route, other: other.route, differenceShare, explainedShare }];
}

/** Metal in a volume, kg. Take the solid density at room heat and the pattern's volume: safe by the shrink's cube. */
export function castingMassKg({ volumeCm3, metalKgM3 }: { volumeCm3: number; metalKgM3: number }): number {
  requireWithin("volumeCm3", volumeCm3, { low: 0, high: 1e7, unit: "cm³" });
  requireWithin("metalKgM3", metalKgM3, { low: 500, high: 25_000, unit: "kg/m³ (not g/cm³)" });
  return (volumeCm3 * metalKgM3) / 1e6;
}

/** The mass and how far it may be off, kg. */
export function castingMassBandKg({ found, metalKgM3 }: { found: VolumeFound; metalKgM3: number }): {
  readonly lowKg: number;
  readonly likelyKg: number;
  readonly highKg: number;
} {
  requireWithin("errorShare", found.errorShare, { low: 0, high: 1, unit: "(a fraction, not percent)" });
  const likelyKg = castingMassKg({ volumeCm3: found.volumeCm3, metalKgM3 });
  return {
    lowKg: likelyKg * (1 - found.errorShare),
    likelyKg,
    highKg: likelyKg * (1 + found.errorShare),
  };
}

/** Metal over pattern by weight, for a solid pattern only: the ratio of densities. */
export function metalPatternRatio({
  metalKgM3,
  patternKgM3,
}: {
  metalKgM3: number;
  patternKgM3: number;
}): number {
  requireWithin("metalKgM3", metalKgM3, { low: 500, high: 25_000, unit: "kg/m³ (not g/cm³)" });
  requireWithin("patternKgM3", patternKgM3, { low: 100, high: 5000, unit: "kg/m³ (not g/cm³)" });
  return metalKgM3 / patternKgM3;
}
