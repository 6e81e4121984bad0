import type { BucketFacts, BucketLimits } from "../../src/physics/slurry/bucketFacts.ts";

/** A bucket of which all is known. */
export const bucketFacts: BucketFacts = {
  checkedToday: true,
  slurryC: 21,
  ownC: 20,
  seconds: 20,
  bandS: { lowS: 18, highS: 22 },
  chartRules: [4],
  densityGCm3: 1.7,
  targetGCm3: 1.71,
  pH: 9.6,
  pHDropWeek: 0.1,
  liquorSilica: 0.3,
  startSilica: 0.3,
  gel: { hours: 20, gelled: true },
  plateKgM2: 0.6,
  ownPlateKgM2: 0.62,
  bacteriaPerMl: 1000,
  seen: [],
  ageDays: 200,
  weeklyShare: 0.05,
  mixed: { hours: 12, neededH: 8 },
  steady: null,
};

export const bucketLimits: BucketLimits = {
  temperatureC: { fit: { low: 18, high: 24 }, watch: { low: 5, high: 35 } },
  ownTemperatureK: 3,
  densityGCm3: { fit: 0.02, watch: 0.05 },
  pH: { fit: { low: 9, high: 10.5 }, stopBelow: 8.5, meterAbove: 11 },
  pHDropWeek: 0.2,
  silica: { fit: 0.01, lowest: 0.03, highest: 0.04 },
  gelH: { fit: 48, watch: 24 },
  plateShare: { fit: 0.1, watch: 0.2 },
  bacteriaPerMl: { fit: 1e4, watch: 1e6 },
  oldDays: 180,
  tooOldDays: 365,
  weeklyShare: 0.1,
};
