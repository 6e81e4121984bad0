import { millisecondsInDay as dayMs } from "date-fns/constants";
import { describe, expect, test } from "vitest";
import { builtInShop } from "../piece/builtIns.ts";
import type { Material, StockMove } from "./shopThings.ts";
import { stockView } from "./stockView.ts";
import { oldestOf, weeklyUse } from "./stockUse.ts";
import { given, later, start } from "../../../tests/logs/testBucket.ts";

const flour: Material = { id: "f", name: "Flour", kind: "flour", flourId: "fused-silica", retired: false };
const sol: Material = { id: "s", name: "Sol", kind: "sol", retired: false, weeksToCome: 3 };
const sand: Material = { id: "g", name: "Sand", kind: "stucco", stuccoId: "16-30", retired: false };
const moved = (at: number, materialId: string, how: StockMove["how"], massKg: number): StockMove => ({
  id: `${at} ${how}`,
  at,
  materialId,
  how,
  massKg,
});
const nobody = { dips: [], unknown: 0 };
const view = (stockMoves: readonly StockMove[], taken = nobody as never, now = later) =>
  stockView({
    shop: { ...builtInShop, materials: [flour, sol, sand], stockMoves },
    buckets: [given()],
    taken,
    now,
  });
const weeks = (kgs: readonly number[]) =>
  kgs.map((kg, i) => ({ kind: "made-up" as const, kg, at: i * 7 * dayMs }));

describe("what is on the shelf", () => {
  test("flour and sol of a mix leave the shelf by the bucket's own log, once", () => {
    const [f, s] = view([
      moved(start - dayMs, "f", "received", 50),
      moved(start - dayMs, "s", "received", 25),
    ]);
    expect(f?.balance?.kg).toBeCloseTo(50 - 21.17, 6);
    expect(s?.balance?.kg).toBeCloseTo(25 - 12.453, 6);
    expect(f?.moves.map(({ basis, kind }) => `${basis} ${kind}`)).toEqual([
      "told received",
      "reckoned made-up",
    ]);
  });

  test("nothing received or counted: no balance, but the use is known", () => {
    const [f] = view([], nobody as never, start + 15 * dayMs);
    expect(f?.balance).toBeNull();
    expect(f?.weekly).toMatchObject({ weeks: 2, sigmaKg: null });
    expect(f?.weekly?.meanKg).toBeCloseTo((21.17 * 7) / 15, 6);
  });

  test("use from before the first count does not make the count wrong", () => {
    const [f] = view([moved(start + dayMs, "f", "counted", 12)]);
    expect(f?.balance).toEqual({ kg: 12, adjustedKg: 12, wentBelowZero: false });
  });

  test("stucco goes with the coats that took it", () => {
    const dip = { coatId: "c", at: start, stuccoId: "16-30", stuccoKg: 1.25, bucketId: "b1" };
    const [, , g] = view([moved(start - dayMs, "g", "received", 25)], { dips: [dip], unknown: 0 } as never);
    expect(g?.balance?.kg).toBeCloseTo(23.75, 9);
    expect(g?.moves.at(-1)).toMatchObject({ kind: "dipped-out", basis: "reckoned" });
  });

  test("6 kg a week, a scatter of 2 and three weeks to come: order at 23.7 kg", () => {
    // Weeks of 4, 6 and 8 kg: mean 6, standard deviation 2.
    const used = [4, 6, 8].map((kg, i) => moved(start + (i + 0.5) * 7 * dayMs, "s", "lost", kg));
    const [, s] = stockView({
      shop: {
        ...builtInShop,
        materials: [flour, sol],
        stockMoves: [moved(start, "s", "counted", 40), ...used],
      },
      buckets: [],
      taken: nobody,
      now: start + 3.5 * 7 * dayMs,
    });
    expect(s?.weekly).toEqual({ meanKg: 6, sigmaKg: 2, weeks: 3 });
    expect(s?.reorder?.kg).toBeCloseTo(23.7, 1);
    expect(s?.isShort).toBe(true);
  });

  test("a sol sealed seven months ago is over its six, a sand never is", () => {
    const now = start + 213 * dayMs;
    const [, s, g] = view(
      [moved(start, "s", "received", 25), moved(start, "g", "received", 25)],
      nobody as never,
      now,
    );
    expect(s?.isOverAge).toBe(true);
    expect(g?.isOverAge).toBe(false);
  });
});

describe("weekly use and age", () => {
  test("only whole weeks count, the last twelve at most", () => {
    expect(weeklyUse(weeks([5]), 6 * dayMs)).toBeNull();
    expect(weeklyUse(weeks(Array.from({ length: 20 }, () => 3)), 20 * 7 * dayMs)?.weeks).toBe(12);
  });

  test("what came first goes first: of 10 and 10 with 12 left, some is of the first delivery", () => {
    const moves = [
      { kind: "received", kg: 10, at: 1 },
      { kind: "received", kg: 10, at: 2 },
    ] as const;
    expect(oldestOf(moves, 12)).toBe(1);
    expect(oldestOf(moves, 9)).toBe(2);
    expect(oldestOf(moves, 0)).toBeNull();
  });
});
