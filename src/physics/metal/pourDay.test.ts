import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { PourTrack, StepDone } from "./pourDay.ts";
import { planPour } from "./pourDay.ts";

const noon = Date.UTC(2026, 10, 2, 12);
const minute = 60_000;
const at = (min: number) => noon + min * minute;
const kiln: PourTrack = {
  id: "kiln",
  steps: [{ id: "shell-preheated", durationMin: 120, maxHoldMin: null, holdAs: "keep-in-kiln" }],
};
const sand: PourTrack = {
  id: "sand",
  steps: [{ id: "sand-heated", durationMin: 40, maxHoldMin: 20, holdAs: "keep-sand-hot" }],
};
const metal: PourTrack = {
  id: "metal",
  steps: [
    { id: "crucible-warmed", durationMin: 10, maxHoldMin: 30, holdAs: "keep-hot", uses: ["furnace"] },
    { id: "metal-melted", durationMin: 30, maxHoldMin: 10, holdAs: "hold-metal-skim", uses: ["furnace"] },
    { id: "metal-skimmed", durationMin: 2, maxHoldMin: 3, holdAs: "hold-metal-skim", people: 1 },
  ],
};
const tracks = [kiln, sand, metal];
const live = (min: number, done: readonly StepDone[]) =>
  planPour({ pourAt: noon, tracks, done, now: at(min) });
const stepOf = (plan: ReturnType<typeof planPour>, track: string, step: string) =>
  plan.tracks.find(({ id }) => id === track)?.steps.find(({ id }) => id === step);
const started = (track: string, step: string, min: number): StepDone => ({ track, step, startedAt: at(min) });
const done = (track: string, step: string, min: number): StepDone => ({ track, step, doneAt: at(min) });

describe("a pour at noon, planned from its end", () => {
  const plan = planPour({ pourAt: noon, tracks, now: null });

  test("every track ends at noon, and the kiln is lit two hours before", () => {
    expect(plan.tracks.map(({ steps }) => steps.at(-1)?.endAt)).toEqual([noon, noon, noon]);
    expect(plan.startsAt).toBe(at(-120));
    expect(stepOf(plan, "metal", "crucible-warmed")).toMatchObject({ startAt: at(-42), endAt: at(-32) });
    expect(plan).toMatchObject({ movedMin: 0, lateTrack: null, advice: [], clashes: [] });
  });

  test("the sand may be heated 20 minutes sooner, the kiln whenever one likes", () => {
    expect(stepOf(plan, "sand", "sand-heated")?.earliestAt).toBe(at(-60));
    expect(stepOf(plan, "kiln", "shell-preheated")?.earliestAt).toBeNull();
    expect(stepOf(plan, "metal", "crucible-warmed")?.earliestAt).toBe(at(-42 - 3 - 10 - 30));
  });
});

describe("on the day", () => {
  const onTime = [
    started("kiln", "shell-preheated", -120),
    started("sand", "sand-heated", -40),
    done("metal", "crucible-warmed", -32),
  ];

  test("a late melt moves the pour, and the shell stays in the kiln", () => {
    // The melt was lit 15 minutes late; the sand and the kiln are ready at noon.
    const plan = live(-10, [...onTime, started("metal", "metal-melted", -17)]);
    expect(plan).toMatchObject({ pourAt: at(15), movedMin: 15, lateTrack: "metal" });
    expect(stepOf(plan, "metal", "metal-melted")).toMatchObject({
      state: "running",
      startAt: at(-17),
      endAt: at(13),
    });
    expect(stepOf(plan, "kiln", "shell-preheated")).toMatchObject({ state: "running", startAt: at(-120) });
    expect(plan.advice.map(({ track, kind, holdAs, minutes }) => [track, kind, holdAs, minutes])).toEqual([
      ["kiln", "hold", "keep-in-kiln", 15],
      ["sand", "hold", "keep-sand-hot", 15],
    ]);
  });

  test("sand that would wait longer than it keeps is to be heated again", () => {
    const plan = live(5, [...onTime, done("sand", "sand-heated", 0), started("metal", "metal-melted", 0)]);
    const [, advice] = plan.advice;
    expect(plan.pourAt).toBe(at(32));
    expect(advice).toMatchObject({
      track: "sand",
      kind: "again",
      minutes: 32,
      maxHoldMin: 20,
      startAt: at(5),
    });
  });

  test("sand that is being heated again is no longer ready", () => {
    const plan = live(10, [
      ...onTime,
      done("sand", "sand-heated", 0),
      started("sand", "sand-heated", 8),
      started("metal", "metal-melted", 0),
    ]);
    expect(stepOf(plan, "sand", "sand-heated")).toMatchObject({ state: "running", endAt: at(48) });
    expect(plan.pourAt).toBe(at(48));
  });

  test("a late kiln holds the metal, which is skimmed three minutes before", () => {
    const plan = live(-2, [
      started("kiln", "shell-preheated", -114),
      done("sand", "sand-heated", 0),
      done("metal", "crucible-warmed", -32),
      done("metal", "metal-melted", -2),
    ]);
    expect(plan).toMatchObject({ pourAt: at(6), lateTrack: "kiln" });
    const held = plan.advice.find(({ track }) => track === "metal");
    expect(held).toMatchObject({ kind: "hold", step: "metal-melted", minutes: 6, skimAt: at(1) });
    expect(stepOf(plan, "metal", "metal-skimmed")).toMatchObject({ state: "waiting", startAt: at(4) });
  });

  test("a step nobody began when it was due moves the pour by the clock", () => {
    expect(live(-30, onTime.slice(0, 2)).pourAt).toBe(at(12));
    expect(live(-20, onTime).pourAt).toBe(at(12));
  });

  test("a melt that takes longer than planned moves the pour minute by minute", () => {
    const melting = [...onTime, started("metal", "metal-melted", -32)];
    expect(live(-5, melting).pourAt).toBe(noon);
    expect(live(1, melting).pourAt).toBe(at(3));
    expect(live(9, melting).pourAt).toBe(at(11));
  });

  test("a step whose successor has begun counts as done, though nobody said so", () => {
    const plan = live(-20, [...onTime.slice(0, 2), started("metal", "metal-melted", -32)]);
    expect(stepOf(plan, "metal", "crucible-warmed")).toMatchObject({ state: "done", endAt: at(-32) });
  });

  test("two steps for one pair of hands, and two for one furnace, are told", () => {
    const skim: PourTrack = {
      id: "second",
      steps: [
        {
          id: "other-melted",
          durationMin: 20,
          maxHoldMin: 5,
          holdAs: "hold-metal-skim",
          people: 1,
          uses: ["furnace"],
        },
      ],
    };
    const plan = planPour({ pourAt: noon, tracks: [metal, skim], now: null });
    expect(
      plan.clashes.map(({ what, fromAt, untilAt }) => [
        what,
        (fromAt - noon) / minute,
        (untilAt - noon) / minute,
      ]),
    ).toEqual([
      ["people", -2, 0],
      ["furnace", -20, -2],
    ]);
    expect(planPour({ pourAt: noon, tracks: [metal, skim], now: null, people: 2 }).clashes).toHaveLength(1);
  });
});

describe("whatever happens", () => {
  const step = fc.record({
    durationMin: fc.integer({ min: 0, max: 90 }),
    maxHoldMin: fc.option(fc.integer({ min: 0, max: 60 })),
  });
  const track = fc.array(step, { minLength: 1, maxLength: 4 });
  const day = fc.record({
    tracks: fc.array(track, { minLength: 1, maxLength: 4 }).map((all) =>
      all.map((steps, t): PourTrack => ({
        id: `t${t}`,
        steps: steps.map((one, s) => ({ ...one, id: `s${s}`, holdAs: "stand-ready" })),
      })),
    ),
    nowMin: fc.integer({ min: -300, max: 60 }),
    told: fc.array(
      fc.record({
        t: fc.nat(3),
        s: fc.nat(3),
        startMin: fc.integer({ min: -300, max: 0 }),
        doneIn: fc.option(fc.integer({ min: 0, max: 100 }), { nil: undefined }),
      }),
      { maxLength: 4 },
    ),
  });
  const planOf = ({ tracks: all, nowMin, told }: Parameters<Parameters<typeof day.map>[0]>[0], moreMin = 0) =>
    planPour({
      pourAt: noon,
      tracks: all,
      now: at(nowMin + moreMin),
      done: told
        .filter(({ startMin }) => startMin <= nowMin)
        .map(({ t, s, startMin, doneIn }) => ({
          track: `t${t}`,
          step: `s${s}`,
          startedAt: at(startMin),
          doneAt: doneIn === undefined ? undefined : at(Math.min(nowMin, startMin + doneIn)),
        })),
    });

  test("no track is ready after the pour, and what has not begun begins neither in the past nor out of turn", () =>
    fc.assert(
      fc.property(day, (of) => {
        const plan = planOf(of);
        return plan.tracks.every(
          ({ steps, readyAt, slackMin }) =>
            readyAt <= plan.pourAt &&
            slackMin >= 0 &&
            (steps.at(-1)?.state !== "waiting" || steps.at(-1)?.endAt === plan.pourAt) &&
            steps.every(
              ({ state, startAt }, i) =>
                state !== "waiting" ||
                (startAt >= at(of.nowMin) - 1 && startAt >= (steps[i - 1]?.endAt ?? -Infinity) - 1),
            ),
        );
      }),
      { numRuns: 200 },
    ));

  test("waiting never brings the pour nearer, and it never moves before what was wanted", () =>
    fc.assert(
      fc.property(day, fc.integer({ min: 0, max: 60 }), (of, moreMin) => {
        const plan = planOf(of);
        return plan.pourAt >= noon && planOf(of, moreMin).pourAt >= plan.pourAt;
      }),
      { numRuns: 200 },
    ));

  test("every hold ends where the next thing begins, and 'again' is said just where it keeps too short", () =>
    fc.assert(
      fc.property(day, (of) =>
        planOf(of).advice.every(
          ({ kind, fromAt, untilAt, minutes, maxHoldMin }) =>
            Math.abs((untilAt - fromAt) / minute - minutes) < 1e-9 &&
            (kind === "again") === (maxHoldMin !== null && minutes > maxHoldMin),
        ),
      ),
      { numRuns: 200 },
    ));
});
