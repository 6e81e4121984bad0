import { expect, test } from "vitest";
import { dryingSumsVersion } from "../../../logbook/drying/dryingSums.ts";
import type { SaidThen } from "../../../logbook/drying/said.ts";
import { saidThenWords } from "./saidThenWords.ts";
import { makeFormat } from "./units.ts";

const format = makeFormat("metric", "en-GB");
const noon = new Date(2026, 2, 4, 12).getTime();
const tenForty = new Date(2026, 2, 4, 10, 40).getTime();
const said = (more: Partial<SaidThen> = {}): string =>
  saidThenWords(
    {
      coatId: "c",
      saidAt: noon,
      cover: "drying",
      dryness: "wet",
      leftShare: 0.52,
      leftLow: 0.4,
      leftHigh: 0.61,
      neededH: 2,
      sumsVersion: dryingSumsVersion,
      knew: { air: "1 a", checks: "1 b" },
      anew: null,
      ...more,
    },
    noon,
    format,
  );
const anew = (why: NonNullable<SaidThen["anew"]>["why"], leftShare: number | null = 0.61) =>
  ({ leftShare, dryness: "wet", why }) as const;
const later = { of: "air", how: "added", count: 1, at: tenForty } as const;

test("the verdict, and the water left with its band", () => {
  expect(said()).toBe("Said then: not dry, 52% of its water left (40% to 61%).");
  expect(said({ cover: "check", dryness: "maybe" })).toBe(
    "Said then: perhaps dry, 52% of its water left (40% to 61%).",
  );
  expect(said({ leftLow: null, leftHigh: null })).toBe("Said then: not dry, 52% of its water left.");
  expect(said({ cover: "dry", dryness: "dry", leftShare: 0 })).toBe("Said then: dry.");
  expect(said({ cover: "drying", dryness: "dry", leftShare: 0 })).toBe(
    "Said then: dry by the air, minimum drying time not over.",
  );
  expect(said({ cover: "unknown", leftShare: null })).toBe("Said then: dryness not known, no room reading.");
});

test("what is worked out since stands beside it with its reason", () => {
  const then = "Said then: not dry, 52% of its water left (40% to 61%). ";
  expect(said({ anew: anew([later]) })).toBe(
    `${then}With the reading logged later for 10:40: 61% of its water left.`,
  );
  expect(said({ anew: { ...anew([later]), dryness: "dry" } })).toBe(
    `${then}With the reading logged later for 10:40: dry.`,
  );
  expect(said({ anew: anew([{ ...later, of: "checks" }], null) })).toBe(
    `${then}With the check logged later for 10:40: not known.`,
  );
  expect(said({ anew: anew([{ ...later, count: 4, at: null }]) })).toBe(
    `${then}With 4 readings of that time logged later: 61% of its water left.`,
  );
  expect(
    said({
      anew: anew([
        { ...later, how: "struck", at: null },
        { of: "dip", how: "changed", count: 1, at: tenForty },
      ]),
    }),
  ).toBe(
    `${then}With 1 reading of that time deleted since and the dip's time corrected to 10:40: 61% of its water left.`,
  );
  expect(
    said({ sumsVersion: dryingSumsVersion + 1, anew: anew([{ ...later, how: "changed", at: null }]) }),
  ).toBe(`${then}With readings of that time changed since, by newer calculations: 61% of its water left.`);
});
