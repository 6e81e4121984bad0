import * as calibration from "../../src/physics/evidence/calibration.ts";
import * as factorCurves from "../../src/physics/evidence/factorCurves.ts";
import * as gridBelief from "../../src/physics/evidence/gridBelief.ts";
import * as dryStep from "../../src/physics/drying/dryStep.ts";
import * as learnedBuild from "../../src/physics/evidence/learnedBuild.ts";
import * as nextWeighing from "../../src/physics/evidence/nextWeighing.ts";
import * as normal from "../../src/physics/stats/normal.ts";
import * as shopLearning from "../../src/physics/evidence/shopLearning.ts";
import * as trustedLearning from "../../src/physics/evidence/trustedLearning.ts";
import { aboutShare } from "../../src/physics/evidence/shareEvidence.ts";
import { readySpread } from "../../src/physics/stats/spread.ts";
import * as waterPosterior from "../../src/physics/evidence/waterPosterior.ts";
import type { Rows } from "./numberRow.ts";
import { row } from "./numberRow.ts";

const pairs = [
  { predictedS: 8280, wetAtS: 7200, dryAtS: 10_800, weight: 1 },
  { predictedS: 8280, wetAtS: 3600, dryAtS: 9000, weight: 0.3 },
];
const grouped = pairs.map((pair, i) => ({ ...pair, group: i === 0 ? "prime/fan" : "backup/still" }));
const prior = { mean: 0, variance: 0.16 };
const at = [-1, -0.5, 0, 0.5, 1];
const belief = gridBelief.beliefOf(at, [-2, -0.5, 0, -0.5, -2]);
const shop = shopLearning.learnShop(grouped);
const coat = { waterKgM2: 0.2, criticalKgM2: 0.12, depthM: 0.0035, dryFraction: 0.95 };
const steps = [
  dryStep.dryStep(
    { durationS: 14_400, tempC: 22, rh: 0.5, pressurePa: 101_325 },
    { filmWM2K: 15, pocketSM: 0 },
  ),
];
/** A grid small enough to change every figure of it. */
const curves = {
  lnFactors: at,
  logPrior: [-2, -0.5, 0, -0.5, -2],
  timesS: [3600, 7200],
  shares: [
    [0.1, 0.2, 0.3, 0.5, 0.6],
    [0, 0.05, 0.15, 0.3, 0.4],
  ],
};
const evidence = [
  {
    source: "target-mass" as const,
    weight: 1,
    afterS: 3600,
    sinceS: null,
    logLikelihood: aboutShare({ share: 0.3, sd: 0.05 }),
  },
];
const weighing = {
  kind: "backup",
  atMs: 1_790_000_000_000,
  areaM2: 0.2,
  dryG: 1180,
  drainedG: 1238,
  stuccoedG: 1301,
  waterFraction: 0.28,
};

export const beliefRows: Rows = {
  calibration: {
    lnPair: row(calibration.lnPair, [pairs[0] ?? grouped[0]!], { mayBeEndless: true }),
    logPairLikelihood: row(calibration.logPairLikelihood, [{ low: -0.2, high: 0.3, weight: 1 }, 0.1, 0.25]),
    learnedFrom: row(calibration.learnedFrom, [belief, { scatter: 0.25, pairs: 3 }]),
    heldWithin: row(calibration.heldWithin, [
      calibration.learnedFrom(belief, { scatter: 0.25, pairs: 3 }),
      { low: -0.1, high: 0.1, mostSd: 0.4 },
    ]),
    focusedBelief: row(calibration.focusedBelief, [(b: number) => -b * b, prior]),
  },
  factorCurves: {
    factorCurves: row(
      factorCurves.factorCurves,
      [{ coat, steps, timesS: [3600, 7200], spread: readySpread() }],
      {
        unread: ["0.steps.0.settlingKgM2S", "0.steps.0.parts.wetSurfaceC", "0.spread.early", "0.spread.late"],
      },
    ),
    sharesAt: row(factorCurves.sharesAt, [curves, 7200], {
      unread: ["0.lnFactors", "0.logPrior", "0.shares.0", "0.timesS.0"],
    }),
  },
  gridBelief: {
    beliefOf: row(gridBelief.beliefOf, [at, [-2, -0.5, 0, -0.5, -2]]),
    requireBelief: row(gridBelief.requireBelief, [belief]),
    momentsOf: row(gridBelief.momentsOf, [belief]),
    shareBelow: row(gridBelief.shareBelow, [belief, 0.2]),
    quantileOf: row(gridBelief.quantileOf, [belief, 0.5]),
    readAlong: row(gridBelief.readAlong, [at, [1, 2, 3, 4, 5], 0.2]),
  },
  learnedBuild: {
    learnCoatGains: row(learnedBuild.learnCoatGains, [[weighing, { ...weighing, drainedG: 1242 }]]),
    learnCoatMm: row(learnedBuild.learnCoatMm, [
      {
        readings: [{ wallMm: 6, coats: { prime: 2, backup: 4 } }],
        startMm: { prime: { mm: 0.6, sdMm: 0.2 }, backup: { mm: 1.1, sdMm: 0.3 } },
      },
    ]),
  },
  nextWeighing: {
    nextWeighing: row(
      nextWeighing.nextWeighing,
      [{ curves, belief, nowS: 1800, balanceShare: 0.02, fractionSd: 0.07 }],
      { unread: ["0.curves.lnFactors", "0.curves.logPrior"] },
    ),
  },
  normal: {
    logDensity: row(normal.logDensity, [0.5], { mayBeEndless: true }),
    logBelow: row(normal.logBelow, [0.5], { mayBeEndless: true }),
    logBetween: row(normal.logBetween, [-0.5, 0.5], { mayBeEndless: true }),
  },
  trustedLearning: {
    trustedLearning: row(trustedLearning.trustedLearning, [grouped]),
    doAgree: row(trustedLearning.doAgree, [pairs.map(calibration.lnPair)], {
      unread: ["0.0.weight", "0.1.weight"],
    }),
  },
  shopLearning: {
    learnShop: row(shopLearning.learnShop, [grouped]),
    factorOf: row(shopLearning.factorOf, [shop, "blind/still"]),
  },
  waterPosterior: {
    waterPosterior: row(waterPosterior.waterPosterior, [{ curves, evidence, nowS: 7200, readyShare: 0.03 }]),
    beliefAfter: row(waterPosterior.beliefAfter, [curves, evidence], {
      unread: ["0.timesS.1", "0.shares.1"],
    }),
  },
};
