import { expect, test } from "vitest";
import { readyWords } from "./readyWords.ts";
import { clockTime } from "./time.ts";

const now = new Date(2026, 2, 4, 12, 0).getTime();
const hours = (h: number): number => now + h * 3_600_000;
const say = (h: number): string => clockTime(hours(h), "en-GB");

const words = (
  early: number | null,
  likely: number | null,
  late: number | null,
  reason: "no-readings" | "air-too-damp" | "beyond-forecast" | null = null,
) => {
  const at = (h: number | null): number | null => (h === null ? null : hours(h));
  return readyWords(
    { readyAt: { early: at(early), likely: at(likely), late: at(late) }, reason },
    now,
    "en-GB",
  );
};

test("a time ahead is told with its spread", () => {
  expect(words(2, 3, 5)).toBe(`likely ${say(3)}, between ${say(2)} and ${say(5)}`);
});

test("an open end is said to be open", () => {
  expect(words(2, 3, null)).toBe(`likely ${say(3)}, not before ${say(2)}, perhaps much later`);
});

test("a coat likely dry is not called dry before its late hour has passed", () => {
  expect(words(-3, -1, 2)).toBe(`likely dry since ${say(-1)}, surely by ${say(2)}`);
  expect(words(-3, -2, -1)).toBe(`dry since ${say(-2)}`);
});

test("where there is no time there is a reason", () => {
  expect(words(null, null, null, "no-readings")).toContain("no reading");
  expect(words(null, null, null, "air-too-damp")).toContain("too damp");
  expect(words(8, null, null, "beyond-forecast")).toMatch(/^not before/);
});
