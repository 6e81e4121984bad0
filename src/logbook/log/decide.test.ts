import { millisecondsInHour as hourMs } from "date-fns/constants";
import { describe, expect, test } from "vitest";
import type { Command, Refusal } from "./command.ts";
import type { EntryBodies, EntryType } from "../entries/entry.ts";
import { schemaVersion } from "../entries/lifts.ts";
import type { TestLog } from "../../../tests/logs/testLog.ts";
import { backup, monday, testLog, testStream } from "../../../tests/logs/testLog.ts";

const day = monday + 24 * hourMs;

function refusalOf(log: TestLog, command: Command, now = day): Refusal | null {
  const decision = log.ask(command, now);
  return decision.ok ? null : decision.refusal;
}
function logging<T extends EntryType>(type: T, body: EntryBodies[T], more: object = {}): Command {
  return { do: "log", stream: testStream, type, body, ...more } as unknown as Command;
}
const dip = (number: number, more: object = {}): Command =>
  logging("coat-dipped", { ...backup, number, step: number - 1 }, more);

describe("one tap, one coat", () => {
  test("a second tap on the same coat finds it already there, with its entry and time", () => {
    const log = testLog();
    const id = log.coat(monday + hourMs);
    expect(refusalOf(log, dip(1))).toEqual({
      code: "already-logged",
      entryId: id,
      at: monday + hourMs,
      number: 1,
    });
    expect(refusalOf(log, dip(2))).toBeNull();
  });

  test("a coat can't leave one out", () => {
    expect(refusalOf(testLog(), dip(3))).toEqual({ code: "coat-out-of-turn", found: 3, expected: 1 });
  });

  test("undoing a coat frees its number again", () => {
    const log = testLog();
    const id = log.coat(monday + hourMs);
    log.run({ do: "strike", stream: testStream, entryId: id, reason: "undo" }, monday + 2 * hourMs);
    expect(log.piece().coats).toEqual([]);
    expect(refusalOf(log, dip(1))).toBeNull();
  });

  test("what is decided is written for now, in this version, on this device, in the stream asked", () => {
    const log = testLog();
    const [entry] = log.run(dip(1, { at: monday + hourMs }), day);
    expect(entry).toMatchObject({
      stream: testStream,
      type: "coat-dipped",
      at: monday + hourMs,
      recordedAt: day,
      zone: "Europe/Lisbon",
      device: "phone",
      version: schemaVersion,
    });
  });
});

describe("times", () => {
  test("five minutes ahead is another clock, six are a slip", () => {
    const log = testLog();
    expect(refusalOf(log, dip(1, { at: day + 5 * 60_000 }))).toBeNull();
    const at = day + 5 * 60_000 + 1;
    expect(refusalOf(log, dip(1, { at }))).toEqual({ code: "in-future", at, now: day });
  });

  test("nothing happens to a piece before it was started", () => {
    const log = testLog();
    expect(refusalOf(log, dip(1, { at: monday }))).toBeNull();
    expect(refusalOf(log, dip(1, { at: monday - 1 }))).toEqual({
      code: "before-start",
      at: monday - 1,
      startedAt: monday,
    });
  });

  test("a time that is no number, or before any log, is out of range", () => {
    const log = testLog();
    expect(refusalOf(log, dip(1, { at: NaN }))).toMatchObject({ code: "out-of-range", field: "at" });
    expect(refusalOf(log, logging("note-written", { text: "x" }, { at: 0 }))).toMatchObject({ field: "at" });
  });

  test("the start itself can be moved back, and forward up to what follows it", () => {
    const log = testLog();
    log.coat(monday + 3 * hourMs);
    const start = log.entries()[0]?.id ?? "";
    const move = (at: number): Command => ({
      do: "correct",
      stream: testStream,
      entryId: start,
      at,
      reason: "began earlier",
    });
    expect(refusalOf(log, move(monday - 48 * hourMs))).toBeNull();
    expect(refusalOf(log, move(monday + 3 * hourMs + 1))).toEqual({
      code: "out-of-order",
      at: monday + 3 * hourMs + 1,
      after: null,
      before: monday + 3 * hourMs,
    });
    log.run(move(monday - 48 * hourMs), day);
    expect(log.piece().startedAt).toBe(monday - 48 * hourMs);
    expect(log.piece().coats).toHaveLength(1);
  });
});

describe("streams", () => {
  const inStream = (stream: string, type: EntryType, body: object): Command =>
    ({ do: "log", stream, type, body }) as unknown as Command;
  const air = { airC: 20, rh: 0.5, air: "still" };

  test("a piece is started once, and has no entries before", () => {
    const log = testLog();
    const body: EntryBodies["piece-started"] = { plan: { name: "Twice" }, roomId: "first" };
    expect(refusalOf(log, logging("piece-started", body))).toEqual({
      code: "already-started",
      stream: testStream,
    });
    expect(refusalOf(log, inStream("piece/other", "note-written", { text: "hello" }))).toEqual({
      code: "no-such-stream",
      stream: "piece/other",
    });
  });

  test("the built-in room and buckets take readings unasked; an unknown one must be named first", () => {
    const log = testLog();
    expect(refusalOf(log, inStream("room/first", "air-read", air))).toBeNull();
    expect(refusalOf(log, inStream("room/attic", "air-read", air))).toMatchObject({ code: "no-such-stream" });
    expect(refusalOf(log, inStream("room/attic", "room-set", { name: "Attic", altitudeM: 0 }))).toBeNull();
    expect(refusalOf(log, inStream("bucket/first-prime", "bucket-read", { cupS: 22 }))).toBeNull();
    expect(refusalOf(log, inStream("bucket/x", "bucket-read", { cupS: 22 }))).toMatchObject({
      code: "no-such-stream",
    });
    expect(refusalOf(log, inStream("shop/own", "shop-figures-set", { morMPa: 5 }))).toBeNull();
  });

  test("an entry does not go into a stream of another kind", () => {
    const log = testLog();
    expect(refusalOf(log, logging("air-read", { airC: 20, rh: 0.5, air: "still" }))).toMatchObject({
      code: "no-such-stream",
    });
    expect(refusalOf(log, inStream("nonsense", "note-written", { text: "x" }))).toMatchObject({
      code: "no-such-stream",
    });
  });
});

describe("phases", () => {
  const pour: EntryBodies["metal-poured"] = { metalC: 1150, shellC: 500, massKg: 4, outOfKilnMin: 2 };

  test("no coat goes round metal, and none on a scrapped shell", () => {
    const log = testLog();
    log.coat(monday + hourMs);
    log.tell("metal-poured", pour, monday + 2 * hourMs);
    expect(refusalOf(log, dip(2))).toMatchObject({ code: "wrong-phase", phase: "poured" });
    const other = testLog();
    other.tell("piece-scrapped", { reason: "fell" }, monday + hourMs);
    expect(refusalOf(other, dip(1))).toMatchObject({ code: "wrong-phase", phase: "scrapped" });
  });

  test("a coat forgotten yesterday can still be told after the pour of today", () => {
    const log = testLog();
    log.coat(monday + hourMs);
    log.tell("metal-poured", pour, monday + 8 * hourMs);
    expect(refusalOf(log, dip(2, { at: monday + 4 * hourMs }))).toBeNull();
  });

  test("a pour without firing is the log's truth; without a coat, or before the last one, it is none", () => {
    const log = testLog();
    expect(refusalOf(log, logging("metal-poured", pour))).toEqual({ code: "missing", field: "coats" });
    log.coat(monday + 3 * hourMs);
    expect(refusalOf(log, logging("metal-poured", pour))).toBeNull();
    expect(refusalOf(log, logging("metal-poured", pour, { at: monday + hourMs }))).toEqual({
      code: "out-of-order",
      at: monday + hourMs,
      after: monday + 3 * hourMs,
      before: null,
    });
  });

  test("nothing is knocked out before it was poured, nor finished before it was knocked out", () => {
    const log = testLog();
    log.coat(monday + hourMs);
    expect(refusalOf(log, logging("shell-knocked-out", {}))).toEqual({
      code: "wrong-phase",
      phase: "coating",
      allowed: ["poured"],
    });
    log.tell("metal-poured", pour, monday + 2 * hourMs);
    expect(refusalOf(log, logging("piece-finished", { note: "" }))).toMatchObject({
      allowed: ["knocked-out"],
    });
    log.tell("shell-knocked-out", {}, monday + 4 * hourMs);
    expect(refusalOf(log, logging("piece-finished", { note: "" }))).toBeNull();
    expect(refusalOf(log, logging("shell-knocked-out", {}))).toMatchObject({ code: "wrong-phase" });
  });

  test("a kiln is read only while it runs, and started once", () => {
    const log = testLog();
    log.coat(monday + hourMs);
    const read = logging("burnout-read", { kilnC: 260 });
    expect(refusalOf(log, read)).toMatchObject({ code: "wrong-phase", allowed: ["burnout"] });
    log.tell("burnout-started", {}, monday + 2 * hourMs);
    expect(refusalOf(log, read)).toBeNull();
    expect(refusalOf(log, logging("burnout-started", {}))).toMatchObject({ code: "wrong-phase" });
    const crack: EntryBodies["crack-found"] = { kind: "open", stage: "burnout", where: "wing" };
    log.tell("crack-found", crack, monday + 3 * hourMs);
    expect(refusalOf(log, read)).toBeNull();
    expect(refusalOf(log, logging("burnout-started", {}))).toMatchObject({ code: "wrong-phase" });
  });

  test("a crack may be found in any phase, even after the piece is finished", () => {
    const log = testLog();
    const crack = logging("crack-found", { kind: "hairline", stage: "other", where: "foot" });
    log.coat(monday + hourMs);
    log.tell("metal-poured", pour, monday + 2 * hourMs);
    log.tell("shell-knocked-out", {}, monday + 3 * hourMs);
    log.tell("piece-finished", { note: "" }, monday + 4 * hourMs);
    expect(refusalOf(log, crack)).toBeNull();
    log.run(crack, day);
    expect(log.piece().phase).toBe("finished");
  });
});
