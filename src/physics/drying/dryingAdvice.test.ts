import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import truth from "../../../tests/truth/drying.json" with { type: "json" };
import { dryingAdvice } from "./dryingAdvice.ts";
import { saturationPressurePa, vapourPressurePa } from "../air/air.ts";

const airClasses = [
  { id: "still", filmWM2K: 4 },
  { id: "room-fan", filmWM2K: 10 },
  { id: "rack-fan", filmWM2K: 15 },
  { id: "strong", filmWM2K: 25 },
];
const still = { tempC: 22, rh: 0.5, pressurePa: 101_325, filmWM2K: 4, pocketSM: 0 };
const ask = (of: Partial<Parameters<typeof dryingAdvice>[0]> = {}) =>
  dryingAdvice({ coat: truth.coats.backup, air: still, airClasses, isPrime: false, isWax: true, ...of });
const kinds = (said: ReturnType<typeof ask>) =>
  said.advice.map(({ remedy }) => (remedy.kind === "air-class" ? remedy.id : remedy.kind));

describe("what would help", () => {
  test("a backup in still air is ready in 4.19 h, under a fan in 2.27: the hours of the table", () => {
    const said = ask();
    expect(said.hoursNow).toBeCloseTo(4.19, 1);
    const fan = said.advice.find(({ remedy }) => remedy.kind === "air-class" && remedy.id === "rack-fan");
    expect(Math.abs((fan?.hours ?? NaN) - 2.27)).toBeLessThan(0.07);
    expect(Math.abs((fan?.savedHours ?? NaN) - 1.92)).toBeLessThan(0.1);
  });

  test("is ranked by hours saved, and holds only what helps", () => {
    const said = ask();
    const saved = said.advice.map(({ savedHours }) => savedHours ?? NaN);
    expect(saved).toEqual(saved.toSorted((a, b) => b - a));
    expect(Math.min(...saved)).toBeGreaterThan(0);
    expect(kinds(said)).toEqual(["strong", "rack-fan", "room-fan", "warmer", "dehumidified"]);
    expect(kinds(ask({ air: { ...still, rh: 0.4, filmWM2K: 25 } }))).toEqual(["warmer"]);
  });

  test("a heater keeps the vapour: 3 K warmer at 22 °C and 50 % is 41.7 %", () => {
    const warm = ask().advice.find(({ remedy }) => remedy.kind === "warmer");
    expect(warm?.air.tempC).toBe(25);
    expect(warm?.air.rh).toBeCloseTo((0.5 * 2643.9) / 3169.7, 2);
    const vapourPa = (warm?.air.rh ?? NaN) * saturationPressurePa(25);
    expect(vapourPa).toBeCloseTo(vapourPressurePa(still), 6);
  });

  test("in a pocket air led in beats any fan on the room", () => {
    const said = ask({ air: { ...still, filmWM2K: 15, pocketSM: 1800 } });
    expect(kinds(said).slice(0, 2)).toEqual(["air-into-pocket", "opened-downwards"]);
    expect(said.advice[0]?.savedHours).toBeGreaterThan(6);
    const strong = said.advice.find(({ remedy }) => remedy.kind === "air-class");
    expect(strong?.savedHours).toBeLessThan(1);
  });

  test("in air over 80 % nothing but drier air makes it ready at all", () => {
    const said = ask({ air: { ...still, rh: 0.86, filmWM2K: 15 } });
    expect(said.hoursNow).toBeNull();
    expect(kinds(said)).toEqual(["dehumidified", "warmer"]);
    expect(said.advice.every(({ hours, savedHours }) => hours !== null && savedHours === null)).toBe(true);
  });

  test("a shop that is slower saves as many more hours, in the same order", () => {
    const plain = ask();
    const slow = ask({ factor: 1.5 });
    expect(kinds(slow)).toEqual(kinds(plain));
    expect(slow.advice[0]?.savedHours).toBeCloseTo(1.5 * (plain.advice[0]?.savedHours ?? NaN), 9);
  });

  test("water left counts, not the water it began with", () => {
    const late = ask({ coat: { ...truth.coats.backup, waterKgM2: 0.03 } });
    expect(late.hoursNow).toBeLessThan(2.3);
    expect(kinds(late).at(0)).not.toBe("room-fan");
  });

  test("never advises what takes longer, in any air", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 8, max: 32, noNaN: true }),
        fc.double({ min: 0.2, max: 0.95, noNaN: true }),
        fc.constantFrom(4, 10, 25),
        fc.constantFrom(0, 300, 6000),
        (tempC, rh, filmWM2K, pocketSM) => {
          const { hoursNow, advice } = ask({ air: { ...still, tempC, rh, filmWM2K, pocketSM } });
          for (const { hours } of advice) expect(hours ?? NaN).toBeLessThan(hoursNow ?? Infinity);
        },
      ),
      { numRuns: 60 },
    ));
});

describe("cautions for a prime coat", () => {
  const prime = { coat: truth.coats["prime 1"], air: { ...still, rh: 0.65 }, isPrime: true };
  const codes = (said: ReturnType<typeof ask>, kind: string) =>
    said.advice
      .find(({ remedy }) => remedy.kind === kind || (remedy.kind === "air-class" && remedy.id === kind))
      ?.cautions.map(({ code }) => code);

  test("warming moves the wax; drying the room dries the face too fast; a fan on the rack comes too early", () => {
    const said = ask(prime);
    expect(codes(said, "warmer")).toEqual(["wax-moves", "too-dry-for-face"]);
    expect(codes(said, "dehumidified")).toEqual(["wet-coat-cools", "too-dry-for-face"]);
    expect(codes(said, "room-fan")).toEqual([]);
    expect(codes(said, "rack-fan")).toEqual(["hard-air-early"]);
  });

  test("carry their numbers", () => {
    const said = ask({ ...prime, air: { ...still, rh: 0.5 } });
    const fan = said.advice.find(({ remedy }) => remedy.kind === "air-class" && remedy.id === "rack-fan");
    expect(fan?.cautions).toContainEqual({
      code: "wet-coat-cools",
      dropK: expect.closeTo(6.26, 1),
      mostK: 5,
    });
  });

  test("a plastic pattern does not mind warmth, and a backup coat minds nothing", () => {
    expect(codes(ask({ ...prime, isWax: false }), "warmer")).toEqual(["too-dry-for-face"]);
    expect(ask({ ...prime, isPrime: false }).advice.every(({ cautions }) => cautions.length === 0)).toBe(
      true,
    );
  });
});
