import type { BucketFacts, BucketLimits, LimitBand, LimitSpan } from "./bucketFacts.ts";
import { requireEveryFigure } from "../stats/range.ts";

export type HealthLevel = "watch" | "do-not-dip" | "not-checked";

export type HealthCode =
  | "not-checked-today"
  | "temperature-off"
  | "temperature-not-its-own"
  | "frozen-or-hot"
  | "seconds-out-of-band"
  | "chart-signal"
  | "density-off"
  | "pH-off"
  | "pH-too-low"
  | "pH-meter"
  | "pH-sinking"
  | "liquor-silica-off"
  | "gels-early"
  | "gel-test-short"
  | "plate-off"
  | "bacteria"
  | "foul-smell"
  | "looks-wrong"
  | "old"
  | "not-mixed-enough"
  | "readings-not-steady";

/** `found` against `low`–`high`, whichever of them the limit has; all in the fact's own unit. */
export type HealthReason = {
  readonly code: HealthCode;
  readonly level: HealthLevel;
  readonly found: number | null;
  readonly low: number | null;
  readonly high: number | null;
};

const nothing = { found: null, low: null, high: null } as const;
const outside = (value: number, { low, high }: LimitSpan): boolean =>
  value < low - 1e-9 || value > high + 1e-9;

/** Every reason against dipping, in no order. */
export function judge(facts: BucketFacts, limits: BucketLimits): readonly HealthReason[] {
  requireEveryFigure("facts", facts);
  requireEveryFigure("limits", limits);
  return [
    ...(facts.checkedToday ? [] : [{ code: "not-checked-today", level: "not-checked", ...nothing } as const]),
    ...temperature(facts, limits),
    ...seconds(facts),
    ...density(facts, limits),
    ...acidity(facts, limits),
    ...liquor(facts, limits),
    ...gelling(facts, limits),
    ...plate(facts, limits),
    ...life(facts, limits),
    ...age(facts, limits),
    ...mixing(facts),
  ];
}

function temperature({ slurryC, ownC }: BucketFacts, limits: BucketLimits): readonly HealthReason[] {
  if (slurryC === null) return [];
  const { fit, watch } = limits.temperatureC;
  if (outside(slurryC, watch))
    return [{ code: "frozen-or-hot", level: "do-not-dip", found: slurryC, ...watch }];
  if (outside(slurryC, fit)) return [{ code: "temperature-off", level: "watch", found: slurryC, ...fit }];
  if (ownC === null) return [];
  const own = { low: ownC - limits.ownTemperatureK, high: ownC + limits.ownTemperatureK };
  return outside(slurryC, own)
    ? [{ code: "temperature-not-its-own", level: "watch", found: slurryC, ...own }]
    : [];
}

function seconds({ seconds: found, bandS, chartRules }: BucketFacts): readonly HealthReason[] {
  const signal = chartRules[0];
  const signals: readonly HealthReason[] =
    signal === undefined
      ? []
      : [{ code: "chart-signal", level: "watch", found: Math.min(...chartRules), low: null, high: null }];
  if (found === null || bandS === null) return signals;
  const band = { low: bandS.lowS, high: bandS.highS };
  return outside(found, band)
    ? [{ code: "seconds-out-of-band", level: "do-not-dip", found, ...band }, ...signals]
    : signals;
}

function density({ densityGCm3, targetGCm3 }: BucketFacts, limits: BucketLimits): readonly HealthReason[] {
  if (densityGCm3 === null || targetGCm3 === null) return [];
  return offBy({ code: "density-off", found: densityGCm3, wanted: targetGCm3, band: limits.densityGCm3 });
}

function acidity({ pH, pHDropWeek }: BucketFacts, limits: BucketLimits): readonly HealthReason[] {
  const { fit, stopBelow, meterAbove } = limits.pH;
  const reasons: HealthReason[] = [];
  if (pH !== null && pH < stopBelow)
    reasons.push({ code: "pH-too-low", level: "do-not-dip", found: pH, low: stopBelow, high: null });
  else if (pH !== null && pH > meterAbove)
    reasons.push({ code: "pH-meter", level: "watch", found: pH, low: null, high: meterAbove });
  else if (pH !== null && outside(pH, fit))
    reasons.push({ code: "pH-off", level: "watch", found: pH, ...fit });
  if (pHDropWeek !== null && pHDropWeek >= limits.pHDropWeek - 1e-9)
    reasons.push({
      code: "pH-sinking",
      level: "watch",
      found: pHDropWeek,
      low: null,
      high: limits.pHDropWeek,
    });
  return reasons;
}

function liquor({ liquorSilica, startSilica }: BucketFacts, limits: BucketLimits): readonly HealthReason[] {
  if (liquorSilica === null || startSilica === null) return [];
  const { fit, lowest, highest } = limits.silica;
  const hard = { low: startSilica - lowest, high: startSilica + highest };
  const soft = { low: startSilica - fit, high: startSilica + fit };
  const reason = { code: "liquor-silica-off", found: liquorSilica } as const;
  if (outside(liquorSilica, hard)) return [{ ...reason, level: "do-not-dip", ...hard }];
  return outside(liquorSilica, soft) ? [{ ...reason, level: "watch", ...soft }] : [];
}

function gelling({ gel }: BucketFacts, { gelH }: BucketLimits): readonly HealthReason[] {
  if (gel === null || gel.hours >= gelH.fit) return [];
  const reason = { found: gel.hours, low: gelH.fit, high: null } as const;
  // A test broken off early has proved nothing.
  if (!gel.gelled) return [{ code: "gel-test-short", level: "watch", ...reason }];
  return [{ code: "gels-early", level: gel.hours < gelH.watch ? "do-not-dip" : "watch", ...reason }];
}

function plate({ plateKgM2, ownPlateKgM2 }: BucketFacts, limits: BucketLimits): readonly HealthReason[] {
  if (plateKgM2 === null || ownPlateKgM2 === null) return [];
  const band = {
    fit: limits.plateShare.fit * ownPlateKgM2,
    watch: limits.plateShare.watch * ownPlateKgM2,
  };
  return offBy({ code: "plate-off", found: plateKgM2, wanted: ownPlateKgM2, band });
}

function life({ bacteriaPerMl, seen }: BucketFacts, limits: BucketLimits): readonly HealthReason[] {
  const { fit, watch } = limits.bacteriaPerMl;
  const reasons: HealthReason[] = [];
  if (bacteriaPerMl !== null && bacteriaPerMl >= fit) {
    const level = bacteriaPerMl > watch ? "do-not-dip" : "watch";
    reasons.push({ code: "bacteria", level, found: bacteriaPerMl, low: null, high: fit });
  }
  if (seen.includes("foul-smell")) reasons.push({ code: "foul-smell", level: "do-not-dip", ...nothing });
  if (seen.some((each) => each !== "foul-smell"))
    reasons.push({ code: "looks-wrong", level: "watch", ...nothing });
  return reasons;
}

/** A bucket used up and refilled every few weeks never grows old, so age counts only with a slow turnover, or an unknown one. */
function age({ ageDays, weeklyShare }: BucketFacts, limits: BucketLimits): readonly HealthReason[] {
  if (ageDays === null || ageDays < limits.oldDays) return [];
  if (weeklyShare !== null && weeklyShare >= limits.weeklyShare) return [];
  const level = ageDays >= limits.tooOldDays && weeklyShare !== null ? "do-not-dip" : "watch";
  return [{ code: "old", level, found: ageDays, low: null, high: limits.oldDays }];
}

/** Three steady readings outweigh the clock: they are what the hours stand for. */
function mixing({ mixed, steady }: BucketFacts): readonly HealthReason[] {
  const { hours, neededH } = mixed ?? { hours: 0, neededH: 0 };
  if (steady === true) return [];
  if (hours < neededH - 1e-9)
    return [{ code: "not-mixed-enough", level: "do-not-dip", found: hours, low: neededH, high: null }];
  return steady === false ? [{ code: "readings-not-steady", level: "watch", ...nothing }] : [];
}

function offBy({
  code,
  found,
  wanted,
  band,
}: {
  code: HealthCode;
  found: number;
  wanted: number;
  band: LimitBand;
}): readonly HealthReason[] {
  const within = (by: number): LimitSpan => ({ low: wanted - by, high: wanted + by });
  if (outside(found, within(band.watch)))
    return [{ code, level: "do-not-dip", found, ...within(band.watch) }];
  return outside(found, within(band.fit)) ? [{ code, level: "watch", found, ...within(band.fit) }] : [];
}
