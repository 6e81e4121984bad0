import { expect, test } from "vitest";
import { catalogue, params, plural } from "./catalogue.ts";

const t = catalogue("test/catalogue", {
  plain: "In range",
  said: params("{coat} came from “{bucket}”, {bucket}."),
  many: plural({ one: "{count} coat", other: "{count} coats" }),
});

test("a text is filled by name, each place of it", () => {
  expect(t.plain).toBe("In range");
  expect(t.said({ coat: "Coat 2", bucket: "Tall" })).toBe("Coat 2 came from “Tall”, Tall.");
});

test("what a maker wrote is put in as it is written", () => {
  expect(t.said({ coat: "$& {bucket}", bucket: "$1 {coat}" })).toBe(
    "$& {bucket} came from “$1 {coat}”, $1 {coat}.",
  );
});

test("a number is written by the language, and its text goes by the plural rules", () => {
  expect([0, 1, 2, 1200].map(t.many)).toEqual(["0 coats", "1 coat", "2 coats", "1,200 coats"]);
  expect(t.said({ coat: 1200, bucket: "Tall" })).toMatch(/^1,200 came/);
});
