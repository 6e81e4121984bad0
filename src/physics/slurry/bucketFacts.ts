/** What is known of a bucket at one glance. Null is unknown and says nothing for or against. */
export type BucketFacts = {
  /** Seconds were read before the first dip of this day. */
  readonly checkedToday: boolean;
  readonly slurryC: number | null;
  /** Its own usual temperature. */
  readonly ownC: number | null;
  /** Seconds at the reference temperature, with the target band. */
  readonly seconds: number | null;
  readonly bandS: { readonly lowS: number; readonly highS: number } | null;
  /** Rules the control chart's latest value fired. */
  readonly chartRules: readonly number[];
  readonly densityGCm3: number | null;
  readonly targetGCm3: number | null;
  readonly pH: number | null;
  /** How far pH sank over the last week; below 0 it rose. */
  readonly pHDropWeek: number | null;
  readonly liquorSilica: number | null;
  readonly startSilica: number | null;
  /** Hours the binder stayed liquid in the oven; where it still was, the hours watched. */
  readonly gel: { readonly hours: number; readonly gelled: boolean } | null;
  readonly plateKgM2: number | null;
  readonly ownPlateKgM2: number | null;
  readonly bacteriaPerMl: number | null;
  readonly seen: readonly ("foul-smell" | "colour" | "skin" | "lumps" | "foam")[];
  readonly ageDays: number | null;
  /** Share of the volume used and replaced a week. */
  readonly weeklyShare: number | null;
  /** Hours stirred since it was made or last added to, and the hours that asks for. */
  readonly mixed: { readonly hours: number; readonly neededH: number } | null;
  /** Whether the last three readings agree; null with fewer. */
  readonly steady: boolean | null;
};

/** Within `fit` it is fit, within `watch` watched, beyond that not to be dipped from. */
export type LimitBand = { readonly fit: number; readonly watch: number };
export type LimitSpan = { readonly low: number; readonly high: number };

/** All limits of a bucket, numbers only; density's depends on its flour. */
export type BucketLimits = {
  readonly temperatureC: { readonly fit: LimitSpan; readonly watch: LimitSpan };
  readonly ownTemperatureK: number;
  readonly densityGCm3: LimitBand;
  readonly pH: { readonly fit: LimitSpan; readonly stopBelow: number; readonly meterAbove: number };
  readonly pHDropWeek: number;
  readonly silica: { readonly fit: number; readonly lowest: number; readonly highest: number };
  readonly gelH: { readonly fit: number; readonly watch: number };
  readonly plateShare: LimitBand;
  readonly bacteriaPerMl: LimitBand;
  readonly oldDays: number;
  readonly tooOldDays: number;
  readonly weeklyShare: number;
};
