import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import fc from "fast-check";
import { expect, test } from "vitest";
import { givenReady, meltStream, minute, pieceStream, pourStream } from "../../tests/givenPour.ts";
import type { Command } from "../logbook/log/command.ts";
import { decide } from "../logbook/log/decide.ts";
import type { Entry } from "../logbook/entries/entry.ts";
import { stepsOf } from "../logbook/pour/pourSteps.ts";
import { testShop } from "../../tests/logs/testLog.ts";
import { goStanding } from "./pourGo.ts";

const start = Date.UTC(2026, 4, 4, 6);
const steps = stepsOf({ kilnMin: 60, sandMin: 30, crucibleMin: 20, meltMin: 30 });
const plan = {
  name: "Gate finial",
  alloyId: "c87300",
  metalKg: 4,
  headM: 0.2,
  areaM2: 0.05,
  recipeId: "start-general",
  part: { kind: "round", diameterMm: 60 },
};

const pourPlan = fc.record({
  pourAt: fc.integer({ min: 0, max: 300 }).map((min) => start + min * minuteMs),
  shellC: fc.integer({ min: 400, max: 900 }),
  metalC: fc.integer({ min: 1093, max: 1177 }),
  runId: fc.constantFrom("r", undefined),
  meltId: fc.constantFrom("m", undefined),
  metalKg: fc.integer({ min: 1, max: 20 }),
});
/** Everything a person can plan, and nothing anyone measured. */
const planning = fc.oneof(
  pourPlan.map(({ metalKg, ...changes }) => ({
    stream: "pour/p",
    type: "pour-planned",
    body: {
      pieceIds: ["a"],
      bed: "air",
      steps,
      told: { family: "fused-silica", people: 2, carryMin: 1.5, metalKg, thinnestMm: [4] },
      ...changes,
    },
  })),
  fc.integer({ min: 400, max: 900 }).map((toC) => ({
    stream: "run/r",
    type: "run-changed",
    body: { segments: [{ kind: "ramp", toC, rateKPerH: 600 }] },
  })),
  fc.integer({ min: 1, max: 20 }).map((metalKg) => ({
    stream: "piece/a",
    type: "piece-changed",
    body: { changes: { metalKg } },
  })),
  fc.constant({ stream: "piece/a", type: "piece-moved", body: { roomId: "first" } }),
);

/** As a person would: planned once and put right from then on. */
function written(acts: readonly { readonly stream: string; readonly type: string; readonly body: object }[]) {
  const entries: Entry[] = [];
  let made = 0;
  const run = (command: object, now: number): void => {
    const { stream } = command as Command;
    const own = entries.filter((entry) => entry.stream === stream);
    const decision = decide(own, command as Command, {
      now,
      zone: "UTC",
      device: "d",
      newId: () => `e${String(++made).padStart(4, "0")}`,
    });
    if (decision.ok) entries.push(...decision.entries);
  };
  const log = (stream: string, type: string, body: object): void =>
    run({ do: "log", stream, type, body }, start);
  log("piece/a", "piece-started", { plan, roomId: "first" });
  log("run/r", "run-planned", {
    kilnId: null,
    purpose: "preheat",
    pieceIds: ["a"],
    startC: 20,
    segments: [{ kind: "hold", atC: 650, minutes: 60 }],
  });
  const items = [{ name: "ingot", massKg: 30, alloyId: "c87300" }];
  log("melt/m", "melt-planned", { furnaceId: null, alloyId: "c87300", pieceIds: ["a"], items, pourC: 1150 });
  for (const [place, { stream, type, body }] of acts.entries()) {
    const now = start + (place + 1) * minuteMs;
    const before = entries.findLast((entry) => entry.type === "pour-planned");
    if (type === "pour-planned" && before !== undefined)
      run({ do: "correct", stream, entryId: before.id, body, reason: "moved" }, now);
    else run({ do: "log", stream, type, body }, now);
  }
  return entries;
}

test("no planning ticks a line or opens a go, whatever is planned and whenever it is looked at", () => {
  fc.assert(
    fc.property(
      fc.tuple(pourPlan, fc.array(planning, { maxLength: 12 }), fc.integer({ min: 13, max: 400 })),
      ([first, acts, min]) => {
        const { metalKg: _, ...changes } = first;
        const body = { pieceIds: ["a"], bed: "air", steps, ...changes };
        const entries = written([{ stream: "pour/p", type: "pour-planned", body }, ...acts]);
        const standing = goStanding({ id: "p", entries, around: testShop([]) }, start + min * minuteMs);
        expect(standing).not.toBeNull();
        expect(standing!.known.lines.filter(({ state }) => state === "ok")).toEqual([]);
        expect(["none", "not-open"]).toContain(standing!.state);
      },
    ),
    { numRuns: 200 },
  );
});

const crackKind = fc.constantFrom("hairline" as const, "open" as const, "chip" as const, "lift" as const);
/** What can befall a shell between the go and the kiln's door. */
const befalls = fc.oneof(
  fc.record({
    type: fc.constant("crack-found"),
    body: fc.record({ kind: crackKind, stage: fc.constant("firing"), where: fc.constantFrom("cup", "foot") }),
  }),
  fc.record({
    type: fc.constant("shell-fired"),
    body: fc.record({ peakC: fc.integer({ min: 300, max: 900 }), holdMin: fc.integer({ min: 1, max: 90 }) }),
  }),
  fc.record({
    type: fc.constant("coat-dipped"),
    body: fc.constant({
      number: 10,
      step: null,
      kind: "seal",
      stuccoId: null,
      bucketId: null,
      roomId: "first",
      prewet: false,
    }),
  }),
  fc.record({
    type: fc.constant("piece-changed"),
    body: fc.record({ changes: fc.record({ headM: fc.constantFrom(0.3, 3, 20) }) }),
  }),
  fc.constant({ type: "weighed-nothing", body: {} }),
);

test("any stop warning that comes after a go lapses it then, and it stays lapsed", () => {
  let lapsed = 0;
  fc.assert(
    fc.property(fc.array(befalls, { minLength: 1, maxLength: 4 }), (acts) => {
      const day = givenReady();
      day.giveGo(210);
      day.tell(meltStream, 211, "melt-read", { metalC: 1150 });
      let from: number | null = null;
      for (const [place, { type, body }] of acts.entries()) {
        const min = 212 + place * 3;
        try {
          day.run({ do: "log", stream: pieceStream, type, body } as unknown as Command, min);
        } catch {
          // What the log refuses has not happened.
        }
        const { state, since, known } = day.go(min + 1);
        if (from === null && known.holds.length > 0) from = min;
        if (from !== null) {
          lapsed += 1;
          // The same act may take a tick's ground away earlier.
          expect(state).toBe("lapsed");
          expect(since).toBeLessThanOrEqual(minute(from));
        }
      }
      const standing = day.go(230);
      if (from === null && standing.state === "lapsed")
        expect(standing.lapsedBecause.every(({ kind }) => kind !== "stop-warning")).toBe(true);
    }),
    { numRuns: 25 },
  );
  expect(lapsed).toBeGreaterThan(15);
}, 30_000);

test("a go that nothing befell holds: only time takes it", () => {
  const day = givenReady();
  day.giveGo(210);
  for (const min of [225, 239]) {
    day.tell(meltStream, min, "melt-read", { metalC: 1150 });
    day.tell("run/r", min, "run-read", { kilnC: 650 });
  }
  day.tell(pourStream, 226, "pour-step-marked", { step: "all-stand-ready", state: "started" });
  for (let min = 210; min < 265; min += 5) expect(day.go(min).state).toBe("go");
});
