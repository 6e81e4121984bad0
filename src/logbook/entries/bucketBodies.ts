/** What went in: a weight that was not put in is 0, never left out. */
export type Makings = {
  readonly flourKg: number;
  readonly solKg: number;
  readonly waterKg: number;
};

export type BucketUse = "prime" | "backup" | "single" | "seal";

/** What the bucket is meant to be. A key left out is not known. */
export type BucketTargets = {
  readonly flourId?: string | undefined;
  readonly flourGCm3?: number | undefined;
  /** The sol as it comes: density and the mass fraction of silica in it, 0–1. */
  readonly solGCm3?: number | undefined;
  readonly solSilica?: number | undefined;
  /** Flour to sol by mass. */
  readonly ratio?: number | undefined;
  readonly fullL?: number | undefined;
  /** Slurry that must stay in it to cover the tallest piece. */
  readonly leastL?: number | undefined;
  readonly openM2?: number | undefined;
  readonly densityGCm3?: number | undefined;
  /** The cup its seconds are told in, and the band it is kept in. */
  readonly cupId?: string | undefined;
  readonly lowS?: number | undefined;
  readonly highS?: number | undefined;
  readonly slurryC?: number | undefined;
  /** Hours a coat of this slurry dries at the least; stands before the shop's for its kind of coat. */
  readonly leastDryH?: number | undefined;
};

export type BucketBodies = {
  readonly "bucket-set": BucketTargets & {
    readonly name: string;
    readonly use: BucketUse;
    readonly slurry: string;
    readonly retired?: boolean | undefined;
  };
  /** Raw readings; what follows from them is reckoned, never stored. */
  readonly "bucket-read": {
    /** The kind of cup, in words, of a reading without a cup of the shop's own. */
    readonly cup?: string | undefined;
    readonly cupId?: string | undefined;
    /** The mean the maker wrote down; with `dipsS` the single dips it is the mean of. */
    readonly cupS?: number | undefined;
    readonly dipsS?: readonly number[] | undefined;
    readonly slurryC?: number | undefined;
    /** Density as told by an instrument; a weighed volume is kept as the two weighings beside it. */
    readonly densityGCm3?: number | undefined;
    readonly weighedG?: number | undefined;
    readonly weighedMl?: number | undefined;
    readonly pH?: number | undefined;
    readonly liquorGCm3?: number | undefined;
    /** Solids left by the oven, as a mass fraction 0–1. */
    readonly ovenSolids?: number | undefined;
    readonly plateG?: number | undefined;
    readonly plateCm2?: number | undefined;
    /** Binder kept warm: hours until it gelled, or hours it had stayed liquid when last looked at. */
    readonly gelledAfterH?: number | undefined;
    readonly liquidForH?: number | undefined;
    readonly bacteriaPerMl?: number | undefined;
    readonly smell?: "none" | "foul" | undefined;
    readonly skin?: boolean | undefined;
    readonly lumps?: boolean | undefined;
    readonly foam?: boolean | undefined;
    /** True when taken after a correction; the chart takes readings as found. */
    readonly asLeft?: boolean | undefined;
    readonly name?: string | undefined;
    readonly note?: string | undefined;
    readonly photos?: readonly string[] | undefined;
  };
  /** A new batch: what was in the bucket before is gone. */
  readonly "bucket-mixed": Makings & {
    readonly litre?: number | undefined;
    readonly solSilica?: number | undefined;
    readonly note?: string | undefined;
  };
  /** Something added to the batch in it. */
  readonly "bucket-topped": Makings & {
    readonly why: "evaporation" | "correction" | "fresh";
    readonly solSilica?: number | undefined;
    /** How the bucket stood since the last top-up. */
    readonly lid?: "on" | "off" | undefined;
    /** What the next reading should say if the sum was right. */
    readonly expected?:
      { readonly densityGCm3?: number | undefined; readonly cupS?: number | undefined } | undefined;
    readonly note?: string | undefined;
  };
  readonly "bucket-lost": {
    readonly litre: number;
    readonly how: "lost" | "thrown-away";
    readonly note?: string | undefined;
  };
  readonly "bucket-counted": { readonly litre: number; readonly note?: string | undefined };
  /** The look at the bucket before a visit to it. */
  readonly "bucket-passed": {
    readonly verdict: "fit" | "watch" | "do-not-dip" | "not-checked";
    readonly name?: string | undefined;
    readonly reason?: string | undefined;
  };
};
