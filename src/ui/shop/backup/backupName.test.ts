import { expect, test } from "vitest";
import { backupName } from "./backupName.ts";
import { unreadRowWords, countWords, notABackupWords } from "./backupWords.ts";

test("a backup is named for the shop's own clock and the device", () =>
  expect(
    backupName({ now: Date.UTC(2026, 2, 12, 23, 40), zone: "Europe/Berlin", device: "0199b2c4-11fe" }),
  ).toBe("dipbook-2026-03-13-0040-11fe.zip"));

test("a line that can't be read is named by its place, its field and what was expected there", () =>
  expect(
    unreadRowWords({
      place: 7,
      why: "fault",
      fault: { code: "malformed", field: "body.rh", expected: "at most 1", found: "55" },
    }),
  ).toBe("Line 7: found 55 in body.rh, expected at most 1."));

test("a line that was altered is said to be so", () =>
  expect(unreadRowWords({ place: 9, why: "checksum", fault: null })).toBe(
    "Line 9 was altered: its checksum does not fit.",
  ));

test("a file of a newer program asks for an update", () =>
  expect(notABackupWords({ code: "newer-backup", version: 3, known: 2 })).toBe(
    "This backup was made by a newer Dipbook (version 3; this one reads up to 2). Update Dipbook first.",
  ));

test("one is one and many are grouped", () => {
  expect(countWords(1, "entry", "entries", "en-GB")).toBe("1 entry");
  expect(countWords(10_004, "entry", "entries", "en-GB")).toBe("10,004 entries");
});
