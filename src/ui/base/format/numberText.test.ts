import fc from "fast-check";
import { expect, test } from "vitest";
import { fieldText, parseNumber } from "./numberText.ts";

test.each([
  ["7.5", 7.5],
  ["7,5", 7.5],
  [" 12 ", 12],
  ["1 200", 1200],
  ["-3", -3],
  ["−3", -3],
  [".5", 0.5],
  ["5.", 5],
  ["1,200", 1200],
  ["1,200.5", 1200.5],
])("%j is read as %d where a comma groups thousands", (text, number) => {
  expect(parseNumber(text, "en-US")).toBe(number);
});

test("a comma is the decimal mark where it is written so", () => {
  expect(parseNumber("1,200", "de-DE")).toBe(1.2);
});

test.each(["", "abc", "1.2.3", "12 mm", "1e5", "--4", ".", "-", "NaN", "Infinity"])(
  "%j is no number",
  (text) => {
    expect(parseNumber(text, "en-GB")).toBeNull();
  },
);

test("what a field shows is read back as the same number, to its last digit", () => {
  fc.assert(
    fc.property(
      fc.double({ min: -1e6, max: 1e6, noNaN: true }),
      fc.integer({ min: 0, max: 4 }),
      (value, digits) => {
        const back = parseNumber(fieldText(value, digits), "en-US");
        expect(Math.abs((back ?? Number.NaN) - value)).toBeLessThanOrEqual(0.5 * 10 ** -digits + 1e-9);
      },
    ),
  );
});
