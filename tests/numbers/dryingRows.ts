import * as approachFit from "../../src/physics/evidence/approachFit.ts";
import * as approachVerdict from "../../src/physics/evidence/approachVerdict.ts";
import * as bagEvidence from "../../src/physics/evidence/bagEvidence.ts";
import * as coat from "../../src/physics/drying/coat.ts";
import * as drying from "../../src/physics/drying/drying.ts";
import * as coatTrack from "../../src/physics/drying/coatTrack.ts";
import * as dryAlong from "../../src/physics/drying/dryAlong.ts";
import * as dryingAdvice from "../../src/physics/drying/dryingAdvice.ts";
import * as drynessIndex from "../../src/physics/drying/drynessIndex.ts";
import * as dryStep from "../../src/physics/drying/dryStep.ts";
import * as film from "../../src/physics/air/film.ts";
import * as lastFlux from "../../src/physics/drying/lastFlux.ts";
import * as front from "../../src/physics/drying/front.ts";
import * as resistanceEvidence from "../../src/physics/evidence/resistanceEvidence.ts";
import * as shareEvidence from "../../src/physics/evidence/shareEvidence.ts";
import * as skinEvidence from "../../src/physics/evidence/skinEvidence.ts";
import * as spread from "../../src/physics/stats/spread.ts";
import * as steadyMass from "../../src/physics/evidence/steadyMass.ts";
import * as surfaceEvidence from "../../src/physics/evidence/surfaceEvidence.ts";
import * as targetMass from "../../src/physics/slurry/targetMass.ts";
import type { DryingInterval } from "../../src/physics/drying/dryStep.ts";
import type { Rows } from "./numberRow.ts";
import { row } from "./numberRow.ts";

const backup = { waterKgM2: 0.2, criticalKgM2: 0.12, depthM: 0.0035, dryFraction: 0.95 };
const moving = { tempC: 22, rh: 0.5, pressurePa: 101_325, filmWM2K: 15 };
const placed = { ...moving, pocketSM: 300 };
const interval = { durationS: 7200, tempC: 22, rh: 0.5, pressurePa: 101_325 };
const intervals = [interval, { ...interval, tempC: 18, rh: 0.7, filmWM2K: 4, pocketSM: 10, surfaceC: 15 }];
const step = dryStep.dryStep(interval, { filmWM2K: 15, pocketSM: 0 });
const inAir = (history: readonly DryingInterval[]) =>
  dryAlong.stepsInRow(history.map((one) => dryStep.dryStep(one, { filmWM2K: 15, pocketSM: 0 })));
const underWay = coatTrack.startTrack(backup, { at: 0, spread: spread.readySpread() });
coatTrack.dryTrack(underWay, {
  to: 3_600_000,
  air: (_, visit) => inAir([{ ...interval, durationS: 3600 }])(visit),
});
const parts = film.resistances(moving);
const { criticalKgM2, depthM } = backup;
const indexed = { criticalShare: 0.6, depthM: 0.0035, readyShare: 0.03, pocketSM: 0 };
const three = [
  { afterS: 0, massG: 1250 },
  { afterS: 3600, massG: 1220 },
  { afterS: 7200, massG: 1208 },
] as const;
const weighings = [
  ...three,
  { afterS: 10_800, massG: 1203 },
  { afterS: 14_400, massG: 1201 },
  { afterS: 18_000, massG: 1200.2 },
];
const judged = approachVerdict.judgeApproach({ weighings, balanceG: 0.1, startG: 1260, waterG: 60 });
const [early, later] = [weighings[2], weighings[4]] as [(typeof weighings)[0], (typeof weighings)[0]];
const weighed = { dryG: 1180, drainedG: 1238, stuccoedG: 1301.5, waterFraction: 0.28, balanceG: 0.1 };
const reading = { method: "absolute", surfaceC: 19, sensorK: 0.5 } as const;

export const dryingRows: Rows = {
  approachFit: {
    aitken: row(approachFit.aitken, [three]),
    spanS: row(approachFit.spanS, [three], {
      unread: ["0.0.massG", "0.1.afterS", "0.1.massG", "0.2.massG"],
    }),
    fitExponential: row(approachFit.fitExponential, [{ weighings: three, balanceG: 0.1 }]),
  },
  approachVerdict: {
    judgeApproach: row(approachVerdict.judgeApproach, [
      { weighings, balanceG: 0.1, startG: 1260, waterG: 60 },
    ]),
    approachEvidence: row(approachVerdict.approachEvidence, [
      judged,
      { afterS: 9000, balanceG: 0.1, waterG: 60 },
    ]),
  },
  bagEvidence: {
    bagEvidence: row(bagEvidence.bagEvidence, [
      { bagRh: 0.9, roomRh: 0.5, baggedS: 1800, afterS: 7200, coat: indexed },
    ]),
  },
  coat: {
    requireCoat: row(coat.requireCoat, [backup]),
    readyWaterKgM2: row(coat.readyWaterKgM2, [backup], { unread: ["0.waterKgM2", "0.depthM"] }),
    coatDepthM: row(coat.coatDepthM, [{ coatMm: 1, beneathMm: 4 }]),
    carryOver: row(coat.carryOver, [{ leftKgM2: 0.05, newKgM2: 0.2, criticalShare: 0.6 }]),
  },
  coatTrack: {
    startTrack: row(coatTrack.startTrack, [backup, { at: 0, spread: spread.readySpread() }], {
      unread: ["1.spread.sigmaLn"],
    }),
    dryTrack: row(
      (from: { readonly to: number; readonly intervals: readonly DryingInterval[] }) => {
        const track = coatTrack.startTrack(backup, { at: 0, spread: spread.readySpread() });
        coatTrack.dryTrack(track, { to: from.to, air: (_, visit) => inAir(from.intervals)(visit) });
        return track;
      },
      [{ to: 14_400_000, intervals }],
    ),
    dosesOf: row(coatTrack.dosesOf, [underWay], {
      unread: [
        "0.coat.waterKgM2",
        "0.early",
        "0.late",
        "0.at",
        "0.points",
        ...["durationS", "deficitKgM3", "settlingKgM2S", "parts.wetSurfaceC"].map(
          (one) => `0.lastStep.${one}`,
        ),
      ],
    }),
    whyNotReady: row(coatTrack.whyNotReady, [underWay], {
      unread: ["0"],
    }),
  },
  dryAlong: {
    dryAlong: row(
      (of: typeof backup, course: dryAlong.DryCourse, history: readonly DryingInterval[]) => {
        const own = { ...course };
        dryAlong.dryAlong([own], { coat: of, air: inAir(history) });
        return own;
      },
      [backup, { factor: 1.2, waterKgM2: 0.2, readyAt: null, isFrozen: false }, intervals],
      { unread: ["0.waterKgM2"] },
    ),
    stepsInRow: row(
      (steps: readonly dryStep.DryStep[]) => {
        const starts: number[] = [];
        dryAlong.stepsInRow(steps)((_, startAt) => starts.push(startAt) > 0);
        return starts;
      },
      [[step, step]],
      {
        unread: ["0.0", "0.1"].flatMap((one) =>
          ["deficitKgM3", "settlingKgM2S", "parts"].map((part) => `${one}.${part}`),
        ),
      },
    ),
  },
  drying: {
    dryingHours: row(drying.dryingHours, [{ ...backup, ...placed }]),
  },
  dryingAdvice: {
    dryingAdvice: row(dryingAdvice.dryingAdvice, [
      {
        coat: backup,
        air: placed,
        airClasses: [{ id: "strong", filmWM2K: 25 }],
        factor: 1.1,
        isPrime: true,
        isWax: true,
      },
    ]),
  },
  drynessIndex: {
    drynessIndex: row(drynessIndex.drynessIndex, [{ ...moving, surfaceC: 19 }]),
    endIndex: row(drynessIndex.endIndex, [{ ...moving, depthM: 0.0035 }]),
  },
  dryStep: {
    dryStep: row(dryStep.dryStep, [intervals[1] ?? interval, { filmWM2K: 15, pocketSM: 0 }], {
      unread: ["1.filmWM2K", "1.pocketSM"],
    }),
    waterAfterStep: row(
      dryStep.waterAfterStep,
      [step, { coat: backup, waterKgM2: 0.1, resistanceFactor: 1.2 }],
      { unread: ["0.settlingKgM2S", "0.parts.wetSurfaceC", "1.coat.waterKgM2"] },
    ),
  },
  film: {
    resistances: row(film.resistances, [placed]),
    requireResistances: row(film.requireResistances, [parts], { unread: ["0.wetSurfaceC"] }),
    wetSurfaceC: row(film.wetSurfaceC, [moving]),
    evaporativeDropK: row(film.evaporativeDropK, [moving]),
    condensationKgM2S: row(film.condensationKgM2S, [{ ...placed, surfaceC: 8 }]),
  },
  front: {
    doseBetween: row(front.doseBetween, [{ fromKgM2: 0.2, toKgM2: 0.006 }, { criticalKgM2, depthM }, parts], {
      unread: ["2.wetSurfaceC"],
    }),
    waterAfterDose: row(
      front.waterAfterDose,
      [{ waterKgM2: 0.2, dose: 60, floorKgM2: 0 }, { criticalKgM2, depthM }, parts],
      { unread: ["2.wetSurfaceC"] },
    ),
  },
  resistanceEvidence: {
    resistanceEvidence: row(resistanceEvidence.resistanceEvidence, [
      { firstOhm: 2000, firstC: 20, ohm: 90_000, tempC: 22, afterS: 7200 },
    ]),
  },
  shareEvidence: {
    aboutShare: row(shareEvidence.aboutShare, [{ share: 0.2, sd: 0.05 }]),
    shareWithin: row(shareEvidence.shareWithin, [{ above: 0.1, below: 0.6, sd: 0.05, mistaken: 0.05 }]),
  },
  skinEvidence: {
    skinEvidence: row(
      skinEvidence.skinEvidence,
      [{ source: "touch", saw: "damp", afterS: 7200, coat: indexed }],
      { unread: ["0.coat.depthM", "0.coat.readyShare"] },
    ),
  },
  spread: {
    readySpread: row(spread.readySpread, [{ factor: 1.2, sigmaLn: 0.4, gapS: 9000 }]),
  },
  steadyMass: {
    steadyMass: row(steadyMass.steadyMass, [
      { first: early, second: later, wetLossG: 6, rh: 0.5, scaleG: 0.1 },
    ]),
    lossEvidence: row(steadyMass.lossEvidence, [
      { first: early, second: later, waterG: 60, balanceG: 0.1, waterSd: 0.15 },
    ]),
  },
  lastFlux: {
    lastFluxKgM2S: row(lastFlux.lastFluxKgM2S, [step, backup, { pocketSM: 300, factor: 1.2 }], {
      unread: [
        "0.durationS",
        "0.settlingKgM2S",
        "0.surfaceC",
        "0.parts.pocketSM",
        "0.parts.wetSurfaceC",
        "1.waterKgM2",
        "1.criticalKgM2",
      ],
    }),
    leastAreaM2: row(lastFlux.leastAreaM2, [1.2]),
  },
  surfaceEvidence: {
    missHeard: row(surfaceEvidence.missHeard, [-0.5, "wet"]),
    requireIndexed: row(surfaceEvidence.requireIndexed, [indexed]),
    indexedCoat: row(surfaceEvidence.indexedCoat, [backup, 300]),
    judgeSurface: row(surfaceEvidence.judgeSurface, [moving, reading, indexed]),
    indexAtShare: row(surfaceEvidence.indexAtShare, [moving, 0.2, indexed]),
    surfaceEvidence: row(
      surfaceEvidence.surfaceEvidence,
      [surfaceEvidence.judgeSurface(moving, reading, indexed), { air: moving, coat: indexed, afterS: 7200 }],
      { unread: ["0.endIndex", "0.dropK"] },
    ),
    indexEvidence: row(surfaceEvidence.indexEvidence, [
      { source: "surface", air: moving, coat: indexed, afterS: 7200 },
      (index: number) => -index,
    ]),
    waitAfterChangeS: row(surfaceEvidence.waitAfterChangeS, [{ halfM: 0.02, filmWM2K: 10 }]),
  },
  targetMass: {
    targetMass: row(targetMass.targetMass, [weighed]),
    waterByMass: row(targetMass.waterByMass, [{ ...weighed, massG: 1290 }]),
    targetMassEvidence: row(targetMass.targetMassEvidence, [
      { ...weighed, massG: 1287, afterS: 9000, before: { massG: 1292, afterS: 5000 } },
    ]),
  },
};
