import { expect, test } from "vitest";
import type { PlannedStep } from "../../../physics/metal/pourDay.ts";
import { tracksWindow } from "./tracksWindow.ts";

/** Tracks that begin so many minutes before a pour at 10 000. */
const begun = (...minutes: readonly number[]) =>
  minutes.map((before) => ({
    steps: [{ id: "a", state: "waiting", startAt: 10_000 - before, endAt: 10_000 } as PlannedStep],
  }));

test("tracks of like length are all drawn, from the first to begin", () => {
  expect(tracksWindow(begun(120, 100, 60, 30), 10_000)).toEqual({ from: 9880, whole: 9880 });
});

test("a kiln of 34 hours is cut off at the edge: the two hours of the others fill the frame", () => {
  expect(tracksWindow(begun(2040, 110, 90, 45), 10_000)).toEqual({ from: 9890, whole: 7960 });
});

test("one track alone is drawn whole, and none is the pour itself", () => {
  expect(tracksWindow(begun(600), 10_000)).toEqual({ from: 9400, whole: 9400 });
  expect(tracksWindow([], 10_000)).toEqual({ from: 10_000, whole: 10_000 });
});
