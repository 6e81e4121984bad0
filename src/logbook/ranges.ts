export type NumberRange = { readonly low: number; readonly high: number };

/**
 * What a number in the log may be: wide enough for any shop, narrow enough to catch a slipped digit or the wrong
 * unit. Judgement throughout. Sums leave out of their reckoning what lies outside.
 */
export const ranges = {
  altitudeM: { low: -430, high: 5000 },
  airC: { low: -30, high: 60 },
  rh: { low: 0, high: 1 },
  surfaceC: { low: -30, high: 80 },
  massG: { low: 0.1, high: 2_000_000 },
  wallMm: { low: 0.1, high: 60 },
  headM: { low: 0.01, high: 10 },
  spanMm: { low: 1, high: 5000 },
  areaM2: { low: 0.0001, high: 100 },
  metalKg: { low: 0.001, high: 10_000 },
  metalLitre: { low: 0.0001, high: 4000 },
  drainS: { low: 0, high: 3600 },
  leftShare: { low: 0, high: 1 },
  coatNumber: { low: 1, high: 99 },
  step: { low: 0, high: 98 },
  kilnC: { low: -30, high: 1500 },
  peakC: { low: 100, high: 1600 },
  holdMin: { low: 0, high: 10_080 },
  shellC: { low: -30, high: 1400 },
  metalC: { low: 100, high: 2200 },
  outOfKilnMin: { low: 0, high: 1440 },
  cupS: { low: 1, high: 600 },
  slurryC: { low: -10, high: 60 },
  densityGCm3: { low: 0.9, high: 5 },
  pH: { low: 0, high: 14 },
  targetDryness: { low: 0.5, high: 1 },
  morMPa: { low: 0.1, high: 50 },
  safetyFactor: { low: 1, high: 10 },
  floorMm: { low: 0, high: 60 },
  dryingFactor: { low: 0.1, high: 10 },
  recipeCoats: { low: 1, high: 40 },
} as const satisfies Record<string, NumberRange>;

/** True for a number within its range; NaN and what is not there are not. */
export function within(range: NumberRange, value: number | null | undefined): value is number {
  return typeof value === "number" && value >= range.low && value <= range.high;
}
