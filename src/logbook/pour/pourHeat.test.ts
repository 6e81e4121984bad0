import { describe, expect, test } from "vitest";
import { alloyOf, alloys } from "../../trade/metals/alloys.ts";
import { builtInShop } from "../piece/builtIns.ts";
import { ownAlloy, ownMeltFigures } from "../shop/ownAlloy.ts";
import { pourHeatCheck, pourHeatOf } from "./pourHeat.ts";

const of = (id: string, thinnestMm: number | null) => ({
  alloy: alloyOf(id)!,
  figures: alloyOf(id),
  thinnestMm,
});

describe("where a plan's metal starts", () => {
  // Data sheets and handbook ranges, as trade/alloys and the melt figures name them.
  test.each([
    ["c87300", 5, 1093],
    ["c87300", 7.9, 1093],
    ["c90300", null, 1150],
    ["c86500", 5, 1040],
    ["c86500", 8, 980],
    ["a356", 4, 720],
  ] as const)("%s at %s mm: %d °C, the low end of its range", (id, thinnestMm, startC) => {
    expect(pourHeatOf(of(id, thinnestMm)).startC).toBe(startC);
  });

  // Common practice, no source: a bronze bell of 8 mm is poured at 1080 to 1150 °C, an aluminium plaque at 700 to 740.
  test.each([
    ["c90500", 8, 1089],
    ["c90300", 12, 1090],
    ["a356", 8, 702],
    ["c87300", 8, 1038],
    ["c95400", 10, 1128],
  ] as const)(
    "heavy %s at %s mm: %d °C, 90 K over its liquidus, never past the middle",
    (id, thinnestMm, startC) => {
      expect(pourHeatOf(of(id, thinnestMm))).toMatchObject({ work: "heavy", startC, startFrom: "superheat" });
    },
  );

  test("pewter's heavy range begins where it is not all melted: it starts 10 K above its liquidus", () => {
    expect(pourHeatOf(of("pewter", 10))).toMatchObject({
      lowC: 270,
      leastC: 305,
      startC: 305,
      startFrom: "least",
    });
  });

  test("without figures for heavy work the light range stands for both", () => {
    expect(pourHeatOf({ ...of("c87300", 12), figures: null })).toMatchObject({ work: "light", lowC: 1093 });
  });

  test("a shop's own range is its own for heavy work too", () => {
    const own = { id: "own", copiedFrom: "c87300", name: "Own", pourLowC: 1060, pourHighC: 1120 } as const;
    const copy = { densityKgM3: 8360, liquidDensityKgM3: 7500, shrink: 0.02, retired: false, ...own };
    const shop = { ...builtInShop, alloys: [copy] };
    const heavy = pourHeatOf({
      alloy: ownAlloy("own", shop)!,
      figures: ownMeltFigures("own", shop),
      thinnestMm: 12,
    });
    expect(heavy).toMatchObject({ work: "heavy", lowC: 1060, highC: 1120, startC: 1060 });
  });
});

describe("metal against both ends", () => {
  test("C87300 of 5 mm is too cold below 1031 °C and too hot above 1177", () => {
    const at = (metalC: number) => pourHeatCheck({ ...of("c87300", 5), metalC });
    expect(at(975)).toEqual({ is: "too-cold", byK: 56, leastC: 1031 });
    expect(at(1030)).toEqual({ is: "too-cold", byK: 1, leastC: 1031 });
    expect([1031, 1093, 1177].map((c) => at(c).is)).toEqual(["ok", "ok", "ok"]);
    expect(at(1178)).toEqual({ is: "too-hot", byK: 1, mostC: 1177 });
  });

  test("heavy work is filled colder and is too hot sooner", () => {
    const at = (metalC: number) => pourHeatCheck({ ...of("c87300", 8), metalC }).is;
    expect([1009, 1010, 1066, 1067].map(at)).toEqual(["too-cold", "ok", "ok", "too-hot"]);
  });

  test("where a plan starts is in order for every metal and section", () => {
    for (const { id } of alloys)
      for (const thinnestMm of [null, 1, 5, 7.9, 8, 20, 40]) {
        const metalC = pourHeatOf(of(id, thinnestMm)).startC;
        expect([id, thinnestMm, pourHeatCheck({ ...of(id, thinnestMm), metalC }).is]).toEqual([
          id,
          thinnestMm,
          "ok",
        ]);
      }
  });
});
