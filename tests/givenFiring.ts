import type { BurningPattern } from "../src/physics/drying/burnAir.ts";
import type { FiringFor, FiringShell } from "../src/physics/heat/firingLimits.ts";
import type { FiringPlan } from "../src/physics/heat/firingSchedule.ts";
import { planFiring } from "../src/physics/heat/firingSchedule.ts";
import { plannedC, scheduleCurve } from "../src/physics/heat/firingSegments.ts";
import type { Kiln } from "../src/physics/heat/kilnPower.ts";
import type { KilnRun } from "../src/physics/heat/kilnRun.ts";

/** An invented kiln of a home workshop. */
export const kiln: Kiln = { powerKW: 3.6, maxC: 1200, volumeL: 60 };

export const silicaShell: FiringShell = {
  wallMm: 10,
  diffusivityM2S: 4.12e-7,
  modulusGPa: 5,
  expansionPerK: 1e-6,
  strengthMPa: 1,
  hasQuartz: false,
  bearsFlash: true,
};
export const aluminosilicateShell: FiringShell = {
  ...silicaShell,
  diffusivityM2S: 5.26e-7,
  modulusGPa: 8,
  expansionPerK: 5e-6,
  strengthMPa: 1.2,
  bearsFlash: false,
};

export const pla: BurningPattern = {
  massKg: 0.3,
  isWax: false,
  drainC: 260,
  burnFromC: 300,
  burnToC: 430,
  heatMJKg: 18,
  airKgKg: 5.76,
  finishC: 760,
  finishMin: 60,
};
export const wax: BurningPattern = {
  massKg: 0.5,
  isWax: true,
  drainC: 150,
  burnFromC: 230,
  burnToC: 430,
  heatMJKg: 43,
  airKgKg: 14.9,
  finishC: 700,
  finishMin: 45,
};

/** A dry printed piece of 300 g in 10 mm of fused silica, from cold to being looked at. */
export const burnout: FiringFor = {
  purpose: "burnout",
  route: "staged",
  pattern: pla,
  shell: silicaShell,
  shellKg: 3,
  damp: "dry",
  firedBefore: false,
  seenAbove1100: false,
  kiln,
  startC: 20,
  after: "inspect",
};

/** That piece's plan, or another's; throws where it is refused. */
export const plan = (of: Partial<FiringFor> = {}): FiringPlan => {
  const made = planFiring({ ...burnout, ...of });
  if (made.kind === "refused") throw new Error(`refused: ${made.code}`);
  return made;
};

export const runStart = Date.UTC(2026, 10, 2, 8);
/** Readings that lie on the plan, and every instruction ticked at its time. */
export const keeping = (made: FiringPlan, minutes: readonly number[]): KilnRun => {
  const curve = scheduleCurve(made.segments, 20);
  return {
    segments: made.segments,
    limits: made.limits,
    startC: 20,
    startedAt: runStart,
    readings: minutes.map((m) => ({
      at: runStart + m * 60_000,
      kilnC: plannedC(curve, { minute: m, startC: 20 }),
    })),
    ticked: made.segments.flatMap((part, segment) =>
      part.kind === "instruction"
        ? [{ segment, at: runStart + (curve[segment]?.startMin ?? 0) * 60_000 }]
        : [],
    ),
  };
};
