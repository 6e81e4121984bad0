import { expect, test } from "vitest";
import { cupMean, steadiness } from "./cupReading.ts";

test("two dips that agree are their mean; more than 8 % apart they ask for a third", () => {
  expect(cupMean([])).toEqual({ meanS: null, spread: null, ask: "first" });
  expect(cupMean([12.4])).toEqual({ meanS: 12.4, spread: null, ask: "second" });
  const close = cupMean([12.0, 12.9]);
  expect(close.ask).toBeNull();
  expect(close.meanS).toBeCloseTo(12.45, 9);
  expect(cupMean([12.0, 13.1]).ask).toBe("third");
  // 9.6 and 10.4 lie exactly 8 % of 10 apart.
  expect(cupMean([9.6, 10.4]).ask).toBeNull();
});

test("of three dips the two nearest each other count", () => {
  expect(cupMean([12.0, 13.6, 12.2]).meanS).toBeCloseTo(12.1, 9);
  expect(cupMean([12.0, 13.6, 13.4]).meanS).toBeCloseTo(13.5, 9);
  expect(cupMean([12.0, 13.6, 12.2]).ask).toBeNull();
});

test("three readings an hour apart within 5 % are steady; two, or all within minutes, can't say", () => {
  const at = (hours: number, seconds: number) => ({ hours, seconds });
  expect(steadiness([at(0, 20), at(1, 20.4), at(2, 20.8)])).toMatchObject({ steady: true, readings: 3 });
  expect(steadiness([at(0, 20), at(1, 20.4), at(2, 21.4)])).toMatchObject({ steady: false });
  expect(steadiness([at(0, 20), at(1, 20)])).toMatchObject({ steady: null, readings: 2 });
  expect(steadiness([at(0, 20), at(0.1, 20), at(0.2, 20)])).toMatchObject({ steady: null, readings: 1 });
  expect(steadiness([at(9, 20), at(0, 40), at(7, 20.1), at(8, 20.2)]).steady).toBe(true);
});
