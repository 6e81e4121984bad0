import type { BucketLimits } from "../../physics/slurry/bucketFacts.ts";
import { bucketLimitsFor, mixingH } from "../../trade/bucketLimits.ts";
import type { Flour } from "../../trade/flours.ts";
import type { BucketLimitKey, OwnBucketLimits } from "../entries/bucketLimitRules.ts";
import { ranges, within } from "../entries/ranges.ts";

const light = bucketLimitsFor("light");
const heavy = bucketLimitsFor("heavy");

/** The starting values one by one, in the units of `BucketLimits`; sources stand with them in the trade's tables. */
export const startingBucketLimits: Readonly<Record<BucketLimitKey, number>> = {
  fitLowC: light.temperatureC.fit.low,
  fitHighC: light.temperatureC.fit.high,
  stopLowC: light.temperatureC.watch.low,
  stopHighC: light.temperatureC.watch.high,
  ownOffK: light.ownTemperatureK,
  lightFitGCm3: light.densityGCm3.fit,
  lightStopGCm3: light.densityGCm3.watch,
  heavyFitGCm3: heavy.densityGCm3.fit,
  heavyStopGCm3: heavy.densityGCm3.watch,
  fitLowPH: light.pH.fit.low,
  fitHighPH: light.pH.fit.high,
  stopPH: light.pH.stopBelow,
  meterPH: light.pH.meterAbove,
  weekDropPH: light.pHDropWeek,
  fitSilica: light.silica.fit,
  lowestSilica: light.silica.lowest,
  highestSilica: light.silica.highest,
  fitGelH: light.gelH.fit,
  stopGelH: light.gelH.watch,
  fitPlateShare: light.plateShare.fit,
  stopPlateShare: light.plateShare.watch,
  fitBacteria: light.bacteriaPerMl.fit,
  stopBacteria: light.bacteriaPerMl.watch,
  oldDays: light.oldDays,
  tooOldDays: light.tooOldDays,
  weeklyShare: light.weeklyShare,
  primeMadeH: mixingH["prime-made"].value,
  backupMadeH: mixingH["backup-made"].value,
  flourAddedH: mixingH["flour-added"].value,
  waterAddedH: mixingH["water-added"].value,
};

/** Each limit as it counts: the shop's own where it has one that a shop could have, else the starting value. */
export function countedBucketLimits(own: OwnBucketLimits = {}): Readonly<Record<BucketLimitKey, number>> {
  const keys = Object.keys(startingBucketLimits) as BucketLimitKey[];
  const counted = keys.map((key) => {
    const value = own[key];
    return [key, within(ranges[key], value) ? value : startingBucketLimits[key]];
  });
  return Object.fromEntries(counted) as Record<BucketLimitKey, number>;
}

/** What a bucket of this kind of flour is judged by. */
export function shopBucketLimits(family: Flour["family"], own: OwnBucketLimits = {}): BucketLimits {
  const of = countedBucketLimits(own);
  const isLight = family === "light";
  return {
    temperatureC: {
      fit: { low: of.fitLowC, high: of.fitHighC },
      watch: { low: of.stopLowC, high: of.stopHighC },
    },
    ownTemperatureK: of.ownOffK,
    densityGCm3: {
      fit: isLight ? of.lightFitGCm3 : of.heavyFitGCm3,
      watch: isLight ? of.lightStopGCm3 : of.heavyStopGCm3,
    },
    pH: { fit: { low: of.fitLowPH, high: of.fitHighPH }, stopBelow: of.stopPH, meterAbove: of.meterPH },
    pHDropWeek: of.weekDropPH,
    silica: { fit: of.fitSilica, lowest: of.lowestSilica, highest: of.highestSilica },
    gelH: { fit: of.fitGelH, watch: of.stopGelH },
    plateShare: { fit: of.fitPlateShare, watch: of.stopPlateShare },
    bacteriaPerMl: { fit: of.fitBacteria, watch: of.stopBacteria },
    oldDays: of.oldDays,
    tooOldDays: of.tooOldDays,
    weeklyShare: of.weeklyShare,
  };
}
