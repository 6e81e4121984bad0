import { expect, test } from "vitest";
import { makeFormat } from "../../base/format/units.ts";
import { typedMassG, scaleOf } from "./weighDraft.ts";

const format = makeFormat("metric", "en-GB");
const us = makeFormat("us", "en-US");
const typed = (text: string) => ({ text, isWhole: false });

test("a trailing nought tells the scale, a whole number does not", () => {
  const of = { unit: "g", setG: null, format } as const;
  expect(scaleOf(typed("2410.0"), of)).toBeCloseTo(0.1, 12);
  expect(scaleOf(typed("2410"), of)).toBeUndefined();
  expect(scaleOf({ text: "2410.0", isWhole: true }, of)).toBeUndefined();
  expect(scaleOf(typed("2.410"), { ...of, unit: "kg" })).toBeCloseTo(1, 12);
});

test("the scale that was set counts, unless finer places were typed", () => {
  expect(scaleOf(typed("2410"), { unit: "g", setG: 1, format })).toBe(1);
  expect(scaleOf(typed("2410.0"), { unit: "g", setG: 1, format })).toBeCloseTo(0.1, 12);
  expect(scaleOf(typed("2.4"), { unit: "kg", setG: 1, format })).toBe(1);
  expect(scaleOf(typed("85.1"), { unit: "g", setG: null, format: us })).toBeUndefined();
});

test("kilograms and pounds are grams in the log", () => {
  expect(typedMassG(typed("2.41"), "kg", format)).toBe(2410);
  // 1 lb = 453.59237 g by definition.
  expect(typedMassG(typed("1"), "kg", us)).toBeCloseTo(453.592, 3);
  expect(typedMassG(typed(""), "g", format)).toBeNull();
});
