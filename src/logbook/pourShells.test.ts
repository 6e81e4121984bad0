import { describe, expect, test } from "vitest";
import { alloyOf } from "../trade/alloys.ts";
import { meltFiguresOf } from "../trade/meltFigures.ts";
import {
  castingTimesOf,
  faceAt,
  latestOf,
  leastFaceC,
  leaveKilnC,
  metalCooling,
  shellCooling,
  shellsInOrder,
  type PourShell,
  type ShellBed,
} from "./pourShells.ts";

const bronze = alloyOf("c90300")!;
const figures = meltFiguresOf("c90300")!;
const air: ShellBed = { bed: "air", airC: 20, family: "fused-silica" };
const shell = (id: string, of: Partial<PourShell> = {}): PourShell => ({
  id,
  name: id,
  wallMm: 8,
  thinnestMm: 5,
  thinnestFrom: "told",
  modulusMm: 3,
  modulusFrom: "mesh",
  metalKg: 2,
  ...of,
});

describe("out of the kiln", () => {
  test("hot sand keeps the face hotter than air or cold sand does", () => {
    const after5 = (bed: ShellBed["bed"]): number =>
      faceAt(shellCooling({ ...air, bed, wallMm: 10, startC: 540 }), 5)!.likelyC;
    expect(after5("hot-sand")).toBeGreaterThan(after5("air"));
    expect(after5("hot-sand")).toBeGreaterThan(after5("cold-sand") + 50);
  });
  test("a hotter bed named for the plan is the one that is reckoned with", () => {
    const at = (sandC: number): number =>
      faceAt(shellCooling({ ...air, bed: "hot-sand", sandC, wallMm: 10, startC: 540 }), 10)!.likelyC;
    expect(at(400)).toBeGreaterThan(at(200) + 60);
  });
  test("leaving the kiln at the told heat leaves the wanted face when metal comes", () => {
    const startC = leaveKilnC({ ...air, wallMm: 8, aimC: 500, minutes: 2 })!;
    expect(startC).toBeGreaterThan(500);
    const face = faceAt(shellCooling({ ...air, wallMm: 8, startC }), 2)!;
    expect(Math.abs(face.likelyC - 500)).toBeLessThan(2);
    expect(leaveKilnC({ ...air, wallMm: 4, aimC: 950, minutes: 15 })).toBeNull();
  });
  test("a thin section asks for a hotter face than a thick one, never below the family's least", () => {
    expect(leastFaceC(bronze, 1.5)!.value).toBe(700);
    expect(leastFaceC(bronze, 3)!.value).toBe(550);
    expect(leastFaceC(bronze, 12)!.value).toBe(400);
    expect(leastFaceC(bronze, null)!.value).toBe(400);
  });
  test("the sure minute never comes after the likely one", () => {
    const rows = shellCooling({ ...air, wallMm: 8, startC: 600 });
    const latest = latestOf(rows, 400)!;
    expect(latest.surelyMin!).toBeGreaterThan(1);
    expect(latest.surelyMin!).toBeLessThan(latest.likelyMin!);
    expect(latestOf(rows, null)).toBeNull();
  });
});

describe("several shells from one crucible", () => {
  const asked = { metalC: 1180, shellC: 700, carryMin: 1, alloy: bronze, figures, place: air };
  test("the thinner shell goes first when both have the same metal to wait for", () => {
    const order = shellsInOrder({
      ...asked,
      metalKg: 5,
      shells: [shell("thick", { thinnestMm: 7 }), shell("thin", { thinnestMm: 4.5 })],
    });
    expect(order!.turns.map(({ id }) => id)).toEqual(["thin", "thick"]);
  });
  test("with too little metal the last one is told to be short", () => {
    const order = shellsInOrder({ ...asked, metalKg: 3, shells: [shell("a"), shell("b")] })!;
    expect(order.isEnough).toBe(false);
    expect(order.turns.at(-1)!.problems).toContain("metal-short");
  });
  test("a mass nobody knows gives no order", () => {
    expect(shellsInOrder({ ...asked, metalKg: null, shells: [shell("a")] })).toBeNull();
    expect(shellsInOrder({ ...asked, metalKg: 5, shells: [shell("a", { metalKg: null })] })).toBeNull();
  });
  test("a large crucible loses its heat more slowly than a small one", () => {
    const of = (metalKg: number): number => metalCooling({ metalKg, metalC: 1150, airC: 20, figures });
    expect(of(40)).toBeLessThan(of(4) / 2);
    expect(of(4)).toBeGreaterThan(5);
    expect(of(4)).toBeLessThan(40);
  });
});

describe("after the pour", () => {
  test("a thick casting in a hot shell is frozen later and broken out later than a thin one", () => {
    const of = (modulusMm: number) =>
      castingTimesOf({
        shell: shell("s", { modulusMm }),
        alloy: bronze,
        figures,
        metalC: 1150,
        faceC: 600,
        place: air,
      })!;
    expect(of(6).solidusS!).toBeGreaterThan(of(1.5).solidusS!);
    expect(of(6).knockoutS!).toBeGreaterThanOrEqual(10 * of(6).solidusS!);
  });
  test("a section nobody knows gives no time", () => {
    const asked = { alloy: bronze, figures, metalC: 1150, faceC: 600, place: air };
    expect(castingTimesOf({ ...asked, shell: shell("s", { modulusMm: null }) })).toBeNull();
  });
});
