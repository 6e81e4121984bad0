import { describe, expect, test } from "vitest";
import { streamLog } from "../../../../tests/logs/testStreamLog.ts";
import type { RunSegment } from "../../../logbook/entries/fireBodies.ts";
import { foldRun } from "../../../logbook/fire/foldRun.ts";
import { runStanding } from "../../../logbook/fire/runStanding.ts";
import { makeFormat } from "../../base/format/units.ts";
import { runDues } from "./runDues.ts";

const begin = Date.UTC(2026, 4, 9, 8);
const hourMs = 3_600_000;
const format = makeFormat("metric", "en-GB");

const plain: readonly RunSegment[] = [
  { kind: "instruction", code: "extraction-on" },
  { kind: "ramp", toC: 320, rateKPerH: 100 },
  { kind: "instruction", code: "tray-out", minutes: 5 },
];

function duesAfter(
  hours: number,
  {
    ticked = [],
    segments = plain,
    read = [],
  }: {
    readonly ticked?: readonly number[];
    readonly segments?: readonly RunSegment[];
    readonly read?: readonly (readonly [hour: number, kilnC: number])[];
  } = {},
) {
  const log = streamLog("run/r");
  log.tell("run-planned", { kilnId: null, purpose: "burnout", pieceIds: ["p"], startC: 20, segments }, begin);
  log.tell("run-started", { kilnC: 20 }, begin);
  for (const segment of ticked) log.tell("run-step-done", { segment }, begin);
  for (const [hour, kilnC] of read) log.tell("run-read", { kilnC }, begin + hour * hourMs);
  const run = foldRun("r", log.entries());
  const now = begin + hours * hourMs;
  const standing = run && runStanding(run, now);
  if (standing === null) throw new Error("no run");
  return runDues("r", standing, { now, names: ["Heron", "Fox"], format });
}
const timed = (dues: ReturnType<typeof duesAfter>) =>
  dues.map(({ id, dueMs }) => [id, Number(((dueMs - begin) / hourMs).toFixed(6))]);

test("a run is due with every instruction that nobody ticked, each when the plan is there", () => {
  // 20 °C to 320 °C at 100 K/h is three hours.
  expect(timed(duesAfter(0, { ticked: [0] }))).toEqual([
    ["r-tray-out-2", 3],
    ["r-through", 3.083333],
  ]);
  expect(duesAfter(0).map(({ id }) => id)).toEqual(["r-extraction-on-0", "r-tray-out-2", "r-through"]);
});

test("its event names the pieces, and the notice leads to the run", () => {
  const [due] = duesAfter(0, { ticked: [0] });
  expect(due?.path).toBe("/fire/run/r");
  expect(due?.calendar(String).summary).toMatch(/^Kiln, Heron, Fox: /);
});

describe("a kiln turned by hand", () => {
  // An hour up, an hour there, two hours up, half an hour there, two hours down; nobody has to do anything else.
  const segments: readonly RunSegment[] = [
    { kind: "ramp", toC: 120, rateKPerH: 100 },
    { kind: "hold", atC: 120, minutes: 60 },
    { kind: "ramp", toC: 520, rateKPerH: 200 },
    { kind: "hold", atC: 520, minutes: 30 },
    { kind: "ramp", toC: 420, rateKPerH: 50 },
  ];

  test("is due at every change of slope, at the end of every hold and of the plan", () => {
    expect(timed(duesAfter(0, { segments }))).toEqual([
      ["r-turn-1", 1],
      ["r-turn-2", 2],
      ["r-turn-3", 4],
      ["r-turn-4", 4.5],
      ["r-through", 6.5],
    ]);
  });

  test("each says what to set, what is over, and goes into the calendar", () => {
    const [, up] = duesAfter(0, { segments });
    expect(up?.words.replaceAll("\u00a0", " ")).toBe("Kiln: up to 520 °C at 200 °C/h");
    expect(up?.notice.body.replaceAll("\u00a0", " ")).toContain("Over now: hold 120 °C for 1 h.");
    expect(up?.calendar(String).summary).toMatch(/^Kiln, Heron, Fox: up to 520/);
  });

  test("of what is past only the last turn stays, so that it can ring and no more", () => {
    expect(timed(duesAfter(4.2, { segments })).map(([id]) => id)).toEqual([
      "r-turn-3",
      "r-turn-4",
      "r-through",
    ]);
    expect(timed(duesAfter(9, { segments })).map(([id]) => id)).toEqual(["r-through"]);
  });

  test("a kiln that lags is due later: by where its readings are", () => {
    // At 70 °C after an hour it is half an hour behind.
    expect(timed(duesAfter(1, { segments, read: [[1, 70]] }))[0]).toEqual(["r-turn-1", 1.5]);
  });

  test("a step that was cut in two when the plan was moved is no turn; a new rate or a way back is one", () => {
    const cut = (rateKPerH: number, toC = 220): readonly RunSegment[] => [
      { kind: "ramp", toC: 120, rateKPerH: 100 },
      { kind: "ramp", toC, rateKPerH },
    ];
    const ids = (parts: readonly RunSegment[]) => duesAfter(0, { segments: parts }).map(({ id }) => id);
    expect(ids(cut(100))).toEqual(["r-through"]);
    expect(ids(cut(150))).toEqual(["r-turn-1", "r-through"]);
    expect(ids(cut(100, 60))).toEqual(["r-turn-1", "r-through"]);
  });
});
