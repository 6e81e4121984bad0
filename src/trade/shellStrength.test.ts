import { expect, test } from "vitest";
import { dampLoadShare, firstFireMPa, greenStrengthShare, hotStrengthShare } from "./shellStrength.ts";

test("a tenth of the water left costs nothing, a third of it all, between them a straight line", () => {
  const at = (leftShare: number | null, isWallMeasured = false) =>
    dampLoadShare({ leftShare, isWallMeasured });
  expect([at(0), at(0.1), at(0.35), at(1)]).toEqual([1, 1, 0.5, 0.5]);
  expect(at(0.225)).toBeCloseTo(0.75, 12);
  expect([at(0.35, true), at(0.8, true), at(null, true), at(null)]).toEqual([0.65, 0.65, 0.65, 0.5]);
  expect(at(0.225, true)).toBeCloseTo(0.825, 12);
});

test("more water left never leaves more strength, and a measured wall never bears less than one from the table", () => {
  let [table, measured] = [1, 1];
  for (let left = 0; left <= 1; left += 0.01) {
    const now = dampLoadShare({ leftShare: left, isWallMeasured: false });
    const own = dampLoadShare({ leftShare: left, isWallMeasured: true });
    expect(now).toBeLessThanOrEqual(table);
    expect(own).toBeLessThanOrEqual(measured);
    expect(own).toBeGreaterThanOrEqual(now);
    [table, measured] = [now, own];
  }
});

test("polymer helps before the first fire and costs while hot; a recipe that does not say has none", () => {
  expect([greenStrengthShare(true), hotStrengthShare(true)]).toEqual([1.6, 0.65]);
  expect([greenStrengthShare(false), greenStrengthShare(undefined)]).toEqual([1, 1]);
  expect([hotStrengthShare(false), hotStrengthShare(undefined)]).toEqual([1, 1]);
  expect(firstFireMPa(greenStrengthShare(true))).toBeCloseTo(0.56, 9);
});
