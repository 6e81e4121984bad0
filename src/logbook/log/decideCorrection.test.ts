import { millisecondsInHour as hourMs } from "date-fns/constants";
import { describe, expect, test } from "vitest";
import type { CorrectCommand, Refusal } from "./command.ts";
import type { TestLog } from "../../../tests/logs/testLog.ts";
import { backup, monday, testLog, testStream } from "../../../tests/logs/testLog.ts";

const day = monday + 24 * hourMs;
const correct = (entryId: string, change: Pick<CorrectCommand, "at" | "body">): CorrectCommand => ({
  do: "correct",
  stream: testStream,
  entryId,
  reason: "slip",
  ...change,
});
function refusalOf(log: TestLog, command: CorrectCommand): Refusal | null {
  const decision = log.ask(command, day);
  return decision.ok ? null : decision.refusal;
}

function threeCoats() {
  const log = testLog();
  const ids = [2, 6, 10].map((h) => log.coat(monday + h * hourMs));
  return { log, one: ids[0] ?? "", two: ids[1] ?? "", three: ids[2] ?? "" };
}

describe("correcting", () => {
  test("strikes the wrong entry and writes the right one in one decision, naming each other", () => {
    const { log, two } = threeCoats();
    const written = log.run(correct(two, { at: monday + 7 * hourMs }), day);
    const replacement = written.find(({ type }) => type === "coat-dipped");
    expect(written).toHaveLength(2);
    expect(written.find(({ type }) => type === "entry-struck")?.body).toEqual({
      struckId: two,
      reason: "slip",
      replacedBy: replacement?.id,
    });
    expect(log.piece().coats.map(({ dippedAt }) => (dippedAt - monday) / hourMs)).toEqual([2, 7, 10]);
    expect(log.piece().coats.map(({ number }) => number)).toEqual([1, 2, 3]);
  });

  test("a coat can't be moved before the one beneath or after the one above; the refusal says where it fits", () => {
    const { log, two } = threeCoats();
    const [after, before] = [monday + 2 * hourMs, monday + 10 * hourMs];
    for (const at of [after - 1, before, before + 1])
      expect(refusalOf(log, correct(two, { at }))).toEqual({ code: "out-of-order", at, after, before });
    expect(refusalOf(log, correct(two, { at: after }))).toBeNull();
    expect(refusalOf(log, correct(two, { at: before - 1 }))).toBeNull();
  });

  test("the first coat stays after the start, the last before tomorrow", () => {
    const { log, one, three } = threeCoats();
    expect(refusalOf(log, correct(one, { at: monday - 1 }))).toMatchObject({ code: "before-start" });
    expect(refusalOf(log, correct(three, { at: day + hourMs }))).toMatchObject({ code: "in-future" });
  });

  test("evidence of a corrected coat stays with it, and so does its second dip", () => {
    const { log, three } = threeCoats();
    log.tell("coat-redipped", { coatId: three }, monday + 11 * hourMs);
    log.tell("dryness-seen", { method: "touch", verdict: "dry", coatId: three }, monday + 15 * hourMs);
    log.run(correct(three, { body: { ...backup, number: 3, step: 2, stuccoId: "20-40" } }), day);
    const coat = log.piece().coats[2];
    expect(coat?.stuccoId).toBe("20-40");
    expect(coat?.redips).toHaveLength(1);
    expect(log.piece().dryness[0]?.coatId).toBe(coat?.id);
  });

  test("undoing a correction leaves the first entry and takes the replacement out", () => {
    const { log, two } = threeCoats();
    const before = log.piece();
    const written = log.run(correct(two, { at: monday + 7 * hourMs }), day);
    const strike = written.find(({ type }) => type === "entry-struck")?.id ?? "";
    log.run({ do: "strike", stream: testStream, entryId: strike, reason: "it was six" }, day + 1);
    expect(log.piece()).toEqual(before);
  });

  test("one type's words don't go in another's place", () => {
    const { log, two } = threeCoats();
    expect(refusalOf(log, correct(two, { body: { wallMm: 5 } }))).toEqual({
      code: "missing",
      field: "number",
    });
    expect(refusalOf(log, correct(two, { body: { ...backup, roomId: "" } }))).toEqual({
      code: "missing",
      field: "room",
    });
  });

  test("a struck entry, a strike and an unknown one can't be corrected", () => {
    const { log, two, three } = threeCoats();
    const [strike] = log.run({ do: "strike", stream: testStream, entryId: three, reason: "undo" }, day);
    expect(refusalOf(log, correct(three, {}))).toEqual({ code: "already-struck", entryId: three });
    expect(refusalOf(log, correct(strike?.id ?? "", {}))).toMatchObject({ code: "not-replaceable" });
    expect(refusalOf(log, correct("e9999", {}))).toEqual({ code: "not-found", entryId: "e9999" });
    expect(refusalOf(log, correct(two, {}))).toBeNull();
  });
});

describe("striking", () => {
  test("a coat in the middle renumbers those above it", () => {
    const { log, one, two, three } = threeCoats();
    log.run({ do: "strike", stream: testStream, entryId: two, reason: "wrong piece" }, day);
    expect(log.piece().coats.map(({ id, number }) => [id, number])).toEqual([
      [one, 1],
      [three, 2],
    ]);
    const again = log.ask({ do: "strike", stream: testStream, entryId: two, reason: "" }, day);
    expect(again).toEqual({ ok: false, refusal: { code: "already-struck", entryId: two } });
  });

  test("a start with coats on it stays; an empty one can go", () => {
    const { log } = threeCoats();
    const start = log.entries()[0]?.id ?? "";
    const undo = { do: "strike", stream: testStream, entryId: start, reason: "undo" } as const;
    expect(log.ask(undo, day)).toEqual({
      ok: false,
      refusal: { code: "start-carries-entries", kind: "piece", entryId: start, count: 3 },
    });
    const fresh = testLog();
    expect(fresh.ask({ ...undo, entryId: fresh.entries()[0]?.id ?? "" }, day).ok).toBe(true);
  });

  test("an entry of another stream is not found here", () => {
    const { log, one } = threeCoats();
    expect(log.ask({ do: "strike", stream: "piece/other", entryId: one, reason: "" }, day)).toEqual({
      ok: false,
      refusal: { code: "not-found", entryId: one },
    });
  });
});
