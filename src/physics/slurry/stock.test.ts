import * as fc from "fast-check";
import { expect, test } from "vitest";
import truth from "../../../tests/truth/slurry.json" with { type: "json" };
import {
  dragOutKg,
  firstMakeLeft,
  grownAreaM2,
  massCheck,
  pieceCost,
  pieceMaterial,
  piecesLeft,
  platePickupKgM2,
} from "./stock.ts";
import type { LedgerMove } from "./stockLedger.ts";
import { orderKg, reorderPointKg, stockBalance } from "./stockLedger.ts";

const prime = { slurryKgM2: 0.42, stuccoKgM2: 0.4, buildMm: 0.4 };
const intermediate = { slurryKgM2: 0.6, stuccoKgM2: 0.85, buildMm: 0.75 };
const backup = { slurryKgM2: 0.75, stuccoKgM2: 1.25, buildMm: 1.05 };
const seal = { slurryKgM2: 0.5, stuccoKgM2: 0, buildMm: 0.2 };
const shell = [prime, prime, intermediate, intermediate, intermediate, backup, backup, backup, backup, seal];
const bare = { areaM2: 0.4, coats: shell, slurryLoss: 0.15, stuccoLoss: 0.1, grows: false };

test("a piece of 0.40 m² in ten coats: what it takes, and what that costs", () => {
  const material = pieceMaterial(bare);
  const told = truth.piece;
  expect(Math.abs(material.slurryKg - told.slurryKg)).toBeLessThan(0.005);
  expect(Math.abs(material.slurryWithLossKg - told.slurryWithLossKg)).toBeLessThan(0.005);
  expect(Math.abs(material.stuccoKg - told.stuccoKg)).toBeLessThan(0.005);
  expect(Math.abs(material.stuccoWithLossKg - told.stuccoWithLossKg)).toBeLessThan(0.005);
  const cost = pieceCost({ material, flourShare: 0.6296, prices: { flour: 2, sol: 3, stucco: 1.2 } });
  expect(Math.abs(cost.slurry - told.slurryCost)).toBeLessThan(0.005);
  expect(Math.abs(cost.stucco - told.stuccoCost)).toBeLessThan(0.005);
  expect(Math.abs(cost.total - told.total)).toBeLessThan(0.005);
  expect(cost.total).toBe(cost.slurry + cost.stucco);
});

test("a shell that grows takes more, a small piece by more", () => {
  expect(grownAreaM2({ areaM2: 0.4, wallMm: 6 }) / 0.4 - 1).toBeCloseTo(0.068, 3);
  expect(grownAreaM2({ areaM2: 0.05, wallMm: 6 }) / 0.05 - 1).toBeCloseTo(0.2, 2);
  expect(pieceMaterial({ ...bare, grows: true }).slurryKg).toBeGreaterThan(pieceMaterial(bare).slurryKg);
  // A sphere of 100 mm under 10 mm is a sphere of 120 mm.
  const sphere = (mm: number): number => Math.PI * (mm / 1000) ** 2;
  expect(grownAreaM2({ areaM2: sphere(100), wallMm: 10 })).toBeCloseTo(sphere(120), 12);
});

test("a plate of 200 cm² that gains 4 g carries 0.20 kg/m², 7 g 0.35", () => {
  expect(platePickupKgM2({ gainedG: 4, areaCm2: 200 })).toBeCloseTo(0.2, 12);
  expect(platePickupKgM2({ gainedG: 7, areaCm2: 200 })).toBeCloseTo(0.35, 12);
});

test("a heavier slurry leaves with its density", () => {
  const of = { areaM2: 0.4, pickupKgM2: 0.42, pickupGCm3: 1.68 };
  expect(dragOutKg({ ...of, densityGCm3: 1.68 })).toBeCloseTo(0.168, 12);
  expect(dragOutKg({ ...of, densityGCm3: 2.85 })).toBeCloseTo(0.285, 12);
  expect(dragOutKg({ ...of, areaM2: 0, densityGCm3: 1.68 })).toBe(0);
});

test("pieces left are whole ones, none once the tallest would stand out, and unknown where nothing is taken", () => {
  const of = { volumeL: 18, leastVolumeL: 12 };
  expect(piecesLeft({ ...of, perPieceL: 1.46 })).toBe(4);
  expect(piecesLeft({ ...of, perPieceL: 1.6 })).toBe(3);
  expect(piecesLeft({ ...of, perPieceL: 0.6 })).toBe(10);
  expect(piecesLeft({ volumeL: 11, leastVolumeL: 12, perPieceL: 1 })).toBe(0);
  expect(piecesLeft({ ...of, perPieceL: 0 })).toBeNull();
});

test("a tenth used a week leaves 28 % of the first make after twelve", () =>
  expect(firstMakeLeft({ weeklyShare: 0.1, weeks: 12 })).toBeCloseTo(0.282, 3));

test("five per cent between scale and ledger pass, more asks", () => {
  expect(massCheck({ reckonedKg: 20, weighedKg: 21 })).toMatchObject({ ask: false, differenceKg: 1 });
  expect(massCheck({ reckonedKg: 20, weighedKg: 18.9 }).ask).toBe(true);
  expect(massCheck({ reckonedKg: 20, weighedKg: 21.1 }).ask).toBe(true);
});

test("flour at 6 ± 2 kg a week and three weeks of waiting is ordered at 23.7 kg", () =>
  expect(reorderPointKg({ weeklyKg: 6, weeklySigmaKg: 2, leadWeeks: 3, z: 1.65 })).toBeCloseTo(23.716, 3));

test("the cheapest order balances placing and keeping, and never outlives its shelf life", () => {
  const of = { yearlyKg: 312, perOrder: 25, keepingPerKgYear: 0.5 };
  const { kg } = orderKg(of);
  const yearCost = (order: number): number => (25 * 312) / order + (0.5 * order) / 2;
  expect(yearCost(kg)).toBeLessThan(yearCost(kg * 1.05));
  expect(yearCost(kg)).toBeLessThan(yearCost(kg * 0.95));
  expect(orderKg({ ...of, shelfMonths: 6 })).toEqual({ kg: 156, cappedByShelfLife: true });
  expect(orderKg({ ...of, shelfMonths: 12 })).toEqual({ kg, cappedByShelfLife: false });
});

const move = (kind: LedgerMove["kind"], kg: number): LedgerMove => ({ kind, kg });

test("a ledger takes in, gives out, and believes the count", () => {
  const moves = [move("received", 25), move("made-up", 10.6), move("lost", 0.4), move("counted", 13)];
  const { kg, adjustedKg, wentBelowZero } = stockBalance([...moves, move("dipped-out", 3)]);
  expect(kg).toBeCloseTo(10, 9);
  expect(adjustedKg).toBeCloseTo(-1, 9);
  expect(wentBelowZero).toBe(false);
  expect(stockBalance([move("thrown-away", 1), move("received", 5)]).wentBelowZero).toBe(true);
  expect(() => stockBalance([move("received", -1)])).toThrow(RangeError);
});

test("what came in is what went out, what was found short, and what is there", () =>
  fc.assert(
    fc.property(
      fc.array(
        fc.record({
          kind: fc.constantFrom<LedgerMove["kind"]>(
            "received",
            "made-up",
            "dipped-out",
            "lost",
            "thrown-away",
            "counted",
          ),
          kg: fc.double({ min: 0, max: 100, noNaN: true }),
        }),
        { maxLength: 25 },
      ),
      (moves) => {
        const { kg, adjustedKg } = stockBalance(moves);
        const flow = moves.reduce(
          (sum, each) => sum + (each.kind === "received" ? each.kg : each.kind === "counted" ? 0 : -each.kg),
          0,
        );
        expect(flow + adjustedKg).toBeCloseTo(kg, 6);
      },
    ),
    { numRuns: 150 },
  ));
