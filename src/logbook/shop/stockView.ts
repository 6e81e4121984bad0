import { millisecondsInDay as dayMs } from "date-fns/constants";
import { reorderPointKg, stockBalance, type StockBalance } from "../../physics/slurry/stockLedger.ts";
import { solShelfMonths } from "../../trade/binders.ts";
import type { Taken } from "../bucket/dippedOut.ts";
import type { Bucket, Shop } from "../piece/piece.ts";
import { ranges, within } from "../entries/ranges.ts";
import type { Material } from "./shopThings.ts";
import { oldestOf, weeklyUse, type WeeklyUse } from "./stockUse.ts";

/** One movement of a material: written down, or reckoned from what was mixed and dipped. */
export type MaterialMove = {
  readonly id: string;
  readonly at: number;
  readonly kind: "received" | "made-up" | "dipped-out" | "lost" | "thrown-away" | "counted";
  readonly kg: number;
  readonly basis: "told" | "reckoned";
  /** The bucket it went into, or what a person wrote. */
  readonly bucketId: string | null;
  readonly note: string | null;
};

export type MaterialStock = {
  readonly material: Material;
  /** Oldest first. */
  readonly moves: readonly MaterialMove[];
  /** Null until something was received or counted: what was used before tells nothing of what is there. */
  readonly balance: StockBalance | null;
  readonly weekly: WeeklyUse | null;
  /** With the figures it came from; null while use or delivery time is not known. */
  readonly reorder: { readonly kg: number; readonly z: number; readonly leadWeeks: number } | null;
  /** At or below its reorder point. */
  readonly isShort: boolean;
  /** When the oldest of what is there came in; and for how long the kind keeps, months. */
  readonly oldestAt: number | null;
  readonly keepsMonths: number | null;
  readonly isOverAge: boolean;
};

/** Runs out in one delivery of twenty. */
const serviceZ = 1.65;
const monthMs = (365.25 / 12) * dayMs;

/**
 * Every material in use with its ledger. What went into buckets and out on pieces is taken from their logs, from the
 * first material in use that names the flour, the stucco, or is a sol: nobody writes it twice.
 */
export function stockView(given: {
  readonly shop: Pick<Shop, "materials" | "stockMoves">;
  readonly buckets: readonly Bucket[];
  readonly taken: Taken;
  readonly now: number;
}): readonly MaterialStock[] {
  const { shop, now } = given;
  const inUse = shop.materials.filter(({ retired }) => !retired);
  const reckoned = reckonedMoves(inUse, given);
  return inUse.map((material) => {
    const told = shop.stockMoves
      .filter(({ materialId, massKg }) => materialId === material.id && within(ranges.stockKg, massKg))
      .map(({ id, at, how, massKg, bucketId = null, note = null }): MaterialMove => ({
        id,
        at,
        kind: how,
        kg: massKg,
        basis: "told",
        bucketId,
        note,
      }));
    const moves = [...told, ...(reckoned.get(material.id) ?? [])]
      .filter(({ at }) => at <= now)
      .toSorted((a, b) => a.at - b.at);
    return stockOf(material, moves, now);
  });
}

function stockOf(material: Material, moves: readonly MaterialMove[], now: number): MaterialStock {
  const first = moves.findIndex(({ kind }) => kind === "received" || kind === "counted");
  const ledger = first < 0 ? null : moves.slice(first);
  const balance = ledger && stockBalance(ledger);
  const weekly = weeklyUse(moves, now);
  const leadWeeks = material.weeksToCome;
  const reorder =
    weekly === null || leadWeeks === undefined
      ? null
      : {
          kg: reorderPointKg({
            weeklyKg: weekly.meanKg,
            weeklySigmaKg: weekly.sigmaKg ?? 0,
            leadWeeks,
            z: serviceZ,
          }),
          z: serviceZ,
          leadWeeks,
        };
  const keepsMonths = material.keepsMonths ?? (material.kind === "sol" ? solShelfMonths.value : null);
  const oldestAt = ledger && oldestOf(ledger, balance?.kg ?? 0);
  return {
    material,
    moves,
    balance,
    weekly,
    reorder,
    isShort: balance !== null && reorder !== null && balance.kg <= reorder.kg,
    oldestAt,
    keepsMonths,
    isOverAge: oldestAt !== null && keepsMonths !== null && now - oldestAt > keepsMonths * monthMs,
  };
}

function reckonedMoves(
  materials: readonly Material[],
  { buckets, taken }: { readonly buckets: readonly Bucket[]; readonly taken: Taken },
): ReadonlyMap<string, readonly MaterialMove[]> {
  const all = new Map<string, MaterialMove[]>();
  const put = (material: Material | undefined, move: Omit<MaterialMove, "basis" | "note">): void => {
    if (material === undefined || move.kg <= 0 || !within(ranges.stockKg, move.kg)) return;
    const list = all.get(material.id) ?? [];
    all.set(material.id, list);
    list.push({ ...move, basis: "reckoned", note: null });
  };
  const sol = materials.find(({ kind }) => kind === "sol");
  for (const { id: bucketId, targets, mixes, tops } of buckets) {
    const flour =
      targets.flourId === undefined
        ? undefined
        : materials.find(({ kind, flourId }) => kind === "flour" && flourId === targets.flourId);
    for (const { id, at, flourKg, solKg } of [...mixes, ...tops]) {
      put(flour, { id: `${id} flour`, at, kind: "made-up", kg: flourKg, bucketId });
      put(sol, { id: `${id} sol`, at, kind: "made-up", kg: solKg, bucketId });
    }
  }
  for (const [place, { coatId, at, stuccoId, stuccoKg, bucketId }] of taken.dips.entries()) {
    const stucco = materials.find((each) => each.kind === "stucco" && each.stuccoId === stuccoId);
    if (stuccoId !== null)
      put(stucco, { id: `${coatId} ${place}`, at, kind: "dipped-out", kg: stuccoKg, bucketId });
  }
  return all;
}
