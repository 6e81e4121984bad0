import { describe, expect, test } from "vitest";
import { findTips } from "../../../geometry/findTips.ts";
import { towers } from "../../../../tests/meshes/testShapes.ts";
import type { Vec3 } from "../../../geometry/vector.ts";
import { upResultsOf } from "./patternResults.ts";
import type { Mark, MarkKind } from "../../../logbook/casting/mark.ts";
import { namedMarks, namedSpots, placesOf, snapped } from "./scenePlaces.ts";

const up: Vec3 = [0, 0, 1];
const limits = { minRise: 2, minVolume: 50 };
const results = upResultsOf(up, {
  tips: findTips({ mesh: towers, up, ...limits }),
  drains: findTips({ mesh: towers, up: [0, 0, -1], ...limits }),
  low: 0,
  high: 50,
});
const mark = (id: string, kind: MarkKind, point: Vec3): Mark => ({
  id,
  kind,
  point,
  normal: null,
  diameterMm: 4,
});
const named = (marks: readonly Mark[]) => {
  const spots = namedSpots({ marks, up }, results);
  return { spots, marks: namedMarks(marks, spots) };
};

describe("places and marks by name", () => {
  test("two towers are V1 and V2, the highest first, and the floor is D1", () => {
    const { spots } = named([]);
    expect(spots.air.map(({ label, spot }) => [label, spot.heightMm])).toEqual([
      ["V1", 50],
      ["V2", 40],
    ]);
    expect(spots.plastic.map(({ label }) => label)).toEqual(["D1"]);
  });

  test("a vent on a tower has the tower's name; one elsewhere has a name of its own", () => {
    const { spots, marks } = named([mark("a", "vent", [30, 20, 20]), mark("b", "vent", [46, 20, 40])]);
    expect(spots.air.map(({ isServed }) => isServed)).toEqual([false, true]);
    expect(marks.map(({ label }) => label)).toEqual(["V3", "V2"]);
  });

  test("a gate on the floor lets plastic out, and no air", () => {
    const { spots } = named([mark("g", "gate", [30, 20, 0])]);
    expect(spots.plastic[0]?.isServed).toBe(true);
    expect(spots.air.some(({ isServed }) => isServed)).toBe(false);
  });

  test("the picture shows a spot until something stands there, and marks always", () => {
    const { spots, marks } = named([mark("b", "vent", [46, 20, 40])]);
    const shown = placesOf(spots, marks, { up, chosen: null, withSpots: true });
    expect(shown.map(({ label, isPut }) => [label, isPut])).toEqual([
      ["V1", false],
      ["D1", false],
      ["V2", true],
    ]);
    expect(placesOf(spots, marks, { up, chosen: "b", withSpots: false })).toMatchObject([{ isChosen: true }]);
  });

  test("the flat under the piece is drawn by its outline, closed", () => {
    const { spots, marks } = named([]);
    const floor = placesOf(spots, marks, { up, chosen: null, withSpots: true }).find(
      ({ label }) => label === "D1",
    )!;
    expect(floor.ridge[0]).toEqual(floor.ridge.at(-1));
    expect(new Set(floor.ridge.map(String)).size).toBe(4);
  });
});

describe("a tap", () => {
  const within = { results, withinMm: 6 };
  test("beside a top puts the vent onto it", () => {
    expect(snapped("vent", { point: [49, 20, 38], normal: [1, 0, 0] }, within)).toEqual({
      point: results.tips[1]!.point,
      normal: null,
    });
  });
  test("far from any stays where it was, and a gate is never moved", () => {
    const side = { point: [60, 20, 10], normal: [1, 0, 0] } as const;
    expect(snapped("vent", side, within)).toBe(side);
    const top = { point: [46, 20, 40], normal: up } as const;
    expect(snapped("gate", top, within)).toBe(top);
  });
});
