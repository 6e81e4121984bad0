import { describe, expect, test } from "vitest";
import {
  givenPour,
  givenReady,
  meltStream,
  minute,
  pieceStream,
  pourStream,
  runStream,
  type GivenPour,
} from "../../tests/givenPour.ts";
import { lineAgeMin } from "../logbook/pour/pourSheetAges.ts";
import { sheetLines, sheetVerdict } from "../logbook/pour/pourSheet.ts";

/** State and reasons of a line, as "to-check heat-not-read". */
const said = (day: GivenPour, id: string, min: number): string => {
  const line = day.line(id, min);
  return line === undefined ? "no line" : [line.state, ...line.why.map(({ code }) => code)].join(" ");
};
const tick = (day: GivenPour, item: string, min: number, ok = true): string =>
  day.tell(pourStream, min, "pour-item-checked", { item, ok });

describe("shells at their heat", () => {
  const lit = (): GivenPour => {
    const day = givenPour();
    day.tell(runStream, 60, "run-started", { kilnC: 20 });
    return day;
  };
  /** For a wall of 8 mm: 30 min and 3 min a millimetre, as a kiln plan gives it (common practice, no source). */
  const soakMin = 54;

  test("a preheat that has not begun is planned, with its heat and time, and can't be ticked", () => {
    const day = givenPour();
    tick(day, "shell-hot", 100);
    const line = day.line("shell-hot", 101)!;
    expect([line.state, line.isTickable]).toEqual(["planned", false]);
    expect(line.why).toMatchObject([
      { code: "preheat-not-begun", shell: "Gate finial", c: 650, at: minute(240) },
    ]);
  });
  test("a tick from before the preheat counts for nothing once it has begun", () => {
    const day = givenPour();
    tick(day, "shell-hot", 59);
    day.tell(runStream, 60, "run-started", { kilnC: 20 });
    expect(said(day, "shell-hot", 61)).toBe("to-check heat-not-read");
    tick(day, "shell-hot", 62);
    expect(said(day, "shell-hot", 63)).toBe("ok heat-not-read");
  });
  test.each([
    [635, "ok"],
    [634.9, "to-check heat-under-plan"],
    [500, "to-check heat-under-plan"],
    [499.9, "not-ok heat-too-low"],
  ])("at %d °C with 650 planned and 500 the least it is %s", (kilnC, state) => {
    const day = lit();
    for (const min of [100, 160]) day.tell(runStream, min, "run-read", { kilnC: Math.max(kilnC, 635) });
    day.tell(runStream, 161, "run-read", { kilnC });
    expect(said(day, "shell-hot", 162)).toBe(state);
  });
  test("it wants its soak, by the readings and no others", () => {
    const day = lit();
    day.tell(pieceStream, 61, "wall-measured", { wallMm: 8 });
    day.tell(runStream, 100, "run-read", { kilnC: 650 });
    day.tell(runStream, 100 + soakMin - 0.1, "run-read", { kilnC: 650 });
    expect(said(day, "shell-hot", 153.95)).toBe("to-check not-soaked");
    day.tell(runStream, 100 + soakMin, "run-read", { kilnC: 650 });
    expect(said(day, "shell-hot", 155)).toBe("ok");
    day.tell(runStream, 156, "run-read", { kilnC: 630 });
    day.tell(runStream, 157, "run-read", { kilnC: 650 });
    expect(said(day, "shell-hot", 158)).toBe("to-check not-soaked");
  });
  test.each([
    [29, "ok"],
    [30, "to-check heat-read-old"],
    [31, "to-check heat-read-old"],
  ])("%d min after its reading it is %s", (after, state) => {
    const day = lit();
    for (const min of [100, 160]) day.tell(runStream, min, "run-read", { kilnC: 650 });
    expect(said(day, "shell-hot", 160 + after)).toBe(state);
  });
  test("without a run, a shell's own heat in its log is the reading, and only for a while a begun preheat", () => {
    const day = givenPour({ runId: undefined });
    expect(said(day, "shell-hot", 100)).toBe("planned preheat-not-begun");
    day.tell(pieceStream, 100, "shell-preheated", { shellC: 650 });
    expect(said(day, "shell-hot", 129)).toBe("ok");
    expect(said(day, "shell-hot", 131)).toBe("to-check heat-read-old");
    expect(said(day, "shell-hot", 219)).toBe("to-check heat-read-old");
    expect(said(day, "shell-hot", 220)).toBe("planned preheat-not-begun");
  });
  test("a mark on the day's own track begins it, and measures nothing", () => {
    const day = givenPour({ runId: undefined });
    day.tell(pourStream, 100, "pour-step-marked", { step: "shell-preheated", state: "started" });
    day.tell(pourStream, 200, "pour-step-marked", { step: "shell-preheated", state: "done" });
    expect(said(day, "shell-hot", 201)).toBe("to-check heat-not-read");
  });
});

describe("metal at its heat, silicon bronze poured at 1093 to 1177 °C by its ingot data, and filling from 1031", () => {
  const melting = (weighedKg?: number): GivenPour => {
    const day = givenPour();
    day.tell(meltStream, 170, "melt-started", { hotFurnace: false, weighedKg });
    return day;
  };
  test("a planned heat stays planned, and can't be ticked", () => {
    const day = givenPour();
    tick(day, "metal-heat", 160);
    expect(day.line("metal-heat", 161)).toMatchObject({
      state: "planned",
      isTickable: false,
      why: [{ code: "melt-not-begun", c: 1150, at: minute(240) }],
    });
  });
  test.each([
    [1030.9, "not-ok metal-too-cold"],
    [1031, "ok"],
    [1093, "ok"],
    [1177, "ok"],
    [1177.1, "not-ok metal-too-hot"],
    [975, "not-ok metal-too-cold"],
  ])("read at %d °C it is %s", (metalC, state) => {
    const day = melting();
    day.tell(meltStream, 208, "melt-read", { metalC });
    expect(said(day, "metal-heat", 210)).toBe(state);
  });
  test("a reading out of range can't be ticked away", () => {
    const day = melting();
    day.tell(meltStream, 208, "melt-read", { metalC: 1000 });
    tick(day, "metal-heat", 209);
    expect(day.line("metal-heat", 210)).toMatchObject({ state: "not-ok", isTickable: false });
  });
  test.each([
    [29, "ok"],
    [30, "to-check metal-read-old"],
    [31, "to-check metal-read-old"],
  ])("%d min after the reading it is %s", (after, state) => {
    const day = melting();
    day.tell(meltStream, 180, "melt-read", { metalC: 1150 });
    expect(said(day, "metal-heat", 180 + after)).toBe(state);
  });
  test("planned outside the range it is not OK before anything is lit", () => {
    expect(said(givenPour({ metalC: 1030 }), "metal-heat", 10)).toBe("not-ok metal-planned-cold");
    expect(said(givenPour({ metalC: 1178 }), "metal-heat", 10)).toBe("not-ok metal-planned-hot");
  });
  test("enough is what the scale says less its loss, in a melt that has begun", () => {
    expect(said(givenPour(), "metal-enough", 100)).toBe("planned melt-not-begun");
    expect(said(melting(), "metal-enough", 180)).toBe("to-check metal-not-weighed");
    expect(said(melting(6), "metal-enough", 180)).toBe("ok");
    // 4 kg are wanted: 4.1 kg less the 3 % or so that a mixed charge loses is just short of it, 4.5 kg is not.
    expect(said(melting(4.02), "metal-enough", 180)).toBe("not-ok metal-short");
    expect(said(melting(4.5), "metal-enough", 180)).toBe("ok");
  });
  test("planned too little is known to be wrong already", () => {
    expect(said(givenPour({}, { metalKg: 7 }), "metal-enough", 100)).toBe("not-ok metal-short");
  });
  test("a mass that was entered with the plan is a plan", () => {
    const told = { family: "fused-silica", people: 2, carryMin: 1.5, metalKg: 9, thinnestMm: [4] } as const;
    const day = givenPour({ meltId: undefined, told });
    expect(said(day, "metal-enough", 100)).toBe("planned melt-not-begun");
    day.tell(pourStream, 170, "pour-step-marked", { step: "metal-melted", state: "started" });
    expect(said(day, "metal-enough", 171)).toBe("to-check metal-not-weighed");
    tick(day, "metal-enough", 172);
    expect(day.line("metal-enough", 173)?.state).toBe("ok");
  });
});

describe("ticks by hand", () => {
  test.each([
    ["path-clear", 120],
    ["second-person", 120],
    ["tools-hot-dry", 60],
    ["ingot-mould-hot-dry", 60],
    ["shell-sound", 720],
    ["shell-hot", 30],
    ["metal-heat", 30],
  ])("%s is ticked for %d min", (id, age) => {
    expect(lineAgeMin(id)).toBe(age);
    if (id === "shell-hot" || id === "metal-heat") return;
    const day = givenPour();
    tick(day, id, 10);
    expect(day.line(id, 10 + age - 1)).toMatchObject({ state: "ok", until: minute(10 + age) });
    for (const min of [age, age + 1]) expect(said(day, id, 10 + min)).toMatch(/^to-check .*tick-old$/);
  });
  test("nothing is OK by hand until someone looked, and Not OK stays until it is looked at again", () => {
    const day = givenPour();
    expect(said(day, "path-clear", 10)).toBe("to-check not-looked-at");
    tick(day, "path-clear", 10, false);
    expect(said(day, "path-clear", 500)).toBe("not-ok said-no");
    tick(day, "path-clear", 501);
    expect(said(day, "path-clear", 502)).toBe("ok not-looked-at");
  });
  test("a look for cracks from before the fire counts for nothing", () => {
    const day = givenPour();
    tick(day, "shell-sound", 10);
    expect(day.line("shell-sound", 20)?.state).toBe("ok");
    day.tell(pieceStream, 30, "shell-fired", { peakC: 880, holdMin: 60 });
    expect(said(day, "shell-sound", 31)).toBe("to-check look-for-cracks");
  });
  test("dry sand is asked for only where there is sand", () => {
    expect(said(givenPour(), "sand-dry", 10)).toBe("no line");
    expect(said(givenPour({ bed: "hot-sand", sandC: 315 }), "sand-dry", 10)).toBe("to-check not-looked-at");
  });
});

describe("shells", () => {
  const shellLines = ["review-clear", "shell-sound", "shell-fired", "shell-dry", "wall-carries", "shell-hot"];
  test.each([
    [[], "no-shells"],
    [["gone"], "shells-not-here"],
  ] as const)("of %j nothing is OK by itself", (pieceIds, code) => {
    const day = givenPour({ pieceIds });
    tick(day, "review-clear", 5);
    for (const id of shellLines) expect(said(day, id, 10)).toContain(`not-ok ${code}`);
  });
  test("an open crack is not ticked away, and is said once", () => {
    const day = givenPour();
    day.tell(pieceStream, 5, "crack-found", { kind: "open", stage: "firing", where: "at the cup" });
    tick(day, "shell-sound", 6);
    expect(said(day, "shell-sound", 10)).toBe("not-ok open-crack");
  });
  test("a coat after the review and the fire is unreviewed and damp", () => {
    const day = givenPour();
    const kind = { kind: "seal", stuccoId: null, bucketId: null, roomId: "first", prewet: false } as const;
    day.tell(pieceStream, 5, "coat-dipped", { number: 10, step: null, ...kind });
    expect(said(day, "review-clear", 10)).toBe("not-ok coats-since-review");
    expect(said(day, "shell-dry", 10)).toMatch(/^not-ok damp/);
  });
  test("a stop warning of a rule the sheet has never heard of gets a line of its own, and no tick changes it", () => {
    const { known } = givenReady().go(210);
    const finding = { rule: "of-tomorrow", variant: "heard", level: "hold", entries: ["e1"] } as const;
    const tickedIt = { id: "t", at: minute(209), item: "hold:of-tomorrow", ok: true };
    const lines = sheetLines({
      ...known,
      now: known.at,
      pour: { ...known.pour, checks: [...known.pour.checks, tickedIt] },
      shells: known.shells.map((shell) => ({ ...shell, findings: [...shell.findings, finding] })),
    });
    expect(lines.filter(({ state }) => state !== "ok")).toMatchObject([
      {
        id: "hold:of-tomorrow",
        state: "not-ok",
        isTickable: false,
        why: [{ shell: "Gate finial", code: "stop-warning", finding }],
      },
    ]);
  });
  test("fired too cool is not OK by its own line", () => {
    expect(said(givenPour(), "shell-fired", 10)).toBe("ok");
    const day = givenPour();
    const fired = day.log().entries.find(({ type }) => type === "shell-fired")!;
    const body = { peakC: 650, holdMin: 60 };
    const correct = { stream: pieceStream, entryId: fired.id, body, reason: "read wrong" };
    day.run({ do: "correct", ...correct }, 5);
    expect(said(day, "shell-fired", 10)).toMatch(/^not-ok/);
  });
});

describe("go or no-go", () => {
  test("needs every line OK, or a written reason for each that is not", () => {
    const day = givenReady();
    expect(sheetVerdict(day.go(210).known.lines, {})).toEqual({ isGo: true, against: [], passed: [] });
    tick(day, "path-clear", 211, false);
    const { lines } = day.go(212).known;
    expect(sheetVerdict(lines, {})).toMatchObject({ isGo: false, against: [{ id: "path-clear" }] });
    expect(sheetVerdict(lines, { "path-clear": "   " }).isGo).toBe(false);
    expect(sheetVerdict(lines, { "path-clear": " swept, Ada " })).toMatchObject({
      isGo: true,
      passed: [{ item: "path-clear", reason: "swept, Ada" }],
    });
  });
});
