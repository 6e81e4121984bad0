import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bucketHealth } from "../../physics/slurry/bucketHealth.ts";
import type { BucketFacts } from "../../physics/slurry/bucketFacts.ts";
import { correctionAdvice } from "../../physics/slurry/correctionAdvice.ts";
import { bucketLimitsFor } from "../../trade/bucketLimits.ts";
import { bucketVoice } from "./bucketVoice.ts";

type Read = Pick<BucketFacts, "slurryC" | "densityGCm3"> & { readonly seconds: number };
const bandS = { lowS: 18, highS: 30 };
const ownC = 22;

/** What is said of a bucket with a target of 22 °C, 18 to 30 s of a Zahn 4 and 1.68 g/cm³. */
function voiceOf(read: Read, more: Partial<BucketFacts> = {}) {
  const facts: BucketFacts = {
    checkedToday: true,
    ownC,
    bandS,
    chartRules: [],
    targetGCm3: 1.68,
    pH: null,
    pHDropWeek: null,
    liquorSilica: null,
    startSilica: null,
    gel: null,
    plateKgM2: null,
    ownPlateKgM2: null,
    bacteriaPerMl: null,
    seen: [],
    ageDays: null,
    weeklyShare: null,
    mixed: null,
    steady: null,
    ...read,
    ...more,
  };
  const correction = correctionAdvice({
    cup: "zahn-4",
    seconds: read.seconds,
    slurryC: read.slurryC ?? ownC,
    referenceC: ownC,
    bandS,
    densityGCm3: read.densityGCm3,
    target: { densityGCm3: 1.68, plusMinusGCm3: 0.01 },
    volumeL: 20,
    flourGCm3: 2.2,
    liquidGCm3: 1.2,
    composition: null,
    stirred: true,
  });
  const health = bucketHealth(facts, bucketLimitsFor("light"));
  return bucketVoice({ health, advice: { ok: true, correction, readingId: "r" } });
}
const codes = (voice: ReturnType<typeof bucketVoice>) => voice.steps.map(({ code }) => code);
const right: Read = { slurryC: 22, seconds: 24, densityGCm3: 1.68 };

describe("a bucket speaks with one voice", () => {
  test("in range it is left alone, and nothing else is said", () => {
    const voice = voiceOf(right);
    expect(voice).toMatchObject({ level: "fit", reasons: [] });
    expect(codes(voice)).toEqual(["leave-alone"]);
  });

  test("too cold it is brought to its temperature, and is not left alone as well", () => {
    const voice = voiceOf({ ...right, slurryC: 17 });
    expect(voice.level).toBe("watch");
    expect(codes(voice)).toEqual(["bring-to-temperature"]);
    // The step says what to do: the reason's own remedy would say it a second time.
    expect(voice.reasons).toMatchObject([{ reason: { code: "temperature-off" }, isActed: false }]);
  });

  test("thick and dense it gets water, said once", () => {
    const voice = voiceOf({ ...right, seconds: 40, densityGCm3: 1.72 });
    expect(codes(voice)).toEqual(["add-water"]);
    expect(voice.reasons.map(({ isActed }) => isActed)).toEqual([false, false]);
  });

  test("nobody read today, it is to be read before anything is added", () => {
    const voice = voiceOf({ ...right, seconds: 40, densityGCm3: 1.72 }, { checkedToday: false });
    expect(codes(voice)).toEqual([]);
    expect(voice.reasons.find(({ reason }) => reason.code === "not-checked-today")?.isActed).toBe(true);
  });

  test("still mixing, or gelling, it gets nothing added", () => {
    const thick = { ...right, seconds: 40, densityGCm3: 1.72 };
    expect(codes(voiceOf(thick, { mixed: { hours: 1, neededH: 24 } }))).toEqual([]);
    expect(codes(voiceOf(thick, { gel: { hours: 10, gelled: true } }))).toEqual([]);
    expect(codes(voiceOf(thick, { seen: ["foul-smell"] }))).toEqual([]);
  });

  test("skin on a good slurry is a thing to do, so it is not left alone", () => {
    const voice = voiceOf(right, { seen: ["skin"] });
    expect(codes(voice)).toEqual([]);
    expect(voice.reasons).toMatchObject([{ reason: { code: "looks-wrong" }, isActed: true }]);
  });

  test("property: left alone only where it is fit and nothing else is said; something is always said otherwise", () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    const reads = fc.record({
      slurryC: number(6, 39),
      seconds: number(16, 80),
      densityGCm3: fc.option(number(1.5, 1.9)),
    });
    const others = fc.record({
      checkedToday: fc.boolean(),
      seen: fc.subarray(["foul-smell", "skin", "lumps", "foam"] as const),
      gel: fc.option(fc.record({ hours: number(0, 100), gelled: fc.boolean() })),
      pH: fc.option(number(7, 12)),
      mixed: fc.option(fc.record({ hours: number(0, 30), neededH: number(0, 24) })),
      chartRules: fc.subarray([1, 2, 3, 4, 5]),
    });
    fc.assert(
      fc.property(reads, others, (read, more) => {
        const voice = voiceOf(read, more);
        const said = codes(voice);
        if (said.includes("leave-alone")) {
          expect(voice.level).toBe("fit");
          expect(said).toEqual(["leave-alone"]);
        }
        if (voice.level !== "fit")
          expect(said.length + voice.reasons.filter(({ isActed }) => isActed).length).toBeGreaterThan(0);
      }),
      { numRuns: 500 },
    );
  });
});
