import * as fc from "fast-check";
import { expect, test } from "vitest";
import { alloyOf, alloys } from "../../trade/metals/alloys.ts";
import type { PatternMeasured } from "../entries/pieceBodies.ts";
import { chainSum } from "./chainSum.ts";
import { emptyLink, gatingDraftOf, type GatingDraft } from "./gatingDraft.ts";
import { knockoutFloor } from "./knockoutFloor.ts";

const bronze = alloyOf("c90300")!;
const meshOf = (thinnestMm: number | null, thickestMm: number | null) =>
  ({ thinnestMm, thickestMm }) as PatternMeasured;
const draftOf = (mesh: PatternMeasured | null): GatingDraft =>
  gatingDraftOf({ metalKg: 4, headM: 0.2, mesh, shellMm: 8 });
const sumOf = (draft: GatingDraft, alloy = bronze) =>
  chainSum({ draft, alloy, figures: alloy, metalC: alloy.liquidusC.value + 100, shellC: 600 });
const floorOf = (draft: GatingDraft, thickestMm: number | null) => knockoutFloor(sumOf(draft), thickestMm);

test("a casting of 4 to 40 mm starts from its 40 mm: the first figure is that of a plate of 40", () => {
  const fresh = draftOf(meshOf(4, 40));
  expect(fresh.links[0]).toMatchObject({ role: "casting", thicknessMm: 40 });
  expect(fresh.wallMm).toBe(4);
  const thin = { ...fresh, links: [{ ...emptyLink(1, "wall", "casting", "plate"), thicknessMm: 4 }] };
  const found = floorOf(fresh, 40);
  expect(found.castingS).toBeGreaterThan(5 * (floorOf(thin, null).castingS ?? Infinity));
  expect(found.notBeforeS).toBeCloseTo(10 * (found.castingS ?? 0), 3);
  expect(found.isUsualLeast).toBe(false);
  // A chain that was typed with the thin wall alone waits for the thick place all the same.
  expect(floorOf(thin, 40).castingS).toBeGreaterThan(5 * (floorOf(thin, null).castingS ?? Infinity));
});

test("without a thickest place nothing starts from the thinnest, and the usual hour is the least", () => {
  expect(draftOf(meshOf(4, null)).links[0]?.thicknessMm).toBeNull();
  expect(knockoutFloor(null, null)).toMatchObject({ castingS: null, notBeforeS: 3600, isUsualLeast: true });
  const typed = {
    ...draftOf(null),
    links: [{ ...emptyLink(1, "wall", "casting", "plate"), thicknessMm: 4 }],
  };
  expect(floorOf(typed, null)).toMatchObject({ notBeforeS: 3600, isUsualLeast: true });
});

test("a pour cup thicker than ten freezings of a thin casting sets the time", () => {
  const thin = draftOf(meshOf(3, 3));
  const bare = knockoutFloor(sumOf(thin), 3);
  // Freezing goes with the modulus squared (Chvorinov): 30 mm against 1.5 mm is 400 times as long, and 10 are asked.
  const cup = knockoutFloor(sumOf(thin), 3, 30);
  expect(cup.castingS).toBe(bare.castingS);
  expect(cup.notBeforeS).toBe(cup.lastS);
  expect(cup.notBeforeS).toBeGreaterThan(bare.notBeforeS);
  expect(knockoutFloor(sumOf(thin), 3, 0.5)).toEqual(bare);
});

test("a thicker place never comes out sooner, of any metal", () => {
  const mm = fc.double({ min: 1, max: 120, noNaN: true });
  fc.assert(
    fc.property(mm, mm, fc.constantFrom(...alloys), (a, b, alloy) => {
      const of = (thick: number) =>
        knockoutFloor(sumOf(draftOf(meshOf(Math.min(a, b), thick)), alloy), thick);
      const [low, high] = [of(Math.min(a, b)), of(Math.max(a, b))];
      expect(high.castingS ?? 0).toBeGreaterThanOrEqual((low.castingS ?? 0) * (1 - 1e-9));
    }),
    { numRuns: 60 },
  );
});
