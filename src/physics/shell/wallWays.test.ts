import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { headPressurePa, type WallPart } from "./wall.ts";
import { wallVerdict } from "./wallVerdict.ts";
import { wallWays } from "./wallWays.ts";

const limits = { carries: 1.2, marginal: 0.8, thin: 0.4 };
const spreads = { strength: 2, wall: 1.25, head: 1.1 };
const caseOf = (part: WallPart, headM: number, wallMm: number, densityKgM3 = 2400) => ({
  pressurePa: headPressurePa({ densityKgM3, headM }),
  part,
  morMPa: 4,
  spreads,
  wallMm,
  limits,
  floorMm: 0,
  coatMm: 1.23,
});
const plaque: WallPart = { kind: "flat", widthMm: 300, lengthMm: 400 };

describe("ways for a standing plaque of 400 × 300 mm, aluminium, 0.45 m of head, in 9.9 mm", () => {
  const judged = caseOf(plaque, 0.45, 9.9);
  const ways = wallWays(judged, { headM: 0.45 });

  test("it needs 14 mm: four coats of 1.23 mm", () => {
    expect(wallVerdict(judged)).toMatchObject({ word: "fails", neededMm: 14 });
    expect(ways.coats).toBe(4);
  });

  test("by hand: ribs every 190 mm, each field 190 × 300 of 0.555·p·190² in 9.5 mm", () => {
    // β(300/190) = 0.511; 0.511·0.010595·190²·e^0.6054/4 = 89.5, its root 9.46 mm; 200 mm apart: 9.73 mm, over 9.5.
    expect(ways.ribEveryMm).toBe(190);
  });

  test("by hand: a head of 0.20 m or less", () => {
    // 9.5² = 90.25 of 0.4298·p·300²·1.832/4 at p = 2400·9.81·h Pa: h = 0.216 m.
    expect(ways.headM).toBe(0.21);
  });

  test("lying it has 0.15 m of head", () => expect(ways.lyingHeadM).toBeCloseTo(0.15, 9));

  test("by hand: two panels, cut along its length", () => {
    // 200 × 300 needs 9.73 mm; 150 × 400 (β 0.690) 8.7 mm.
    expect(ways.panels).toEqual({ count: 2, widthMm: 150, lengthMm: 400 });
  });

  test("sand saves three coats", () => {
    // At the 0.6 sand leaves on such a span, 13.68 mm come down to 10.6: 11 mm.
    expect(ways.sandCoats).toBe(1);
  });
});

test("a tube has coats and head alone", () => {
  const ways = wallWays(caseOf({ kind: "round", diameterMm: 400 }, 0.8, 7.7, 7800), { headM: 0.8 });
  expect(ways).toMatchObject({ ribEveryMm: null, sandCoats: null, lyingHeadM: null, panels: null });
  expect(ways.headM).toBeGreaterThan(0.4);
});

test("more than six coats are no way", () => {
  expect(wallWays(caseOf(plaque, 1.5, 4), { headM: 1.5 }).coats).toBeNull();
});

const side = fc.integer({ min: 40, max: 900 });

test("each way, taken alone, does carry; a little less of it does not", () =>
  fc.assert(
    fc.property(
      fc.record({ kind: fc.constantFrom("flat" as const, "rim" as const), widthMm: side, lengthMm: side }),
      fc.double({ min: 0.05, max: 1.5, noNaN: true }),
      fc.double({ min: 3, max: 15, noNaN: true }),
      (part, headM, wallMm) => {
        const judged = caseOf(part, headM, wallMm, 7800);
        const found = wallVerdict(judged);
        fc.pre(found.word !== "carries");
        const ways = wallWays(judged, { headM });
        const word = (more: Partial<typeof judged> & { support?: object }): string =>
          wallVerdict({ ...judged, ...more }).word;
        const built = found.likelyMm + (ways.coats ?? 0) * 1.23;
        if (ways.coats !== null) expect(word({ wallMm: built + 0.05 })).toBe("carries");
        if (ways.ribEveryMm !== null) {
          expect(word({ support: { ribEveryMm: ways.ribEveryMm } })).toBe("carries");
          const wider = ways.ribEveryMm + 10;
          if (wider < Math.max(part.widthMm, part.lengthMm))
            expect(word({ support: { ribEveryMm: wider } })).not.toBe("carries");
        }
        if (ways.sandCoats !== null)
          expect(
            word({ support: { sand: "vibrated" }, wallMm: found.likelyMm + ways.sandCoats * 1.23 + 0.05 }),
          ).toBe("carries");
        const atHead = (m: number): string =>
          word({ pressurePa: headPressurePa({ densityKgM3: 7800, headM: m }) });
        if (ways.headM !== null) {
          expect(atHead(ways.headM)).toBe("carries");
          if (ways.headM + 0.01 < headM) expect(atHead(ways.headM + 0.01)).not.toBe("carries");
        }
        if (ways.lyingHeadM !== null) expect(atHead(ways.lyingHeadM)).toBe("carries");
        if (ways.panels !== null) {
          const { widthMm, lengthMm } = ways.panels;
          expect(word({ part: { kind: "flat", widthMm, lengthMm } })).toBe("carries");
        }
      },
    ),
  ));

test("a shell too thin to be handled needs coats, and no lower head, rib or sand is offered in their place", () => {
  const thin = { ...caseOf(plaque, 0.1, 3), floorMm: 6.5 };
  const ways = wallWays(thin, { headM: 0.1 });
  expect(ways).toEqual({
    coats: 3,
    ribEveryMm: null,
    sandCoats: null,
    headM: null,
    lyingHeadM: null,
    panels: null,
  });
  expect(wallWays({ ...thin, floorMm: 0 }, { headM: 0.1 })).not.toEqual(ways);
});
