import { expect, test } from "vitest";
import { coverAt } from "../../../../tests/coverAt.ts";
import type { CoverAnswer } from "../../../logbook/piece/standing.ts";
import { coverLine, coverWhen } from "./coverWords.ts";

const day = (hours: number, minutes = 0): number => new Date(2026, 2, 4, hours, minutes).getTime();
const line = (changes: Partial<CoverAnswer>, now: number): string =>
  coverLine({ ...coverAt({ checkAt: day(12), dryAt: day(12) }), ...changes }, now, "en-GB");

test("where the minimum runs longer than the air, both are told", () => {
  const own = {
    by: "minimum",
    airAt: day(10, 40),
    minimum: { hours: 4, until: day(12), from: "shop" },
  } as const;
  expect(line(own, day(11))).toBe("Dry by the air at 10:40; your minimum runs to 12:00.");
  expect(line(own, day(13))).toBe("Dry by the air at 10:40; your minimum ran to 12:00.");
});

test("touch, weight and fire are told with their time, and no forecast beside it", () => {
  const dry = (by: CoverAnswer["by"], at: number) => line({ by, dryAt: at, state: "dry" }, day(17));
  expect(dry("touch", day(16, 40))).toBe("Dry by touch, 16:40.");
  expect(dry("steady", day(9, 12))).toBe("Dry by weight, 09:12.");
  expect(dry("fire", day(9, 12))).toBe("Dry by fire, 09:12.");
});

test("a touch that is too early says from when one counts", () => {
  const words = (countsFrom: number | null) =>
    line({ checkAt: day(16), dryAt: day(19), touch: { at: day(14, 10), countsFrom } }, day(15));
  expect(words(day(16))).toMatch(/Felt dry at 14:10\. Counts from 16:00: check it again then\.$/);
  expect(words(null)).toMatch(/Felt dry at 14:10\. A touch does not count here: weigh it\.$/);
});

test("ahead, between and without a time it says when to check, how long at most, or why not", () => {
  const say = (at: number): string => new Date(at).getHours().toString();
  const cover = coverAt({ checkAt: day(12), dryAt: day(15) });
  expect(coverWhen(cover, day(11), say)).toBe("check from 12; dry 15 at the latest");
  expect(coverWhen(cover, day(13), say)).toBe("perhaps dry since 12; dry 15 at the latest");
  expect(coverWhen(cover, day(16), say)).toBe("dry since 15");
  const damp = { ...coverAt({ checkAt: null, dryAt: null }), reason: "air-too-damp" } as const;
  expect(coverWhen(damp, day(11), say)).toContain("too damp");
});
