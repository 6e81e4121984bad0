import { millisecondsInHour as hourMs } from "date-fns/constants";
import { describe, expect, test } from "vitest";
import type { EntryBodies } from "../entries/entry.ts";
import { isPutAway } from "./fireStates.ts";
import { foldMelt } from "../pour/foldMelt.ts";
import { foldRun } from "./foldRun.ts";
import { monday } from "../../../tests/logs/testLog.ts";
import { streamLog } from "../../../tests/logs/testStreamLog.ts";

const at = (hours: number): number => monday + hours * hourMs;
const planned: EntryBodies["run-planned"] = {
  kilnId: "k",
  purpose: "burnout",
  pieceIds: ["heron"],
  startC: 20,
  segments: [
    { kind: "instruction", code: "cup-down" },
    { kind: "ramp", toC: 260, rateKPerH: 150 },
  ],
};

function kiln() {
  const log = streamLog("run/a");
  log.tell("run-planned", planned, at(0));
  return log;
}

const melt: EntryBodies["melt-planned"] = {
  furnaceId: null,
  alloyId: "c87300",
  pieceIds: [],
  items: [{ name: "ingots", massKg: 4, alloyId: "c87300" }],
  pourC: 1150,
};
const pour: EntryBodies["pour-planned"] = {
  pourAt: at(5),
  pieceIds: ["heron"],
  bed: "air",
  shellC: 500,
  metalC: 1150,
  steps: [{ id: "melt", track: "metal", minutes: 40, keepsMin: 15 }],
};

describe("a planned run", () => {
  test("that is not wanted is put away before its start as stopped, and nothing follows but a start before that", () => {
    const log = kiln();
    expect(log.refusal("run-ended", { result: "done" }, at(1))).toEqual({ code: "not-started" });
    const away = log.tell("run-ended", { result: "stopped" }, at(2));
    const put = foldRun("a", log.entries());
    expect(put !== null && isPutAway(put)).toBe(true);
    expect(log.refusal("run-started", { kilnC: 20 }, at(3))).toMatchObject({
      code: "out-of-order",
      before: at(2),
    });
    expect(log.refusal("run-changed", { segments: [] }, at(3))).toMatchObject({ code: "already-ended" });
    expect(log.refusal("run-ended", { result: "stopped" }, at(3))).toMatchObject({ code: "already-ended" });
    const to = {
      do: "correct",
      stream: "run/a",
      entryId: away,
      reason: "",
      body: { result: "done" },
    } as const;
    expect(log.run(to, at(3))).toMatchObject({ refusal: { code: "not-started" } });
    expect(log.run({ do: "strike", stream: "run/a", entryId: away, reason: "" }, at(3)).ok).toBe(true);
    expect(log.refusal("run-started", { kilnC: 20 }, at(3))).toBeNull();
  });

  test("that was stopped keeps the time of its start correctable", () => {
    const log = kiln();
    const start = log.tell("run-started", { kilnC: 20 }, at(1));
    log.tell("run-ended", { result: "stopped" }, at(4));
    const move = { do: "correct", stream: "run/a", entryId: start, reason: "", at: at(2) } as const;
    expect(log.run(move, at(5)).ok).toBe(true);
  });
});

describe("a planned melt or pour", () => {
  test("a melt that was never lit is put away, with no metal; then it can't be lit, and one on the fire can't be put away", () => {
    const log = streamLog("melt/a");
    log.tell("melt-planned", melt, at(0));
    const none = { pouredKg: 0, piggedKg: 0 };
    expect(log.refusal("melt-ended", none, at(1))).toEqual({ code: "not-started" });
    expect(log.refusal("melt-ended", { ...none, dropped: false }, at(1))).toEqual({ code: "not-started" });
    expect(log.refusal("melt-ended", { ...none, piggedKg: 0.1, dropped: true }, at(1))).toMatchObject({
      code: "out-of-range",
      field: "piggedKg",
      high: 0,
    });
    log.tell("melt-ended", { ...none, dropped: true }, at(1));
    const put = foldMelt("a", log.entries());
    expect(put !== null && isPutAway(put)).toBe(true);
    expect(log.refusal("melt-started", { hotFurnace: false }, at(0.5), at(2))).toEqual({
      code: "already-ended",
      endedAt: at(1),
    });
    const lit = streamLog("melt/b");
    lit.tell("melt-planned", melt, at(0));
    lit.tell("melt-started", { hotFurnace: false }, at(1));
    expect(lit.refusal("melt-ended", { ...none, dropped: true }, at(2))).toEqual({
      code: "already-started",
      stream: "melt/b",
    });
  });

  test("a pour that never came about ends straight from its plan", () => {
    const log = streamLog("pour/a");
    log.tell("pour-planned", pour, at(0));
    expect(log.refusal("pour-ended", {}, at(1))).toBeNull();
  });
});
