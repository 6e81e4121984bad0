import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { learnCoatGains, learnCoatMm } from "./learnedBuild.ts";

const weighing = (i: number, of: { slurryG?: number; stuccoG?: number; kind?: string } = {}) => {
  const { slurryG = 58, stuccoG = 63.5, kind = "backup" } = of;
  return {
    kind,
    atMs: i * 1000,
    areaM2: 0.1,
    dryG: 1180,
    drainedG: 1180 + slurryG,
    stuccoedG: 1180 + slurryG + stuccoG,
    waterFraction: 0.28,
  };
};

describe("gains learned from weighings", () => {
  test("58 g of slurry on a tenth of a square metre are 0.58 kg/m², 0.162 of it water", () => {
    const learned = learnCoatGains([weighing(1)]).get("backup");
    expect(learned?.slurry.kgM2).toBeCloseTo(0.58, 9);
    expect(learned?.stucco.kgM2).toBeCloseTo(0.635, 9);
    expect(learned?.water.kgM2).toBeCloseTo(0.1624, 9);
    expect(learned?.slurry.sdKgM2).toBeNull();
  });

  test("only the last ten of a kind count, in order of time", () => {
    const old = Array.from({ length: 20 }, (_, i) => weighing(i, { slurryG: 90 }));
    const recent = Array.from({ length: 10 }, (_, i) => weighing(100 + i, { slurryG: 60 + i }));
    const learned = learnCoatGains([...recent, ...old]).get("backup");
    expect(learned?.slurry.kgM2).toBeCloseTo(0.645, 9);
    expect(learned?.weighings).toBe(10);
    expect(learned?.slurry.sdKgM2).toBeCloseTo(1.4826 * 0.025, 9);
  });

  test("one slip of the pen moves nothing much, and kinds are kept apart", () => {
    const good = Array.from({ length: 6 }, (_, i) => weighing(i));
    const learned = learnCoatGains([
      ...good,
      weighing(9, { slurryG: 580 }),
      weighing(10, { kind: "prime", slurryG: 30 }),
    ]);
    expect(learned.get("backup")?.slurry.kgM2).toBeCloseTo(0.58, 9);
    expect(learned.get("prime")?.slurry.kgM2).toBeCloseTo(0.3, 9);
  });

  test("a weighing with no slurry or with stucco lost is left out; an area of zero is refused", () => {
    expect(learnCoatGains([weighing(1, { slurryG: -2 }), weighing(2, { stuccoG: -1 })]).size).toBe(0);
    expect(() => learnCoatGains([{ ...weighing(1), areaM2: 0 }])).toThrow(/areaM2/);
  });

  test("the order they come in does not matter", () =>
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 20, max: 90 }), { minLength: 1, maxLength: 15 }), (gains) => {
        const list = gains.map((slurryG, i) => weighing(i, { slurryG }));
        expect(learnCoatGains(list.toReversed())).toEqual(learnCoatGains(list));
      }),
      { numRuns: 50 },
    ));
});

describe("millimetres a coat learned from calipers", () => {
  const startMm = { prime: { mm: 0.45, sdMm: 0.1 }, backup: { mm: 1.05, sdMm: 0.25 } };

  test("without a reading stay the table's, as unsure as it is", () => {
    expect(learnCoatMm({ readings: [], startMm })).toEqual({
      prime: { mm: 0.45, sdMm: 0.1, readings: 0 },
      backup: { mm: 1.05, sdMm: 0.25, readings: 0 },
    });
  });

  test("one reading, worked by hand: 6.9 mm of two primes and four backups where 5.1 was expected", () => {
    const error2 = 0.3 ** 2 + 0.69 ** 2;
    const total = 4 * 0.01 + 16 * 0.0625 + error2;
    const learned = learnCoatMm({ readings: [{ wallMm: 6.9, coats: { prime: 2, backup: 4 } }], startMm });
    expect(learned["backup"]?.mm).toBeCloseTo(1.05 + (4 * 0.0625 * 1.8) / total, 9);
    expect(learned["prime"]?.mm).toBeCloseTo(0.45 + (2 * 0.01 * 1.8) / total, 9);
    expect(learned["backup"]?.sdMm).toBeCloseTo(Math.sqrt(0.0625 - (4 * 0.0625) ** 2 / total), 9);
  });

  test("readings at two stages of many pieces find both kinds again", () => {
    const readings = Array.from({ length: 40 }, (_, i) =>
      i % 2
        ? { wallMm: 2 * 0.6, coats: { prime: 2 } }
        : { wallMm: 2 * 0.6 + 5 * 1.4, coats: { prime: 2, backup: 5 } },
    );
    const learned = learnCoatMm({ readings, startMm });
    expect(learned["prime"]?.mm).toBeCloseTo(0.6, 1);
    expect(learned["backup"]?.mm).toBeCloseTo(1.4, 1);
    expect(learned["backup"]?.sdMm).toBeLessThan(0.06);
  });

  test("more readings never leave it less sure, and their order never matters", () =>
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            wallMm: fc.double({ min: 0.5, max: 20, noNaN: true }),
            coats: fc.record({
              prime: fc.integer({ min: 0, max: 3 }),
              backup: fc.integer({ min: 0, max: 8 }),
            }),
          }),
          { minLength: 1, maxLength: 8 },
        ),
        (readings) => {
          const all = learnCoatMm({ readings, startMm });
          const fewer = learnCoatMm({ readings: readings.slice(1), startMm });
          const turned = learnCoatMm({ readings: readings.toReversed(), startMm });
          for (const kind of ["prime", "backup"]) {
            expect(all[kind]?.sdMm ?? NaN).toBeLessThanOrEqual((fewer[kind]?.sdMm ?? 0) + 1e-12);
            expect(turned[kind]?.mm).toBeCloseTo(all[kind]?.mm ?? NaN, 9);
          }
        },
      ),
      { numRuns: 50 },
    ));

  test("a kind without a starting value is refused by name", () => {
    expect(() => learnCoatMm({ readings: [{ wallMm: 3, coats: { seal: 1 } }], startMm })).toThrow(/seal/);
  });
});
