import { expect, test } from "vitest";
import { makeFormat } from "../format/units.ts";
import { check, withoutEmpty } from "../log/gate.ts";
import { bucketSchema, noReading, readingSchema } from "./bucketForm.ts";

const metric = readingSchema(makeFormat("metric", "en-GB"));

test("a cup time alone is a reading, and only what was measured is kept", () => {
  const read = check(metric, { ...noReading, cup: "No. 4", cupS: 22.5 });
  expect(read.ok && withoutEmpty(read.value)).toEqual({ cup: "No. 4", cupS: 22.5 });
});

test("an empty reading is refused, naming a cup does not fill it", () => {
  const read = check(metric, { ...noReading, cup: "No. 4" });
  expect(!read.ok && read.errors["cupS"]).toMatch(/^Found nothing to log/);
});

test("slurry at 350 °F is told in the unit it was typed in", () => {
  const read = check(readingSchema(makeFormat("us", "en-US")), { ...noReading, slurryC: (350 - 32) / 1.8 });
  expect(!read.ok && read.errors["slurryC"]).toMatch(
    /Found 350\s°F for the slurry temperature, expected 14\s°F to 140\s°F/,
  );
});

test("a bucket needs a name and what it is for", () => {
  const read = check(bucketSchema, { name: " ", use: null, slurry: "" });
  expect(!read.ok && Object.keys(read.errors)).toEqual(["name", "use"]);
});
