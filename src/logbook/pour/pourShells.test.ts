import { describe, expect, test } from "vitest";
import { alloyOf } from "../../trade/metals/alloys.ts";
import { givenCoated } from "../../../tests/givenPiece.ts";
import { castingTimesOf, metalCooling, pourShell, shellsInOrder, type PourShell } from "./pourShells.ts";
import type { ShellBed } from "../fire/shellOut.ts";

const bronze = alloyOf("c90300")!;
const figures = alloyOf("c90300")!;
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

describe("the section a knockout goes by", () => {
  const alloy = bronze;
  const measured = (of: { thinnestMm: number | null; thickestMm: number | null }) => [
    { thinnestMm: of.thinnestMm, thickestMm: of.thickestMm },
  ];
  const of = (
    plan: { metalLitre?: number; areaM2?: number },
    patterns: ReturnType<typeof measured> = [],
    toldMm: number | null = null,
  ) => {
    const standing = givenCoated(plan).standing(101);
    const piece = { ...standing.piece, patterns: patterns as unknown as typeof standing.piece.patterns };
    const { modulusMm, modulusFrom } = pourShell({ ...standing, piece }, { toldMm, metalKg: null, alloy });
    return { modulusMm, modulusFrom };
  };
  test("is the thickest place on the mesh, and never less than a section entered as the thinnest", () => {
    expect(of({}, measured({ thinnestMm: 4, thickestMm: 40 }))).toEqual({
      modulusMm: 20,
      modulusFrom: "mesh",
    });
    expect(of({}, measured({ thinnestMm: 4, thickestMm: 10 }), 24)).toEqual({
      modulusMm: 12,
      modulusFrom: "mesh",
    });
  });
  test("is the mean one by volume and area where only these are known", () => {
    // 0.5 l over 0.1 m² are 5 mm.
    expect(of({ metalLitre: 0.5, areaM2: 0.1 })).toEqual({ modulusMm: 5, modulusFrom: "volume" });
    expect(of({ metalLitre: 0.5, areaM2: 0.1 }, [], 14)).toEqual({ modulusMm: 7, modulusFrom: "volume" });
    expect(of({}, [], 6)).toEqual({ modulusMm: 3, modulusFrom: "thinnest" });
  });
});
