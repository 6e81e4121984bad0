import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { makeFormat, usualUnits, type Quantity, type UnitSystem } from "./units.ts";

const quantities: readonly Quantity[] = [
  "temp",
  "tempDiff",
  "mm",
  "m",
  "kg",
  "g",
  "m2",
  "litre",
  "percent",
  "min",
  "s",
  "h",
  "MPa",
  "kPa",
  "density",
  "hPa",
  "gM3",
  "plain",
];
const systems: readonly UnitSystem[] = ["metric", "us", "mixed"];
const some = { quantity: fc.constantFrom(...quantities), units: fc.constantFrom(...systems) };
const value = fc.double({ min: -2000, max: 5000, noNaN: true });

test("a number shown in any unit and read back is the number that was kept", () => {
  fc.assert(
    fc.property(some.units, some.quantity, value, (units, quantity, canonical) => {
      const format = makeFormat(units, "en-GB");
      const back = format.fromShown(quantity, format.toShown(quantity, canonical));
      expect(Math.abs(back - canonical)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(canonical)));
    }),
  );
});

test("more stays more in every unit", () => {
  fc.assert(
    fc.property(
      some.units,
      some.quantity,
      value,
      fc.double({ min: 0.01, max: 100, noNaN: true }),
      (units, quantity, low, more) => {
        const format = makeFormat(units, "en-GB");
        expect(format.toShown(quantity, low + more)).toBeGreaterThan(format.toShown(quantity, low));
      },
    ),
  );
});

describe("US customary", () => {
  const format = makeFormat("us", "en-US");
  // NIST SP 811, appendix B, and arithmetic by hand from it.
  test.each<[Quantity, number, string]>([
    ["temp", 0, "32 °F"],
    ["temp", 100, "212 °F"],
    ["temp", -40, "-40 °F"],
    ["temp", 1150, "2,102 °F"],
    ["tempDiff", 5, "9 °F"],
    ["mm", 25.4, "1 in"],
    ["mm", 6.35, "0.25 in"],
    // A head or a span to a hundredth of an inch at most, a kiln-sized length to the inch, a coat to a thousandth.
    ["mm", 400, "15.75 in"],
    ["mm", 2000, "78.7 in"],
    ["mm", 11_000, "433 in"],
    ["mm", 0.3, "0.012 in"],
    ["kilnL", 120, "4.2 ft³"],
    ["m", 3.048, "10 ft"],
    ["kg", 4.5359237, "10 lb"],
    ["g", 28.349523, "1 oz"],
    ["litre", 3.785411784, "4 qt"],
    ["MPa", 1, "145 psi"],
    ["m2", 0.09290304, "1 ft²"],
    ["hPa", 1013.25, "29.92 inHg"],
    ["percent", 0.455, "46%"],
    ["share", 0.0156, "1.56%"],
    ["mm2", 645.16, "1 in²"],
    ["cm2", 6.4516, "1 in²"],
    ["kgM3", 1601.846337, "100 lb/ft³"],
    ["kgM2", 4.88242764, "1 lb/ft²"],
    ["kgS", 0.45359237, "1 lb/s"],
    // 1 Btu/(h·ft·°F) is 1.730735 W/m·K, 1 Btu/(h·ft²·°F) 5.678263 W/m²·K, 1 Btu/(lb·°F) 4186.8 J/kg·K.
    ["wMK", 1.730735, "1 Btu/(h·ft·°F)"],
    ["wM2K", 567.8263, "100 Btu/(h·ft²·°F)"],
    ["jKgK", 4186.8, "1 Btu/(lb·°F)"],
    ["jKg", 2326, "1 Btu/lb"],
    // No tenth of a degree in a span of heat, no hundredth of an ounce on a heavy weight.
    ["tempDiff", 26, "47 °F"],
    ["tempDiff", 1.7, "3.1 °F"],
    ["g", 1240, "43.7 oz"],
    ["cm3", 163.87064, "10 in³"],
    ["speed", 0.5, "1.6 ft/s"],
    ["kWh", 0.766, "0.77 kWh"],
    ["deg", 7.3, "7°"],
  ])("%s %s reads %s", (quantity, canonical, text) => {
    expect(format.show(quantity, canonical).replace("\u00a0", " ")).toBe(text);
  });
});

test("mixed takes °F and pounds, and leaves the wall in millimetres", () => {
  const format = makeFormat("mixed", "en-CA");
  expect([format.unit("temp"), format.unit("kg"), format.unit("mm"), format.unit("litre")]).toEqual([
    "°F",
    "lb",
    "mm",
    "L",
  ]);
});

test.each([
  ["en-US", "us"],
  ["es-US", "us"],
  ["en-GB", "metric"],
  ["en", "metric"],
  ["de-DE", "metric"],
])("a browser in %s starts in %s units", (locale, units) => expect(usualUnits(locale)).toBe(units));

test("a hair below nothing is not shown as minus nothing", () => {
  expect(makeFormat("metric", "en-GB").show("mm", -0.01)).toBe("0\u00a0mm");
});
