import { expect, test } from "vitest";
import { lowestPlace } from "./gatePlaces.ts";
import type { Spot } from "./patternResults.ts";

const place = (heightMm: number): Spot => ({
  point: [0, 0, heightMm],
  heightMm,
  ml: 1,
  riseMm: 5,
  shape: "point",
  ridge: [],
  isLast: true,
});

test("a gate at the lowest place stands on the outside, not in the void above it", () => {
  // A ball of 60 mm with a void of 55 mm: the void's own lowest place is listed first.
  expect(lowestPlace({ drains: [place(5), place(0)] })?.heightMm).toBe(0);
  expect(lowestPlace({ drains: [] })).toBeNull();
});
