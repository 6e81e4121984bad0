import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { monday } from "../../../tests/logs/testLog.ts";
import { streamLog } from "../../../tests/logs/testStreamLog.ts";
import type { RunBasis } from "../entries/fireBodies.ts";
import type { Run } from "./fireStates.ts";
import { foldRun } from "./foldRun.ts";
import { energyFilledIn, heatFilledIn, minutesWithin, peakAndHold, runEnergy, runHeat } from "./runHeat.ts";

const basis: RunBasis = {
  route: "staged",
  pattern: null,
  wallMm: 8,
  family: "fused-silica",
  shellKg: 3,
  damp: "dry",
  firedBefore: false,
  seenAbove1100: false,
  blindMm: 0,
  kiln: { powerKW: 3.6, maxC: 1200, volumeL: 60 },
  after: "inspect",
  preheatC: null,
  fireC: null,
};
const at = (minute: number): number => monday + minute * minuteMs;

type Given = {
  /** Minute and °C of each reading typed while it ran. */
  readonly read?: readonly (readonly [minute: number, kilnC: number])[];
  /** The same of a file read in after its end. */
  readonly late?: readonly (readonly [minute: number, kilnC: number])[];
  readonly energyKWh?: number;
};

/** A run of ten hours, read, ended, and its logger read in the day after. */
function runOf({ read = [], late = [], energyKWh }: Given): Run {
  const log = streamLog("run/r");
  const segments = [
    { kind: "ramp", toC: 870, rateKPerH: 200 },
    { kind: "hold", atC: 870, minutes: 60 },
  ] as const;
  const plan = { kilnId: null, purpose: "firing", pieceIds: ["p"], startC: 20, segments, basis } as const;
  log.tell("run-planned", plan, monday);
  log.tell("run-started", { kilnC: 20 }, monday);
  for (const [minute, kilnC] of read) log.tell("run-read", { kilnC }, at(minute));
  log.tell("run-ended", { result: "done", ...(energyKWh === undefined ? {} : { energyKWh }) }, at(600));
  const [first] = late;
  if (first !== undefined) {
    const body = {
      source: "kiln.csv",
      afterS: late.map(([minute]) => (minute - first[0]) * 60),
      kilnC: late.map(([, kilnC]) => kilnC),
    };
    const command = { do: "log", stream: "run/r", type: "run-logged", body, at: at(first[0]) } as const;
    const done = log.run(command, at(1500));
    if (!done.ok) throw new Error(JSON.stringify(done.refusal));
  }
  const run = foldRun("r", log.entries());
  if (run === null) throw new Error("no run");
  return run;
}

const typed = [
  [200, 600],
  [300, 845],
] as const;
const file = [
  [200, 610],
  [260, 868],
  [330, 871],
  [400, 500],
] as const;

describe("the hottest of a run", () => {
  test("is the hottest reading while nothing was given at its end", () => {
    expect(runHeat(runOf({ read: typed }), null)).toEqual(peakAndHold(runOf({ read: typed }).readings));
    expect(runHeat(runOf({ read: typed }), null)?.peakC).toBe(845);
    expect(runHeat(runOf({}), null)).toBeNull();
  });

  test("a figure typed at the end stands in the place of the readings of that time, hotter or colder", () => {
    for (const peakC of [870, 840])
      expect(runHeat(runOf({ read: typed }), { peakC, holdMin: 30 })).toEqual({ peakC, holdMin: 30 });
  });

  test("a file read in after the end takes the place of figures that were only filled in from readings", () => {
    const filled = heatFilledIn(runOf({ read: typed }).readings);
    const heat = runHeat(runOf({ read: typed, late: file }), filled);
    expect(heat?.peakC).toBe(871);
    // Above 856 °C: up to 868 °C, down to the typed 845 °C, up to 871 °C, down to 500 °C.
    const heldMin = (12 / 258) * 60 + (12 / 23) * 40 + (15 / 26) * 30 + (15 / 371) * 70;
    expect(heat?.holdMin).toBeCloseTo(heldMin, 6);
  });

  test("beside a typed figure the hotter one stands, and the hold is the file's where it was that hot", () => {
    const late = runOf({ read: typed, late: file });
    expect(runHeat(late, { peakC: 880, holdMin: 5 })?.peakC).toBe(880);
    const heldMin = (3 / 258) * 60 + (3 / 23) * 40 + (6 / 26) * 30 + (6 / 371) * 70;
    expect(runHeat(late, { peakC: 880, holdMin: 5 })?.holdMin).toBeCloseTo(heldMin, 6);
    expect(runHeat(late, { peakC: 860, holdMin: 5 })?.peakC).toBe(871);
    expect(runHeat(late, { peakC: 1000, holdMin: 5 })).toEqual({ peakC: 1000, holdMin: 5 });
  });

  test("property: it is never under a late reading, and never over all that was read and given", () => {
    const reading = fc.tuple(fc.integer({ min: 1, max: 599 }), fc.integer({ min: 0, max: 1200 }));
    const readings = fc.uniqueArray(reading, { selector: ([minute]) => minute, minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(readings, readings, fc.integer({ min: 100, max: 1200 }), (read, late, peakC) => {
        const ordered = (all: typeof read) => all.toSorted((a, b) => a[0] - b[0]);
        const run = runOf({ read: ordered(read), late: ordered(late) });
        const heat = runHeat(run, { peakC, holdMin: 10 });
        const lateC = Math.max(...late.map(([, kilnC]) => kilnC));
        expect(heat?.peakC).toBeGreaterThanOrEqual(lateC);
        expect(heat?.peakC).toBeLessThanOrEqual(Math.max(lateC, peakC, ...read.map(([, kilnC]) => kilnC)));
      }),
      { numRuns: 60 },
    );
  });
});

describe("its energy", () => {
  test("filled in from the readings it follows a late file; a meter's figure stands", () => {
    const before = runEnergy(runOf({ read: typed }));
    if (before === null) throw new Error("no energy");
    const filled = energyFilledIn(before.energyKWh);
    const after = runEnergy(runOf({ read: typed, late: file, energyKWh: filled }));
    expect(after?.basis).toBe("estimate");
    expect(after?.energyKWh).toBeGreaterThan(before.energyKWh + 1);
    expect(runEnergy(runOf({ read: typed, late: file, energyKWh: 31 }))).toEqual({
      energyKWh: 31,
      basis: "given",
    });
  });

  test("is not known without readings, and given without them", () => {
    expect(runEnergy(runOf({}))).toBeNull();
    expect(runEnergy(runOf({ energyKWh: 22 }))).toEqual({ energyKWh: 22, basis: "given" });
    expect(runEnergy(runOf({ late: file }))?.basis).toBe("estimate");
  });
});

test("only what was written down after the end is late; in an order of its own it makes no difference", () => {
  expect(runOf({ read: typed }).lateIds).toBeUndefined();
  expect(runOf({ read: typed, late: file }).lateIds).toHaveLength(1);
});

describe("minutes between two temperatures", () => {
  const line = [
    { at: at(0), kilnC: 100 },
    { at: at(60), kilnC: 200 },
    { at: at(90), kilnC: 200 },
    { at: at(150), kilnC: 100 },
  ];
  test("count a straight way by its share, and a level one whole", () => {
    expect(minutesWithin(line, { lowC: 150, highC: Infinity })).toBeCloseTo(30 + 30 + 30, 9);
    expect(minutesWithin(line, { lowC: 120, highC: 180 })).toBeCloseTo(36 + 36, 9);
    expect(minutesWithin(line, { lowC: 201, highC: 300 })).toBe(0);
  });

  test("property: parts of the scale add up to the whole time", () => {
    const readings = fc.array(
      fc.record({
        at: fc.integer({ min: 0, max: 1e7 }),
        kilnC: fc.double({ min: 0, max: 1200, noNaN: true }),
      }),
      { minLength: 2 },
    );
    fc.assert(
      fc.property(readings, fc.double({ min: 1, max: 1199, noNaN: true }), (all, cutC) => {
        const times = all.map((one) => one.at);
        const wholeMin = (Math.max(...times) - Math.min(...times)) / minuteMs;
        // A level stretch just at the cut belongs to both.
        fc.pre(all.every(({ kilnC }) => kilnC !== cutC));
        const sum =
          minutesWithin(all, { lowC: -Infinity, highC: cutC }) +
          minutesWithin(all, { lowC: cutC, highC: Infinity });
        expect(sum).toBeCloseTo(wholeMin, 6);
      }),
    );
  });
});
