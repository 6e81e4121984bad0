import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import truth from "../../../tests/truth/slurry.json" with { type: "json" };
import { learnedLoss, lidLeaves, modelLossLDay, movingLossKgM2H, stillLossKgM2H } from "./evaporation.ts";

const over = { airC: 22, rh: 0.5, pressurePa: 101_325, surfaceC: 22 };
const { areaM2, stillGDay, movingGDay, withinG } = truth.evaporation;
const gDay = (kgM2H: number): number => 24_000 * areaM2 * kgM2H;

describe("models", () => {
  test("an open bucket of 30 cm loses 112 g a day in still air and 319 in a breath of it", () => {
    expect(Math.abs(gDay(stillLossKgM2H(over)) - stillGDay)).toBeLessThan(withinG);
    expect(Math.abs(gDay(movingLossKgM2H({ ...over, speedMS: 0.1 })) - movingGDay)).toBeLessThan(withinG);
    expect(Math.abs(gDay(movingLossKgM2H({ ...over, speedMS: 0.3 })) - 371)).toBeLessThan(2.5);
  });

  test("drier air takes more", () => {
    expect(Math.abs(gDay(stillLossKgM2H({ ...over, rh: 0.6 })) - 90)).toBeLessThan(2);
    expect(Math.abs(gDay(stillLossKgM2H({ ...over, rh: 0.4 })) - 136)).toBeLessThan(2);
  });

  test("a surface two kelvin colder loses about a quarter less", () => {
    const share = stillLossKgM2H({ ...over, surfaceC: 20 }) / stillLossKgM2H(over);
    expect(share).toBeGreaterThan(0.73);
    expect(share).toBeLessThan(0.8);
  });

  test("nothing dries in fog, and never below nothing", () => {
    expect(stillLossKgM2H({ ...over, rh: 1 })).toBeCloseTo(0, 9);
    expect(movingLossKgM2H({ ...over, rh: 1, surfaceC: 10, speedMS: 1 })).toBe(0);
    expect(() => stillLossKgM2H({ ...over, rh: 50 })).toThrow(RangeError);
  });

  test("a hot surface under cool air loses more by rising air than by the floor", () => {
    const hot = { ...over, airC: 20, surfaceC: 40 };
    const floor = movingLossKgM2H({ ...hot, speedMS: 0 });
    expect(stillLossKgM2H(hot)).toBeGreaterThan(0.9 * floor);
    expect(gDay(stillLossKgM2H(hot))).toBeGreaterThan(5 * stillGDay);
  });

  test("drier, hotter or windier never loses less", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 0.9, noNaN: true }),
        fc.double({ min: 10, max: 40, noNaN: true }),
        fc.double({ min: 0, max: 2, noNaN: true }),
        (rh, surfaceC, speedMS) => {
          const one = { ...over, rh, surfaceC };
          expect(stillLossKgM2H({ ...one, rh: rh + 0.05 })).toBeLessThanOrEqual(stillLossKgM2H(one));
          expect(stillLossKgM2H({ ...one, surfaceC: surfaceC + 1 })).toBeGreaterThanOrEqual(
            stillLossKgM2H(one),
          );
          expect(movingLossKgM2H({ ...one, speedMS: speedMS + 0.1 })).toBeGreaterThanOrEqual(
            movingLossKgM2H({ ...one, speedMS }),
          );
        },
      ),
      { numRuns: 150 },
    ));

  test("a first guess spans both models, and a lid leaves a tenth", () => {
    const open = modelLossLDay({ areaM2, speedMS: 0.1, lid: "off", over });
    expect(open.lowLDay).toBeCloseTo(0.112, 2);
    expect(open.highLDay).toBeCloseTo(0.319, 2);
    const shut = modelLossLDay({ areaM2, speedMS: 0.1, lid: "on", over });
    expect(shut.highLDay / open.highLDay).toBeCloseTo(lidLeaves, 9);
  });
});

describe("the bucket's own loss", () => {
  const off = (waterL: number, days: number) => ({ waterL, days, lid: "off" as const });

  test("two top-ups say nothing yet, three do", () => {
    expect(learnedLoss({ topUps: [off(1, 5), off(1, 4)], lid: "off" })).toEqual({
      lossLDay: null,
      topUps: 2,
    });
    expect(learnedLoss({ topUps: [off(1, 5), off(1, 4), off(3, 10)], lid: "off" }).lossLDay).toBeCloseTo(
      0.25,
    );
  });

  test("the middle of the last five counts: one spill or one old habit moves nothing", () => {
    const topUps = [off(90, 1), off(90, 1), off(1, 5), off(1, 4), off(50, 1), off(3, 10), off(0.2, 1)];
    expect(learnedLoss({ topUps, lid: "off" }).lossLDay).toBeCloseTo(0.25);
  });

  test("lid on and lid off are learned apart, and a top-up of no days is no rate", () => {
    const topUps = [
      off(1, 5),
      off(1, 4),
      off(3, 10),
      { waterL: 0.1, days: 5, lid: "on" as const },
      off(1, 0),
    ];
    expect(learnedLoss({ topUps, lid: "on" })).toEqual({ lossLDay: null, topUps: 1 });
    expect(learnedLoss({ topUps, lid: "off" }).topUps).toBe(3);
  });
});
