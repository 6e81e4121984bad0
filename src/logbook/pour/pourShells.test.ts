import { describe, expect, test } from "vitest";
import { alloyOf } from "../../trade/metals/alloys.ts";
import { castingTimesOf, metalCooling, shellsInOrder, type PourShell } from "./pourShells.ts";
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
