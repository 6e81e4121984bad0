import { millisecondsInHour as hourMs, millisecondsInMinute as minuteMs } from "date-fns/constants";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { burnout, kiln, plan } from "../../../tests/givenFiring.ts";
import { plannedC, scheduleCurve } from "../../physics/heat/firingSegments.ts";
import { kilnEnergy } from "../../physics/heat/kilnPower.ts";
import type { RunBasis } from "../entries/fireBodies.ts";
import type { Run } from "./fireStates.ts";
import { foldRun } from "./foldRun.ts";
import { readSegments } from "./readSegments.ts";
import { peakAndHold } from "./runHeat.ts";
import { firingForOf, runLimits, startRefusal } from "./runBasis.ts";
import { loggedSegments, plannedSegments, runStanding, shiftedPlan, ticksOf } from "./runStanding.ts";
import { monday } from "../../../tests/logs/testLog.ts";
import { streamLog } from "../../../tests/logs/testStreamLog.ts";

const basis: RunBasis = {
  route: "staged",
  pattern: { material: "pla", massKg: 0.3 },
  wallMm: 10,
  family: "fused-silica",
  shellKg: 3,
  damp: "dry",
  firedBefore: false,
  seenAbove1100: false,
  blindMm: 0,
  kiln,
  after: "inspect",
  preheatC: null,
  fireC: null,
};

describe("what a plan was made for", () => {
  test("is written with it and gives the limits of the run, whatever is logged later", () => {
    const run = runOf(runLog());
    expect(run.plan.basis).toEqual(basis);
    const limits = runLimits(run.plan);
    const { rates, kiln: itsKiln, finish, drain } = plan().limits;
    expect(limits?.rates.map(({ code, toC }) => [code, toC])).toEqual(
      rates.map(({ code, toC }) => [code, toC]),
    );
    expect(limits).toMatchObject({ kiln: itsKiln, finish, drain, loadKg: basis.shellKg });
    const { basis: _, ...bare } = run.plan;
    expect(runLimits(bare)).toBeNull();
  });

  test("the first fire is held by the green strength; a plan made before it was asked keeps the limits it had", () => {
    const stressOf = (more: Partial<RunBasis>) =>
      runLimits({ ...runOf(runLog()).plan, basis: { ...basis, family: "aluminosilicate", ...more } })
        ?.rates[0]?.rateKPerH ?? NaN;
    // Measured: 1.4 MPa in bending without polymer, a quarter of it in tension; polymer 1.6 times. Before: 0.5 MPa.
    expect(stressOf({ greenShare: 1 }) / stressOf({})).toBeCloseTo(0.35 / 0.5, 9);
    expect(stressOf({ greenShare: 1.6 }) / stressOf({ greenShare: 1 })).toBeCloseTo(1.6, 9);
    const fired = { firedBefore: true };
    expect(stressOf({ ...fired, greenShare: 1 })).toBe(stressOf(fired));
  });

  test("figures no kiln could have are not logged, and where they stand in the log they tell no limits", () => {
    const log = streamLog("run/a");
    const of = (more: Partial<RunBasis>) => ({ ...planned([]), basis: { ...basis, ...more } });
    const cold = of({ kiln: { ...kiln, maxC: 90 } });
    expect(log.refusal("run-planned", cold, monday)).toMatchObject({ field: "maxC", found: 90 });
    expect(log.refusal("run-planned", of({ wallMm: 61 }), monday)).toMatchObject({ field: "wallMm" });
    expect(log.refusal("run-planned", of({ blindMm: 2001 }), monday)).toMatchObject({ field: "blindMm" });
    expect(log.refusal("run-planned", of({ wallMm: 60, blindMm: 2000 }), monday)).toBeNull();
    expect(runLimits({ ...cold, id: "p", at: monday })).toBeNull();
  });

  test("a kiln that is hotter at the start than the plan took it for speaks against starting", () => {
    const { plan: asPlanned } = runOf(runLog());
    expect(startRefusal(asPlanned, 20)).toBeNull();
    expect(startRefusal(asPlanned, 500)).toMatchObject({ code: "kiln-too-hot-for-staged", startC: 500 });
    const damp = { ...asPlanned, basis: { ...basis, damp: "damp" } } as const;
    expect(startRefusal(damp, 150)).toMatchObject({ code: "kiln-too-hot-for-damp" });
    const { basis: _, ...bare } = asPlanned;
    expect(startRefusal(bare, 500)).toBeNull();
  });

  test("a pattern nobody knows how it burns can't be planned", () => {
    const unknown = { ...basis, pattern: { material: "other", massKg: 1 } } as const;
    expect(firingForOf("burnout", { basis: unknown, startC: 20 })).toBeNull();
    expect(firingForOf("firing", { basis: { ...basis, pattern: null }, startC: 20 })?.purpose).toBe("fire");
  });
});

const planned = (segments: Run["segments"]): Omit<Run["plan"], "id" | "at"> => ({
  kilnId: "k",
  purpose: "burnout",
  pieceIds: ["heron"],
  startC: 20,
  segments,
  basis,
});

const runLog = () => {
  const log = streamLog("run/a");
  log.tell("run-planned", planned(loggedSegments(plan().segments)), monday);
  log.tell("run-started", { kilnC: null }, monday + hourMs);
  return log;
};
const runOf = (log: ReturnType<typeof runLog>): Run => {
  const run = foldRun("a", log.entries());
  if (run === null) throw new Error("no run");
  return run;
};

describe("a run beside its plan", () => {
  test("the plan comes back from the log place for place, with what binds each slope", () => {
    const made = plan().segments;
    const back = plannedSegments(loggedSegments(made));
    expect(back.map((part) => ({ ...part, reasons: part.reasons[0]?.code }))).toEqual(
      made.map((part) => ({
        ...part,
        reasons: part.kind === "instruction" ? undefined : part.reasons[0]?.code,
      })),
    );
    const odd = plannedSegments([
      { kind: "ramp", toC: 90, rateKPerH: 60 },
      { kind: "instruction", code: "turn-shelf", minutes: 5 },
    ]);
    expect(odd[1]).toEqual({ kind: "hold", atC: 90, minutes: 5, reasons: [] });
  });

  test("is null before the start and judged by the plan's own limits after it", () => {
    const log = streamLog("run/a");
    log.tell("run-planned", planned(loggedSegments(plan().segments)), monday);
    expect(runStanding(runOf(log), monday + hourMs)).toBeNull();
    const started = runLog();
    started.tell("run-read", { kilnC: 20 }, monday + hourMs);
    started.tell("run-read", { kilnC: 420 }, monday + 1.4 * hourMs);
    const at = monday + 1.5 * hourMs;
    expect(runStanding(runOf(started), at)?.judged.findings.map(({ code }) => code)).toEqual(
      expect.arrayContaining(["too-fast", "vents-unticked"]),
    );
  });

  test("a plan that does not say what it was made for is judged by its time alone", () => {
    const log = streamLog("run/a");
    log.tell("run-planned", { ...planned(loggedSegments(plan().segments)), basis: undefined }, monday);
    log.tell("run-started", { kilnC: 25 }, monday);
    log.tell("run-read", { kilnC: 900 }, monday + hourMs);
    const standing = runStanding(runOf(log), monday + hourMs);
    expect(standing?.judged.findings).toEqual([]);
    expect(standing?.run.startC).toBe(25);
  });

  test("a tick stays with its instruction when a changed plan has it elsewhere", () => {
    const log = runLog();
    const place = plan().segments.findIndex(
      (part) => part.kind === "instruction" && part.code === "cup-down",
    );
    log.tell("run-step-done", { segment: place }, monday + 1.1 * hourMs);
    const longer = [{ kind: "hold" as const, atC: 20, minutes: 9 }, ...loggedSegments(plan().segments)];
    log.tell("run-changed", { segments: longer }, monday + 1.2 * hourMs);
    const run = runOf(log);
    expect(ticksOf(run, plannedSegments(run.segments))).toEqual([
      { segment: place + 1, at: monday + 1.1 * hourMs },
    ]);
  });
});

describe("peak and hold", () => {
  const at = (minutes: number, kilnC: number) => ({ at: monday + minutes * minuteMs, kilnC });
  test("the hold is the time within 15 K of the top, the ways there and back by their share", () => {
    const readings = [at(0, 840), at(10, 870), at(40, 868), at(50, 838)];
    expect(peakAndHold(readings)?.peakC).toBe(870);
    // 855 is passed half-way up; 13 of 30 K on the way down are above it.
    expect(peakAndHold(readings)?.holdMin).toBeCloseTo(5 + 30 + 10 * (13 / 30), 6);
  });
  test("one reading has a peak and held for nothing known; none tells nothing", () => {
    expect(peakAndHold([at(0, 700)])).toEqual({ peakC: 700, holdMin: 0 });
    expect(peakAndHold([])).toBeNull();
  });
});

test("the energy of readings that kept the plan is the plan's own", () => {
  const { segments } = plan();
  const curve = scheduleCurve(segments, 20);
  const end = curve.at(-1)?.endMin ?? 0;
  const readings = Array.from({ length: 400 }, (_, i) => ({
    at: monday + (i / 399) * end * minuteMs,
    kilnC: plannedC(curve, { minute: (i / 399) * end, startC: 20 }),
  }));
  const asRead = readSegments(readings, { startedAt: monday, startC: 20 });
  const of = { startC: 20, kiln, loadKg: 3 };
  expect(kilnEnergy({ segments: asRead, ...of }).energyKWh).toBeCloseTo(
    kilnEnergy({ segments, ...of }).energyKWh,
    0,
  );
});

describe("a plan moved to where the run is", () => {
  const { segments } = plan();
  const curve = scheduleCurve(segments, 20);
  const end = curve.at(-1)?.endMin ?? 0;

  test("is there now, and the rest is as long as it was", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: end - 1, noNaN: true }),
        fc.double({ min: 1, max: 180, noNaN: true }),
        (planMin, lateMin) => {
          const elapsedMin = planMin + lateMin;
          const moved = shiftedPlan(segments, { startC: 20, planMin, elapsedMin });
          if (moved === null) return;
          const anew = scheduleCurve(moved, 20);
          const before = plannedC(curve, { minute: planMin, startC: 20 });
          expect(Math.abs(plannedC(anew, { minute: elapsedMin, startC: 20 }) - before)).toBeLessThan(1.5);
          // Whole kelvins at the cut: as much as half a kelvin at the slope there.
          expect(Math.abs((anew.at(-1)?.endMin ?? 0) - end - lateMin)).toBeLessThan(2);
        },
      ),
      { numRuns: 150 },
    );
  });

  test("a late ramp is drawn slower up to now and goes on as steep as planned", () => {
    const ramp = { kind: "ramp", toC: 500, rateKPerH: 240, reasons: [] } as const;
    expect(shiftedPlan([ramp], { startC: 20, planMin: 60, elapsedMin: 90 })).toEqual([
      { ...ramp, toC: 260, rateKPerH: 160 },
      ramp,
    ]);
  });

  test("a hold is made longer; a plan that is through, or a step that took no time, stays", () => {
    const hold = { kind: "hold", atC: 20, minutes: 30, reasons: [] } as const;
    expect(shiftedPlan([hold], { startC: 20, planMin: 10, elapsedMin: 25 })).toEqual([
      { ...hold, minutes: 45 },
    ]);
    expect(shiftedPlan([hold], { startC: 20, planMin: 30, elapsedMin: 60 })).toBeNull();
    expect(shiftedPlan([hold], { startC: 20, planMin: 10, elapsedMin: 0 })).toBeNull();
  });
});

test("the tests' own plan is the one these figures are planned for", () => {
  expect(firingForOf("burnout", { basis, startC: 20 })).toMatchObject({
    ...burnout,
    pattern: expect.any(Object),
    shell: expect.any(Object),
  });
});
