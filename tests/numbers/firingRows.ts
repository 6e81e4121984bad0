import * as bandMinutes from "../../src/physics/heat/bandMinutes.ts";
import * as burnAir from "../../src/physics/drying/burnAir.ts";
import * as checkSchedule from "../../src/physics/heat/checkSchedule.ts";
import * as firingLimits from "../../src/physics/heat/firingLimits.ts";
import * as firingRamps from "../../src/physics/heat/firingRamps.ts";
import * as firingSchedule from "../../src/physics/heat/firingSchedule.ts";
import * as firingSegments from "../../src/physics/heat/firingSegments.ts";
import * as kilnPower from "../../src/physics/heat/kilnPower.ts";
import * as kilnRun from "../../src/physics/heat/kilnRun.ts";
import * as runFindings from "../../src/physics/heat/runFindings.ts";
import * as runPosition from "../../src/physics/heat/runPosition.ts";
import type { Rows } from "./numberRow.ts";
import { row } from "./numberRow.ts";

const kiln = { powerKW: 6, maxC: 1250, volumeL: 90, maxRateKPerH: 400, liningKJPerK: 45 };
const pattern = {
  massKg: 0.6,
  isWax: false,
  drainC: 180,
  burnFromC: 300,
  burnToC: 450,
  heatMJKg: 18,
  airKgKg: 6,
  finishC: 730,
  finishMin: 60,
};
const asked: firingLimits.FiringFor = {
  purpose: "burnout",
  route: "staged",
  pattern,
  shell: {
    wallMm: 8,
    diffusivityM2S: 4e-7,
    modulusGPa: 3,
    expansionPerK: 1e-6,
    hotExpansionPerK: 8e-7,
    strengthMPa: 1.5,
    hasQuartz: true,
    bearsFlash: true,
  },
  shellKg: 4,
  damp: "damp",
  firedBefore: false,
  seenAbove1100: true,
  kiln,
  startC: 20,
  after: "pour",
  preheatC: 540,
  fireC: 870,
  blindMm: 20,
};
const limits = firingLimits.firingLimits(asked);
const segments: readonly firingSegments.Segment[] = [
  { kind: "ramp", toC: 110, rateKPerH: 100, reasons: [] },
  { kind: "hold", atC: 110, minutes: 70, reasons: [] },
  { kind: "instruction", code: "vents-open", minutes: 2, reasons: [] },
  { kind: "ramp", toC: 870, rateKPerH: 200, reasons: [] },
  { kind: "hold", atC: 870, minutes: 90, reasons: [] },
];
const curve = firingSegments.scheduleCurve(segments, 20);
const at = 1_790_000_000_000;
const readings = [0, 30, 60, 120].map((min, i) => ({ at: at + min * 60_000, kilnC: 20 + 60 * i }));
const ticked = [{ segment: 2, at: at + 100 * 60_000 }];
const start = { at, kilnC: 20 };
/** Figures of limits and plans that the question asked has no use for. */
const idle = (under: string): readonly string[] => [
  ...limits.rates.flatMap((_, i) => ["fromC", "toC", "rateKPerH"].map((key) => `${under}.rates.${i}.${key}`)),
  ...["fromC", "toC", "minutes"].flatMap((key) => [`${under}.steamHold.${key}`, `${under}.drain.${key}`]),
  ...["atLeastC", "minutes"].map((key) => `${under}.finish.${key}`),
  ...Object.keys(pattern).map((key) => `${under}.pattern.${key}`),
  ...Object.keys(kiln).map((key) => `${under}.kiln.${key}`),
  `${under}.loadKg`,
];
const but = (all: readonly string[], ...kept: readonly string[]): readonly string[] =>
  all.filter((place) => !kept.some((one) => place.endsWith(one)));
const held = segments.flatMap((part, i) => (part.kind === "hold" ? [`0.${i}.atC`] : []));

export const firingRows: Rows = {
  bandMinutes: {
    bandMinutes: row(bandMinutes.bandMinutes, [curve, { lowC: 100, highC: 800 }], {
      unread: curve.map((_, i) => `0.${i}.segment`),
    }),
  },
  burnAir: {
    heatLimitKW: row(burnAir.heatLimitKW, [90]),
    flashBurnS: row(burnAir.flashBurnS, [{ isWax: true }]),
    burnAir: row(burnAir.burnAir, [{ pattern, burnS: 3600, volumeL: 90 }], {
      unread: ["drainC", "burnFromC", "burnToC", "finishC", "finishMin"].map((key) => `0.pattern.${key}`),
    }),
    requireBurning: row(burnAir.requireBurning, [pattern]),
    burnRateKPerH: row(burnAir.burnRateKPerH, [{ pattern, volumeL: 90 }], {
      unread: ["drainC", "airKgKg", "finishC", "finishMin"].map((key) => `0.pattern.${key}`),
      mayBeEndless: true,
    }),
  },
  checkSchedule: {
    checkSchedule: row(checkSchedule.checkSchedule, [segments, { limits, startC: 20 }], {
      unread: [...held, "1.limits.pattern.drainC", "1.limits.pattern.finishC", "1.limits.pattern.finishMin"],
    }),
  },
  firingLimits: {
    soakMinutes: row(firingLimits.soakMinutes, [8]),
    firingLimits: row(firingLimits.firingLimits, [asked], { unread: ["0.preheatC"] }),
    fireGoalC: row(firingLimits.fireGoalC, [{ fireC: 870, pattern, kiln }], {
      unread: [
        ...Object.keys(pattern).map((key) => `0.pattern.${key}`),
        ...["powerKW", "volumeL", "maxRateKPerH", "liningKJPerK"].map((key) => `0.kiln.${key}`),
      ],
    }),
  },
  firingRamps: {
    speaksOn: row(
      firingRamps.speaksOn,
      [
        { code: "quartz", fromC: 523, toC: 623, way: "both", rateKPerH: 150 },
        { fromC: 400, toC: 700 },
      ],
      { unread: ["0.rateKPerH"] },
    ),
    rampsBetween: row(
      firingRamps.rampsBetween,
      [{ fromC: 110, toC: 870, limits, practiceKPerH: () => 300 }],
      {
        unread: but(idle("0.limits"), "powerKW", "maxC", "volumeL", "maxRateKPerH", "liningKJPerK", "loadKg"),
      },
    ),
  },
  firingSchedule: {
    planFiring: row(firingSchedule.planFiring, [asked]),
    burnSeconds: row(firingSchedule.burnSeconds, [segments, { limits, startC: 20 }], {
      unread: [...held, ...but(idle("1.limits"), "burnFromC", "burnToC", "massKg")],
    }),
  },
  firingSegments: {
    scheduleCurve: row(firingSegments.scheduleCurve, [segments, 20], { unread: held }),
    requireCurve: row(firingSegments.requireCurve, [curve]),
    plannedC: row(firingSegments.plannedC, [curve, { minute: 400, startC: 20 }]),
    secondsUp: row(firingSegments.secondsUp, [curve, { fromC: 300, toC: 900 }]),
  },
  kilnPower: {
    storeKJPerK: row(kilnPower.storeKJPerK, [{ kiln, loadKg: 4 }]),
    kilnLossKW: row(kilnPower.kilnLossKW, [kiln, 500]),
    kilnRateKPerH: row(kilnPower.kilnRateKPerH, [{ kiln, loadKg: 4, atC: 500 }]),
    kilnFallKPerH: row(kilnPower.kilnFallKPerH, [{ kiln, loadKg: 4, fromC: 500, toC: 200 }]),
    kilnEnergy: row(kilnPower.kilnEnergy, [{ segments, startC: 20, kiln, loadKg: 4, pricePerKWh: 0.3 }], {
      unread: held.map((place) => place.replace(/^0\./, "0.segments.")),
    }),
    requireKiln: row(kilnPower.requireKiln, [kiln]),
  },
  kilnRun: {
    judgeRun: row(
      kilnRun.judgeRun,
      [{ segments, limits, startC: 20, startedAt: at, readings, ticked }, at + 130 * 60_000],
      {
        unread: [...held.map((place) => place.replace(/^0\./, "0.segments.")), ...but(idle("0.limits"))],
      },
    ),
  },
  runFindings: {
    runFindings: row(runFindings.runFindings, [{ segments, limits, readings, ticked, start }], {
      unread: [
        ...segments.flatMap((_, i) =>
          ["toC", "atC", "rateKPerH", "minutes"].map((key) => `0.segments.${i}.${key}`),
        ),
        ...idle("0.limits"),
      ],
    }),
  },
  runPosition: {
    runPosition: row(runPosition.runPosition, [{ curve, startedAt: at, readings }], {
      unread: curve.map((_, i) => `0.curve.${i}.segment`),
    }),
    orderedReadings: row(runPosition.orderedReadings, [readings, at]),
  },
};
