import * as bucketHealth from "../../src/physics/slurry/bucketHealth.ts";
import * as bucketJudge from "../../src/physics/slurry/bucketJudge.ts";
import * as bucketMix from "../../src/physics/slurry/bucketMix.ts";
import * as controlChart from "../../src/physics/slurry/controlChart.ts";
import * as controlRules from "../../src/physics/slurry/controlRules.ts";
import * as correctionAdvice from "../../src/physics/slurry/correctionAdvice.ts";
import * as correctionPredicted from "../../src/physics/slurry/correctionPredicted.ts";
import * as cupReading from "../../src/physics/slurry/cupReading.ts";
import * as slurry from "../../src/physics/slurry/slurry.ts";
import * as sol from "../../src/physics/slurry/sol.ts";
import * as solids from "../../src/physics/slurry/solids.ts";
import * as stock from "../../src/physics/slurry/stock.ts";
import * as stockLedger from "../../src/physics/slurry/stockLedger.ts";
import * as thickness from "../../src/physics/shell/thickness.ts";
import * as cups from "../../src/physics/slurry/viscosityCups.ts";
import * as waterViscosity from "../../src/physics/slurry/waterViscosity.ts";
import * as weighedDensity from "../../src/physics/slurry/weighedDensity.ts";
import { bucketFacts, bucketLimits } from "./bucketCase.ts";
import type { Rows } from "./numberRow.ts";
import { row } from "./numberRow.ts";

const holds = { flourKg: 30, silicaKg: 6, waterKg: 13 };
const back = {
  now: { flourKg: 30, silicaKg: 6, waterKg: 12 },
  ratio: 1.6,
  startSilica: 0.3,
  addedSilica: 0.3,
};
const values = [20, 21, 19, 22, 20, 21, 20, 19, 21, 20, 22];
const asked: correctionAdvice.CorrectionCase = {
  cup: "zahn-4",
  seconds: 26,
  slurryC: 23,
  referenceC: 21,
  bandS: { lowS: 18, highS: 22 },
  densityGCm3: 1.74,
  target: { densityGCm3: 1.7, plusMinusGCm3: 0.01 },
  volumeL: 25,
  flourGCm3: 2.2,
  liquidGCm3: 1.2,
  composition: back,
  stirred: true,
};
const predicted = { densityGCm3: 1.7, newVolumeL: 26, secondsBand: { lowS: 18, likelyS: 20, highS: 22 } };
const pickup = { slurryKgM2: 0.6, stuccoKgM2: 0.9, buildMm: 1.1 };
const from = { flourVolumeFraction: 0.42, densityGCm3: 1.7 };
const line = { kind: "line", slope: 14.8, offsetS: 5 } as const;
const root = { kind: "root", slope: 1.37, drag: 200 } as const;

export const slurryRows: Rows = {
  bucketHealth: {
    bucketHealth: row(bucketHealth.bucketHealth, [bucketFacts, bucketLimits]),
    checksDue: row(
      bucketHealth.checksDue,
      [
        {
          daysSince: { seconds: 1, pH: 9 },
          everyDays: {
            temperature: 1,
            seconds: 1,
            density: 7,
            pH: 7,
            liquor: 14,
            gel: 30,
            plate: 7,
            bacteria: 30,
            look: 1,
          },
          polymer: false,
        },
      ],
      { unread: ["0.everyDays.bacteria"] },
    ),
  },
  bucketJudge: { judge: row(bucketJudge.judge, [bucketFacts, bucketLimits]) },
  bucketMix: {
    massKg: row(bucketMix.massKg, [holds]),
    mixed: row(bucketMix.mixed, [holds, holds]),
    solAs: row(bucketMix.solAs, [{ solKg: 20, silica: 0.3 }]),
    drawn: row(bucketMix.drawn, [holds, 2]),
    evaporated: row(bucketMix.evaporated, [holds, 0.5]),
    volumeOfL: row(bucketMix.volumeOfL, [holds, { flourGCm3: 2.2, waterGCm3: 1 }]),
    restore: row(bucketMix.restore, [back]),
  },
  controlChart: {
    individualsChart: row(controlChart.individualsChart, [
      values,
      { frozen: { centre: 20, sigma: 1 }, correctedBefore: [4] },
    ]),
  },
  controlRules: {
    requireIndexes: row(controlRules.requireIndexes, ["correctedBefore", [3]]),
    runSignals: row(controlRules.runSignals, [{ values, centre: 20, sigma: 1, correctedBefore: [4] }]),
  },
  correctionAdvice: {
    correctionAdvice: row(correctionAdvice.correctionAdvice, [asked], {
      unread: ["now.flourKg", "now.silicaKg", "now.waterKg", "ratio", "startSilica", "addedSilica"].map(
        (key) => `0.composition.${key}`,
      ),
    }),
  },
  correctionPredicted: {
    predictAfter: row(correctionPredicted.predictAfter, [
      {
        cup: "zahn-4",
        viscosityMm2S: 250,
        densityGCm3: 1.74,
        volumeL: 25,
        flourGCm3: 2.2,
        liquidGCm3: 1.2,
        target: { densityGCm3: 1.7 },
        added: { flourKg: 0, otherKg: 1, newVolumeL: 26 },
      },
    ]),
    predictionMet: row(
      correctionPredicted.predictionMet,
      [{ predicted, densityGCm3: 1.71, secondsThere: 21, plusMinusGCm3: 0.01 }],
      { unread: ["0.predicted.newVolumeL", "0.predicted.secondsBand.likelyS"] },
    ),
  },
  cupReading: {
    cupMean: row(cupReading.cupMean, [[20, 22, 20.5]]),
    steadiness: row(cupReading.steadiness, [[0, 1, 2].map((hours) => ({ hours, seconds: 20 + hours }))]),
  },
  slurry: {
    cupViscosityMm2S: row(slurry.cupViscosityMm2S, [{ cup: "zahn-4", seconds: 20 }]),
    cupSeconds: row(slurry.cupSeconds, [{ cup: "zahn-4", viscosityMm2S: 220 }]),
    solidsFromDensity: row(slurry.solidsFromDensity, [
      { densityGCm3: 1.7, flourGCm3: 2.65, liquidGCm3: 1.2, silicaInLiquid: 0.3, waterGCm3: 1 },
    ]),
    makeUpWaterL: row(slurry.makeUpWaterL, [
      { volumeL: 25, densityGCm3: 1.74, targetGCm3: 1.7, waterGCm3: 1 },
    ]),
    flourToLift: row(slurry.flourToLift, [
      { volumeL: 25, densityGCm3: 1.65, targetGCm3: 1.7, flourGCm3: 2.2 },
    ]),
    firstMix: row(slurry.firstMix, [
      { volumeL: 25, flourGCm3: 2.2, binderGCm3: 1.2, binderSilica: 0.3, ratio: 1.6 },
    ]),
  },
  sol: {
    solDensityGCm3: row(sol.solDensityGCm3, [{ silica: 0.3, waterGCm3: 1 }]),
    liquorSilica: row(sol.liquorSilica, [{ liquorGCm3: 1.2, waterGCm3: 1 }]),
    requireDensity: row(sol.requireDensity, ["densityGCm3", 1.7]),
    requireWater: row(sol.requireWater, [1]),
    requireVolume: row(sol.requireVolume, [25]),
  },
  solids: {
    solidsFromLiquid: row(solids.solidsFromLiquid, [
      { densityGCm3: 1.7, flourGCm3: 2.65, liquidGCm3: 1.2, silica: 0.3 },
    ]),
    solidsFromOven: row(solids.solidsFromOven, [
      { densityGCm3: 1.9, flourGCm3: 4.6, ovenSolids: 0.7, waterGCm3: 1 },
    ]),
  },
  stock: {
    grownAreaM2: row(stock.grownAreaM2, [{ areaM2: 0.2, wallMm: 6 }]),
    dragOutKg: row(stock.dragOutKg, [{ areaM2: 0.2, pickupKgM2: 0.6, pickupGCm3: 1.7, densityGCm3: 1.72 }]),
    platePickupKgM2: row(stock.platePickupKgM2, [{ gainedG: 12, areaCm2: 200 }]),
    pieceMaterial: row(stock.pieceMaterial, [
      { areaM2: 0.2, coats: [pickup, pickup], slurryLoss: 0.1, stuccoLoss: 0.3, grows: true },
    ]),
    pieceCost: row(stock.pieceCost, [
      {
        material: { slurryWithLossKg: 2, stuccoWithLossKg: 3 },
        flourShare: 0.6,
        prices: { flour: 1.2, sol: 3, stucco: 0.9 },
      },
    ]),
    piecesLeft: row(stock.piecesLeft, [{ volumeL: 25, leastVolumeL: 15, perPieceL: 1.5 }]),
    firstMakeLeft: row(stock.firstMakeLeft, [{ weeklyShare: 0.1, weeks: 6 }]),
    massCheck: row(stock.massCheck, [{ reckonedKg: 40, weighedKg: 38 }]),
  },
  stockLedger: {
    stockBalance: row(stockLedger.stockBalance, [
      [
        { kind: "received", kg: 25 },
        { kind: "made-up", kg: 5 },
        { kind: "counted", kg: 19 },
      ],
    ]),
    reorderPointKg: row(stockLedger.reorderPointKg, [
      { weeklyKg: 5, weeklySigmaKg: 2, leadWeeks: 2, z: 1.65 },
    ]),
    orderKg: row(stockLedger.orderKg, [
      { yearlyKg: 260, perOrder: 20, keepingPerKgYear: 0.2, shelfMonths: 12 },
    ]),
  },
  thickness: {
    relativeViscosity: row(thickness.relativeViscosity, [{ flourVolumeFraction: 0.42, closePacked: 0.62 }]),
    viscosityAfter: row(thickness.viscosityAfter, [
      { viscosityMm2S: 250, from, to: { flourVolumeFraction: 0.4, densityGCm3: 1.68 } },
    ]),
  },
  viscosityCups: {
    isCupId: row(cups.isCupId, ["zahn-4"]),
    cupIdOf: row(cups.cupIdOf, ["Zahn #4"]),
    lawMm2S: row(cups.lawMm2S, [line, 20]),
    lawSeconds: row(cups.lawSeconds, [root, 100]),
  },
  waterViscosity: {
    waterViscosityMPaS: row(waterViscosity.waterViscosityMPaS, [20]),
    secondsAtReference: row(waterViscosity.secondsAtReference, [
      { cup: "zahn-4", seconds: 20, slurryC: 24, referenceC: 21 },
    ]),
    viscosityAtMm2S: row(waterViscosity.viscosityAtMm2S, [
      { viscosityMm2S: 250, slurryC: 24, referenceC: 21 },
    ]),
  },
  weighedDensity: {
    weighedDensity: row(weighedDensity.weighedDensity, [
      { fullG: 270, emptyG: 100, volumeMl: 100, scaleG: 0.1, cupMl: 0.1, wantedGCm3: 0.003 },
    ]),
    airBubbleEffect: row(weighedDensity.airBubbleEffect, [
      { densityGCm3: 1.7, volumeL: 25, airFraction: 0.02 },
    ]),
  },
};
