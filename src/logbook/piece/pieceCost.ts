import { pieceCost, pieceMaterial } from "../../physics/slurry/stock.ts";
import type { CoatKind } from "../../trade/coats.ts";
import { materialLoss } from "../../trade/pickup.ts";
import { bucketAim } from "../bucket/bucketAim.ts";
import { coatMm } from "../drying/coatMm.ts";
import { pickupOf } from "../bucket/dippedOut.ts";
import type { Bucket, Piece, Recipe, Shop } from "./piece.ts";
import { ranges, within } from "../entries/ranges.ts";
import type { Material } from "../shop/shopThings.ts";

export type CostLack =
  | { readonly code: "area" | "coats" | "currencies" }
  | { readonly code: "bucket"; readonly kind: CoatKind }
  | { readonly code: "price"; readonly of: "flour" | "sol" | "stucco"; readonly id: string | null };

/** What a piece's shell costs in material, losses included, in the currency the prices are told in. */
export type ShellCost =
  | {
      readonly ok: true;
      readonly slurryKg: number;
      readonly stuccoKg: number;
      readonly slurry: number;
      readonly stucco: number;
      readonly total: number;
      readonly currency: string | null;
      /** Coats it is reckoned for: those on the piece, and those its recipe still wants. */
      readonly coats: number;
      readonly coatsToCome: number;
    }
  | { readonly ok: false; readonly lacks: readonly CostLack[] };

type Around = {
  readonly recipe: Recipe | null;
  readonly buckets: ReadonlyMap<string, Bucket>;
  readonly shop: Shop;
  readonly gains: Parameters<typeof pickupOf>[1]["gains"];
};

/** Coats on the piece and coats to come; a coat to come is taken from the bucket that gave its kind last, else from one meant for it. */
export function shellCost({ plan, coats }: Pick<Piece, "plan" | "coats">, around: Around): ShellCost {
  const { areaM2 } = plan;
  const { recipe, buckets, shop } = around;
  const toCome = recipe?.coats.slice(coats.length) ?? [];
  const all = [
    ...coats.map(({ kind, stuccoId, bucketId, beforeLog }) => ({
      kind,
      stuccoId,
      bucketId: bucketId ?? (beforeLog === undefined ? null : meantFor(kind, buckets)),
    })),
    ...toCome.map(({ kind, stuccoId }) => ({
      kind,
      stuccoId,
      bucketId: coats.findLast((coat) => coat.kind === kind)?.bucketId ?? meantFor(kind, buckets),
    })),
  ];
  const lacks: CostLack[] = [];
  if (!within(ranges.areaM2, areaM2)) lacks.push({ code: "area" });
  if (all.length === 0) lacks.push({ code: "coats" });
  const priced = all.flatMap(({ kind, stuccoId, bucketId }) => {
    const bucket = bucketId === null ? undefined : buckets.get(bucketId);
    if (bucket === undefined) {
      lacks.push({ code: "bucket", kind });
      return [];
    }
    const aim = bucketAim(bucket, shop);
    const { flourId = null } = bucket.targets;
    const flour = price(shop.materials, (one) => one.kind === "flour" && one.flourId === flourId);
    const sol = price(shop.materials, (one) => one.kind === "sol");
    const stucco =
      stuccoId === null
        ? { perKg: 0, currency: null }
        : price(shop.materials, (one) => one.kind === "stucco" && one.stuccoId === stuccoId);
    if (flour === null) lacks.push({ code: "price", of: "flour", id: flourId });
    if (sol === null) lacks.push({ code: "price", of: "sol", id: null });
    if (stucco === null) lacks.push({ code: "price", of: "stucco", id: stuccoId });
    if (flour === null || sol === null || stucco === null) return [];
    const gain = pickupOf(kind, { ...around, densityGCm3: aim.densityGCm3?.value ?? null });
    const ratio = aim.ratio?.value ?? null;
    return [
      {
        coat: {
          slurryKgM2: gain.slurryKgM2,
          stuccoKgM2: stuccoId === null ? 0 : gain.stuccoKgM2,
          buildMm: coatMm({ kind, stuccoId }, shop.buildMm),
        },
        // Without a ratio of its own: a fused silica prime's, 1.7 to one (starting value).
        flourShare: (ratio ?? 1.7) / (1 + (ratio ?? 1.7)),
        prices: { flour: flour.perKg, sol: sol.perKg, stucco: stucco.perKg },
        currencies: [flour.currency, sol.currency, stucco.currency],
      },
    ];
  });
  const currencies = new Set(priced.flatMap((one) => one.currencies).filter((currency) => currency !== null));
  if (currencies.size > 1) lacks.push({ code: "currencies" });
  if (lacks.length > 0 || !within(ranges.areaM2, areaM2)) return { ok: false, lacks: distinct(lacks) };
  const sums = { slurryKg: 0, stuccoKg: 0, slurry: 0, stucco: 0 };
  for (const [place, one] of priced.entries()) {
    const upTo = (count: number) =>
      pieceMaterial({
        areaM2,
        coats: priced.slice(0, count).map(({ coat }) => coat),
        slurryLoss: materialLoss.slurry.value,
        stuccoLoss: materialLoss.stucco.value,
        grows: true,
      });
    const [before, after] = [upTo(place), upTo(place + 1)];
    const material = {
      slurryWithLossKg: after.slurryWithLossKg - before.slurryWithLossKg,
      stuccoWithLossKg: after.stuccoWithLossKg - before.stuccoWithLossKg,
    };
    const cost = pieceCost({ material, ...one });
    sums.slurryKg += material.slurryWithLossKg;
    sums.stuccoKg += material.stuccoWithLossKg;
    sums.slurry += cost.slurry;
    sums.stucco += cost.stucco;
  }
  return {
    ok: true,
    ...sums,
    total: sums.slurry + sums.stucco,
    currency: [...currencies][0] ?? null,
    coats: coats.length,
    coatsToCome: toCome.length,
  };
}

/** The first material in use that has a price; no currency told is none. */
function price(
  materials: readonly Material[],
  isIt: (material: Material) => boolean,
): { readonly perKg: number; readonly currency: string | null } | null {
  const one = materials.find((each) => !each.retired && each.pricePerKg !== undefined && isIt(each));
  return one?.pricePerKg === undefined
    ? null
    : { perKg: one.pricePerKg, currency: one.currency?.trim() || null };
}

function meantFor(kind: CoatKind, buckets: ReadonlyMap<string, Bucket>): string | null {
  const open = [...buckets.values()].filter(({ retired }) => !retired);
  const use = kind === "prime" || kind === "seal" ? kind : "backup";
  return (
    (open.find((bucket) => bucket.use === use) ?? open.find((bucket) => bucket.use === "single"))?.id ?? null
  );
}

const distinct = (lacks: readonly CostLack[]): readonly CostLack[] => [
  ...new Map(lacks.map((lack) => [JSON.stringify(lack), lack])).values(),
];
