import { expect, test } from "vitest";
import { streamLog } from "../../../../tests/logs/testStreamLog.ts";
import { foldRun } from "../../../logbook/fire/foldRun.ts";
import { runStanding } from "../../../logbook/fire/runStanding.ts";
import { runDues } from "./runDues.ts";

const begin = Date.UTC(2026, 4, 9, 8);
const hourMs = 3_600_000;

function duesAfter(hours: number, ticked: readonly number[] = []) {
  const log = streamLog("run/r");
  const segments = [
    { kind: "instruction", code: "extraction-on" },
    { kind: "ramp", toC: 320, rateKPerH: 100 },
    { kind: "instruction", code: "tray-out", minutes: 5 },
  ] as const;
  log.tell("run-planned", { kilnId: null, purpose: "burnout", pieceIds: ["p"], startC: 20, segments }, begin);
  log.tell("run-started", { kilnC: 20 }, begin);
  for (const segment of ticked) log.tell("run-step-done", { segment }, begin);
  const run = foldRun("r", log.entries());
  const now = begin + hours * hourMs;
  const standing = run && runStanding(run, now);
  if (standing === null) throw new Error("no run");
  return runDues("r", standing, { now, names: ["Heron", "Fox"] });
}

test("a run is due with every instruction that nobody ticked, each when the plan is there", () => {
  // 20 °C to 320 °C at 100 K/h is three hours.
  expect(duesAfter(0, [0]).map(({ id, dueMs }) => [id, (dueMs - begin) / hourMs])).toEqual([
    ["r-tray-out-2", 3],
  ]);
  expect(duesAfter(0).map(({ id }) => id)).toEqual(["r-extraction-on-0", "r-tray-out-2"]);
});

test("its event names the pieces, and the notice leads to the run", () => {
  const [due] = duesAfter(0, [0]);
  expect(due?.path).toBe("/fire/run/r");
  expect(due?.calendar(String).summary).toMatch(/^Kiln, Heron, Fox: /);
});
