import { millisecondsInHour as hourMs } from "date-fns/constants";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { EntryBodies } from "../entries/entry.ts";
import { foldRun } from "../fire/foldRun.ts";
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

describe("a kiln run", () => {
  test("begins with its plan, which is written once", () => {
    const log = streamLog("run/a");
    expect(log.refusal("run-started", { kilnC: 20 }, at(1))).toEqual({
      code: "no-such-stream",
      stream: "run/a",
    });
    log.tell("run-planned", planned, at(0));
    expect(log.refusal("run-planned", planned, at(1))).toEqual({ code: "already-started", stream: "run/a" });
  });

  test("is started after its plan and once", () => {
    const log = kiln();
    expect(log.refusal("run-started", { kilnC: 20 }, at(-1), at(1))).toEqual({
      code: "before-start",
      at: at(-1),
      startedAt: at(0),
    });
    log.tell("run-started", { kilnC: 20 }, at(1));
    expect(log.refusal("run-started", { kilnC: 20 }, at(2))).toMatchObject({ code: "already-started" });
  });

  test("is read only between its start and its end, both included", () => {
    const log = kiln();
    expect(log.refusal("run-read", { kilnC: 25 }, at(1))).toEqual({ code: "not-started" });
    expect(log.refusal("run-ended", { result: "done" }, at(1))).toEqual({ code: "not-started" });
    log.tell("run-started", { kilnC: 20 }, at(1));
    expect(log.refusal("run-read", { kilnC: 25 }, at(0.9), at(3))).toEqual({
      code: "out-of-order",
      at: at(0.9),
      after: at(1),
      before: null,
    });
    expect(log.refusal("run-read", { kilnC: 25 }, at(1))).toBeNull();
    log.tell("run-read", { kilnC: 200 }, at(4));
    expect(log.refusal("run-ended", { result: "done" }, at(3.9), at(5))).toEqual({
      code: "out-of-order",
      at: at(3.9),
      after: at(4),
      before: null,
    });
    log.tell("run-ended", { result: "done" }, at(4));
    expect(log.refusal("run-read", { kilnC: 200 }, at(4))).toBeNull();
    expect(log.refusal("run-read", { kilnC: 200 }, at(4) + 1)).toEqual({
      code: "already-ended",
      endedAt: at(4),
    });
    expect(log.refusal("run-ended", { result: "done" }, at(5))).toMatchObject({ code: "already-ended" });
    expect(log.refusal("run-changed", { segments: [] }, at(5))).toMatchObject({ code: "already-ended" });
  });

  test("takes a logger's block that lies whole within it, and no other", () => {
    const log = kiln();
    log.tell("run-started", { kilnC: 20 }, at(1));
    const block = (lastS: number): EntryBodies["run-logged"] => ({
      source: "kiln.csv",
      afterS: [0, lastS],
      kilnC: [20, 90],
    });
    expect(log.refusal("run-logged", block(3600), at(1))).toMatchObject({ code: "in-future", at: at(2) });
    log.tell("run-ended", { result: "done" }, at(3));
    expect(log.refusal("run-logged", block(7200), at(1), at(9))).toBeNull();
    expect(log.refusal("run-logged", block(7201), at(1), at(9))).toMatchObject({ code: "already-ended" });
    expect(log.refusal("run-logged", block(60), at(0.9), at(9))).toMatchObject({ code: "out-of-order" });
  });

  test("ticks off only steps its plan has, as it stood then", () => {
    const log = kiln();
    log.tell("run-started", { kilnC: 20 }, at(1));
    expect(log.refusal("run-step-done", { segment: 2 }, at(2))).toEqual({
      code: "out-of-range",
      field: "segment",
      found: 2,
      low: 0,
      high: 1,
    });
    log.tell(
      "run-changed",
      { segments: [...planned.segments, { kind: "hold", atC: 260, minutes: 30 }] },
      at(3),
    );
    expect(log.refusal("run-step-done", { segment: 2 }, at(2), at(4))).toMatchObject({ field: "segment" });
    expect(log.refusal("run-step-done", { segment: 2 }, at(4))).toBeNull();
  });

  test("keeps its order when a time is corrected", () => {
    const log = kiln();
    const start = log.tell("run-started", { kilnC: 20 }, at(1));
    log.tell("run-read", { kilnC: 100 }, at(2));
    const move = (to: number) =>
      ({ do: "correct", stream: "run/a", entryId: start, at: to, reason: "" }) as const;
    const late = log.run(move(at(2.5)), at(3));
    expect(late).toEqual({
      ok: false,
      refusal: { code: "out-of-order", at: at(2.5), after: null, before: at(2) },
    });
    expect(log.run(move(at(1.5)), at(3)).ok).toBe(true);
    expect(foldRun("a", log.entries())?.startedAt).toBe(at(1.5));
  });

  test("a plan can be put right but not moved past what follows; a block can't be stretched past the end", () => {
    const log = kiln();
    log.tell("run-started", { kilnC: 20 }, at(1));
    const plan = log.entries()[0]?.id ?? "";
    const correct = (entryId: string, more: object) =>
      log.run({ do: "correct", stream: "run/a", entryId, reason: "", ...more }, at(9));
    expect(correct(plan, { at: at(1.5) })).toMatchObject({
      refusal: { code: "out-of-order", before: at(1) },
    });
    expect(correct(plan, { body: { ...planned, pieceIds: ["heron", "crane"] } })).toMatchObject({ ok: true });
    const block = { source: "k", afterS: [0, 60], kilnC: [20, 22] };
    const logged = log.tell("run-logged", { ...block, afterS: [0], kilnC: [20] }, at(1.5));
    log.tell("run-ended", { result: "stopped" }, at(1.5));
    expect(correct(logged, { body: block })).toMatchObject({ refusal: { code: "already-ended" } });
  });

  test("a start that carries readings can't be struck, nor a plan that carries anything", () => {
    const log = kiln();
    const start = log.tell("run-started", { kilnC: 20 }, at(1));
    const strike = (entryId: string) =>
      log.run({ do: "strike", stream: "run/a", entryId, reason: "" }, at(5));
    const read = log.tell("run-read", { kilnC: 30 }, at(2));
    expect(strike(start)).toEqual({
      ok: false,
      refusal: { code: "start-carries-entries", kind: "run", entryId: start, count: 1 },
    });
    expect(strike(log.entries()[0]?.id ?? "")).toMatchObject({ refusal: { count: 2 } });
    expect([strike(read).ok, strike(start).ok]).toEqual([true, true]);
    expect(foldRun("a", log.entries())).toMatchObject({ startedAt: null, readings: [] });
    log.tell("run-started", { kilnC: 25 }, at(6));
    expect(foldRun("a", log.entries())?.startedAt).toBe(at(6));
  });

  test("however it is tapped, its readings never fall outside its start and end", () => {
    const tap = fc.record({
      type: fc.constantFrom("run-started", "run-read", "run-logged", "run-ended", "strike", "move"),
      hour: fc.integer({ min: 0, max: 12 }),
      pick: fc.nat(8),
    });
    fc.assert(
      fc.property(fc.array(tap, { maxLength: 20 }), (taps) => {
        const log = kiln();
        for (const { type, hour, pick } of taps) {
          const entryId = log.entries()[pick]?.id ?? "";
          const bodies = {
            "run-started": { kilnC: null },
            "run-read": { kilnC: 100 },
            "run-logged": { source: "k", afterS: [0, 5400], kilnC: [90, 110] },
            "run-ended": { result: pick % 2 === 0 ? "done" : "stopped" },
          } as const;
          const command =
            type === "strike"
              ? { do: "strike", stream: "run/a", entryId, reason: "" }
              : type === "move"
                ? { do: "correct", stream: "run/a", entryId, at: at(hour), reason: "" }
                : { do: "log", stream: "run/a", type, body: bodies[type], at: at(hour) };
          log.run(command as Parameters<typeof log.run>[0], at(30));
          const run = foldRun("a", log.entries());
          for (const { at: read } of run?.readings ?? []) {
            expect(read).toBeGreaterThanOrEqual(run?.startedAt ?? Infinity);
            expect(read).toBeLessThanOrEqual(run?.ended?.at ?? Infinity);
          }
        }
      }),
      { numRuns: 150 },
    );
  });
});

describe("a melt and a pour", () => {
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

  test("metal is read while the furnace is on", () => {
    const log = streamLog("melt/a");
    log.tell("melt-planned", melt, at(0));
    expect(log.refusal("melt-read", { metalC: 900 }, at(1))).toEqual({ code: "not-started" });
    log.tell("melt-started", { hotFurnace: false }, at(1));
    log.tell("melt-read", { metalC: 900 }, at(2));
    log.tell("melt-ended", { pouredKg: 3.4, piggedKg: 0.5 }, at(2));
    expect(log.refusal("melt-read", { metalC: 900 }, at(3))).toEqual({
      code: "already-ended",
      endedAt: at(2),
    });
    expect(log.refusal("melt-started", { hotFurnace: true }, at(3))).toMatchObject({
      code: "already-started",
    });
  });

  test("a pour is under way from its plan to its end, and marks only steps it has", () => {
    const log = streamLog("pour/a");
    expect(log.refusal("pour-decided", { go: true, name: "Ines", passed: [] }, at(0))).toMatchObject({
      code: "no-such-stream",
    });
    log.tell("pour-planned", pour, at(0));
    expect(log.refusal("pour-step-marked", { step: "melt", state: "started" }, at(1))).toBeNull();
    expect(log.refusal("pour-step-marked", { step: "dance", state: "done" }, at(1))).toEqual({
      code: "no-such-step",
      step: "dance",
    });
    log.tell("pour-ended", {}, at(2));
    expect(log.refusal("pour-item-checked", { item: "sand-dry", ok: true }, at(3))).toMatchObject({
      code: "already-ended",
    });
  });

  test("a go over an item that is not in order needs a written reason", () => {
    const log = streamLog("pour/a");
    log.tell("pour-planned", pour, at(0));
    const decide = (go: boolean, reason: string) =>
      log.refusal("pour-decided", { go, name: "Ines", passed: [{ item: "second-person", reason }] }, at(1));
    expect(decide(true, " ")).toEqual({ code: "hold-without-reason", rules: ["second-person"] });
    expect(decide(true, "neighbour at the door")).toBeNull();
    expect(decide(false, "")).toBeNull();
  });
});
