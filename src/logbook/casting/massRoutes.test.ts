import { describe, expect, test } from "vitest";
import type { PatternMeasured } from "../entries/pieceBodies.ts";
import { chargeFor, gatingKgOf, lossFor, marginFor } from "./chargeSum.ts";
import { massDraftOf, type MassDraft } from "./massDraft.ts";
import { massByRoutes } from "./massRoutes.ts";

const c87300KgM3 = 8360;
const mesh: PatternMeasured = {
  patternId: "p",
  fileName: "block.stl",
  sumsVersion: 1,
  triangles: 12,
  watertight: true,
  mmPerUnit: 1,
  volumeMm3: 100_000,
  areaMm2: 14_000,
  boxMm: [40, 50, 50],
  up: [0, 0, 1],
  headM: null,
  tips: 0,
  vents: 0,
  drains: 0,
  trappedMl: null,
  gatingMm3: 25_000,
  thinnestMm: 4,
  thickestMm: 40,
};
const print = massDraftOf({ name: "print", material: "pla" });
const wax = massDraftOf({ name: "wax", material: "wax" });
const routesOf = (draft: MassDraft, of: PatternMeasured | null = null) =>
  massByRoutes({ draft, mesh: of, metalKgM3: c87300KgM3 });
const kgBy = (draft: MassDraft, route: string, of: PatternMeasured | null = null) =>
  routesOf(draft, of).lines.find((line) => line.route === route)?.mass?.likelyKg;

describe("metal by each way of measuring", () => {
  // The ratios 6.74 and 8.99 are densities divided by hand: 8.36/1.24 and 8.36/0.93.
  test("a solid PLA print of 100 g asks 674 g of C87300, wax 899 g", () => {
    expect(kgBy({ ...print, fill: "solid", patternG: 100 }, "pattern-weight")).toBeCloseTo(0.674, 3);
    expect(kgBy({ ...wax, patternG: 100 }, "pattern-weight")).toBeCloseTo(0.899, 3);
  });

  test("a print by weight is asked first whether it is solid, and with infill it is refused", () => {
    const codes = (fill: MassDraft["fill"]) =>
      routesOf({ ...print, fill, patternG: 36.3 }).lines.map(({ volume }) =>
        volume === null || volume.ok ? null : volume.code,
      );
    expect(codes("not-stated")).toContain("fill-not-stated");
    expect(codes("infill")).toContain("infill-burns-out-full");
    expect(routesOf({ ...print, fill: "infill", patternG: 36.3 }).chosen).toBeNull();
  });

  test("the same print by its mesh asks 836 g: the cavity burns out full", () => {
    expect(kgBy(print, "mesh", mesh)).toBeCloseTo(0.836, 6);
  });

  test("a hollow print open to slurry is metal in its wall alone", () => {
    // 140 cm² of face times 2 mm.
    const draft = { ...print, hollow: "vented-hollow", hollowWallMm: 2 } as const;
    expect(kgBy(draft, "mesh", mesh)).toBeCloseTo((28 * 8.36) / 1000, 6);
    expect(kgBy({ ...draft, hollow: "closed-hollow" }, "mesh", mesh)).toBeCloseTo(0.836, 6);
  });

  test("what drinks water is not measured by water until it is sealed", () => {
    const wet = { ...print, displacedG: 99.82 };
    expect(routesOf(wet).chosen).toBeNull();
    expect(routesOf({ ...wet, isSealed: "yes" }).chosen?.used.volumeCm3).toBeCloseTo(100, 6);
  });

  test("the least error is used, and two ways that can't both be right are told", () => {
    const draft = { ...wax, patternG: 120, displacedG: 99.82 };
    const { chosen } = routesOf(draft, mesh);
    expect(chosen?.used.route).toBe("mesh");
    expect(chosen?.disagreements.map(({ other }) => other)).toEqual(["pattern-weight"]);
  });

  test("a mesh with holes has no volume", () => {
    const open = { ...mesh, watertight: false, volumeMm3: null };
    expect(routesOf(print, open).lines[0]?.volume).toEqual({ ok: false, route: "mesh", code: "open-mesh" });
  });

  test("a figure that can't be right is left out of the sum and breaks nothing", () => {
    const slipped = { ...print, fill: "solid" as const, patternG: -4, slicerG: Number.NaN, patternGCm3: 900 };
    expect(routesOf(slipped).chosen).toBeNull();
  });
});

describe("the charge", () => {
  const lossShare = 0.02;
  test("4.3 kg with 5 % margin, 0.3 kg heel and 2 % loss is 4.913 kg to weigh in", () => {
    // (4.3·1.05 + 0.3)/0.98 by hand.
    const charge = chargeFor({
      draft: { ...wax, heelKg: 0.3 },
      castingKg: 4,
      gatingKg: 0.3,
      margin: "measured",
      lossShare,
    });
    expect(charge?.chargeKg).toBeCloseTo(4.913, 3);
    expect(charge?.meltKg).toBeCloseTo(4.815, 3);
  });

  test("how well the volume is known decides the margin, unless the maker says otherwise", () => {
    expect([marginFor(wax, "mesh"), marginFor(wax, "pattern-weight"), marginFor(wax, null)]).toEqual([
      "measured",
      "weighed",
      "guessed",
    ]);
    expect(marginFor({ ...wax, marginBy: "guessed" }, "mesh")).toBe("guessed");
  });

  test("gating is taken in metal, as wax, from the mesh, or not twice", () => {
    const from = (draft: MassDraft) => gatingKgOf({ draft, mesh, metalKgM3: c87300KgM3, waxKgM3: 930 });
    expect(from({ ...wax, gatingKg: 1.2 })).toBe(1.2);
    expect(from({ ...wax, gatingBy: "wax", gatingWaxG: 100 })).toBeCloseTo(0.899, 3);
    expect(from({ ...wax, gatingBy: "mesh" })).toBeCloseTo(0.209, 3);
    expect(from({ ...wax, gatingKg: 1.2, withGating: "yes" })).toBe(0);
  });

  test("loss is what was typed, else what the shop has shown, else the middle of what is usual", () => {
    const learned = { kind: "learned", lossShare: 0.031, melts: 4, inKg: 20 } as const;
    const none = { kind: "nothing-weighed" } as const;
    const from = (draft: MassDraft, of: typeof learned | typeof none) =>
      lossFor({ draft, alloyId: "c87300", learned: of });
    expect(from({ ...wax, lossShare: 0.05 }, learned)?.lossShare).toBe(0.05);
    expect(from(wax, learned)).toMatchObject({ lossShare: 0.031, basis: "learned" });
    expect(from(wax, none)?.lossShare).toBeCloseTo(0.015, 9);
    expect(lossFor({ draft: wax, alloyId: "iron", learned: none })).toBeNull();
  });
});
