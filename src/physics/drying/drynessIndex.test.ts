import { describe, expect, test } from "vitest";
import truth from "../../../tests/truth/drying.json" with { type: "json" };
import { drynessIndex, endIndex } from "./drynessIndex.ts";
import { wetSurfaceC } from "../air/film.ts";
import { dryDepthFromIndexM } from "../../../tests/sums/dryDepth.ts";

const shop = { tempC: 22, rh: 0.5, pressurePa: 101_325, filmWM2K: 15 };

describe("a surface thermometer", () => {
  test.each(truth.index.readings)(
    "reads $index at $surfaceC °C in $tempC °C, $rh",
    ({ index, ...reading }) => {
      const got = drynessIndex({ ...reading, pressurePa: 101_325 }) ?? NaN;
      expect(Math.abs(got - index)).toBeLessThan(0.02);
    },
  );

  test("calls a dripping shell 0 and one as warm as the air 1", () => {
    expect(drynessIndex({ ...shop, surfaceC: wetSurfaceC(shop) })).toBeCloseTo(0, 9);
    expect(drynessIndex({ ...shop, surfaceC: 22 })).toBeCloseTo(1, 9);
  });

  test("says nothing in saturated air", () => {
    expect(drynessIndex({ ...shop, rh: 1, surfaceC: 21 })).toBeNull();
  });

  test.each(truth.index.fronts)("sees the front at film $filmWM2K as deep as the table", (row) => {
    for (const [i, depthMm] of row.depthMm.entries()) {
      const index = endIndex({ ...shop, filmWM2K: row.filmWM2K, depthM: depthMm / 1000 });
      expect(Math.abs(index - (row.index[i] ?? NaN))).toBeLessThan(0.02);
      const back = dryDepthFromIndexM({ ...shop, filmWM2K: row.filmWM2K, index }) ?? NaN;
      expect(back * 1000).toBeCloseTo(depthMm, 6);
    }
  });

  test("at 0.95 has passed through 16 mm under a fan and 45 mm in still air", () => {
    expect((dryDepthFromIndexM({ ...shop, index: 0.95 }) ?? 0) * 1000).toBeGreaterThan(15.5);
    expect((dryDepthFromIndexM({ ...shop, filmWM2K: 4, index: 0.95 }) ?? 0) * 1000).toBeGreaterThan(44);
  });

  test("tells no depth for a surface as warm as the air, and none for a wet one", () => {
    expect(dryDepthFromIndexM({ ...shop, index: 1 })).toBeNull();
    expect(dryDepthFromIndexM({ ...shop, index: -0.1 })).toBe(0);
  });
});
