import { describe, expect, test } from "vitest";
import { carryOver, coatDepthM, readyWaterKgM2 } from "./coat.ts";

describe("depth to be dried", () => {
  test.each([
    ["a first prime", 0.5, 0, 0.0005],
    ["a second prime", 0.5, 0.5, 0.001],
    ["a third coat", 1, 1, 0.002],
    ["a backup on a thick wall", 1, 5, 0.0035],
  ])("%s has its own and what it soaks into, at most 2.5 mm of it", (_, coatMm, beneathMm, depthM) => {
    expect(coatDepthM({ coatMm, beneathMm })).toBeCloseTo(depthM, 12);
  });

  test("metres given for millimetres go unnoticed, but nonsense does not", () => {
    expect(() => coatDepthM({ coatMm: -1, beneathMm: 0 })).toThrow(/coatMm/);
    expect(() => coatDepthM({ coatMm: 1, beneathMm: NaN })).toThrow(/beneathMm/);
  });
});

describe("a coat on a damp one", () => {
  test("starts with both waters, the critical one keeping its share", () => {
    const { waterKgM2, criticalKgM2 } = carryOver({ leftKgM2: 0.05, newKgM2: 0.2, criticalShare: 0.6 });
    expect(waterKgM2).toBeCloseTo(0.25, 12);
    expect(criticalKgM2).toBeCloseTo(0.15, 12);
  });

  test("on a dry one starts with its own", () => {
    expect(carryOver({ leftKgM2: 0, newKgM2: 0.2, criticalShare: 0.6 }).waterKgM2).toBe(0.2);
    expect(() => carryOver({ leftKgM2: 50, newKgM2: 200, criticalShare: 0.6 })).toThrow(/not g/);
  });
});

test("a coat is ready at the water its dry share leaves", () => {
  expect(
    readyWaterKgM2({ waterKgM2: 0.2, criticalKgM2: 0.12, depthM: 0.0035, dryFraction: 0.95 }),
  ).toBeCloseTo(0.006, 12);
});
