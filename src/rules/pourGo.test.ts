import { describe, expect, test } from "vitest";
import {
  givenPour,
  givenReady,
  meltStream,
  minute,
  pieceId,
  pieceStream,
  pourMin,
  pourStream,
  runStream,
  ticked,
  type GivenPour,
} from "../../tests/givenPour.ts";
import type { EntryBodies } from "../logbook/entries/entry.ts";
import { goHistory } from "./pourGo.ts";

const crack = (where: string): EntryBodies["crack-found"] => ({ kind: "open", stage: "firing", where });
const readAgain = (day: GivenPour, ...mins: readonly number[]): void => {
  for (const min of mins) {
    day.tell(runStream, min, "run-read", { kilnC: 650 });
    day.tell(meltStream, min, "melt-read", { metalC: 1150 });
  }
};
/** A go at minute 210 whose readings go on until past the pour. */
function given(): GivenPour {
  const day = givenReady();
  day.giveGo(210);
  readAgain(day, 225, 250, 265);
  return day;
}
const replan = (day: GivenPour, min: number, changes: Partial<EntryBodies["pour-planned"]>) => {
  const { id, at: _at, ...body } = day.go(min).known.pour.plan;
  const correct = { stream: pourStream, entryId: id, body: { ...body, ...changes }, reason: "moved" };
  return day.run({ do: "correct", ...correct }, min);
};

describe("when a go can be given", () => {
  test("every line is OK by what was measured and ticked, so it is open", () => {
    const { state, known } = givenReady().go(210);
    expect(known.lines.filter((line) => line.state !== "ok")).toEqual([]);
    expect(state).toBe("open");
  });
  test.each([
    [61, "not-open"],
    [60, "none"],
    [59, "none"],
    [-29, "none"],
    [-30, "not-open"],
    [-31, "not-open"],
  ])("%d min before the planned pour it is %s", (before, state) => {
    const standing = givenPour().go(pourMin - before);
    expect(standing.state).toBe(state);
    expect(standing.opensAt).toBe(minute(pourMin - 60));
    expect(standing.closesAt).toBe(minute(pourMin + 30));
  });
  test("one that was written down before it was open holds for nothing", () => {
    const early = givenReady();
    early.giveGo(179.9);
    expect(early.because(179.9)).toContain("too-early");
    const inTime = givenReady();
    inTime.giveGo(180);
    expect(inTime.because(180)).not.toContain("too-early");
  });
  test("before the pour is planned there is nothing to stand", () => {
    expect(() => givenPour().go(-1)).toThrow("never planned");
  });
});

describe("a go lapses", () => {
  test("it stands while nothing changes, and says until when", () => {
    const { state, since, holdsUntil, decided } = given().go(211);
    expect([state, since, decided?.name]).toEqual(["go", minute(210), "Ada"]);
    // The metal was last read at minute 208, so it wants a reading by 238.
    expect(holdsUntil).toBe(minute(238));
  });
  test("when a crack is logged on a piece of the pour, with its time and its entry", () => {
    const day = given();
    const found = day.tell(pieceStream, 222, "crack-found", crack("at the cup"));
    const { state, since, lapsedBecause } = day.go(223);
    expect([state, since]).toEqual(["lapsed", minute(222)]);
    expect(lapsedBecause).toMatchObject([
      { kind: "stop-warning", name: "Gate finial", finding: { rule: "open-crack", entries: [found] } },
    ]);
  });
  test("and stays lapsed when the crack is patched; only a new go counts, and history keeps both", () => {
    const day = given();
    const crackId = day.tell(pieceStream, 222, "crack-found", crack("at the cup"));
    day.tell(pieceStream, 224, "crack-patched", { crackId, how: "slurry and flour" });
    day.tell(pieceStream, 226, "shell-preheated", { shellC: 650 });
    expect(day.go(227).state).toBe("lapsed");
    day.tell(pourStream, 227, "pour-item-checked", { item: "shell-sound", ok: true });
    day.giveGo(228, "Ben");
    expect(day.because(229)).toEqual([]);
    expect(day.go(229)).toMatchObject({ state: "go", decided: { name: "Ben" } });
    expect(goHistory(day.log(), minute(229)).map(({ lapse }) => lapse?.at ?? null)).toEqual([
      minute(222),
      null,
    ]);
  });
  test("for a crack that happened before it and was written down after it", () => {
    const day = given();
    day.tell(pieceStream, 200, "crack-found", crack("at the cup"), 222);
    expect(day.go(221).state).toBe("go");
    expect(day.go(222)).toMatchObject({ state: "lapsed", since: minute(222) });
  });
  test("for a crack the giver's device had not heard of", () => {
    const day = givenReady();
    const found = day.tell(pieceStream, 206, "crack-found", crack("at the cup"));
    const bare = givenReady();
    const { bound } = (bare.giveGo(210), bare.go(210).decided!);
    day.tell(pourStream, 210, "pour-decided", { go: true, name: "Ada", passed: [], bound });
    expect(day.go(210).lapsedBecause).toMatchObject([
      { kind: "stop-warning", finding: { entries: [found] } },
    ]);
  });
  test.each([
    ["the pour time", { pourAt: minute(pourMin + 1) }, "pour-time"],
    ["the pieces", { pieceIds: [pieceId, "another"] }, "pieces"],
    ["the melt", { meltId: undefined }, "metal"],
    ["the metal heat", { metalC: 1140 }, "metal-heat"],
    ["the shell heat", { shellC: 640 }, "shell-heat"],
  ] as const)("when %s moves in the plan", (_, changes, part) => {
    const day = given();
    replan(day, 220, changes);
    expect(day.go(219).state).toBe("go");
    expect(day.go(220)).toMatchObject({ state: "lapsed", since: minute(220) });
    expect(day.because(220)).toContain(`plan-moved ${part}`);
  });
  test("not when only the length of a step was put right", () => {
    const day = given();
    replan(day, 220, { steps: [] });
    expect(day.go(221).state).toBe("go");
  });
  test("when the piece gets another alloy in its plan", () => {
    const day = givenReady({ meltId: undefined });
    day.giveGo(210);
    day.tell(pieceStream, 215, "piece-changed", { changes: { alloyId: "c90500" } });
    expect(day.because(216)).toContain("plan-moved metal");
  });
  test("when a tick is set to Not OK", () => {
    const day = given();
    day.tell(pourStream, 215, "pour-item-checked", { item: "path-clear", ok: false });
    expect(day.because(216)).toEqual(["line path-clear said-no"]);
  });
  test("when a tick is taken back", () => {
    const day = given();
    const tick = day.go(211).known.pour.checks.find(({ item }) => item === "second-person")!;
    day.run({ do: "strike", stream: pourStream, entryId: tick.id, reason: "by mistake" }, 215);
    expect(day.because(216)).toEqual(["tick-withdrawn second-person"]);
    expect(day.go(216).lapsedBecause).toMatchObject([{ entry: tick.id }]);
  });
  test("when a tick it rests on grows old", () => {
    const day = givenReady();
    day.tell(pourStream, 100, "pour-item-checked", { item: "no-water", ok: true }, 206);
    for (const { id } of day
      .go(210)
      .known.pour.checks.filter(({ item, at }) => item === "no-water" && at > minute(100)))
      day.run({ do: "strike", stream: pourStream, entryId: id, reason: "ticked twice" }, 209);
    day.giveGo(210);
    readAgain(day, 215);
    // Looked at at minute 100; two hours on it is to be looked at again.
    expect(day.go(219.9).state).toBe("go");
    expect(day.go(220)).toMatchObject({ state: "lapsed", since: minute(220) });
    expect(day.because(230)).toEqual(["line no-water not-looked-at,tick-old"]);
  });
  test("when the metal's last reading grows old, and not while it is read again in time", () => {
    const late = givenReady();
    late.giveGo(210);
    expect(late.go(237.9).state).toBe("go");
    expect(late.because(238)).toEqual(["line metal-heat metal-read-old"]);
    const kept = given();
    expect(kept.go(238).state).toBe("go");
  });
  test("when a reading is struck", () => {
    const day = given();
    const reading = day.log().entries.findLast(({ type, at }) => type === "melt-read" && at === minute(225))!;
    const first = day.log().entries.find(({ type, at }) => type === "melt-read" && at === minute(208))!;
    for (const { id } of [reading, first])
      day.run({ do: "strike", stream: meltStream, entryId: id, reason: "misread" }, 230);
    expect(day.because(231)).toEqual(["line metal-heat metal-not-read"]);
  });
  test.each([
    [59, "go"],
    [60, "lapsed"],
    [61, "lapsed"],
  ])("%d min after it was given it is %s", (after, state) => {
    const day = givenReady({ pourAt: minute(pourMin + 30) });
    day.giveGo(210);
    for (const item of ticked) day.tell(pourStream, 215, "pour-item-checked", { item, ok: true });
    readAgain(day, 225, 250);
    expect(day.go(210 + after).state).toBe(state);
    if (state === "lapsed") expect(day.because(210 + after)).toContain("too-long-ago");
  });
  test("half an hour past the planned pour with no shell out", () => {
    const day = givenReady();
    readAgain(day, 230, 250, 265);
    for (const item of ticked) day.tell(pourStream, 230, "pour-item-checked", { item, ok: true });
    day.giveGo(231);
    expect(day.go(pourMin + 29.9).state).toBe("go");
    expect(day.go(pourMin + 30)).toMatchObject({ state: "lapsed", since: minute(pourMin + 30) });
    expect(day.because(pourMin + 30)).toEqual(["pour-late"]);
  });
});

describe("what was passed with a reason", () => {
  test("a warning that was there and passed does not lapse it, another like it does", () => {
    const day = givenReady();
    day.tell(pieceStream, 206, "crack-found", crack("at the cup"));
    day.giveGo(210);
    expect(day.go(212).state).toBe("go");
    const second = day.tell(pieceStream, 213, "crack-found", crack("at the foot"));
    expect(day.go(214).lapsedBecause).toMatchObject([{ finding: { entries: [second] } }]);
  });
  test("a line that was passed as unknown may stay so, and may not turn out wrong", () => {
    const day = givenReady({}, { metalKg: undefined });
    day.giveGo(210);
    expect(day.go(211).state).toBe("go");
    day.tell(pieceStream, 215, "piece-changed", { changes: { metalKg: 9 } });
    expect(day.because(216)).toEqual(["line metal-enough metal-short"]);
  });
});

describe("an old log's go, without what it was given on", () => {
  const old = (min: number): GivenPour => {
    const day = givenPour();
    day.tell(pourStream, min, "pour-decided", { go: true, name: "Ada", passed: [] });
    return day;
  };
  test("stands by the state at its own time, though little was measured", () => {
    expect(old(185).go(200).state).toBe("go");
  });
  test("and lapses by what came later", () => {
    const day = old(185);
    day.tell(pieceStream, 200, "crack-found", crack("at the cup"));
    expect(day.because(201)).toEqual(["stop-warning open-crack"]);
    expect(old(185).because(245)).toEqual(["too-long-ago"]);
  });
});

describe("a no-go and a struck decision", () => {
  test("a no-go stands until the next decision", () => {
    const day = given();
    day.tell(pourStream, 220, "pour-decided", { go: false, name: "Ben", passed: [] });
    expect(day.go(221)).toMatchObject({ state: "no-go", since: minute(220), decided: { name: "Ben" } });
  });
  test("a go that was struck was never given", () => {
    const day = given();
    const { id } = day.go(211).decided!;
    day.run({ do: "strike", stream: pourStream, entryId: id, reason: "wrong pour" }, 215);
    expect(day.go(216)).toMatchObject({ state: "open", decided: null });
  });
});

describe("from the first shell out of the kiln on", () => {
  test("nothing lapses: no time, no crack, no moved plan", () => {
    const day = given();
    day.tell(pieceStream, 230, "shell-out-of-kiln", { shellC: null, pourId: "p" });
    day.tell(pieceStream, 232, "crack-found", crack("at the cup"));
    replan(day, 233, { pourAt: minute(pourMin + 5) });
    for (const min of [230, 234, 400])
      expect(day.go(min)).toMatchObject({ state: "under-way", since: minute(230), wasGo: true });
  });
  test("a shell taken out after it lapsed was taken out without a go", () => {
    const day = given();
    day.tell(pieceStream, 222, "crack-found", crack("at the cup"));
    day.tell(pieceStream, 230, "shell-out-of-kiln", { shellC: null, pourId: "p" });
    expect(day.go(231)).toMatchObject({ state: "under-way", wasGo: false });
  });
  test("metal that runs counts too, and a shell out for another pour does not", () => {
    const metal = given();
    metal.tell(pieceStream, 230, "pour-begun", { metalC: 1150, pourId: "p" });
    expect(metal.go(231).state).toBe("under-way");
    const other = given();
    other.tell(pieceStream, 230, "shell-out-of-kiln", { shellC: null, pourId: "q" });
    expect(other.go(231).state).toBe("go");
  });
  test("a first tap that was taken back leaves the go as it was, and time counts again", () => {
    const day = given();
    const out = day.tell(pieceStream, 230, "shell-out-of-kiln", { shellC: null, pourId: "p" });
    day.run({ do: "strike", stream: pieceStream, entryId: out, reason: "taken back" }, 231);
    expect(day.go(232).state).toBe("go");
    expect(day.go(270).state).toBe("lapsed");
  });
});
