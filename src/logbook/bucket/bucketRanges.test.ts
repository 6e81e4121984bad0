import { millisecondsInDay as dayMs } from "date-fns/constants";
import { expect, test } from "vitest";
import { later, read, standingAt, start } from "../../../tests/logs/testBucket.ts";
import { bucketRanges } from "./bucketRanges.ts";

const hourMs = 3_600_000;
const rangesOf = (seconds: readonly number[], tops: Parameters<typeof standingAt>[1] = {}) => {
  const readings = seconds.map((cupS, i) => read(`r${i}`, start + dayMs + i * 6 * hourMs, { cupS }));
  const [segment] = standingAt(later, { readings, ...tops }).segments;
  return segment === undefined ? null : bucketRanges(segment);
};
/** Ten readings whose steps are worked out by hand: their mean is 0.2778 s, 3.267 times that 0.9075 s. */
const ten = [22.4, 22.7, 22.5, 22.9, 22.6, 22.8, 22.3, 22.6, 22.7, 22.5];

test("each reading has its step from the one before, the first has none; the limit is 3.267 times their mean", () => {
  const chart = rangesOf(ten);
  expect(chart?.points.map(({ rangeS }) => rangeS && Math.round(rangeS * 10) / 10)).toEqual([
    null,
    0.3,
    0.2,
    0.4,
    0.3,
    0.2,
    0.5,
    0.3,
    0.1,
    0.2,
  ]);
  expect(chart?.meanS).toBeCloseTo(2.5 / 9, 9);
  expect(chart?.limitS).toBeCloseTo((3.267 * 2.5) / 9, 9);
  expect(chart?.points.some(({ isWide }) => isWide)).toBe(false);
});

test("a step beyond the limit is marked; across a top-up there is no step", () => {
  expect(rangesOf([...ten, 25])?.points.at(-1)).toMatchObject({ rangeS: 2.5, isWide: true, place: 10 });
  const top = {
    id: "t",
    at: start + dayMs + 57 * hourMs,
    flourKg: 0,
    solKg: 0,
    waterKg: 1,
    why: "correction",
  } as const;
  expect(rangesOf([...ten, 25], { tops: [top] })?.points.at(-1)).toMatchObject({
    rangeS: null,
    isWide: false,
  });
});

test("under ten readings there is no limit, and with one none to draw", () => {
  expect(rangesOf(ten.slice(0, 9))?.limitS).toBeNull();
  expect(rangesOf(ten.slice(0, 1))).toBeNull();
});
