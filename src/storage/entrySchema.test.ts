import { expect, test } from "vitest";
import first from "../../tests/fixtures/log-v1.json" with { type: "json" };
import second from "../../tests/fixtures/log-v2.json" with { type: "json" };
import { coatBody, hour, line } from "../../tests/fixtures/logLines.ts";
import type { Command } from "../logbook/log/command.ts";
import { decide } from "../logbook/log/decide.ts";
import { compareEntries, type Entry, type EntryBodies, type EntryType } from "../logbook/entries/entry.ts";
import { kindOfType } from "../logbook/entries/entryKinds.ts";
import { schemaVersion } from "../logbook/entries/lifts.ts";
import { bodyFault } from "../logbook/entries/checkBody.ts";
import { ranges } from "../logbook/entries/ranges.ts";
import { parseEntry } from "./entrySchema.ts";

const piece = "piece/p1";
const faultOf = (value: unknown) => {
  const parsed = parseEntry(value);
  return parsed.ok ? null : parsed.fault;
};

/** One log a schema version; never edited once a program has shipped that writes it. */
const logs = [first, second];

test.each(logs)("an old log opens for ever: every line of this one is read", ({ entries }) => {
  expect(entries.map(faultOf).filter((fault) => fault !== null)).toEqual([]);
});

test("the log of the present version has every type of entry, so none is left untried", () => {
  const written = second.entries.filter(({ version }) => version === schemaVersion);
  expect(new Set(written.map(({ type }) => type))).toEqual(new Set(Object.keys(kindOfType)));
});

test("the first log holds what the first program could write", () => {
  expect(first.entries.every(({ version }) => version === 1)).toBe(true);
  expect(new Set(first.entries.map(({ type }) => type)).size).toBe(31);
});

test("a line that was read says what was written, in today's version", () => {
  for (const entry of logs.flatMap(({ entries }) => entries as readonly object[]))
    expect(parseEntry(entry)).toEqual({ ok: true, entry: { ...entry, version: schemaVersion } });
});

test("every line of the second log could be logged today, one after the other", () => {
  const log = (second.entries as unknown as readonly Entry[]).toSorted(compareEntries);
  for (const [i, { stream, type, body, at }] of log.entries()) {
    const command = { do: "log", stream, type, body, at } as unknown as Command;
    // A logger's block is written when its last reading is in.
    const moment = { now: at + 24 * hour, zone: "", device: "", newId: () => "x" };
    const decision = decide(log.slice(0, i), command, moment);
    expect(decision.ok ? null : [type, decision.refusal]).toEqual(
      type === "wall-measured" ? [type, expect.objectContaining({ code: "out-of-range" })] : null,
    );
  }
});

test("a line may carry the mark of its act, and no key beside it", () => {
  const alone = line(piece, "note-written", { text: "a drop" });
  const first = { ...alone, act: { id: alone.id, lines: [alone.id, "other"] } };
  expect(parseEntry(first)).toEqual({ ok: true, entry: { ...first, version: schemaVersion } });
  expect(faultOf({ ...alone, act: { id: alone.id } })).toBeNull();
  expect(faultOf({ ...alone, act: { id: "" } })).toMatchObject({ field: "act.id" });
  expect(faultOf({ ...alone, act: { id: "a", by: "b" } })).toMatchObject({ field: "act" });
});

const good = line(piece, "coat-dipped", coatBody(1));
const bad: readonly (readonly [string, unknown, string])[] = [
  ["null", null, ""],
  ["a list", [], ""],
  ["a text", "coat", ""],
  ["an empty object", {}, "type"],
  ["an unknown type", { ...good, type: "coat-glazed" }, "type"],
  ["the name of a thing every object has", { ...good, type: "constructor" }, "type"],
  ["no id", { ...good, id: "" }, "id"],
  ["an id that never ends", { ...good, id: "x".repeat(65) }, "id"],
  ["a stream that is none", { ...good, stream: "cellar/1" }, "stream"],
  ["a path for a stream", { ...good, stream: "piece/../../1" }, "stream"],
  ["a coat in a room's stream", { ...good, stream: "room/first" }, "stream"],
  ["a time that is no number", { ...good, at: "2026-10-05" }, "at"],
  ["a time that is NaN", { ...good, at: NaN }, "at"],
  ["a time without end", { ...good, at: Infinity }, "at"],
  ["a time before 1970", { ...good, recordedAt: -1 }, "recordedAt"],
  ["a coat without a number", { ...good, body: { ...good.body, number: undefined } }, "body.number"],
  ["a coat of no kind", { ...good, body: { ...good.body, kind: "glaze" } }, "body.kind"],
  ["a note of a million letters", { ...good, body: { ...good.body, note: "x".repeat(1e6) } }, "body.note"],
  ["a field of no meaning beside the body", { ...good, colour: "red" }, ""],
  ["a field of no meaning", { ...good, body: { ...good.body, colour: "red" } }, "body"],
  [
    "a humidity in percent",
    { ...good, stream: "room/r", type: "air-read", body: { airC: 20, rh: 55, air: "still" } },
    "body.rh",
  ],
];
test.each(bad)("%s is not an entry, and the field is named", (_what, value, field) => {
  expect(faultOf(value)?.field).toBe(field);
});

test("a key that would reach an object's prototype is not let in", () => {
  const text = JSON.stringify(good).replace('"body":{', '"body":{"__proto__":{"polluted":true},');
  expect(faultOf(JSON.parse(text))?.field).toBe("body");
});

test("an entry of a newer version is told apart from a broken one", () => {
  expect(faultOf({ ...good, version: 99 })?.code).toBe("newer-version");
});

test("a fault shows a short piece of what was found", () => {
  const fault = faultOf({ ...good, type: "y".repeat(5000) });
  expect(fault?.found.length).toBeLessThanOrEqual(60);
});

type Json = number | string | boolean | null | undefined | readonly Json[] | { readonly [key: string]: Json };

/** Copies of a body, each with one of its numbers at the end of some range or a little off. */
function* stretched(body: Json): Generator<Json> {
  if (typeof body === "number") {
    yield* extremes.filter((value) => Number.isInteger(value) || !Number.isInteger(body));
  } else if (Array.isArray(body)) {
    for (const [i, part] of body.entries())
      for (const other of stretched(part as Json)) yield body.with(i, other) as readonly Json[];
  } else if (typeof body === "object" && body !== null) {
    for (const [key, part] of Object.entries(body))
      for (const other of stretched(part)) yield Object.assign({}, body, { [key]: other });
  }
}
const ends = Object.values(ranges).flatMap(({ low, high }) => [low, high]);
const extremes = [...new Set([...ends, ...ends.map((end) => end + 1), ...ends.map((end) => end - 1), 0.5])];

test("whatever number the logbook takes, the log can be read again", () => {
  let taken = 0;
  for (const entry of second.entries as unknown as readonly Entry[])
    for (const body of stretched(entry.body)) {
      if (bodyFault(entry.type, body as unknown as EntryBodies[EntryType]) !== null) continue;
      taken += 1;
      expect([entry.type, faultOf({ ...entry, body })]).toEqual([entry.type, null]);
    }
  expect(taken).toBeGreaterThan(2000);
});

/** What was added to bodies of the present version since; the fixture's own rows lack it. */
const added: { readonly [T in EntryType]?: EntryBodies[T] } = {
  "melt-started": { hotFurnace: true, weighedKg: 5.2 },
  "piece-changed": {
    changes: {
      part: { kind: "rim", widthMm: 60, lengthMm: 140 },
      support: { ribEveryMm: 70, crownMm: 4, sand: "vibrated", edges: "held" },
      core: { litre: 1.2, densityKgM3: 1500, morMPa: 2, pins: 6, pinMm: 3, mouthMm: 40, depthMm: 150 },
    },
  },
  "pour-decided": {
    go: true,
    name: "R.",
    passed: [{ item: "hold:open-crack", reason: "a scratch" }],
    bound: {
      pourAt: 1_793_248_800_000,
      pieceIds: ["p1"],
      shellC: 600,
      metalC: 1150,
      alloyId: "c87300",
      meltId: null,
      holds: [{ pieceId: "p1", rule: "open-crack", variant: "open", entries: ["e1"] }],
      open: [{ item: "shell-sound", why: ["open-crack"] }],
      ticks: ["e2"],
    },
  },
};

test.each(Object.entries(added))(
  "%s is read with what was added to it, at every end of its ranges",
  (type, body) => {
    const entry = second.entries.find((one) => one.type === type);
    expect(faultOf({ ...entry, body })).toBeNull();
    for (const other of stretched(body))
      if (bodyFault(type as EntryType, other as unknown as EntryBodies[EntryType]) === null)
        expect([other, faultOf({ ...entry, body: other })]).toEqual([other, null]);
  },
);
