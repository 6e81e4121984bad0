import fc from "fast-check";
import { expect, test } from "vitest";
import { scanFloat } from "./floatScanner.ts";

const scan = (text: string): { value: number; at: number } => {
  const cursor = { at: 0 };
  const bytes = new TextEncoder().encode(text);
  return { value: scanFloat(bytes, 0, bytes.length, cursor), at: cursor.at };
};

const written = fc
  .tuple(
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.nat(20),
    fc.constantFrom("plain", "fixed", "exponent", "precise"),
  )
  .map(([value, digits, way]) => {
    if (way === "fixed") return (value % 1e9).toFixed(digits);
    if (way === "exponent") return value.toExponential(digits);
    return way === "precise" ? value.toPrecision(digits + 1) : String(value);
  });

test("a number reads as JavaScript reads it: to 15 digits to the last bit, beyond to the same 32-bit float", () => {
  fc.assert(
    fc.property(written, (text) => {
      const { value, at } = scan(text);
      expect(at).toBe(text.length);
      const digits = text
        .replace(/e.*/i, "")
        .replace(/^[^1-9]*/, "")
        .replaceAll(/\D/g, "").length;
      if (digits <= 15) expect(value).toBe(Number(text));
      else expect(Math.fround(value)).toBe(Math.fround(Number(text)));
    }),
    { numRuns: 3000 },
  );
});

test("a number halfway between two floats falls to the side its last digits say", () => {
  // 1 + 2⁻²⁴ lies halfway between 1 and the next 32-bit float.
  for (const text of [
    "1.000000059604644775390625",
    "1.00000005960464477539062499",
    "1.00000005960464477539063",
    "1.0000000596046447754",
    "1.0000000596046448",
    "-0.50000002980232240",
  ])
    expect([text, Math.fround(scan(text).value)]).toEqual([text, Math.fround(Number(text))]);
});

test.each(["+1.5", "-.5", "5.", "1E3", "1e+2", "00012.50", "-0"])("%s is a number", (text) => {
  expect(scan(`${text} 7`)).toEqual({ value: Number(text), at: text.length });
});

test.each(["", "-", ".", "e5", "1e", "1,5", "0x10", "nan", "inf", "1.2.3", "--1", "1-2"])(
  "%s is none",
  (text) => {
    expect(scan(text).value).toBeNaN();
  },
);
