import { millisecondsInHour as hourMs } from "date-fns/constants";
import { expect, test } from "vitest";
import type { EntryBodies } from "../entries/entry.ts";
import { foldMelt } from "../pour/foldMelt.ts";
import { foldPour } from "../pour/foldPour.ts";
import { foldRun } from "./foldRun.ts";
import { monday } from "../../../tests/logs/testLog.ts";
import { streamLog } from "../../../tests/logs/testStreamLog.ts";

const at = (hours: number): number => monday + hours * hourMs;

test("a run tells its plan as last changed, its readings in order of time, and its steps by what they were", () => {
  const log = streamLog("run/a");
  const first: EntryBodies["run-planned"]["segments"] = [
    { kind: "instruction", code: "cup-down" },
    { kind: "hold", atC: 250, minutes: 40 },
  ];
  const plan: EntryBodies["run-planned"] = {
    kilnId: "k",
    purpose: "firing",
    pieceIds: ["heron", "crane"],
    startC: 20,
    segments: first,
  };
  const id = log.tell("run-planned", plan, at(0));
  log.tell("run-started", { kilnC: 22 }, at(1));
  log.tell("run-step-done", { segment: 0 }, at(1.5));
  log.tell("run-read", { kilnC: 90 }, at(2.5));
  const late = { source: "k.csv", afterS: [0, 7200], kilnC: [23, 120] };
  log.run({ do: "log", stream: "run/a", type: "run-logged", body: late, at: at(1) }, at(4));
  log.tell("run-changed", { segments: first.slice(1), note: "shorter" }, at(4));
  log.tell("run-step-done", { segment: 0 }, at(4.5));
  log.tell("run-ended", { result: "done", energyKWh: 30 }, at(8));
  const run = foldRun("a", log.entries());
  expect(run).toMatchObject({
    id: "a",
    plan: { ...plan, id, at: at(0) },
    pieceIds: ["heron", "crane"],
    segments: first.slice(1),
    startedAt: at(1),
    startedC: 22,
    ended: { at: at(8), result: "done", energyKWh: 30 },
    lastAt: at(8),
  });
  expect(run?.readings.map((reading) => [reading.at, reading.kilnC])).toEqual([
    [at(1), 23],
    [at(2.5), 90],
    [at(3), 120],
  ]);
  expect(run?.stepsDone.map(({ segment, code }) => [segment, code])).toEqual([
    [0, "cup-down"],
    [0, null],
  ]);
  expect(run?.changes.map(({ note }) => note)).toEqual(["shorter"]);
});

test("a melt tells how the metal warmed and what became of it", () => {
  const log = streamLog("melt/a");
  const plan: EntryBodies["melt-planned"] = {
    furnaceId: "f",
    alloyId: "c87300",
    pieceIds: ["heron"],
    items: [],
    pourC: 1150,
  };
  log.tell("melt-planned", plan, at(0));
  expect(foldMelt("a", log.entries())).toMatchObject({ startedAt: null, hotFurnace: null, ended: null });
  log.tell("melt-started", { hotFurnace: true }, at(1));
  log.tell("melt-read", { metalC: 700 }, at(1.2));
  log.tell("melt-read", { metalC: 1160 }, at(1.5));
  log.tell("melt-ended", { pouredKg: 3, piggedKg: 1 }, at(1.6));
  expect(foldMelt("a", log.entries())).toMatchObject({
    startedAt: at(1),
    hotFurnace: true,
    readings: [{ metalC: 700 }, { metalC: 1160 }],
    ended: { pouredKg: 3, piggedKg: 1 },
    pieceIds: ["heron"],
  });
  expect(foldMelt("a", [])).toBeNull();
});

test("of each item on the sheet a pour keeps the newest word, in the order they were first looked at", () => {
  const log = streamLog("pour/a");
  const plan: EntryBodies["pour-planned"] = {
    pourAt: at(3),
    pieceIds: ["heron"],
    bed: "hot-sand",
    sandC: 315,
    shellC: 500,
    metalC: 1150,
    steps: [{ id: "melt", track: "metal", minutes: 40, keepsMin: 15 }],
  };
  log.tell("pour-planned", plan, at(0));
  log.tell("pour-item-checked", { item: "sand-dry", ok: false }, at(1));
  log.tell("pour-item-checked", { item: "path-clear", ok: true }, at(1.1));
  log.tell("pour-item-checked", { item: "sand-dry", ok: true }, at(1.2));
  log.tell("pour-step-marked", { step: "melt", state: "started" }, at(2));
  log.tell("pour-decided", { go: false, name: "Ines", passed: [] }, at(2.1));
  log.tell("pour-decided", { go: true, name: "Ines", passed: [] }, at(2.5));
  const pour = foldPour("a", log.entries());
  expect(pour?.checks.map(({ item, ok }) => [item, ok])).toEqual([
    ["sand-dry", true],
    ["path-clear", true],
  ]);
  expect(pour).toMatchObject({ marks: [{ step: "melt" }], decided: { go: true }, steps: plan.steps });
});
