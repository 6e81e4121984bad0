import { millisecondsInHour as hourMs } from "date-fns/constants";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { given, later, read, shop, start } from "../../../tests/logs/testBucket.ts";
import { streamLog } from "../../../tests/logs/testStreamLog.ts";
import { bucketLimitsFor } from "../../trade/bucketLimits.ts";
import { bucketLimitPairs, type BucketLimitKey, type OwnBucketLimits } from "../entries/bucketLimitRules.ts";
import { shopStream } from "../entries/entry.ts";
import { ranges } from "../entries/ranges.ts";
import { foldShop } from "../shop/foldShop.ts";
import { countedBucketLimits, shopBucketLimits, startingBucketLimits } from "./bucketLimits.ts";
import { bucketStandingOf } from "./bucketStanding.ts";

const keys = Object.keys(startingBucketLimits) as BucketLimitKey[];

/** A bucket read an hour ago, judged by limits of the shop's own. */
const levelBy = (own: OwnBucketLimits, body: Parameters<typeof read>[2]) =>
  bucketStandingOf(
    given({ readings: [read("r", later - hourMs, body)] }),
    { ...shop, bucketLimits: own },
    later,
  ).health.level;

describe("what a bucket is judged by", () => {
  test("without limits of its own a shop has the starting ones, for either kind of flour", () => {
    for (const family of ["light", "heavy"] as const)
      expect(shopBucketLimits(family)).toEqual(bucketLimitsFor(family));
  });

  test("the shop's own take their place, one by one", () => {
    const limits = shopBucketLimits("heavy", { fitLowC: 18, stopPH: 9, heavyFitGCm3: 0.03 });
    const starting = bucketLimitsFor("heavy");
    expect(limits.temperatureC).toEqual({ ...starting.temperatureC, fit: { low: 18, high: 25 } });
    expect(limits.pH).toEqual({ ...starting.pH, stopBelow: 9 });
    expect(limits.densityGCm3).toEqual({ fit: 0.03, watch: starting.densityGCm3.watch });
  });

  test("the verdict goes by them: 19 °C is fit in a shop that says from 18 °C", () => {
    expect(levelBy({}, { slurryC: 19 })).toBe("watch");
    expect(levelBy({ fitLowC: 18, ownOffK: 4 }, { slurryC: 19 })).toBe("fit");
    expect(levelBy({}, { pH: 9 })).toBe("watch");
    expect(levelBy({ stopPH: 9.1 }, { pH: 9 })).toBe("do-not-dip");
  });

  test("the hours of mixing are the shop's: a prime of six hours is fit where six are enough", () => {
    const at = start + 6 * hourMs;
    const fresh = (own: OwnBucketLimits) =>
      bucketStandingOf(given({ readings: [read("r", at - hourMs / 2)] }), { ...shop, bucketLimits: own }, at);
    expect(fresh({}).mixing?.neededH).toBe(24);
    expect(fresh({}).health.level).toBe("do-not-dip");
    expect(fresh({ primeMadeH: 6 }).health.level).toBe("fit");
    expect(fresh({ primeMadeH: 6.1 }).health.level).toBe("do-not-dip");
  });

  test("property: each counts as the shop has it within its range, and as the starting value outside", () => {
    const value = fc.double({ min: -1000, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...keys), value, (key, own) => {
        const { low, high } = ranges[key];
        const counted = countedBucketLimits({ [key]: own });
        expect(counted[key]).toBe(own >= low && own <= high ? own : startingBucketLimits[key]);
        for (const other of keys.filter((one) => one !== key))
          expect(counted[other]).toBe(startingBucketLimits[other]);
      }),
    );
  });

  test("every starting value lies in its own range, and no pair is the wrong way round", () => {
    for (const key of keys) {
      expect(startingBucketLimits[key]).toBeGreaterThanOrEqual(ranges[key].low);
      expect(startingBucketLimits[key]).toBeLessThanOrEqual(ranges[key].high);
    }
    for (const [low, high] of bucketLimitPairs)
      expect(startingBucketLimits[low]).toBeLessThanOrEqual(startingBucketLimits[high]);
  });
});

describe("the log of the shop", () => {
  test("keeps what is left out, and null brings the starting value back", () => {
    const log = streamLog(shopStream);
    log.tell("shop-figures-set", { bucketLimits: { fitLowC: 18, primeMadeH: 12 } }, start);
    log.tell("shop-figures-set", { bucketLimits: { fitLowC: null, oldDays: 90 } }, start + hourMs);
    log.tell("shop-figures-set", { dryingFactor: 1.2 }, start + 2 * hourMs);
    expect(foldShop(log.entries()).bucketLimits).toEqual({ primeMadeH: 12, oldDays: 90 });
  });

  test("refuses a limit out of range, and a pair the wrong way round, with numbers", () => {
    const refused = (bucketLimits: OwnBucketLimits) =>
      streamLog(shopStream).refusal("shop-figures-set", { bucketLimits }, start);
    expect(refused({ fitLowC: 18, fitHighC: 26 })).toBeNull();
    expect(refused({ stopPH: 20 })).toMatchObject({ code: "out-of-range", found: 20, low: 1, high: 13 });
    expect(refused({ fitLowC: 26, fitHighC: 18 })).toMatchObject({
      code: "out-of-range",
      field: expect.stringContaining("fitHighC"),
      found: 18,
      low: 26,
      high: 45,
    });
  });
});
