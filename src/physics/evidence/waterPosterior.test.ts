import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import truth from "../../../tests/truth/drying.json" with { type: "json" };
import { bagEvidence } from "./bagEvidence.ts";
import { dryThrough } from "../../../tests/dryThrough.ts";
import { dryStep } from "../drying/dryStep.ts";
import { factorCurves, sharesAt } from "./factorCurves.ts";
import type { ShareEvidence } from "./shareEvidence.ts";
import { aboutShare } from "./shareEvidence.ts";
import { skinEvidence } from "./skinEvidence.ts";
import { readySpread } from "../stats/spread.ts";
import { lossEvidence } from "./steadyMass.ts";
import { indexedCoat } from "./surfaceEvidence.ts";
import { waterPosterior } from "./waterPosterior.ts";

const coat = truth.coats.backup;
const air = { tempC: 22, rh: 0.5, pressurePa: 101_325, filmWM2K: 15 };
const indexed = indexedCoat(coat, 0);
const { readyShare } = indexed;
const hour = 3600;
const intervals = Array.from({ length: 12 }, () => ({ ...air, durationS: hour / 2 }));
const steps = intervals.map((one) => dryStep(one, { filmWM2K: 15, pocketSM: 0 }));
const timesS = Array.from({ length: 25 }, (_, i) => (i * hour) / 4);
const curves = factorCurves({ coat, steps, timesS, spread: readySpread() });
const at = (evidence: readonly ShareEvidence[], nowH = 2) =>
  waterPosterior({ curves, evidence, nowS: nowH * hour, readyShare });
const weighed = (share: number, afterH: number, sd = 0.03): ShareEvidence => ({
  source: "target-mass",
  weight: 1,
  afterS: afterH * hour,
  sinceS: null,
  logLikelihood: aboutShare({ share, sd }),
});
const shareOf = (factor: number, afterH: number) =>
  dryThrough({
    coat,
    filmWM2K: 15,
    pocketSM: 0,
    intervals: [{ ...air, durationS: afterH * hour }],
    resistanceFactor: factor,
  }).waterKgM2 / coat.waterKgM2;

describe("the model over its unknown factor", () => {
  test("is the same walk as anywhere else, for each factor, also at times that cut a stretch of air", () => {
    for (const afterH of [0.25, 1.75, 3]) {
      const shares = sharesAt(curves, afterH * hour);
      for (const i of [0, 40, 80, 120, 160])
        expect(shares[i]).toBeCloseTo(shareOf(Math.exp(curves.lnFactors[i] ?? NaN), afterH), 9);
    }
  });

  test("through a changing day too, where the times fall within its stretches of air", () => {
    const day = [0.4, 0.75, 0.55].map((rh, i) => ({ ...air, rh, durationS: (0.7 + 0.4 * i) * hour }));
    const times = [0.3, 0.5, 1.1, 1.9].map((afterH) => afterH * hour);
    const changing = factorCurves({
      coat,
      steps: day.map((one) => dryStep(one, { filmWM2K: 15, pocketSM: 0 })),
      timesS: times.toReversed(),
      spread: readySpread(),
    });
    for (const [t, afterS] of times.entries()) {
      let left = afterS;
      const until = day.map((one) => {
        const durationS = Math.min(left, one.durationS);
        left -= durationS;
        return { ...one, durationS };
      });
      const walked = dryThrough({ coat, filmWM2K: 15, pocketSM: 0, intervals: until });
      expect(changing.shares[t]?.[80]).toBeCloseTo(walked.waterKgM2 / coat.waterKgM2, 9);
    }
  });

  test("a slower coat is never drier", () => {
    for (const row of curves.shares)
      for (const [i, share] of row.entries()) expect(share).toBeGreaterThanOrEqual((row[i - 1] ?? 0) - 1e-12);
  });

  test("with no evidence gives the early, likely and late of the spread", () => {
    const said = at([]);
    const { early, likely, late } = readySpread();
    expect(said.spread.early).toBeCloseTo(early, 2);
    expect(said.spread.likely).toBeCloseTo(likely, 6);
    expect(said.spread.late).toBeCloseTo(late, 2);
    expect(said.median).toBeCloseTo(shareOf(1, 2), 4);
    expect(said.low).toBeCloseTo(shareOf(early, 2), 2);
    expect(said.high).toBeCloseTo(shareOf(late, 2), 2);
    expect(said.conflicts).toEqual([]);
  });

  test("the chance of dry is the chance that the factor lets it be: half at the model's own time", () => {
    expect(at([], 2.25).dryChance).toBeCloseTo(0.5, 1);
    expect(at([], 0).dryChance).toBe(0);
    expect(at([], 6).dryChance).toBeGreaterThan(0.97);
  });
});

describe("model and evidence together", () => {
  test("a weighing is believed between its own error and the model's, and carries on to later", () => {
    const said = at([weighed(0.4, 1)]);
    const factor = said.spread.likely;
    expect(shareOf(factor, 1)).toBeGreaterThan(0.37);
    expect(shareOf(factor, 1)).toBeLessThan(0.43);
    expect(said.median).toBeCloseTo(shareOf(factor, 2), 2);
    expect(said.high - said.low).toBeLessThan(0.5 * (said.model.high - said.model.low));
  });

  test("is the plain sum over many thrown factors", () => {
    const seen = weighed(0.45, 1, 0.08);
    let total = 0;
    let dry = 0;
    for (let i = 0; i < 4000; i++) {
      const lnFactor = 0.4717 * (-5 + i / 400);
      const weight = Math.exp(
        -0.5 * (-5 + i / 400) ** 2 + seen.logLikelihood(shareOf(Math.exp(lnFactor), 1), 0),
      );
      total += weight;
      if (shareOf(Math.exp(lnFactor), 3) <= readyShare) dry += weight;
    }
    expect(Math.abs(at([seen], 3).dryChance - dry / total)).toBeLessThan(0.01);
  });

  test("still wet is as useful as dry: each moves the chance its own way", () => {
    const bag = (bagRh: number) => {
      const heard = bagEvidence({ bagRh, roomRh: 0.5, baggedS: 1500, afterS: 2 * hour, coat: indexed });
      return heard.kind === "heard" ? [heard.evidence] : [];
    };
    const chance = at([]).dryChance;
    expect(at(bag(0.52)).dryChance).toBeGreaterThan(chance + 0.2);
    expect(at(bag(0.97)).dryChance).toBeLessThan(chance - 0.2);
  });

  test("less weight pulls less, none not at all", () => {
    const pulled = [0, 0.3, 1].map((weight) => at([{ ...weighed(0.5, 1), weight }], 1).median);
    expect(pulled[0]).toBeCloseTo(at([], 1).median, 9);
    expect(pulled[1]).toBeGreaterThan((pulled[0] ?? NaN) + 0.02);
    expect(pulled[2]).toBeGreaterThan((pulled[1] ?? NaN) + 0.005);
  });

  test("each pull tells the band without that one source", () => {
    const touch = skinEvidence({ source: "touch", saw: "wet", afterS: hour, coat: indexed });
    const weight = weighed(0.3, 1);
    const { pulls } = at([touch, weight]);
    expect(pulls.map(({ source }) => source)).toEqual(["touch", "target-mass"]);
    const alone = at([weight]);
    const { low, median, high, dryChance } = alone;
    expect(pulls[0]?.without).toEqual({ low, median, high, dryChance });
  });

  test("two that cannot both be true are told as a conflict, with numbers", () => {
    const { conflicts } = at([weighed(0.6, 1), weighed(0.1, 1.25)]);
    expect(conflicts.map(({ why }) => why)).toEqual(["apart", "apart"]);
    for (const { apart } of conflicts) expect(apart).toBeGreaterThan(2);
    expect(at([weighed(0.4, 1), weighed(0.32, 1.25)]).conflicts).toEqual([]);
  });

  test("a dry night's steady weight says dry, and a damp night's says nothing", () => {
    const steady = lossEvidence({
      first: { afterS: 2 * hour, massG: 1285.3 },
      second: { afterS: 3 * hour, massG: 1285.2 },
      waterG: 16,
      balanceG: 0.1,
    });
    expect(at([steady], 3).dryChance).toBeGreaterThan(0.97);
    const damp = intervals.map((one) => dryStep({ ...one, rh: 0.995 }, { filmWM2K: 15, pocketSM: 0 }));
    const still = factorCurves({ coat, steps: damp, timesS, spread: readySpread() });
    const said = waterPosterior({ curves: still, evidence: [steady], nowS: 3 * hour, readyShare });
    expect(Math.abs(said.dryChance - said.model.dryChance)).toBeLessThan(0.02);
  });

  test("evidence at a time the curves lack is a mistake of the caller", () => {
    expect(() => at([weighed(0.4, 1.2)])).toThrow(/4320 s/);
  });
});

test("of 500 coats whose weighings err as they say, the 80 % band holds the water left in four of five", () => {
  let seed = 11;
  const dice = () => (seed = (seed * 48_271) % 2_147_483_647) / 2_147_483_647;
  const bell = () => Math.sqrt(-2 * Math.log(dice())) * Math.cos(2 * Math.PI * dice());
  let held = 0;
  for (let i = 0; i < 500; i++) {
    const factor = Math.exp(0.4717 * bell());
    const evidence = [0.5, 1].map((afterH) => weighed(shareOf(factor, afterH) + 0.05 * bell(), afterH, 0.05));
    const { low, high } = at(evidence, 1.25);
    const share = shareOf(factor, 1.25);
    if (low <= share && share <= high) held++;
  }
  expect(held / 500).toBeGreaterThan(0.75);
  expect(held / 500).toBeLessThan(0.85);
});

const anyEvidence = fc.oneof(
  fc
    .record({
      share: fc.double({ min: 0, max: 1, noNaN: true }),
      quarter: fc.integer({ min: 0, max: 12 }),
      sd: fc.double({ min: 0.01, max: 0.2, noNaN: true }),
    })
    .map(({ share, quarter, sd }) => weighed(share, quarter / 4, sd)),
  fc
    .record({
      source: fc.constantFrom("touch" as const, "colour" as const),
      saw: fc.constantFrom("dry" as const, "damp" as const, "wet" as const),
      quarter: fc.integer({ min: 0, max: 12 }),
    })
    .map(({ source, saw, quarter }) =>
      skinEvidence({ source, saw, afterS: (quarter * hour) / 4, coat: indexed }),
    ),
);

describe("whatever was seen", () => {
  test("its order never matters", () =>
    fc.assert(
      fc.property(fc.array(anyEvidence, { maxLength: 5 }), (evidence) => {
        const one = at(evidence, 3);
        const other = at(evidence.toReversed(), 3);
        for (const key of ["low", "median", "high", "dryChance"] as const)
          expect(Math.abs(one[key] - other[key])).toBeLessThan(1e-9);
        expect(one.conflicts.length).toBe(other.conflicts.length);
      }),
      { numRuns: 150 },
    ));

  test("one more never widens the band unless a conflict says so", () =>
    fc.assert(
      fc.property(fc.array(anyEvidence, { maxLength: 4 }), anyEvidence, (evidence, more) => {
        const before = at(evidence, 3);
        const after = at([...evidence, more], 3);
        const widened = after.high - after.low - (before.high - before.low);
        const told = after.conflicts.find(({ widthWithout, widthWith }) => widthWith > widthWithout);
        if (widened > 0.005) expect(told).toBeDefined();
      }),
      { numRuns: 150 },
    ));

  test("the band is in order, within what the model can do", () =>
    fc.assert(
      fc.property(
        fc.array(anyEvidence, { maxLength: 4 }),
        fc.integer({ min: 0, max: 24 }),
        (evidence, quarter) => {
          const said = at(evidence, quarter / 4);
          expect(said.low).toBeGreaterThanOrEqual(0);
          expect(said.low).toBeLessThanOrEqual(said.median);
          expect(said.median).toBeLessThanOrEqual(said.high);
          expect(said.high).toBeLessThanOrEqual(1);
          expect(said.dryChance).toBeGreaterThanOrEqual(0);
          expect(said.dryChance).toBeLessThanOrEqual(1 + 1e-9);
        },
      ),
      { numRuns: 100 },
    ));
});
