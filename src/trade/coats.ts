export type CoatKind = "prime" | "intermediate" | "backup" | "seal";

export type RecipeCoat = {
  readonly kind: CoatKind;
  /** Stucco cut id from the table of stuccos; null for a seal coat. */
  readonly stuccoId: string | null;
  /** Share of the critical water that must be gone before the next coat, 0–1. */
  readonly targetDryness: number;
  /** Hours this coat dries at the least before the next one; stands before the bucket's and the shop's. */
  readonly leastDryH?: number | undefined;
};

export type RecipeBody = {
  readonly name: string;
  readonly coats: readonly RecipeCoat[];
  /** Fired bend strength to reckon with, MPa. */
  readonly morMPa: number;
  /** Stands for the limit its walls must reach: 3 is the usual one (see `wallLimitsOf`). */
  readonly safetyFactor: number;
  /** Least wall whatever the sum says, mm: handling and burnout need it. */
  readonly floorMm: number;
  /** Polymer in its binder: stronger before the first fire, weaker while hot. Left out is no. */
  readonly polymer?: boolean | undefined;
  readonly note?: string | undefined;
};
