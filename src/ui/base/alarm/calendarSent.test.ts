import { expect, test } from "vitest";
import { sentWith } from "./calendarSent.ts";

const noon = Date.UTC(2026, 4, 9, 12);

test("what was given is remembered beside what is still waited for, whatever source it came from", () => {
  const before = { "heron-coat-4": noon - 60_000, "r-tray-out-2": noon + 60_000, "gone-coat-1": noon - 1 };
  const standing = [{ id: "heron-coat-4", dueMs: noon }];
  const given = [{ id: "p-pour", dueMs: noon + 5 }];
  expect(sentWith(before, { given, standing, now: noon })).toEqual({
    "heron-coat-4": noon - 60_000,
    "r-tray-out-2": noon + 60_000,
    "p-pour": noon + 5,
  });
});

test("a time given again takes the place of the old one", () => {
  expect(
    sentWith({ "p-pour": noon }, { given: [{ id: "p-pour", dueMs: noon + 9 }], standing: [], now: noon }),
  ).toEqual({ "p-pour": noon + 9 });
});
