import { streamOf } from "../../../logbook/entries/entry.ts";
import type { RunBasis, RunPurpose } from "../../../logbook/entries/fireBodies.ts";
import { firingForOf } from "../../../logbook/fire/runBasis.ts";
import { loggedSegments } from "../../../logbook/fire/runStanding.ts";
import { planFiring } from "../../../physics/heat/firingSchedule.ts";
import { plannedC, scheduleCurve, type Segment } from "../../../physics/heat/firingSegments.ts";
import { demoKilnId } from "./demoIds.ts";
import type { DemoLog } from "./demoLog.ts";
import { noise } from "./demoNumbers.ts";

export const demoBurnoutId = "demo-burnout";
export const demoPreheatId = "demo-preheat";
/** The hour the kiln of the dancer's burnout was switched on, before now. */
export const burnoutAgoH = 29;
export const preheatToC = 250;

const startC = 20;
const loggerEveryS = 600;

const dancer: RunBasis = {
  route: "staged",
  pattern: { material: "resin", massKg: 0.12 },
  wallMm: 7.5,
  family: "fused-silica",
  shellKg: 2.2,
  damp: "dry",
  firedBefore: false,
  seenAbove1100: false,
  blindMm: 0,
  kiln: { powerKW: 9, maxC: 1200, volumeL: 120 },
  after: "inspect",
  preheatC: null,
  fireC: null,
};
const fired: RunBasis = {
  ...dancer,
  pattern: null,
  firedBefore: true,
  after: "pour",
  preheatC: preheatToC,
};

function segmentsFor(purpose: RunPurpose, basis: RunBasis): readonly Segment[] {
  const asked = firingForOf(purpose, { basis, startC });
  const plan = asked && planFiring(asked);
  if (plan?.kind !== "plan") throw new RangeError(`demo ${purpose}: expected a plan, found a refusal`);
  return plan.segments;
}

type Burnt = {
  readonly runId: string;
  readonly pieceIds: readonly string[];
  readonly basis: RunBasis;
  /** When the kiln was switched on. */
  readonly agoH: number;
  readonly energyKWh: number;
};

const ofDancer: Burnt = {
  runId: demoBurnoutId,
  pieceIds: ["demo-dancer"],
  basis: dancer,
  agoH: burnoutAgoH,
  energyKWh: 58.4,
};
/** Shells of wax patterns, whose wax runs out through the floor. */
export const waxBasis = (patternKg: number, shellKg: number): RunBasis => ({
  ...dancer,
  pattern: { material: "wax", massKg: patternKg },
  waxLeaves: "floor",
  shellKg,
});

/** Burnout and firing as planned, read by a logger; the pieces' logs and the run's tell the same. */
export function burnout({ log, entries }: DemoLog, burnt: Burnt = ofDancer): void {
  const { runId, pieceIds, basis, agoH, energyKWh } = burnt;
  const segments = segmentsFor("burnout", basis);
  const curve = scheduleCurve(segments, startC);
  const minutes = curve.at(-1)?.endMin ?? 0;
  const agoAt = (minute: number): number => agoH - minute / 60;
  log("run", runId, "run-planned", agoH + 0.5, {
    kilnId: demoKilnId,
    purpose: "burnout",
    pieceIds,
    startC,
    segments: loggedSegments(segments),
    basis,
    note: "Demo: overnight, door shut until cold.",
  });
  log("run", runId, "run-started", agoH, { kilnC: startC });
  for (const id of pieceIds) log("piece", id, "burnout-started", agoH, { runId });
  const afterS = Array.from(
    { length: Math.floor((minutes * 60) / loggerEveryS) },
    (_, step) => (step + 1) * loggerEveryS,
  );
  // The log of a run holds its readings before its end, so the logger's file comes first.
  const first = afterS[0] ?? 0;
  log("run", runId, "run-logged", agoAt(first / 60), {
    source: "Demo: kiln logger",
    afterS: afterS.map((second) => second - first),
    kilnC: afterS.map((second) =>
      Math.round(plannedC(curve, { minute: second / 60, startC }) + noise(second / 3600)),
    ),
  });
  for (const [segment, part] of segments.entries())
    if (part.kind === "instruction")
      log("run", runId, "run-step-done", agoAt(curve[segment]?.startMin ?? 0), { segment });
  const endAgo = agoAt(minutes);
  log("run", runId, "run-ended", endAgo, { result: "done", energyKWh });
  for (const id of pieceIds) log("piece", id, "burnout-ended", endAgo, { result: "clean" });
  const peakC = Math.max(
    ...entries()
      .filter(({ stream }) => stream === streamOf("run", runId))
      .flatMap((entry) => (entry.type === "run-logged" ? entry.body.kilnC : [])),
  );
  const holdMin = segments.reduce((sum, part) => sum + (part.kind === "hold" ? part.minutes : 0), 0);
  for (const id of pieceIds) log("piece", id, "shell-fired", endAgo, { peakC, holdMin, runId });
}

/** The dancer's shell is to be warm for tomorrow's pour; minutes the plan takes. */
export function preheatPlan({ log }: DemoLog): number {
  const segments = segmentsFor("preheat", fired);
  log("run", demoPreheatId, "run-planned", 2, {
    kilnId: demoKilnId,
    purpose: "preheat",
    pieceIds: ["demo-dancer"],
    startC,
    segments: loggedSegments(segments),
    basis: fired,
  });
  return Math.ceil(scheduleCurve(segments, startC).at(-1)?.endMin ?? 0);
}
