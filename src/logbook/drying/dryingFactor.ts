import { factorOf } from "../../physics/evidence/shopLearning.ts";
import { coatVariance, priorVariance } from "../../physics/stats/spread.ts";
import type { AirClass } from "../../trade/airClasses.ts";
import type { CoatKind } from "../../trade/coats.ts";
import { ranges, within } from "../entries/ranges.ts";
import type { LearnedBasis } from "../piece/standing.ts";
import type { Surroundings } from "../piece/surroundings.ts";

/** The factor on a coat's time before anything is seen of the coat itself, and the spread of ln t about it. */
export type CoatFactor =
  | { readonly from: "start" | "own"; readonly value: number; readonly sigmaLn: number }
  | {
      readonly from: "learned";
      readonly value: number;
      readonly sigmaLn: number;
      readonly learned: LearnedBasis;
    };

/** Coats that dry alike, for learning: prime, body and seal. */
export type CoatFamily = "prime" | "body" | "seal";

export const familyOf = (kind: CoatKind): CoatFamily => (kind === "prime" || kind === "seal" ? kind : "body");

/** The name of a group of coats that learn together: their family and the air movement at the dip. */
export const groupOf = (kind: CoatKind, air: AirClass): string => `${familyOf(kind)}/${air}`;

const startingSigma = Math.sqrt(priorVariance + coatVariance);

/**
 * The factor for a coat: the shop's own figure where a person set one, else what it has learned from other coats, else
 * the start.
 */
export function coatFactor(
  { shop, learned = null }: Pick<Surroundings, "shop" | "learned">,
  { coatId, kind, air }: { readonly coatId: string; readonly kind: CoatKind; readonly air: AirClass | null },
): CoatFactor {
  if (within(ranges.dryingFactor, shop.dryingFactor))
    return { from: "own", value: shop.dryingFactor, sigmaLn: startingSigma };
  if (learned === null) return start;
  const { factor: said, shopPairs } = learned.without.get(coatId) ?? {
    factor: air === null ? learned.shop : factorOf(learned, groupOf(kind, air)),
    shopPairs: learned.shop.pairs,
  };
  if (shopPairs === 0) return start;
  const { factor, low, high, lnSd, scatter, pairs } = said;
  return {
    from: "learned",
    value: factor,
    sigmaLn: Math.min(2, Math.hypot(lnSd, scatter)),
    learned: { factor, low, high, pairs, shopPairs },
  };
}

const start: CoatFactor = { from: "start", value: 1, sigmaLn: startingSigma };
