import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import truth from "../../../tests/truth/dryEvidence.json" with { type: "json" };
import { aitken, fitExponential } from "./approachFit.ts";
import { approachEvidence, judgeApproach } from "./approachVerdict.ts";
import { lossEvidence, steadyMass } from "./steadyMass.ts";
import { targetMass, targetMassEvidence, waterByMass } from "../slurry/targetMass.ts";

const { dryG, drainedG, stuccoedG, waterFraction } = truth.target;
const three = { dryG, drainedG, stuccoedG, waterFraction, balanceG: 0.1 };

describe("three weighings of one coat", () => {
  test("give the mass of the piece with the coat dry", () => {
    const target = targetMass(three);
    if (target.kind === "refused") throw new Error(target.code);
    expect(target.targetG).toBeCloseTo(truth.target.targetG, 2);
    expect(target.waterG).toBeCloseTo(truth.target.waterG, 9);
  });

  test.each(truth.target.dryness)("at $massG g the coat is $dryness dry", ({ massG, dryness }) => {
    expect(Math.abs((waterByMass({ ...three, massG })?.dryness ?? NaN) - dryness)).toBeLessThan(0.001);
  });

  test("a water fraction off by 0.02 moves the dryness by 7 %, and the error says so", () => {
    const at = (fraction: number) => waterByMass({ ...three, waterFraction: fraction, massG: 1287 });
    const moved = (at(0.26)?.dryness ?? NaN) / (at(0.28)?.dryness ?? NaN) - 1;
    expect(moved).toBeGreaterThan(0.07);
    expect(moved).toBeLessThan(0.08);
    expect((at(0.28)?.sdShare ?? NaN) / (at(0.28)?.dryness ?? NaN)).toBeCloseTo(0.0721, 3);
  });

  test("the error is what throwing dice on balance and fraction gives", () => {
    const massG = 1289;
    const said = waterByMass({ ...three, massG, balanceG: 0.5 });
    let seed = 7;
    const dice = () => (seed = (seed * 16_807) % 2_147_483_647) / 2_147_483_647;
    const bell = () => Math.sqrt(-2 * Math.log(dice())) * Math.cos(2 * Math.PI * dice());
    const draws = Array.from({ length: 4000 }, () => {
      const gain = drainedG + 0.5 * bell() - dryG - 0.5 * bell();
      const thrown = stuccoedG + 0.5 * bell() - massG - 0.5 * bell();
      return 1 - thrown / ((waterFraction + 0.02 * bell()) * gain);
    });
    const mean = draws.reduce((sum, x) => sum + x, 0) / draws.length;
    const sd = Math.sqrt(draws.reduce((sum, x) => sum + (x - mean) ** 2, 0) / draws.length);
    expect(Math.abs((said?.sdShare ?? NaN) / sd - 1)).toBeLessThan(0.06);
  });

  test("are refused with their numbers where no slurry stayed, stucco is missing, or the balance is too coarse", () => {
    expect(targetMass({ ...three, drainedG: 1179 })).toEqual({
      kind: "refused",
      code: "no-slurry",
      slurryG: -1,
    });
    expect(targetMass({ ...three, stuccoedG: 1230 })).toMatchObject({ code: "stucco-lost", stuccoG: -8 });
    const coarse = targetMass({ ...three, balanceG: 1 });
    expect(coarse).toMatchObject({ code: "balance-too-coarse", balanceG: 1 });
    expect(coarse).toHaveProperty("mostG", expect.closeTo(0.812, 3));
    expect(waterByMass({ ...three, balanceG: 1, massG: 1287 })).toBeNull();
    expect(() => targetMass({ ...three, waterFraction: 28 })).toThrow(/waterFraction.*28/);
  });

  test("a mass below the target says stucco was shed, and is no evidence", () => {
    expect(waterByMass({ ...three, massG: 1280 })?.strays).toBe("lighter-than-dry");
    expect(waterByMass({ ...three, massG: 1304 })?.strays).toBe("heavier-than-wet");
    expect(targetMassEvidence({ ...three, massG: 1280, afterS: 0 })).toBeNull();
    expect(targetMassEvidence({ ...three, massG: 1287, afterS: 60 })?.logLikelihood(0.107, 1)).toBeCloseTo(
      0,
      2,
    );
  });
});

describe("the exponential through weighings", () => {
  const { points } = truth.approach;

  test("three equal steps: Aitken's dry mass, and how much it magnifies the balance's error", () => {
    const [a, b, c] = truth.aitken.massG.map((massG, i) => ({ afterS: i * truth.aitken.everyS, massG }));
    if (!a || !b || !c) throw new Error("three weighings");
    const fit = aitken([a, b, c]);
    expect(fit?.dryG).toBeCloseTo(truth.aitken.dryG, 1);
    expect(fit?.noise).toBeCloseTo(truth.aitken.noise, 1);
    const scan = fitExponential({ weighings: [a, b, c], balanceG: 0.1 }).best;
    expect(Math.abs(scan.dryG - (fit?.dryG ?? NaN))).toBeLessThan(0.05);
    expect(aitken([a, b, { ...c, massG: 1200 }])).toBeNull();
    expect(aitken([a, b, { ...c, massG: 1222 }])).toBeNull();
  });

  test("five weighings: dry mass, time constant, misfit and dryness of the hand computation", () => {
    const { best } = fitExponential({ weighings: points, balanceG: 0.1 });
    expect(Math.abs(best.dryG - truth.approach.dryG)).toBeLessThan(0.1);
    expect(Math.abs(best.tauS / 60 - truth.approach.tauMin)).toBeLessThan(0.2);
    expect(Math.abs(best.amplitudeG - truth.approach.amplitudeG)).toBeLessThan(0.05);
    expect(best.misfitG2).toBeCloseTo(truth.approach.misfitG2, 4);
    const dryness = 1 - (1202.9 - best.dryG) / best.amplitudeG;
    expect(Math.abs(dryness - truth.approach.dryness)).toBeLessThan(0.005);
    expect(Math.abs((best.tauS / 60) * Math.log(20) - truth.approach.dry95Min)).toBeLessThan(1);
  });

  test.each(truth.approach.intervals)("a balance of $balanceG g leaves $lowG to $highG g", (row) => {
    const { interval } = fitExponential({ weighings: points, balanceG: row.balanceG });
    expect(Math.abs((interval?.lowG ?? NaN) - row.lowG)).toBeLessThan(0.1);
    expect(Math.abs((interval?.highG ?? NaN) - row.highG)).toBeLessThan(0.1);
  });

  test("finds any clean exponential again, wherever the weighings lie", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 200, noNaN: true }),
        fc.double({ min: 5, max: 60, noNaN: true }),
        fc.array(fc.integer({ min: 5, max: 60 }), { minLength: 3, maxLength: 7 }),
        (tauMin, amplitudeG, pauses) => {
          let atMin = 0;
          const weighings = [0, ...pauses].map((pause) => {
            atMin += pause;
            return { afterS: atMin * 60, massG: 1000 + amplitudeG * Math.exp(-atMin / tauMin) };
          });
          const { best } = fitExponential({ weighings, balanceG: 0.1 });
          expect(Math.abs(best.tauS / 60 / tauMin - 1)).toBeLessThan(0.004);
        },
      ),
      { numRuns: 60 },
    ));
});

describe("an approach judged", () => {
  const bias = truth.frontBias;
  const front = bias.waterGM2.map((gM2, i) => ({
    afterS: (bias.atMin[i] ?? 0) * 60,
    massG: 1000 + gM2 / 10,
  }));

  test.each(bias.aitken)("from weighing $from a receding front fools the formula to $dryGM2 g/m²", (row) => {
    const [a, b, c] = front.slice(row.from);
    if (!a || !b || !c) throw new Error("three weighings");
    expect(Math.abs(((aitken([a, b, c])?.dryG ?? NaN) - 1000) * 10 - row.dryGM2)).toBeLessThan(2.5);
  });

  test("the falsely dry early fit is refused: half the water must have gone", () => {
    const early = judgeApproach({ weighings: front.slice(0, 3), balanceG: 0.01, startG: 1020, waterG: 20 });
    expect(early).toMatchObject({ kind: "refused", code: "too-early", used: 1, least: 3 });
    expect(early).toHaveProperty("goneShare", expect.closeTo(0.67, 2));
  });

  test("the fits behind the front are refused too: their time constant outlasts the weighings", () => {
    for (const part of [front.slice(1, 5), front.slice(2, 5), front.slice(1)])
      expect(judgeApproach({ weighings: part, balanceG: 0.01, startG: 1020, waterG: 20 })).toMatchObject({
        kind: "refused",
        code: "too-slow",
      });
  });

  const exact = (minutes: readonly number[], { tauMin = 30, amplitudeG = 20 } = {}) =>
    minutes.map((at) => ({ afterS: at * 60, massG: 1000 + amplitudeG * Math.exp(-at / tauMin) }));

  test("a clean late approach gives the dry mass between its lowest estimate and the last weighing", () => {
    const weighings = exact([0, 30, 60, 90, 120]);
    const said = judgeApproach({ weighings, balanceG: 0.02, startG: 1020, waterG: 20 });
    if (said.kind === "refused") throw new Error(said.code);
    expect(said).toMatchObject({ method: "scan", used: 4 });
    expect(said.lowG).toBeLessThan(1000.01);
    expect(said.lowG).toBeGreaterThan(999.5);
    expect(said.highG).toBeCloseTo(1000 + 20 * Math.exp(-4), 9);
    expect(said.earlierG).toBeCloseTo(1000, 1);
    expect(said.laterG).toBeCloseTo(1000, 1);
    const evidence = approachEvidence(said, { afterS: 7200, balanceG: 0.02, waterG: 20 });
    expect(evidence?.logLikelihood(0.01, 1)).toBeGreaterThan((evidence?.logLikelihood(0.3, 1) ?? NaN) + 2);
  });

  test("three in equal steps go through Aitken's formula, whatever order they are given in", () => {
    const weighings = exact([30, 60, 90]);
    const judge = (list: typeof weighings) =>
      judgeApproach({ weighings: list, balanceG: 0.02, startG: 1020, waterG: 20 });
    expect(judge(weighings)).toMatchObject({ kind: "between", method: "three-points", earlierG: null });
    expect(judge(weighings.toReversed())).toEqual(judge(weighings));
  });

  test("every guard speaks with its numbers", () => {
    const judge = (weighings: readonly { afterS: number; massG: number }[], balanceG = 0.02) =>
      judgeApproach({ weighings, balanceG, startG: 1020, waterG: 20 });
    expect(judge(exact([30, 60]))).toEqual({ kind: "refused", code: "too-few", weighings: 2, least: 3 });
    expect(judge([0, 30, 60, 100].map((at) => ({ afterS: at * 60, massG: 1005 + at / 100 })))).toMatchObject({
      code: "gaining",
    });
    expect(judge([1008, 1006, 1003].map((massG, i) => ({ afterS: i * 1800, massG })))).toEqual({
      kind: "refused",
      code: "not-slowing",
      firstLossG: 2,
      secondLossG: 3,
    });
    expect(judge(exact([30, 40, 52, 55]))).toMatchObject({ code: "too-slow", durationS: 1500 });
    const vague = judge(exact([30, 60, 90, 120]), 1);
    expect(vague).toMatchObject({ code: "too-vague" });
    expect(vague).toHaveProperty("mostG", expect.closeTo(0.15 * 20 * Math.exp(-1), 1));
  });
});

describe("the same weight twice", () => {
  const at = (min: number, massG: number) => ({ afterS: min * 60, massG });
  const pair = { first: at(0, 1287), second: at(40, 1286.9), wetLossG: 0.4, rh: 0.5, scaleG: 0.1 };

  test("is dry where a wet shell would have lost three steps of the scale, and not where it would have lost less", () => {
    expect(steadyMass(pair)).toMatchObject({ kind: "steady" });
    expect(steadyMass({ ...pair, wetLossG: 0.3 })).toMatchObject({ kind: "steady" });
    expect(steadyMass({ ...pair, wetLossG: 0.29 })).toMatchObject({ code: "balance-too-coarse" });
    expect(steadyMass({ ...pair, scaleG: 1 })).toMatchObject({ code: "balance-too-coarse", balanceG: 1 });
  });

  test("one step apart is the same, two steps are unsure, three are a loss", () => {
    expect(steadyMass({ ...pair, second: at(40, 1287.1) })).toMatchObject({ kind: "steady" });
    expect(steadyMass({ ...pair, second: at(40, 1286.8) })).toMatchObject({ code: "unsure" });
    expect(steadyMass({ ...pair, second: at(40, 1286.7) })).toMatchObject({ kind: "losing" });
    expect(steadyMass({ ...pair, second: at(40, 1288) })).toMatchObject({ code: "gaining", lossG: -1 });
  });

  test("is nothing in air over 70 %, or under half an hour", () => {
    expect(steadyMass({ ...pair, rh: 0.7 })).toMatchObject({ kind: "steady" });
    expect(steadyMass({ ...pair, rh: 0.71 })).toEqual({
      kind: "refused",
      code: "air-too-damp",
      rh: 0.71,
      mostRh: 0.7,
    });
    expect(steadyMass({ ...pair, second: at(30, 1287) })).toMatchObject({ kind: "steady" });
    expect(steadyMass({ ...pair, second: at(29, 1287) })).toMatchObject({
      code: "too-soon",
      apartS: 29 * 60,
      leastS: 1800,
    });
  });

  test("a plain loss speaks from a coarse balance too", () => {
    expect(steadyMass({ ...pair, scaleG: 1, second: at(40, 1280) })).toMatchObject({ kind: "losing" });
  });

  test("as evidence it asks for just that loss", () => {
    const said = lossEvidence({ first: at(0, 1290), second: at(60, 1287), waterG: 16, balanceG: 0.1 });
    expect(said.sinceS).toBe(0);
    expect(said.logLikelihood(0.3, 0.3 + 3 / 16)).toBeCloseTo(0, 9);
    expect(said.logLikelihood(0, 0)).toBeLessThan(-10);
  });
});
