import { expect, test } from "vitest";
import fixture from "../../tests/fixtures/log-v1.json" with { type: "json" };
import { coatBody, line } from "../../tests/fixtures/logLines.ts";
import { kindOfType } from "../logbook/entryKinds.ts";
import { ranges } from "../logbook/ranges.ts";
import { parseEntry } from "./entrySchema.ts";

const piece = "piece/p1";
const faultOf = (value: unknown) => {
  const parsed = parseEntry(value);
  return parsed.ok ? null : parsed.fault;
};

test("an old log opens for ever: every line of a version 1 log is read", () => {
  expect(fixture.entries.map(faultOf).filter((fault) => fault !== null)).toEqual([]);
});

test("the old log has every type of entry, so none is left untried", () => {
  expect(new Set(fixture.entries.map(({ type }) => type))).toEqual(new Set(Object.keys(kindOfType)));
});

test("a line that was read says what was written", () => {
  for (const entry of fixture.entries) expect(parseEntry(entry)).toEqual({ ok: true, entry });
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

test("whatever number the logbook takes, the log can be read again", () => {
  const { airC, altitudeM, metalC, peakC, kilnC, wallMm, densityGCm3, morMPa, headM } = ranges;
  const ends = [0, 1].map(
    (end) => (range: { low: number; high: number }) => (end === 0 ? range.low : range.high),
  );
  for (const of of ends) {
    const lines = [
      line("room/r", "air-read", { airC: of(airC), rh: of(ranges.rh), air: "still" }),
      line("room/r", "room-set", { name: "R", altitudeM: of(altitudeM) }),
      line(piece, "shell-fired", { peakC: of(peakC), holdMin: of(ranges.holdMin) }),
      line(piece, "burnout-read", { kilnC: of(kilnC) }),
      line(piece, "wall-measured", { wallMm: of(wallMm) }),
      line(piece, "dryness-seen", { method: "weight", massG: of(ranges.massG), coatId: "c" }),
      line(piece, "metal-poured", {
        metalC: of(metalC),
        shellC: of(ranges.shellC),
        massKg: of(ranges.metalKg),
        outOfKilnMin: of(ranges.outOfKilnMin),
      }),
      line(piece, "piece-changed", {
        changes: {
          headM: of(headM),
          areaM2: of(ranges.areaM2),
          metalLitre: of(ranges.metalLitre),
          part: { kind: "round", diameterMm: of(ranges.spanMm) },
        },
      }),
      line("bucket/b", "bucket-read", {
        cupS: of(ranges.cupS),
        slurryC: of(ranges.slurryC),
        densityGCm3: of(densityGCm3),
        pH: of(ranges.pH),
      }),
      line("shop/own", "shop-figures-set", { dryingFactor: of(ranges.dryingFactor), morMPa: of(morMPa) }),
      line(piece, "coat-dipped", {
        ...coatBody(of(ranges.coatNumber)),
        step: of(ranges.step),
        drainS: of(ranges.drainS),
      }),
    ];
    for (const one of lines) expect(faultOf(one)).toBeNull();
  }
});
