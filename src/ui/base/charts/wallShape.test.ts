import fc from "fast-check";
import { expect, test } from "vitest";
import { makeFormat } from "../format/units.ts";
import { scaleBar } from "./scaleBar.ts";
import { grainPath, roughEdge } from "./wallShape.ts";

const grains = { seed: 5, leftPx: 100, widthPx: 30, topPx: 0, heightPx: 160, finePx: 8, coarsePx: 14 };

test("a wall is drawn the same each time", () => {
  expect(grainPath(grains)).toBe(grainPath(grains));
  expect(grainPath({ ...grains, seed: 6 })).not.toBe(grainPath(grains));
});

test("coarser sand gives fewer and larger grains", () => {
  const count = (path: string): number => path.split("Z").length - 1;
  expect(count(grainPath({ ...grains, finePx: 16, coarsePx: 28 }))).toBeLessThan(count(grainPath(grains)));
});

test("a rough face stays within its roughness", () => {
  fc.assert(
    fc.property(fc.integer(), fc.double({ min: 0, max: 20, noNaN: true }), (seed, roughPx) => {
      const edge = roughEdge({ seed, heightPx: 160, stepPx: 7, roughPx });
      expect(edge.length).toBeGreaterThan(160 / 7);
      expect(edge.every((x) => x >= 0 && x <= roughPx)).toBe(true);
    }),
  );
});

test("the scale bar is a round length of the person's own unit and never longer than there is room", () => {
  expect(scaleBar(makeFormat("metric", "en-GB"), 3.4)).toEqual({ mm: 2, text: "2\u00a0mm" });
  expect(scaleBar(makeFormat("us", "en-US"), 3.4)).toEqual({ mm: 3.175, text: "1/8 in" });
  fc.assert(
    fc.property(
      fc.double({ min: 0.5, max: 60, noNaN: true }),
      fc.constantFrom("metric" as const, "us" as const),
      (most, units) => {
        expect(scaleBar(makeFormat(units, "en-GB"), most).mm).toBeLessThanOrEqual(most);
      },
    ),
  );
});
