import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { foldPour } from "./foldPour.ts";
import type { Pour } from "../fire/fireStates.ts";
import { pourStanding, type Sensed } from "./pourStanding.ts";
import { dayTracks, stepsOf, trackOrder } from "./pourSteps.ts";
import { monday } from "../../../tests/logs/testLog.ts";
import { streamLog } from "../../../tests/logs/testStreamLog.ts";

const at = (minutes: number): number => monday + minutes * minuteMs;
const steps = stepsOf({ kilnMin: 150, sandMin: 60, crucibleMin: 20, meltMin: 30 });

/** A day whose metal is to move at minute 240. */
function planned() {
  const log = streamLog("pour/p");
  log.tell(
    "pour-planned",
    { pourAt: at(240), pieceIds: ["a"], bed: "hot-sand", shellC: 600, metalC: 1150, steps },
    at(0),
  );
  const pour = (): Pour => foldPour("p", log.entries())!;
  const stand = (now: number, sensed: readonly Sensed[] = []) =>
    pourStanding(pour(), { now: at(now), people: 2, sensed });
  return { log, pour, stand };
}
const endOf = (plan: ReturnType<ReturnType<typeof planned>["stand"]>["plan"], track: string): number =>
  plan.tracks.find(({ id }) => id === track)!.steps.at(-1)!.endAt;

describe("the tracks of a pour day", () => {
  test("shell, sand, metal, tools and people each end at the pour", () => {
    const { plan } = planned().stand(0);
    expect(plan.tracks.map(({ id }) => id)).toEqual(trackOrder);
    for (const { id } of plan.tracks) expect(endOf(plan, id)).toBe(at(240));
  });
  test("a shell that is hot already and no sand leave three tracks", () => {
    const few = dayTracks(stepsOf({ kilnMin: null, sandMin: null, crucibleMin: 20, meltMin: 30 }));
    expect(few.map(({ id }) => id)).toEqual(["metal", "tools", "people"]);
  });
  test("one pair of hands can lay out tools, dress, check and skim without a clash", () => {
    const log = planned();
    const { plan } = pourStanding(log.pour(), { now: at(0), people: 1, sensed: [] });
    expect(plan.clashes).toEqual([]);
  });
  test("each step is named once, as a mark names it alone", () => {
    fc.assert(
      fc.property(
        fc.record({
          kilnMin: fc.option(fc.nat(500)),
          sandMin: fc.option(fc.nat(100)),
          crucibleMin: fc.nat(60),
          meltMin: fc.nat(200),
        }),
        (minutes) => {
          const ids = stepsOf(minutes).map(({ id }) => id);
          expect(new Set(ids).size).toBe(ids.length);
          expect(dayTracks(stepsOf(minutes)).flatMap((track) => track.steps.map(({ id }) => id))).toEqual(
            ids,
          );
        },
      ),
      { numRuns: 50 },
    );
  });
});

describe("a track that is late", () => {
  const readyButMetal = () => {
    const day = planned();
    const { tell } = day.log;
    tell("pour-step-marked", { step: "shell-preheated", state: "started" }, at(60));
    tell("pour-step-marked", { step: "sand-heated", state: "started" }, at(170));
    tell("pour-step-marked", { step: "crucible-warmed", state: "started" }, at(188));
    tell("pour-step-marked", { step: "tools-heated", state: "started" }, at(200));
    tell("pour-step-marked", { step: "shell-preheated", state: "done" }, at(212));
    tell("pour-step-marked", { step: "metal-melted", state: "started" }, at(233));
    return day;
  };
  test("late metal moves the pour by what it is late, and the shell is kept in the kiln", () => {
    const { plan } = readyButMetal().stand(233);
    // 30 min of melting and 2 of skimming from minute 233.
    expect(plan.pourAt).toBe(at(265));
    expect(plan.movedMin).toBe(25);
    expect(plan.lateTrack).toBe("metal");
    const shell = plan.advice.find(({ track }) => track === "shell");
    expect(shell).toMatchObject({ kind: "hold", holdAs: "keep-in-kiln", untilAt: at(265) });
  });
  test("the people are planned again with it", () => {
    const { plan } = readyButMetal().stand(233);
    expect(endOf(plan, "people")).toBe(at(265));
  });
  test("what the melt's own readings say stands in for its planned minutes", () => {
    const day = readyButMetal();
    const slow: Sensed = { step: "metal-melted", startedAt: at(208), endsAt: at(260), doneAt: null };
    const { plan, sensed } = pourStanding(
      { ...day.pour(), marks: day.pour().marks.filter(({ step }) => step !== "metal-melted") },
      { now: at(230), people: 2, sensed: [slow] },
    );
    expect(plan.pourAt).toBe(at(262));
    expect([...sensed]).toEqual(["metal-melted"]);
  });
  test("a mark by hand wins over the melt's own log", () => {
    const day = planned();
    day.log.tell("pour-step-marked", { step: "metal-melted", state: "started" }, at(205));
    const slow: Sensed = { step: "metal-melted", startedAt: at(208), endsAt: at(300), doneAt: null };
    expect(day.stand(206, [slow]).sensed.size).toBe(0);
  });
  test("what was heard of a step the plan has not is left aside", () => {
    const stray: Sensed = { step: "another", startedAt: at(1), endsAt: at(999), doneAt: null };
    expect(planned().stand(10, [stray]).plan.pourAt).toBe(at(240));
  });
});

test("a plan is put right by a correction; a second plan is refused", () => {
  const { log, pour } = planned();
  const { id, at: _at, ...body } = pour().plan;
  const right = log.run(
    {
      do: "correct",
      stream: "pour/p",
      entryId: id,
      body: { ...body, pourAt: at(270) },
      reason: "moved 30 min",
    },
    at(100),
  );
  expect(right.ok).toBe(true);
  expect(pour().plan.pourAt).toBe(at(270));
  expect(log.refusal("pour-planned", body, at(120))?.code).toBe("already-started");
});
