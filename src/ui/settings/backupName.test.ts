import { expect, test } from "vitest";
import { makeFormat } from "../format/units.ts";
import { backupName } from "./backupName.ts";
import { importWords } from "./importWords.ts";

test("a backup is named for the shop's own clock", () =>
  expect(backupName({ now: Date.UTC(2026, 2, 12, 23, 40), zone: "Europe/Berlin" })).toBe(
    "dipbook-2026-03-13-0040.json",
  ));

test("a damaged entry is told by its place, field, and what was expected there", () =>
  expect(
    importWords(
      { code: "bad-entry", entry: 7, field: "body.rh", expected: "at most 1", found: "55" },
      makeFormat("metric", "en-GB"),
    ),
  ).toBe("Entry 7: found 55 in body.rh, expected at most 1."));
