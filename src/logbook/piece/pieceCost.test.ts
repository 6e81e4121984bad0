import { millisecondsInHour as hourMs } from "date-fns/constants";
import { describe, expect, test } from "vitest";
import { builtInShop } from "./builtIns.ts";
import { bucketLeft } from "../bucket/bucketLeft.ts";
import { shellCost } from "./pieceCost.ts";
import type { Coat, Shop } from "./piece.ts";
import type { Material } from "../shop/shopThings.ts";
import { given } from "../../../tests/logs/testBucket.ts";
import { monday, testLog } from "../../../tests/logs/testLog.ts";

const material = (id: string, more: Partial<Material>): Material => ({
  id,
  name: id,
  kind: "other",
  retired: false,
  currency: "EUR",
  ...more,
});
const materials = [
  material("flour", { kind: "flour", flourId: "fused-silica", pricePerKg: 2 }),
  material("sol", { kind: "sol", pricePerKg: 3 }),
  material("sand", { kind: "stucco", stuccoId: "sand", pricePerKg: 1.2 }),
];
const shop: Shop = { ...builtInShop, materials };
const around = { recipe: null, buckets: new Map([["b1", given()]]), shop, gains: new Map() };

const kinds = [
  "prime",
  "prime",
  ...Array(3).fill("intermediate"),
  ...Array(4).fill("backup"),
  "seal",
] as const;
/** Two primes, three intermediates, four backups and a seal. */
function ten(areaM2?: number) {
  const log = testLog(areaM2 === undefined ? {} : { areaM2 });
  for (const [i, kind] of kinds.entries())
    log.coat(monday + (1 + i * 24) * hourMs, {
      kind: kind as Coat["kind"],
      bucketId: "b1",
      stuccoId: kind === "seal" ? null : "sand",
    });
  return log.piece();
}

describe("what a shell costs", () => {
  test("0.4 m² in ten coats at 2, 3 and 1.20 a kg: 11.10 on the bare area, more by the growth of the wall", () => {
    const cost = shellCost(ten(0.4), { ...around, shop: { ...shop, buildMm: tiny } });
    // Slurry 2.456 + 15 %, stucco 3.34 + 10 %; the density here is 1.681 and not 1.68.
    expect(cost.ok && cost.total).toBeCloseTo(11.1, 1);
    expect(cost).toMatchObject({ ok: true, currency: "EUR", coats: 10, coatsToCome: 0 });
    const grown = shellCost(ten(0.4), around);
    expect(grown.ok && cost.ok && grown.total > cost.total).toBe(true);
  });

  test("what is missing is named once", () => {
    const bare = { ...around, shop: { ...shop, materials: materials.slice(0, 1) } };
    const cost = shellCost(ten(), bare);
    expect(!cost.ok && cost.lacks).toEqual([
      { code: "area" },
      { code: "price", of: "sol", id: null },
      { code: "price", of: "stucco", id: "sand" },
    ]);
  });

  test("two currencies make no sum", () => {
    const two = [...materials.slice(1), material("flour", { ...materials[0], currency: "GBP" })];
    const cost = shellCost(ten(0.4), { ...around, shop: { ...shop, materials: two } });
    expect(!cost.ok && cost.lacks).toEqual([{ code: "currencies" }]);
  });
});

const tiny = { prime: 0.01, intermediate: 0.01, backup: 0.01, seal: 0.01 };

describe("how far a bucket goes", () => {
  const dip = (pieceId: string, slurryKg: number) =>
    ({ pieceId, bucketId: "b1", kind: "prime", slurryKg }) as never;

  test("8 L above the least, half a litre a dip and two dips a piece: eight pieces", () => {
    const taken = { dips: [dip("a", 0.84), dip("a", 0.84), dip("b", 0.84), dip("b", 0.84)], unknown: 0 };
    const left = bucketLeft({
      bucketId: "b1",
      taken,
      pieces: [],
      recipes: new Map(),
      volumeL: 20,
      leastL: 12,
      densityGCm3: 1.68,
    });
    expect(left).toMatchObject({ spareL: 8, dips: 16, dipsPerPiece: 2, pieces: 8 });
  });

  test("below what covers a piece nothing is left; without a dip nothing is said", () => {
    const from = {
      bucketId: "b1",
      pieces: [],
      recipes: new Map(),
      volumeL: 10,
      leastL: 12,
      densityGCm3: 1.68,
    };
    expect(bucketLeft({ ...from, taken: { dips: [dip("a", 1)], unknown: 0 } })).toMatchObject({
      spareL: 0,
      pieces: 0,
    });
    expect(bucketLeft({ ...from, taken: { dips: [], unknown: 0 } })).toBeNull();
  });
});
