import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { hotSandC } from "../../physics/heat/heat.ts";
import { alloyOf, alloys } from "../../trade/metals/alloys.ts";
import { shellHeatOf } from "../fire/shellHeat.ts";
import { faceAt, minutesToFull, shellCooling, type ShellBed } from "../fire/shellOut.ts";
import { metalWhy } from "./pourSheetWhys.ts";
import { pourFixes, type PourFix } from "./pourFixes.ts";
import { pourHeatOf } from "./pourHeat.ts";
import type { PourShell } from "./pourShells.ts";

const air: ShellBed = { bed: "air", airC: 20, family: "fused-silica" };
const shell = (id: string, of: Partial<PourShell> = {}): PourShell => ({
  id,
  name: id,
  wallMm: 8,
  isWallKnown: true,
  thinnestMm: 5,
  thinnestFrom: "told",
  modulusMm: 3,
  modulusFrom: "mesh",
  metalKg: 2,
  ...of,
});
type Asked = Parameters<typeof pourFixes>[0];
const bronze = alloyOf("c90300")!;
const supplyOf = (alloy: typeof bronze, shells: readonly PourShell[], metalKg: number | null) => ({
  shells,
  alloy,
  figures: alloy,
  metalKg,
  wantedKg: shells.reduce((sum, one) => sum + (one.metalKg ?? 0), 0),
});
const asked = (of: Partial<Asked> = {}): Asked => ({
  supply: supplyOf(bronze, [shell("a")], 4),
  place: air,
  carryMin: 1.5,
  shellC: 900,
  metalC: 1150,
  ...of,
});
const cold = (fixes: readonly PourFix[]) => fixes.filter((fix) => fix.is === "shell-cold");

/** Second way to a verdict: the wall's own rows, against the low end of the usual heats. */
function faceIsEnough(
  { wallMm, thinnestMm }: PourShell,
  {
    alloy,
    place,
    carryMin,
    shellC,
  }: { alloy: typeof bronze; place: ShellBed; carryMin: number; shellC: number },
): boolean {
  const minutes = minutesToFull(carryMin);
  const face = faceAt(shellCooling({ ...place, wallMm, startC: shellC, minutes }), minutes);
  return (face?.likelyC ?? -Infinity) >= (shellHeatOf(alloy, thinnestMm)?.lowC ?? -Infinity);
}

describe("a plan that can't work says what would make it work", () => {
  test("a shell that leaves the kiln at 600 °C for tin bronze in a 5 mm section: a hotter kiln, or less time", () => {
    const [fix] = pourFixes(asked({ shellC: 600 }));
    expect(fix).toMatchObject({ is: "shell-cold", id: "a" });
    expect(fix?.is === "shell-cold" && fix.leaveC).toBeGreaterThan(600);
    expect(pourFixes(asked({ shellC: fix?.is === "shell-cold" ? (fix.leaveC ?? 0) : 0 }))).toEqual([]);
  });

  test("the shells are said before the metal, and a working plan says nothing", () => {
    const supply = supplyOf(bronze, [shell("a"), shell("b")], 3);
    expect(pourFixes(asked({ supply, shellC: 600, metalC: 950 })).map(({ is }) => is)).toEqual([
      "shell-cold",
      "shell-cold",
      "metal-short",
      "metal-cold",
    ]);
    expect(pourFixes(asked())).toEqual([]);
    expect(pourFixes(asked({ supply: { ...supply, alloy: null } }))).toEqual([]);
  });

  test("too little metal by both figures; just enough is enough", () => {
    const metal = (kg: number) => pourFixes(asked({ supply: supplyOf(bronze, [shell("a")], kg) }));
    expect(metal(1.9)).toEqual([{ is: "metal-short", haveKg: 1.9, wantedKg: 2 }]);
    expect(metal(2)).toEqual([]);
  });

  test("metal hotter than its range is too hot by the excess", () => {
    const { highC } = pourHeatOf({ alloy: bronze, figures: bronze, thinnestMm: 5 });
    expect(pourFixes(asked({ metalC: highC + 40 }))).toEqual([{ is: "metal-hot", byK: 40, mostC: highC }]);
    expect(pourFixes(asked({ metalC: highC }))).toEqual([]);
  });
});

const anyAsked = fc.record({
  alloy: fc.constantFrom(...alloys),
  shells: fc.array(
    fc.record({
      wallMm: fc.double({ min: 2, max: 30, noNaN: true }),
      thinnestMm: fc.oneof(fc.constant(null), fc.double({ min: 1, max: 60, noNaN: true })),
      metalKg: fc.double({ min: 0.05, max: 60, noNaN: true }),
    }),
    { minLength: 1, maxLength: 3 },
  ),
  spare: fc.double({ min: -0.2, max: 0.3, noNaN: true }),
  bed: fc.constantFrom("air" as const, "cold-sand" as const),
  carryMin: fc.double({ min: 0.2, max: 6, noNaN: true }),
  shellC: fc.integer({ min: 20, max: 950 }),
  overK: fc.integer({ min: -100, max: 400 }),
});

test("every way out that is named works, and where none is named the hottest does not", () => {
  let ways = 0;
  fc.assert(
    fc.property(anyAsked, ({ alloy, shells: of, spare, bed, carryMin, shellC, overK }) => {
      const shells = of.map((one, i) => shell(`s${i}`, one));
      const wantedKg = of.reduce((sum, { metalKg }) => sum + metalKg, 0);
      const place = { ...air, bed };
      const metalC = alloy.liquidusC.value + overK;
      const plan = asked({
        supply: supplyOf(alloy, shells, wantedKg * (1 + spare)),
        place,
        carryMin,
        shellC,
        metalC,
      });
      const fixes = pourFixes(plan);
      for (const fix of cold(fixes)) {
        const its = shells.find(({ id }) => id === fix.id)!;
        const at = (changed: Partial<{ place: ShellBed; carryMin: number; shellC: number }>) =>
          faceIsEnough(its, { alloy, place, carryMin, shellC, ...changed });
        ways += 1;
        expect(at({})).toBe(false);
        expect(at({ shellC: fix.leaveC ?? 950 })).toBe(fix.leaveC !== null);
        const sand: ShellBed = { ...place, bed: "hot-sand", sandC: hotSandC };
        if (fix.sandLeaveC !== null) expect(at({ place: sand, shellC: fix.sandLeaveC })).toBe(true);
        if (fix.withinMin !== null) expect(at({ carryMin: fix.withinMin })).toBe(true);
      }
      for (const fix of fixes.filter((one) => one.is === "metal-cold"))
        if (fix.raiseToC !== null) {
          ways += 1;
          const after = pourFixes({ ...plan, metalC: fix.raiseToC });
          expect(after.filter(({ is }) => is === "metal-cold" || is === "metal-hot")).toEqual([]);
        }
      for (const fix of fixes)
        if (fix.is === "metal-hot")
          expect(pourFixes({ ...plan, metalC: fix.mostC }).some(({ is }) => is === "metal-hot")).toBe(false);
    }),
    { numRuns: 120 },
  );
  expect(ways).toBeGreaterThan(60);
});

test("metal that is a rounding less than the shells hold is enough for the plan and for the sheet, a gram less is not", () => {
  const shells = [shell("a", { metalKg: 0.1 }), shell("b", { metalKg: 0.2 })];
  const both = (metalKg: number) => {
    const supply = supplyOf(bronze, shells, metalKg);
    const sheet = metalWhy(
      { ...supply, furnace: null, metalFrom: "weighed", fill: null },
      { begunAt: 0, last: null },
    );
    return [
      pourFixes(asked({ supply })).some(({ is }) => is === "metal-short"),
      sheet.why.some(({ code }) => code === "metal-short"),
    ];
  };
  // 0.1 + 0.2 is a little more than 0.3 in binary.
  expect(supplyOf(bronze, shells, 0.3).wantedKg).toBeGreaterThan(0.3);
  expect(both(0.3)).toEqual([false, false]);
  expect(both(0.299)).toEqual([true, true]);
});
