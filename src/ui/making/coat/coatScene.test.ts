import { millisecondsInHour as hourMs } from "date-fns/constants";
import { expect, test } from "vitest";
import type { CoatPicture } from "../../../logbook/drying/coatPicture.ts";
import { marksOf, momentAt, scrubbed } from "./coatScene.ts";

const picture: CoatPicture = {
  from: 0,
  judgedAt: 2 * hourMs,
  isOuter: true,
  startKgM2: 0.2,
  readyKgM2: 0.006,
  points: [
    { at: 0, low: 0.2, median: 0.2, high: 0.2 },
    { at: 2 * hourMs, low: 0.04, median: 0.08, high: 0.12 },
    { at: 4 * hourMs, low: 0, median: 0.006, high: 0.05 },
  ],
  air: [
    { at: 0, airC: 20, rh: 0.6 },
    { at: 2 * hourMs, airC: 22, rh: 0.5 },
  ],
  pulls: [
    {
      seenId: "e1",
      at: hourMs,
      said: { by: "touch", saw: "damp" },
      without: { low: 0, median: 0, high: 0, dryChance: 0 },
      apart: 0,
    },
  ],
  model: null,
  all: null,
  next: null,
};

test("any moment between the points can be read, the air only where it was read", () => {
  const moment = momentAt(picture, hourMs);
  expect([moment.low, moment.median, moment.high].map((kgM2) => Math.round(kgM2 * 1e6))).toEqual([
    120_000, 140_000, 160_000,
  ]);
  expect(moment.airC).toBeCloseTo(21, 9);
  expect(moment.rh).toBeCloseTo(0.55, 9);
  const later = momentAt(picture, 3 * hourMs);
  expect(later).toMatchObject({ airC: null, rh: null });
  expect(later.median).toBeCloseTo(0.043, 9);
});

test("a check without a figure of its own stands on the curve, with its letter", () => {
  expect(marksOf(picture)).toEqual([
    { key: "e1 touch", at: hourMs, letter: "T", waterKgM2: 0.14, isOwn: false, sdKgM2: null },
  ]);
});

test("arrow keys walk along it and stay within", () => {
  const span = { from: 0, to: 60, isBig: false };
  expect(scrubbed(10, "ArrowRight", span)).toBe(11);
  expect(scrubbed(10, "ArrowLeft", { ...span, isBig: true })).toBe(5);
  expect(scrubbed(59.5, "ArrowRight", span)).toBe(60);
  expect(scrubbed(10, "a", span)).toBeNull();
});
