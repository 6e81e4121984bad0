import { expect, test } from "vitest";
import { bucketSpans } from "./bucketSpans.ts";

const local = (day: number, hour: number, minute = 0): number =>
  new Date(2026, 2, day, hour, minute).getTime();
const usual = [
  { fromMin: 480, toMin: 600 },
  { fromMin: 1020, toMin: 1260 },
];

test("two spells a day for two days, the one under way cut to what is left of it", () => {
  const spans = bucketSpans(usual, { from: local(4, 18), to: local(6, 18) });
  expect(spans).toEqual([
    { from: local(4, 18), to: local(4, 21) },
    { from: local(5, 8), to: local(5, 10) },
    { from: local(5, 17), to: local(5, 21) },
    { from: local(6, 8), to: local(6, 10) },
    { from: local(6, 17), to: local(6, 18) },
  ]);
});

test("a spell over midnight is one, also when it began yesterday", () => {
  const night = [{ fromMin: 22 * 60, toMin: 2 * 60 }];
  expect(bucketSpans(night, { from: local(4, 1), to: local(5, 1) })).toEqual([
    { from: local(4, 1), to: local(4, 2) },
    { from: local(4, 22), to: local(5, 1) },
  ]);
});

test("no hours and empty hours are no time at the bucket", () => {
  expect(bucketSpans([], { from: local(4, 1), to: local(5, 1) })).toEqual([]);
  expect(bucketSpans([{ fromMin: 60, toMin: 60 }], { from: local(4, 0), to: local(6, 0) })).toEqual([]);
});
