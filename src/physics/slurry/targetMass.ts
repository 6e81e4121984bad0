import { requirePositive, requireWithin } from "../stats/range.ts";
import type { ShareEvidence } from "../evidence/shareEvidence.ts";
import { aboutShare, evidenceWeights } from "../evidence/shareEvidence.ts";

/**
 * Three weighings of one coat, g: the dry piece, drained after the slurry, and after the stucco. `waterFraction` is
 * the slurry's water by mass, 0–1, `balanceG` the standard deviation of one reading of the balance.
 */
export type ThreeWeighings = {
  readonly dryG: number;
  readonly drainedG: number;
  readonly stuccoedG: number;
  readonly waterFraction: number;
  readonly waterFractionSd?: number | undefined;
  readonly balanceG: number;
};

export type TargetMass =
  | {
      readonly kind: "target";
      /** Mass of the piece with this coat dry, and its standard deviation, g. */
      readonly targetG: number;
      readonly sdG: number;
      /** Water the coat went on with, g. */
      readonly waterG: number;
      readonly slurryG: number;
      readonly stuccoG: number;
    }
  | { readonly kind: "refused"; readonly code: "no-slurry"; readonly slurryG: number }
  | { readonly kind: "refused"; readonly code: "stucco-lost"; readonly stuccoG: number }
  | {
      readonly kind: "refused";
      readonly code: "balance-too-coarse";
      readonly balanceG: number;
      readonly mostG: number;
    };

/** How well a recipe's water fraction is known, standard deviation; estimate. */
const usualFractionSd = 0.02;

/** The balance must tell a twentieth of the water; judgement. */
const balanceShare = 1 / 20;

/**
 * Mass of the piece once this coat is dry, g.
 *
 * Dry piece + slurry without its water + stucco: a balance of masses, no drying curve in it. Loose stucco shed
 * after the third weighing makes the coat look drier than it is: brush it off before. Refuses weighings in which
 * no slurry stayed or mass went with the stucco, and a balance too coarse for the water. A fraction off by 0.02
 * of 0.28 moves the dryness by 7 %.
 */
export function targetMass(of: ThreeWeighings): TargetMass {
  const { dryG, drainedG, stuccoedG, waterFraction, waterFractionSd = usualFractionSd, balanceG } = of;
  for (const [name, massG] of Object.entries({ dryG, drainedG, stuccoedG }))
    requirePositive(name, massG, { high: 1e6, unit: "g" });
  requirePositive("waterFraction", waterFraction, { high: 0.9, unit: "(a fraction)" });
  requireWithin("waterFractionSd", waterFractionSd, { low: 0, high: 0.5, unit: "(a fraction)" });
  requirePositive("balanceG", balanceG, { high: 1e4, unit: "g" });
  const slurryG = drainedG - dryG;
  const stuccoG = stuccoedG - drainedG;
  if (slurryG <= 0) return { kind: "refused", code: "no-slurry", slurryG };
  if (stuccoG < -2 * balanceG) return { kind: "refused", code: "stucco-lost", stuccoG };
  const waterG = waterFraction * slurryG;
  const mostG = waterG * balanceShare;
  if (balanceG > mostG) return { kind: "refused", code: "balance-too-coarse", balanceG, mostG };
  // target = stuccoed − w·(drained − dry): each reading's error by its own factor.
  const balance = balanceG * Math.sqrt(1 + 2 * waterFraction ** 2);
  const sdG = Math.hypot(balance, slurryG * waterFractionSd);
  return { kind: "target", targetG: stuccoedG - waterG, sdG, waterG, slurryG, stuccoG };
}

export type WaterByMass = {
  /** Water left as a share of what the coat went on with; the reading itself, so it may stray past 0 and 1. */
  readonly waterShare: number;
  readonly sdShare: number;
  /** Of that, the balance's part, and the error of the dryness as a share of it, common to all held against the three. */
  readonly ownSdShare: number;
  readonly relativeSd: number;
  /** 1 − waterShare. */
  readonly dryness: number;
  readonly targetG: number;
  readonly sdG: number;
  readonly waterG: number;
  /** A share so far past 0 or 1 that the errors don't explain it (over 2 sd): stucco shed, or a wrong fraction. */
  readonly strays: null | "lighter-than-dry" | "heavier-than-wet";
};

/**
 * Water left by a later weighing of the same piece, with its error from balance and water fraction.
 *
 * null where the three weighings are refused (ask `targetMass` why).
 */
export function waterByMass(of: ThreeWeighings & { readonly massG: number }): WaterByMass | null {
  const { massG, stuccoedG, waterFraction, waterFractionSd = usualFractionSd, balanceG } = of;
  requirePositive("massG", massG, { high: 1e6, unit: "g" });
  const target = targetMass(of);
  if (target.kind === "refused") return null;
  const { targetG, sdG, waterG, slurryG } = target;
  const dryness = (stuccoedG - massG) / waterG;
  const ownSdShare = (Math.SQRT2 * balanceG) / waterG;
  const relativeSd = Math.hypot((Math.SQRT2 * balanceG) / slurryG, waterFractionSd / waterFraction);
  const sdShare = Math.hypot(ownSdShare, dryness * relativeSd);
  const waterShare = 1 - dryness;
  const strays =
    waterShare < -2 * sdShare ? "lighter-than-dry" : waterShare > 1 + 2 * sdShare ? "heavier-than-wet" : null;
  return { waterShare, sdShare, ownSdShare, relativeSd, dryness, targetG, sdG, waterG, strays };
}

/**
 * A weighing against the target mass as evidence; null where it is refused or strays past what errors explain.
 *
 * `before` is the last weighing heard against the same three, if any. Both err alike by the slurry's water, r = d·ε + η
 * with d the dryness, ε shared and η the balance's own: what is left of ε once the one before is believed is the error
 * of this one (the two are exact so, derived here). Taken as independent, five weighings would know the slurry's water
 * better than it is known, and their 80 % band would hold in but 63 %.
 */
export function targetMassEvidence(
  of: ThreeWeighings & {
    readonly massG: number;
    readonly afterS: number;
    readonly before?: { readonly massG: number; readonly afterS: number } | null | undefined;
  },
): ShareEvidence | null {
  const said = waterByMass(of);
  if (said === null || said.strays !== null) return null;
  const { afterS, before = null } = of;
  for (const seenS of before === null ? [afterS] : [afterS, before.afterS])
    requireWithin("afterS", seenS, { low: 0, high: 1e10, unit: "s" });
  const weight = evidenceWeights["target-mass"];
  const first = before && waterByMass({ ...of, massG: before.massG });
  if (before === null || first === null || first.strays !== null) {
    const logLikelihood = aboutShare({ share: said.waterShare, sd: said.sdShare });
    return { source: "target-mass", weight, afterS, sinceS: null, logLikelihood };
  }
  const { ownSdShare: own, relativeSd } = said;
  const toShared = (relativeSd ** 2 * first.dryness) / ((relativeSd * first.dryness) ** 2 + own ** 2);
  const leftSd = (relativeSd * own) / Math.hypot(relativeSd * first.dryness, own);
  const sd = Math.hypot(own, said.dryness * leftSd);
  return {
    source: "target-mass",
    weight,
    afterS,
    sinceS: before.afterS,
    logLikelihood: (waterShare, earlierShare) => {
      const shared = toShared * (earlierShare - first.waterShare);
      return -0.5 * ((waterShare - said.waterShare - said.dryness * shared) / sd) ** 2;
    },
  };
}
