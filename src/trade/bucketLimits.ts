import type { BucketCheck } from "../physics/slurry/bucketHealth.ts";
import type { BucketLimits } from "../physics/slurry/bucketFacts.ts";
import type { Flour } from "./flours.ts";
import type { Published } from "./published.ts";

const practice = "common practice, no source; starting value";

/** Density tolerance by kind of flour, g/cm³. */
const densityBands: Readonly<Record<Flour["family"], BucketLimits["densityGCm3"]>> = {
  light: { fit: 0.01, watch: 0.02 },
  heavy: { fit: 0.02, watch: 0.04 },
};

/** Starting limits of a bucket's health, every one the shop's to change. */
export function bucketLimitsFor(family: Flour["family"]): BucketLimits {
  return {
    temperatureC: { fit: { low: 20, high: 25 }, watch: { low: 5, high: 35 } },
    ownTemperatureK: 2,
    densityGCm3: densityBands[family],
    pH: { fit: { low: 9.2, high: 10.3 }, stopBelow: 8.8, meterAbove: 11 },
    pHDropWeek: 0.2,
    silica: { fit: 0.01, lowest: 0.02, highest: 0.03 },
    gelH: { fit: 48, watch: 24 },
    plateShare: { fit: 0.1, watch: 0.15 },
    bacteriaPerMl: { fit: 1e3, watch: 1e5 },
    oldDays: 182,
    tooOldDays: 365,
    weeklyShare: 0.05,
  };
}

/** Where each limit comes from. */
export const bucketLimitSources: Readonly<Record<keyof BucketLimits, string>> = {
  temperatureC: `${practice}; freezing spoils a silica sol for good`,
  ownTemperatureK: practice,
  densityGCm3: practice,
  pH: `${practice}; alkaline sols are stable from about 8.5 to 10 and worst near 7, silica dissolves above 10.5: order of Iler, The Chemistry of Silica (from memory)`,
  pHDropWeek: `${practice}; the trend says more than the number`,
  silica: practice,
  gelH: `${practice}; 20 mL of clear binder in a closed vial at 60 °C`,
  plateShare: `${practice}; the method: Sidhu, Kumar & Mishra, J. Mater. Eng. Perform. 17 (2008) 489`,
  bacteriaPerMl: practice,
  oldDays: practice,
  tooOldDays: `${practice}; counted only where little is used and replaced`,
  weeklyShare: practice,
};

/** Days between checks; a day stands for every session. */
export const checkEveryDays: Readonly<Record<BucketCheck, number>> = {
  temperature: 1,
  seconds: 1,
  density: 1,
  pH: 7,
  liquor: 21,
  gel: 30,
  plate: 7,
  bacteria: 30,
  look: 1,
};

/** Hours of stirring before the first dip. Three readings an hour apart within 5 % are the better sign. */
export const mixingH = {
  "prime-made": { value: 24, basis: "practice", source: `${practice}; 24–48 h` },
  "backup-made": { value: 12, basis: "practice", source: `${practice}; 12–24 h` },
  "flour-added": { value: 2, basis: "practice", source: `${practice}; 2–4 h` },
  "water-added": { value: 0.25, basis: "practice", source: `${practice}; 15–30 min` },
  stood: { value: 0.25, basis: "practice", source: `${practice}; 10–30 min` },
} as const satisfies Record<string, Published>;
