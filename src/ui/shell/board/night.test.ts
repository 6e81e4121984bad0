import { expect, test } from "vitest";
import { isNight } from "./night.ts";

const at = (hour: number, minute = 0): number => hour * 60 + minute;

test.each([
  [at(5, 59), true],
  [at(6), false],
  [at(12), false],
  [at(21, 59), false],
  [at(22), true],
  [at(0), true],
])("at minute %i of the day the board is dark: %s", (minute, isDark) => {
  expect(isNight(minute, [])).toBe(isDark);
});

test("it stays bright while somebody is at the bucket, over midnight too", () => {
  const late = [{ fromMin: at(20), toMin: at(23) }];
  expect(isNight(at(22, 30), late)).toBe(false);
  expect(isNight(at(23), late)).toBe(true);
  const shift = [{ fromMin: at(22), toMin: at(2) }];
  expect(isNight(at(23), shift)).toBe(false);
  expect(isNight(at(1, 59), shift)).toBe(false);
  expect(isNight(at(2), shift)).toBe(true);
});
