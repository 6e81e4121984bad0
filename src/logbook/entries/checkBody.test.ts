import { millisecondsInHour as hourMs } from "date-fns/constants";
import { describe, expect, test } from "vitest";
import type { Command, Refusal } from "../log/command.ts";
import type { EntryBodies, EntryType } from "./entry.ts";
import type { TestLog } from "../../../tests/logs/testLog.ts";
import { monday, testLog, testStream } from "../../../tests/logs/testLog.ts";

const day = monday + 24 * hourMs;

function refusalOf(log: TestLog, command: Command, now = day): Refusal | null {
  const decision = log.ask(command, now);
  return decision.ok ? null : decision.refusal;
}
function logging<T extends EntryType>(type: T, body: EntryBodies[T], more: object = {}): Command {
  return { do: "log", stream: testStream, type, body, ...more } as unknown as Command;
}

describe("numbers and names", () => {
  test.each<[string, EntryType, object, string]>([
    ["humidity in percent", "air-read", { airC: 20, rh: 55, air: "still" }, "rh"],
    ["a room at 100 °C", "air-read", { airC: 100, rh: 0.5, air: "still" }, "airC"],
    ["a room without a number", "air-read", { airC: NaN, rh: 0.5, air: "still" }, "airC"],
    ["a room above any town", "room-set", { name: "Peak", altitudeM: 9000 }, "altitudeM"],
  ])("%s is refused with its limits", (_, type, body, field) => {
    const command = { do: "log", stream: "room/first", type, body } as unknown as Command;
    expect(refusalOf(testLog(), command)).toMatchObject({ code: "out-of-range", field });
  });

  test.each<[string, EntryType, object, object]>([
    [
      "a wall of 61 mm",
      "wall-measured",
      { wallMm: 61 },
      { code: "out-of-range", found: 61, low: 0.1, high: 60 },
    ],
    ["a wall of nothing", "wall-measured", { wallMm: 0 }, { code: "out-of-range", field: "wallMm" }],
    ["a firing at 80 °C", "shell-fired", { peakC: 80, holdMin: 60 }, { field: "peakC" }],
    ["a firing of −1 min", "shell-fired", { peakC: 850, holdMin: -1 }, { field: "holdMin" }],
    ["a head in millimetres", "piece-changed", { changes: { headM: 400 } }, { field: "headM" }],
    [
      "a flat without width",
      "piece-changed",
      { changes: { part: { kind: "flat", widthMm: 0, lengthMm: 9 } } },
      { field: "widthMm" },
    ],
    ["a name of blanks", "piece-changed", { changes: { name: "  " } }, { code: "missing", field: "name" }],
    ["no name at all", "piece-changed", { changes: { name: null } }, { code: "missing", field: "name" }],
    ["a note of blanks", "note-written", { text: " " }, { code: "missing", field: "text" }],
    ["giving up without saying why", "piece-scrapped", { reason: "" }, { code: "missing", field: "reason" }],
  ])("%s is refused", (_, type, body, refusal) => {
    const log = testLog();
    log.coat(monday + hourMs);
    expect(refusalOf(log, logging(type, body as EntryBodies[EntryType]))).toMatchObject(refusal);
  });

  test("a piece needs a name that says something", () => {
    const command = {
      do: "log",
      stream: "piece/new",
      type: "piece-started",
      body: { plan: { name: " " }, roomId: "first" },
    } as const;
    expect(refusalOf(testLog(), command)).toEqual({ code: "missing", field: "name" });
  });

  test("a recipe with an impossible dryness or no coats is refused", () => {
    const body = { name: "Own", coats: [], morMPa: 4, safetyFactor: 3, floorMm: 6 };
    const set = (more: object): Command => ({
      do: "log",
      stream: "recipe/own",
      type: "recipe-set",
      body: { ...body, ...more },
    });
    expect(refusalOf(testLog(), set({}))).toMatchObject({ field: "coats", found: 0 });
    const coats = [{ kind: "seal", stuccoId: null, targetDryness: 95 }];
    expect(refusalOf(testLog(), set({ coats }))).toMatchObject({ field: "targetDryness", found: 95 });
    const well = [{ ...coats[0], targetDryness: 0.95 }];
    expect(refusalOf(testLog(), set({ coats: well }))).toBeNull();
    expect(refusalOf(testLog(), set({ coats: well, polymer: true }))).toBeNull();
  });
});

describe("a review", () => {
  const sign = (more: Partial<EntryBodies["review-signed"]>): Command =>
    logging("review-signed", { name: "Ines", verdict: "hold", passed: [], safety: 2.1, ...more });

  test("at hold is passed only with a written reason for every rule", () => {
    const log = testLog();
    log.coat(monday + hourMs);
    const reasons = (second: string): EntryBodies["review-signed"]["passed"] => [
      { rule: "open-crack", reason: "patched, dry" },
      { rule: "wall-too-thin", reason: second },
    ];
    expect(refusalOf(log, sign({}))).toEqual({ code: "hold-without-reason", rules: [] });
    expect(refusalOf(log, sign({ passed: reasons(" ") }))).toEqual({
      code: "hold-without-reason",
      rules: ["wall-too-thin"],
    });
    expect(refusalOf(log, sign({ passed: reasons("packed in sand") }))).toBeNull();
    expect(refusalOf(log, sign({ verdict: "watch" }))).toBeNull();
  });

  test("is signed by someone", () => {
    expect(refusalOf(testLog(), sign({ verdict: "clear", name: "" }))).toEqual({
      code: "missing",
      field: "name",
    });
  });
});

describe("what an entry speaks of", () => {
  test("must be there: a coat, a crack; and only the outer coat can be dipped again", () => {
    const log = testLog();
    const one = log.coat(monday + hourMs);
    const two = log.coat(monday + 5 * hourMs);
    expect(refusalOf(log, logging("coat-redipped", { coatId: one }))).toEqual({
      code: "not-found",
      entryId: one,
    });
    expect(refusalOf(log, logging("coat-redipped", { coatId: two }))).toBeNull();
    const touch = (coatId: string): Command =>
      logging("dryness-seen", { method: "touch", verdict: "dry", coatId });
    expect(refusalOf(log, touch(one))).toBeNull();
    expect(refusalOf(log, touch("e9999"))).toMatchObject({ code: "not-found" });
    expect(refusalOf(log, logging("crack-patched", { crackId: "e9999", how: "" }))).toMatchObject({
      code: "not-found",
    });
  });
});
