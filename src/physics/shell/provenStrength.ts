import { logBelow } from "../stats/normal.ts";
import { requireFigures, requirePositive } from "../stats/range.ts";
import { lnSdOf } from "./wallVerdict.ts";

export type ProvenStrength = { readonly likelyMPa: number; readonly spread: number };

/** Points of the belief in the shop's median, and how far it reaches in standard deviations. */
const points = 241;
const reachSd = 5;

/**
 * Bending strength after pours: what shells of this kind held and broke at, as load indices, MPa (`loadIndexMPa`).
 *
 * A strength known to × or ÷ `spread` is a median that differs from shop to shop, and shells that differ within one by
 * `within` (1 to `spread`); a load is known to `loadSpread`. A shell that held or broke is a likelihood over the median,
 * Φ((ln median − ln load)/s) or one less it (Bayes, on a grid). What is given back is log-normal with the mean and the
 * variance of the belief, never known better than `within`. Strength 0.05–100 MPa, at most 1000 loads.
 */
export function provenStrength({
  likelyMPa,
  spread,
  within,
  loadSpread,
  held,
  broke,
}: {
  likelyMPa: number;
  spread: number;
  within: number;
  loadSpread: number;
  held: readonly number[];
  broke: readonly number[];
}): ProvenStrength {
  requirePositive("likelyMPa", likelyMPa, { high: 1000, unit: "MPa" });
  requireFigures({ within, loadSpread });
  for (const loadMPa of [...held, ...broke]) requirePositive("loadMPa", loadMPa, { high: 1e6, unit: "MPa" });
  const own = lnSdOf(within);
  const between = Math.sqrt(Math.max(0, lnSdOf(spread) ** 2 - own ** 2));
  if (between === 0 || held.length + broke.length === 0) return { likelyMPa, spread };
  const scatter = Math.max(leastScatter, Math.hypot(own, lnSdOf(loadSpread)));
  const grid = Array.from({ length: points }, (_, i) => {
    const z = (2 * i * reachSd) / (points - 1) - reachSd;
    const ln = Math.log(likelyMPa) + z * between;
    const above = (loadMPa: number): number => (ln - Math.log(loadMPa)) / scatter;
    const weight =
      held.reduce((sum, load) => sum + logBelow(above(load)), -(z ** 2) / 2) +
      broke.reduce((sum, load) => sum + logBelow(-above(load)), 0);
    return { ln, weight };
  });
  const most = Math.max(...grid.map(({ weight }) => weight));
  const belief = grid.map(({ ln, weight }) => ({ ln, share: Math.exp(weight - most) }));
  const whole = belief.reduce((sum, { share }) => sum + share, 0);
  const mean = belief.reduce((sum, { ln, share }) => sum + ln * share, 0) / whole;
  const variance = belief.reduce((sum, { ln, share }) => sum + (ln - mean) ** 2 * share, 0) / whole;
  return {
    likelyMPa: Math.exp(mean),
    spread: Math.min(spread, Math.exp(ninetyFiveQuantile * Math.hypot(own, Math.sqrt(variance)))),
  };
}

const ninetyFiveQuantile = 1.645;
/** Loads known to nothing at all would make the belief a step; no load is known better. */
const leastScatter = 0.01;
