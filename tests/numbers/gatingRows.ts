import * as coreLift from "../../src/physics/shell/coreLift.ts";
import * as feedChain from "../../src/physics/metal/feedChain.ts";
import * as feeding from "../../src/physics/metal/feeding.ts";
import * as flow from "../../src/physics/metal/flow.ts";
import * as fluidity from "../../src/physics/metal/fluidity.ts";
import * as freezing from "../../src/physics/metal/freezing.ts";
import * as gating from "../../src/physics/metal/gating.ts";
import * as misrun from "../../src/physics/metal/misrun.ts";
import * as provenStrength from "../../src/physics/shell/provenStrength.ts";
import * as wall from "../../src/physics/shell/wall.ts";
import * as wallSupport from "../../src/physics/shell/wallSupport.ts";
import * as wallWays from "../../src/physics/shell/wallWays.ts";
import * as wallVerdict from "../../src/physics/shell/wallVerdict.ts";
import type { Rows } from "./numberRow.ts";
import { row } from "./numberRow.ts";

const mould = { conductivityWMK: 0.7, densityKgM3: 1800, heatJKgK: 1000 };
const run = {
  liquidKgM3: 7600,
  wallMm: 4,
  latentJKg: 200_000,
  liquidJKgK: 490,
  superheatK: 120,
  liquidusC: 980,
  shellC: 540,
  mould,
};
const front = { massKg: 6, fillS: 5, wayMm: 250, widthMm: 80, gateMS: 0.5 };
const part = { kind: "flat", widthMm: 60, lengthMm: 120 } as const;
const load = { pressurePa: 22_000, morMPa: 4, part, spreads: { strength: 2, wall: 1.25, head: 1.1 } };
const support = { ribEveryMm: 90, crownMm: 4, sand: "vibrated" } as const;
const solid = { kind: "bar", widthMm: 12, thicknessMm: 8, lengthMm: 60 } as const;

export const gatingRows: Rows = {
  feedChain: {
    feedChain: row(feedChain.feedChain, [
      {
        links: [
          { name: "body", role: "casting", solid },
          { name: "gate", role: "gate", solid: { kind: "cylinder", diameterMm: 14, heightMm: 30 } },
        ],
        law: { constantSMm2: 1.2, exponent: 2 },
        ratio: 1.1,
      },
    ]),
  },
  feeding: {
    riserModulusCheck: row(feeding.riserModulusCheck, [
      { castingModulusMm: 6, riserModulusMm: 8, ratio: 1.2 },
    ]),
    riserVolumeCheck: row(feeding.riserVolumeCheck, [
      { castingVolumeMm3: 350_000, riserVolumeMm3: 150_000, shrinkShare: 0.05, giveShare: 0.14 },
    ]),
    riserDiameterMm: row(feeding.riserDiameterMm, [{ modulusMm: 8, slender: 1.5 }]),
    atLeast: row(feeding.atLeast, [8, 7]),
  },
  flow: {
    spoutVelocityMS: row(flow.spoutVelocityMS, [
      { headM: 0.2, dischargeCoefficient: 0.8, entrySpeedMS: 0.1 },
    ]),
    fallForSpeedM: row(flow.fallForSpeedM, [0.5]),
    chokeAreaMm2: row(flow.chokeAreaMm2, [
      { massKg: 4, liquidKgM3: 7600, timeS: 4, headM: 0.2, dischargeCoefficient: 0.8 },
    ]),
    sectionForSpeedMm2: row(flow.sectionForSpeedMm2, [
      { massKg: 4, liquidKgM3: 7600, timeS: 4, speedMS: 0.5 },
    ]),
    roundMm: row(flow.roundMm, [113]),
    fillTimeS: row(flow.fillTimeS, [
      {
        by: "bottom-gate",
        cavityAreaMm2: 3000,
        cavityHeightM: 0.15,
        gateAreaMm2: 120,
        headM: 0.25,
        dischargeCoefficient: 0.8,
      },
    ]),
  },
  fluidity: {
    effusivity: row(fluidity.effusivity, [mould]),
    runTime: row(fluidity.runTime, [{ ...run, stopShare: 0.25, interfaceWM2K: 1000 }]),
    runTimeBandS: row(fluidity.runTimeBandS, [run]),
  },
  freezing: {
    modulusMm: row(freezing.modulusMm, [solid]),
    chvorinovConstant: row(freezing.chvorinovConstant, [
      {
        metalKgM3: 8500,
        latentJKg: 200_000,
        liquidJKgK: 490,
        superheatK: 120,
        freezeC: 920,
        mouldC: 20,
        mould,
      },
    ]),
    freezeTimeS: row(freezing.freezeTimeS, [{ constantSMm2: 1.2, modulusMm: 6, exponent: 2 }]),
  },
  gating: {
    effectiveHeadM: row(gating.effectiveHeadM, [
      { sprueHeightM: 0.25, at: { gate: "parting", cavityHeightM: 0.15, aboveGateM: 0.08 } },
    ]),
    sprueTaper: row(gating.sprueTaper, [{ topDepthM: 0.05, dropM: 0.25 }]),
    reynolds: row(gating.reynolds, [{ liquidKgM3: 7600, speedMS: 0.5, diameterMm: 12, viscosityPaS: 0.004 }]),
    criticalSpeedMS: row(gating.criticalSpeedMS, [{ tensionNM: 1.2, liquidKgM3: 7600 }]),
    tiltLimitDeg: row(gating.tiltLimitDeg, [{ lengthM: 0.2, speedMS: 0.5 }]),
    tiltSpeedMS: row(gating.tiltSpeedMS, [{ lengthM: 0.2, tiltDeg: 15 }]),
    ventAreaMm2: row(gating.ventAreaMm2, [113]),
    capillaryHeadMm: row(gating.capillaryHeadMm, [
      { tensionNM: 1.2, liquidKgM3: 7600, slotMm: 1, contactDeg: 150 },
    ]),
  },
  misrun: {
    misrunAdvice: row(misrun.misrunAdvice, [
      { run, front, leastFillS: 3, solidusC: 860, preheat: { lowC: 500, highC: 700 } },
    ]),
    frontIn: row(misrun.frontIn, [{ ...front, liquidKgM3: 7600, wallMm: 4 }]),
    fillWithinS: row(misrun.fillWithinS, [
      { massKg: 6, wayMm: 250, widthMm: 80, gateMS: 0.5, liquidKgM3: 7600, wallMm: 4 },
      4,
    ]),
  },
  wall: {
    headPressurePa: row(wall.headPressurePa, [{ densityKgM3: 7600, headM: 0.3 }]),
    flatFactor: row(wall.flatFactor, [1.7]),
    loadIndexMPa: row(wall.loadIndexMPa, [
      { pressurePa: 22_000, wallMm: 8, part: { kind: "round", diameterMm: 80 } },
    ]),
    strengthOverLoad: row(wall.strengthOverLoad, [{ pressurePa: 22_000, morMPa: 4, wallMm: 8, part }], {
      mayBeEndless: true,
    }),
    wallLoads: row(wall.wallLoads, [{ pressurePa: 22_000, wallMm: 8, part, support }]),
    coatsToAdd: row(wall.coatsToAdd, [{ requiredMm: 8, haveMm: 5, coatMm: 1.1 }]),
    coatBuildMm: row(wall.coatBuildMm, [{ coarseMm: 1, fineMm: 0.5, filmMm: 0.3 }]),
  },
  coreLift: {
    coreLiftN: row(coreLift.coreLiftN, [{ litre: 1, metalKgM3: 7800, coreKgM3: 1600 }]),
    pinYieldMPa: row(coreLift.pinYieldMPa, [1050]),
    pinHoldN: row(coreLift.pinHoldN, [{ pins: 6, pinMm: 3, seatMm: 10, yieldMPa: 7, coreMPa: 2 }]),
    neckHoldN: row(coreLift.neckHoldN, [{ mouthMm: 40, depthMm: 150, coreMPa: 2 }]),
    coreNeedsN: row(coreLift.coreNeedsN, [{ liftN: 61, spread: 2, least: 1.2 }]),
    mouthResistanceSM: row(coreLift.mouthResistanceSM, [{ litre: 0.5, mouthMm: 30, depthMm: 120 }]),
  },
  provenStrength: {
    provenStrength: row(provenStrength.provenStrength, [
      { likelyMPa: 4, spread: 2, within: 1.5, loadSpread: 1.5, held: [1.5, 2], broke: [3] },
    ]),
  },
  wallSupport: {
    heldFactor: row(wallSupport.heldFactor, [1.7]),
    sandShare: row(wallSupport.sandShare, [{ shortMm: 250, aspect: 1.4, wallMm: 8, least: 0.6 }]),
    crownRadiusMm: row(wallSupport.crownRadiusMm, [{ spanMm: 150, crownMm: 4 }]),
  },
  wallWays: {
    wallWays: row(wallWays.wallWays, [
      {
        ...load,
        wallMm: 3,
        limits: { carries: 1.2, marginal: 0.8, thin: 0.4 },
        floorMm: 4,
        coatMm: 1.1,
      },
      { headM: 0.3 },
    ]),
  },
  wallVerdict: {
    lnSdOf: row(wallVerdict.lnSdOf, [2]),
    toTenth: row(wallVerdict.toTenth, [7.66]),
    isBelow: row(wallVerdict.isBelow, [7.7, 8]),
    wallIndex: row(wallVerdict.wallIndex, [{ ...load, wallMm: 8 }], { mayBeEndless: true }),
    carries: row(
      wallVerdict.carries,
      [load, { likelyMm: 7.7, limits: { carries: 1.2, marginal: 0.8, thin: 0.4 } }],
      { unread: ["1.limits.marginal", "1.limits.thin"] },
    ),
    headNeeds: row(wallVerdict.headNeeds, [load, { least: 1.2 }]),
    wallVerdict: row(
      wallVerdict.wallVerdict,
      [
        {
          ...load,
          wallMm: 8,
          limits: { carries: 1.2, marginal: 0.8, thin: 0.4 },
          floorMm: 4,
          coatMm: 1.1,
        },
      ],
      { mayBeEndless: true },
    ),
  },
};
