import { requirePositive, requireWithin } from "../stats/range.ts";

/**
 * Two ways a shrink is printed. "rule": what a pattern maker's rule is longer by, a share of the casting (1/4 in/ft is
 * 1/48). "contraction": what is lost, a share of the pattern.
 */
export type ShrinkConvention = "rule" | "contraction";

/** Pattern over casting, linear: 1 + s by the rule, 1/(1 − s) by contraction. Share 0–0.2. */
export function patternScale({
  shrinkShare,
  convention,
}: {
  shrinkShare: number;
  convention: ShrinkConvention;
}): number {
  requireWithin("shrinkShare", shrinkShare, { low: 0, high: 0.2, unit: "(a fraction, not percent)" });
  return convention === "rule" ? 1 + shrinkShare : 1 / (1 - shrinkShare);
}

/** Growth of a volume or a mass when a pattern is scaled: the cube. */
export function volumeScale(linearScale: number): number {
  requirePositive("linearScale", linearScale, { high: 1000, unit: "" });
  return linearScale ** 3;
}

/** Shrinks that follow one another (mould, wax or print, shell, metal) multiply; each pattern over what it becomes. */
export function chainedScale(scales: readonly number[]): number {
  return scales.reduce((product, scale) => {
    requirePositive("scale", scale, { high: 2, unit: "" });
    return product * scale;
  }, 1);
}

export type Measured = { readonly patternMm: number; readonly castingMm: number };

export type LearnedShrink =
  | {
      readonly kind: "learned";
      /** By the rule: pattern over casting, less one. Below zero where a casting came out larger. */
      readonly meanShare: number;
      readonly sdShare: number;
      readonly pieces: number;
    }
  | { readonly kind: "too-few"; readonly pieces: number; readonly needed: 3 };

/** The shop's own shrink, for one alloy and one constraint: mean and sample deviation, from three pieces up. */
export function learnShrink(pieces: readonly Measured[]): LearnedShrink {
  const shares = pieces.map(({ patternMm, castingMm }) => {
    requirePositive("patternMm", patternMm, { high: 1e5, unit: "mm" });
    requirePositive("castingMm", castingMm, { high: 1e5, unit: "mm" });
    return patternMm / castingMm - 1;
  });
  if (shares.length < 3) return { kind: "too-few", pieces: shares.length, needed: 3 };
  const meanShare = shares.reduce((sum, share) => sum + share, 0) / shares.length;
  const squares = shares.reduce((sum, share) => sum + (share - meanShare) ** 2, 0);
  return {
    kind: "learned",
    meanShare,
    sdShare: Math.sqrt(squares / (shares.length - 1)),
    pieces: shares.length,
  };
}
