import * as addition from "../../src/physics/slurry/addition.ts";
import * as castingMass from "../../src/physics/metal/castingMass.ts";
import * as chargeVerdict from "../../src/physics/metal/chargeVerdict.ts";
import * as crucible from "../../src/physics/metal/crucible.ts";
import * as furnace from "../../src/physics/heat/furnace.ts";
import * as melt from "../../src/physics/metal/melt.ts";
import * as patternVolume from "../../src/physics/metal/patternVolume.ts";
import * as printSolidity from "../../src/physics/shell/printSolidity.ts";
import * as scrap from "../../src/physics/metal/scrap.ts";
import * as shrinkScale from "../../src/physics/metal/shrinkScale.ts";
import type { Rows } from "./numberRow.ts";
import { row } from "./numberRow.ts";

const metal = { solidJKgK: 420, latentJKg: 200_000, liquidJKgK: 490 };
const share = { low: 0.9, likely: 0.95, high: 1 };
const charge = {
  items: [
    {
      name: "ingot",
      massKg: 5,
      contents: { cu: { low: 0.9, high: 0.96 }, si: { low: 0.03, high: 0.05 }, zn: { low: 0, high: 0.02 } },
      isBerylliumSuspect: false,
    },
    {
      name: "returns",
      massKg: 2,
      contents: { cu: { low: 0.94, high: 0.96 }, si: { low: 0.04, high: 0.06 } },
      isBerylliumSuspect: false,
    },
  ],
  recovery: { zn: share },
};
const ready = scrap.readyCharge(charge);
const readied = ready.ok ? ready : { ok: true as const, items: [], recovery: {} };
const found = { route: "mesh", volumeCm3: 350, errorShare: 0.02 } as const;
const print = { volumeCm3: 350, areaCm2: 400, wallMm: 1.2, infillShare: 0.1 };
const asked = {
  castingKg: 3,
  gatingKg: 0.8,
  marginShare: 0.1,
  leastMarginKg: 0.2,
  heelKg: 0.1,
  lossShare: 0.03,
};
const weighed = { inKg: 6, outKg: 5.8 };

export const metalRows: Rows = {
  addition: {
    diluteKg: row(addition.diluteKg, [{ meltKg: 10, share: 0.06, targetShare: 0.04, diluentShare: 0 }]),
    correctMelt: row(addition.correctMelt, [
      {
        meltKg: 10,
        shares: { si: 0.03, zn: 0.01 },
        targets: { si: 0.04, zn: 0.02 },
        additives: [
          { name: "silicon", shares: { si: 0.98 }, recovery: { si: 0.95 } },
          { name: "zinc", shares: { zn: 1 }, recovery: { zn: 0.9 } },
        ],
      },
    ]),
  },
  castingMass: {
    chooseVolume: row(castingMass.chooseVolume, [[found, { ...found, route: "slicer", volumeCm3: 380 }]]),
    castingMassKg: row(castingMass.castingMassKg, [{ volumeCm3: 350, metalKgM3: 8500 }]),
    castingMassBandKg: row(castingMass.castingMassBandKg, [{ found, metalKgM3: 8500 }]),
    metalPatternRatio: row(castingMass.metalPatternRatio, [{ metalKgM3: 8500, patternKgM3: 960 }]),
  },
  chargeVerdict: {
    judgeShare: row(chargeVerdict.judgeShare, [
      { low: 0.03, likely: 0.04, high: 0.05 },
      { of: ["si"], min: 0.02, max: 0.06 },
    ]),
    judgeCharge: row(chargeVerdict.judgeCharge, [
      { ...charge, limits: [{ of: ["si"], min: 0.02, max: 0.06 }] },
    ]),
  },
  crucible: {
    meltMl: row(crucible.meltMl, [{ meltKg: 5, liquidKgM3: 7600 }]),
    brimNeededMl: row(crucible.brimNeededMl, [{ meltKg: 5, liquidKgM3: 7600, fillShare: 0.75 }]),
    crucibleFill: row(crucible.crucibleFill, [{ meltKg: 5, liquidKgM3: 7600, brimMl: 950, fillShare: 0.75 }]),
    brimBySandMl: row(crucible.brimBySandMl, [{ sandG: 1500, bulkKgM3: 1600 }]),
    brimByNumberMl: row(crucible.brimByNumberMl, [6]),
  },
  furnace: {
    learnFurnace: row(furnace.learnFurnace, [[{ energyJ: 3.5e6, timeS: 1500, isHotStart: true }]]),
    learnLoss: row(furnace.learnLoss, [[weighed, weighed]]),
  },
  melt: {
    meltEnergyJ: row(melt.meltEnergyJ, [{ massKg: 5, fromC: 20, pourC: 1100, liquidusC: 980, ...metal }]),
    freezingHeatJKg: row(melt.freezingHeatJKg, [{ latentJKg: 200_000, liquidJKgK: 490, superheatK: 100 }]),
    meltPowerW: row(melt.meltPowerW, [{ energyJ: 3.5e6, timeS: 1500 }]),
    meltTimeS: row(melt.meltTimeS, [{ energyJ: 3.5e6, usefulW: 3000, holdS: 420 }]),
    fuelKg: row(melt.fuelKg, [{ energyJ: 3.5e6, efficiency: 0.15, heatingJKg: 4.6e7 }]),
    burnerW: row(melt.burnerW, [{ fuelKgH: 2, heatingJKg: 4.6e7 }]),
    shownEfficiency: row(melt.shownEfficiency, [{ energyJ: 3.5e6, spentJ: 2e7 }]),
    chargeParts: row(melt.chargeParts, [asked]),
  },
  patternVolume: {
    patternVolume: row(patternVolume.patternVolume, [
      { route: "hydrostatic", airG: 330, submergedG: 90, sinkerSubmergedG: 110, isSealed: true },
    ]),
  },
  printSolidity: {
    printedPolymerCm3: row(printSolidity.printedPolymerCm3, [print]),
    effectiveSolidity: row(printSolidity.effectiveSolidity, [print]),
    printedMassG: row(printSolidity.printedMassG, [{ ...print, densityKgM3: 1240 }]),
    hollowMetalCm3: row(printSolidity.hollowMetalCm3, [
      { volumeCm3: 350, areaCm2: 400, wallMm: 3, isVented: false },
    ]),
  },
  scrap: {
    readyCharge: row(scrap.readyCharge, [charge]),
    mixCharge: row(scrap.mixCharge, [charge]),
    shareOfSet: row(scrap.shareOfSet, [readied, ["si"]]),
  },
  shrinkScale: {
    patternScale: row(shrinkScale.patternScale, [{ shrinkShare: 0.015, convention: "contraction" }]),
    volumeScale: row(shrinkScale.volumeScale, [1.015]),
    chainedScale: row(shrinkScale.chainedScale, [[1.01, 1.015]]),
    learnShrink: row(shrinkScale.learnShrink, [
      [101, 102, 101.5].map((patternMm) => ({ patternMm, castingMm: 100 })),
    ]),
  },
};
