import { describe, expect, test } from "vitest";
import type { Lift } from "./lifts.ts";
import { liftEntry, lifts, liftThrough, schemaVersion } from "./lifts.ts";

/** Two invented changes: a key renamed, then a figure brought to another unit. */
const planted: readonly Lift[] = [
  { to: 2, name: "kiln → kilnC", lift: ({ kiln, ...rest }) => ({ ...rest, kilnC: kiln }) },
  {
    to: 3,
    name: "°F → °C",
    lift: (entry) => ({ ...entry, kilnC: (Number(entry["kilnC"]) - 32) / 1.8 }),
  },
];

describe("an entry of an older version", () => {
  test("goes through every change since, in order", () => {
    expect(liftThrough(planted, { version: 1, kiln: 212, id: "a" })).toEqual({
      version: 3,
      kilnC: 100,
      id: "a",
    });
  });

  test("goes through the later ones only, when it was written in between", () => {
    expect(liftThrough(planted, { version: 2, kilnC: 212 })).toEqual({ version: 3, kilnC: 100 });
  });

  test("is left alone when it is of this version, or of a newer one than this program knows", () => {
    const now = { version: 3, kilnC: 100 };
    const newer = { version: 7, kiln: 5 };
    expect(liftThrough(planted, now)).toBe(now);
    expect(liftThrough(planted, newer)).toBe(newer);
  });

  test("is never changed in place", () => {
    const stored = Object.freeze({ version: 1, kiln: 212 });
    liftThrough(planted, stored);
    expect(stored).toEqual({ version: 1, kiln: 212 });
  });
});

test.each([null, 7, "text", [], {}, { version: "1" }, { version: 0 }, { version: 1.5 }])(
  "%j is no entry and comes back for the gate to refuse",
  (stored) => {
    expect(liftThrough(planted, stored)).toBe(stored);
  },
);

test("a list with a gap in its numbers is refused", () => {
  expect(() => liftThrough(planted.slice(1), { version: 1 })).toThrow(/must lead to version 2, found 3/);
});

test("the version written is one more than the changes there have been, and the shipped list has no gap", () => {
  expect(schemaVersion).toBe(lifts.length + 1);
  expect(() => liftEntry({ version: 1 })).not.toThrow();
});
