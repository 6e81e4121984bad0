import type { LearnedCoat } from "../../physics/evidence/learnedBuild.ts";
import { dragOutKg, grownAreaM2 } from "../../physics/slurry/stock.ts";
import type { CoatKind } from "../../trade/coats.ts";
import { pickupGCm3, pickups } from "../../trade/pickup.ts";
import { bucketAim } from "./bucketAim.ts";
import type { DipOut } from "./bucketLedger.ts";
import { coatMm } from "../drying/coatMm.ts";
import type { Bucket, Piece, Shop } from "../piece/piece.ts";
import { ranges, within } from "../entries/ranges.ts";

/** Where a coat's gain is taken from: a figure the shop has set, its own weighings, or the starting value. */
export type PickupBasis = "own" | "weighed" | "starting";

/** What one dip took with it, reckoned from the coat in the log: nothing of it is ever written down. */
export type CoatTaken = {
  readonly pieceId: string;
  readonly coatId: string;
  readonly bucketId: string | null;
  readonly stuccoId: string | null;
  readonly kind: CoatKind;
  readonly at: number;
  /** The face it covered, grown by the coats beneath. */
  readonly faceM2: number;
  readonly slurryKg: number;
  readonly stuccoKg: number;
  readonly basis: PickupBasis;
};

export type Taken = {
  /** Oldest first. */
  readonly dips: readonly CoatTaken[];
  /** Coats of pieces whose area nobody told: what they took is not known. */
  readonly unknown: number;
};

type Given = {
  readonly buckets: ReadonlyMap<string, Bucket>;
  readonly shop: Pick<Shop, "cups" | "slurryKgM2" | "stuccoKgM2" | "buildMm">;
  readonly gains: ReadonlyMap<string, Pick<LearnedCoat, "slurry" | "stucco">>;
};

/** kg/m² a kind of coat takes of slurry and stucco. Starting slurry scales with the bucket's density; own figures were found with it. */
export function pickupOf(
  kind: CoatKind,
  { shop, gains, densityGCm3 }: Pick<Given, "shop" | "gains"> & { readonly densityGCm3: number | null },
): { readonly slurryKgM2: number; readonly stuccoKgM2: number; readonly basis: PickupBasis } {
  const weighed = gains.get(kind);
  const start = pickups[kind];
  const own = shop.slurryKgM2[kind];
  const ownStucco = shop.stuccoKgM2[kind];
  const basis = within(ranges.coatKgM2, own) ? "own" : weighed === undefined ? "starting" : "weighed";
  const scaled = dragOutKg({
    areaM2: 1,
    pickupKgM2: start.slurryKgM2,
    pickupGCm3,
    densityGCm3: densityGCm3 ?? pickupGCm3,
  });
  return {
    slurryKgM2: within(ranges.coatKgM2, own) ? own : (weighed?.slurry.kgM2 ?? scaled),
    stuccoKgM2: within(ranges.coatKgM2, ownStucco) ? ownStucco : (weighed?.stucco.kgM2 ?? start.stuccoKgM2),
    basis,
  };
}

/**
 * What left on pieces, dip by dip: area times what the kind of coat gains, each coat on the wall of those beneath. A
 * second dip of a coat takes slurry anew and no stucco (judgement). A coat from before the log took nothing of what the
 * log counts. Total; a coat without an area is counted as unknown.
 */
export function takenBy(pieces: readonly Pick<Piece, "id" | "plan" | "coats">[], given: Given): Taken {
  const densities = new Map<string, number | null>();
  const densityOf = (bucketId: string | null): number | null => {
    const bucket = bucketId === null ? undefined : given.buckets.get(bucketId);
    if (bucket === undefined || bucketId === null) return null;
    const known = densities.get(bucketId);
    if (known !== undefined) return known;
    const density = bucketAim(bucket, given.shop).densityGCm3?.value ?? null;
    densities.set(bucketId, density);
    return density;
  };
  const dips: CoatTaken[] = [];
  let unknown = 0;
  for (const { id: pieceId, plan, coats } of pieces) {
    const { areaM2 } = plan;
    if (!within(ranges.areaM2, areaM2)) {
      unknown += coats.filter(({ beforeLog }) => beforeLog === undefined).length;
      continue;
    }
    let wallMm = 0;
    for (const { id: coatId, bucketId, stuccoId, kind, dippedAt, redips, ...coat } of coats) {
      const faceM2 = grownAreaM2({ areaM2, wallMm: Math.min(wallMm, ranges.wallMm.high) });
      const gain = pickupOf(kind, { ...given, densityGCm3: densityOf(bucketId) });
      const one = { pieceId, coatId, bucketId, kind, faceM2, basis: gain.basis };
      const slurryKg = faceM2 * gain.slurryKgM2;
      const stuccoKg = stuccoId === null ? 0 : faceM2 * gain.stuccoKgM2;
      if (coat.beforeLog === undefined) dips.push({ ...one, stuccoId, at: dippedAt, slurryKg, stuccoKg });
      for (const { at } of redips) dips.push({ ...one, stuccoId: null, at, slurryKg, stuccoKg: 0 });
      // A wall in which a burnt-out shell is patched has no pattern left to grow from; the face is the same.
      wallMm += coat.afterBurnout ? 0 : coatMm({ ...coat, kind, stuccoId }, given.shop.buildMm);
    }
  }
  return { dips: dips.toSorted((a, b) => a.at - b.at), unknown };
}

/** The slurry that went out of one bucket, as its ledger takes it. */
export function dipsFrom({ dips }: Taken, bucketId: string): readonly DipOut[] {
  return dips
    .filter((dip) => dip.bucketId === bucketId)
    .map(({ at, slurryKg }) => ({ at, massKg: slurryKg }));
}
