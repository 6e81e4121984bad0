import { describe, expect, test } from "vitest";
import { weir } from "../../../../tests/meshes/testShapes.ts";
import { fillTimeline, moments } from "./fillTimeline.ts";
import { fillVolume, halfOf } from "./fillVolume.ts";
import { fillFromGate } from "../../../../tests/meshes/atOnce.ts";

const fill = fillFromGate({ mesh: weir, up: [0, 0, 1], gate: [5, 5, 1], vents: [[65, 5, 80]], cells: 80 });
const told = fillTimeline(fill);

describe("a fill told moment by moment", () => {
  test("begins empty and ends with all the metal and all the air that was cut off", () => {
    expect(told[0]).toEqual({ metalMl: 0, airMl: 0, topMm: null });
    const last = told[moments]!;
    expect(last.airMl).toBeCloseTo(fill.trapped / 1000, 6);
    expect(last.metalMl).toBeCloseTo((fill.solidVolume - fill.trapped) / 1000, 6);
    expect(last.topMm).toBeCloseTo(80, 0);
  });

  test("never loses metal, air or height", () => {
    for (let at = 1; at <= moments; at++) {
      expect(told[at]!.metalMl).toBeGreaterThanOrEqual(told[at - 1]!.metalMl);
      expect(told[at]!.airMl).toBeGreaterThanOrEqual(told[at - 1]!.airMl);
      expect(told[at]!.topMm ?? -1).toBeGreaterThanOrEqual(told[at - 1]!.topMm ?? -1);
    }
  });

  test("stands at the weir while the second chamber fills below it", () => {
    // The first chamber holds 5 ml up to the weir at 50, of 28 ml in all.
    const justOver = told.find(({ metalMl }) => metalMl > 6)!;
    expect(justOver.topMm).toBeLessThan(53);
  });
});

describe("the fill for the shader", () => {
  test("numbers from 0 to 1 keep eleven bits as 16-bit floats", () => {
    const back = (bits: number): number =>
      bits === 0 ? 0 : 2 ** ((bits >> 10) - 15) * (1 + (bits & 0x3ff) / 1024);
    for (const value of [0, 1, 0.5, 0.333, 0.0123, 0.9995])
      expect(back(halfOf(value))).toBeCloseTo(value, 2.9);
    expect(halfOf(1)).toBe(0x3c00);
  });

  test("cells beside the solid tell what their neighbours tell, so that the skin has a value", () => {
    const pairs = fillVolume(fill);
    const { nu, nv } = fill.grid;
    for (let cell = 0; cell < fill.rank.length; cell++) {
      if (fill.rank[cell] === 0) continue;
      for (const step of [1, -1, nu, -nu, nu * nv, -nu * nv])
        expect(pairs[2 * (cell + step)]).toBeGreaterThan(0);
    }
    const far = fill.rank.findIndex((rank, cell) => rank === 0 && cell > nu * nv && pairs[2 * cell] === 0);
    expect(far).toBeGreaterThan(0);
  });
});
