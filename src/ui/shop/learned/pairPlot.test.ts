import { expect, test } from "vitest";
import type { ShopPair } from "../../../logbook/drying/dryingPairs.ts";
import { plotPairs, plotReach, pairTicks } from "./pairPlot.ts";

const pair: ShopPair = {
  pieceId: "p",
  coatId: "c",
  coatNumber: 3,
  dippedAt: 0,
  group: "body/still",
  method: "weighing",
  predictedS: 7200,
  wetAtS: null,
  dryAtS: 50_400,
  weight: 0.3,
};

test("found dry in the morning is a bar open below", () => {
  expect(plotPairs([pair], new Set())).toEqual([
    { coatId: "c", predictedH: 2, wetH: null, dryH: 14, weight: 0.3, isOut: false },
  ]);
  expect(plotPairs([pair], new Set(["c"]))[0]?.isOut).toBe(true);
});

test("both axes run over the same hours and hold every pair", () => {
  const reach = plotReach(plotPairs([pair], new Set()));
  expect(reach.lowH).toBeLessThan(1);
  expect(reach.highH).toBeGreaterThan(14);
  expect(pairTicks(reach)).toEqual([1, 2, 5, 10]);
});
