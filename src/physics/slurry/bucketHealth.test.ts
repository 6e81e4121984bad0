import { describe, expect, test } from "vitest";
import type { BucketFacts, BucketLimits } from "./bucketFacts.ts";
import { bucketHealth, checksDue } from "./bucketHealth.ts";

const limits: BucketLimits = {
  temperatureC: { fit: { low: 20, high: 25 }, watch: { low: 5, high: 35 } },
  ownTemperatureK: 2,
  densityGCm3: { fit: 0.01, watch: 0.02 },
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
const well: BucketFacts = {
  checkedToday: true,
  slurryC: 22,
  ownC: 22,
  seconds: 25,
  bandS: { lowS: 22, highS: 28 },
  chartRules: [],
  densityGCm3: 1.68,
  targetGCm3: 1.68,
  pH: 9.8,
  pHDropWeek: 0,
  liquorSilica: 0.3,
  startSilica: 0.3,
  gel: { hours: 48, gelled: false },
  plateKgM2: 0.2,
  ownPlateKgM2: 0.2,
  bacteriaPerMl: 100,
  seen: [],
  ageDays: 30,
  weeklyShare: 0.1,
  mixed: { hours: 30, neededH: 24 },
  steady: null,
};
const verdict = (changes: Partial<BucketFacts>): string => {
  const { level, reasons } = bucketHealth({ ...well, ...changes }, limits);
  return [level, ...reasons.map(({ code }) => code)].join(" ");
};

test("a bucket that is well is fit, and one nobody knows anything of is not checked", () => {
  expect(verdict({})).toBe("fit");
  const unknown = Object.fromEntries(Object.keys(well).map((key) => [key, null]));
  const facts = { ...(unknown as unknown as BucketFacts), checkedToday: false, chartRules: [], seen: [] };
  expect(bucketHealth(facts, limits)).toMatchObject({ level: "not-checked", reasons: [{ found: null }] });
});

const either: readonly [string, Partial<BucketFacts>, string][] = [
  ["a little cool", { slurryC: 19.9, ownC: null }, "watch temperature-off"],
  ["at the edge of fit", { slurryC: 20, ownC: null }, "fit"],
  ["near freezing", { slurryC: 4.9 }, "do-not-dip frozen-or-hot"],
  ["too hot", { slurryC: 35.1 }, "do-not-dip frozen-or-hot"],
  ["not its own warmth", { slurryC: 24.5 }, "watch temperature-not-its-own"],
  ["thinner than its band", { seconds: 21.9 }, "do-not-dip seconds-out-of-band"],
  ["thicker than its band", { seconds: 28.1 }, "do-not-dip seconds-out-of-band"],
  ["on the band's edge", { seconds: 28 }, "fit"],
  ["with a signal on the chart", { chartRules: [3, 2] }, "watch chart-signal"],
  ["a hundredth heavy", { densityGCm3: 1.69 }, "fit"],
  ["more than that", { densityGCm3: 1.695 }, "watch density-off"],
  ["more than two light", { densityGCm3: 1.655 }, "do-not-dip density-off"],
  ["with a low pH", { pH: 9.0 }, "watch pH-off"],
  ["with a pH that means gelling", { pH: 8.7 }, "do-not-dip pH-too-low"],
  ["with a pH the meter made up", { pH: 11.2 }, "watch pH-meter"],
  ["with a high pH", { pH: 10.6 }, "watch pH-off"],
  ["whose pH sinks", { pHDropWeek: 0.2 }, "watch pH-sinking"],
  ["whose liquor is a little strong", { liquorSilica: 0.315 }, "watch liquor-silica-off"],
  ["whose liquor is far too strong", { liquorSilica: 0.331 }, "do-not-dip liquor-silica-off"],
  ["whose liquor is weaker than new", { liquorSilica: 0.275 }, "do-not-dip liquor-silica-off"],
  ["whose binder gels in a day and a half", { gel: { hours: 36, gelled: true } }, "watch gels-early"],
  ["whose binder gels overnight", { gel: { hours: 12, gelled: true } }, "do-not-dip gels-early"],
  ["whose gel test was broken off", { gel: { hours: 8, gelled: false } }, "watch gel-test-short"],
  ["whose plate is light", { plateKgM2: 0.176 }, "watch plate-off"],
  ["whose plate is far too heavy", { plateKgM2: 0.24 }, "do-not-dip plate-off"],
  ["with life in it", { bacteriaPerMl: 1e4 }, "watch bacteria"],
  ["with much life in it", { bacteriaPerMl: 2e5 }, "do-not-dip bacteria"],
  ["that smells", { seen: ["foul-smell"] }, "do-not-dip foul-smell"],
  ["with a skin", { seen: ["skin"] }, "watch looks-wrong"],
  ["old and hardly used", { ageDays: 200, weeklyShare: 0.02 }, "watch old"],
  ["very old and hardly used", { ageDays: 400, weeklyShare: 0.02 }, "do-not-dip old"],
  ["very old, use unknown", { ageDays: 400, weeklyShare: null }, "watch old"],
  ["very old but always renewed", { ageDays: 400, weeklyShare: 0.1 }, "fit"],
  ["hardly stirred", { mixed: { hours: 3, neededH: 24 } }, "do-not-dip not-mixed-enough"],
  ["hardly stirred but steady", { mixed: { hours: 3, neededH: 24 }, steady: true }, "fit"],
  ["stirred but not steady", { steady: false }, "watch readings-not-steady"],
];
test.each(either)("a bucket %s", (_, changes, told) => expect(verdict(changes)).toBe(told));

describe("several reasons", () => {
  test("the worst comes first and makes the verdict", () =>
    expect(verdict({ seen: ["skin"], pH: 8.5, checkedToday: false })).toBe(
      "do-not-dip pH-too-low not-checked-today looks-wrong",
    ));

  test("unread today beats watch: nobody knows how it is", () =>
    expect(verdict({ seen: ["skin"], checkedToday: false })).toBe(
      "not-checked not-checked-today looks-wrong",
    ));

  test("a reason tells what was found and what it was held against", () =>
    expect(bucketHealth({ ...well, seconds: 30 }, limits).reasons).toEqual([
      { code: "seconds-out-of-band", level: "do-not-dip", found: 30, low: 22, high: 28 },
    ]));
});

test("a check is due when its days are over or it was never made; bacteria only where polymer feeds them", () => {
  const everyDays = {
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
  const daysSince = { temperature: 0, seconds: 0.5, density: 0, pH: 7, liquor: 20, plate: 1, look: 0 };
  expect(checksDue({ daysSince, everyDays, polymer: false })).toEqual(["pH", "gel"]);
  expect(checksDue({ daysSince, everyDays, polymer: true })).toEqual(["pH", "gel", "bacteria"]);
});
