import { expect, test } from "vitest";
import { backupDue } from "./backupDue.ts";

const day = 86_400_000;
const made = { at: 0, name: "a.zip", logEntries: 100, entries: 100, photos: 0 };
const set = { lastBackup: made, remindDays: 14, remindEntries: 300 };
const log = (over: object) => ({ now: day, entries: 101, firstAt: 0, ...over });

test("after the days that were set, and not a day before", () => {
  expect(backupDue(set, log({ now: 14 * day - 1 }))).toBeNull();
  expect(backupDue(set, log({ now: 14 * day }))).toEqual({ days: 14, entries: 1 });
});

test("after the entries that were set, and not one before", () => {
  expect(backupDue(set, log({ entries: 399 }))).toBeNull();
  expect(backupDue(set, log({ entries: 400 }))).toEqual({ days: 1, entries: 300 });
});

test("never while nothing was logged since", () =>
  expect(backupDue(set, log({ now: 1000 * day, entries: 100 }))).toBeNull());

test("never where it is switched off", () =>
  expect(
    backupDue({ ...set, remindDays: 0, remindEntries: 0 }, log({ now: 1000 * day, entries: 9000 })),
  ).toBeNull());

test("without any backup the days count from the first entry", () => {
  const none = { ...set, lastBackup: null };
  expect(backupDue(none, log({ now: 14 * day, entries: 5 }))).toEqual({ days: null, entries: 5 });
  expect(backupDue(none, log({ now: 3 * day, entries: 5 }))).toBeNull();
});
