import { lastFluxKgM2S, leastAreaM2 } from "../../physics/drying/lastFlux.ts";
import type { SteadyMass } from "../../physics/evidence/steadyMass.ts";
import { steadyLeastS, steadyMass } from "../../physics/evidence/steadyMass.ts";
import type { GeometryClass } from "../../trade/geometryClasses.ts";
import { geometryClasses } from "../../trade/geometryClasses.ts";
import type { CoatSpan } from "./coatSpan.ts";
import type { Weight } from "./coatWeights.ts";
import { chainOf } from "./coatWeights.ts";
import { airAt, walkAir } from "../air/hanging.ts";
import { areaShareOf } from "./slowPlace.ts";
import { meanRh } from "../air/stayAir.ts";

/** Two weighings of a coat that stood still, or plainly lost. */
export type PairSaid = {
  readonly first: Weight;
  readonly said: SteadyMass & { readonly kind: "steady" | "losing" };
};

/** A place of a shell as a weighing hears it. */
type Heavy = { readonly place: GeometryClass; readonly massG: number };

/**
 * Grams a second that a place loses while it is not yet dry, by its area in m²: the piece's own, else the least that a
 * piece of this mass can have, of which a slow place has a tenth.
 */
const areaOf = ({ weights }: CoatSpan, { place, massG }: Heavy): number =>
  (weights.areaM2 ?? leastAreaM2(massG / 1000)) * areaShareOf(place);

/** What a place would lose between two times while still wet, g, at the least; null where no air was read for it. */
export function wetLossG(
  span: CoatSpan,
  { from, to, ...heavy }: Heavy & { readonly from: number; readonly to: number },
): number | null {
  const walked = walkWetLoss(span, { from, to, ...heavy, enoughG: Infinity });
  return walked?.lossG ?? null;
}

/** When a place still wet would have lost `enoughG` since `from`, epoch ms; null where that is not before `to`. */
export function wetLossAt(
  span: CoatSpan,
  of: Heavy & { readonly from: number; readonly to: number; readonly enoughG: number },
): number | null {
  return walkWetLoss(span, of)?.at ?? null;
}

function walkWetLoss(
  span: CoatSpan,
  { from, to, enoughG, ...heavy }: Heavy & { from: number; to: number; enoughG: number },
): { readonly lossG: number; readonly at: number | null } | null {
  const areaM2 = areaOf(span, heavy);
  const { pocketSM } = geometryClasses[heavy.place];
  let lossG = 0;
  let at: number | null = null;
  let isRead = false;
  walkAir(span.stays, { from, to }, (step, startAt) => {
    isRead = true;
    const gS = 1000 * areaM2 * lastFluxKgM2S(step, span.wet, { pocketSM, factor: span.slowFactor });
    if (lossG + gS * step.durationS >= enoughG) at = startAt + (1000 * (enoughG - lossG)) / gS;
    lossG += gS * step.durationS;
    return at === null;
  });
  return isRead ? { lossG, at } : null;
}

/** The humidity a pair is judged by: the mean between the two, and not under what was read at the second. */
export function rhBetween({ stays }: CoatSpan, span: { from: number; to: number }): number | null {
  const last = airAt(stays, span.to)?.reading.rh ?? null;
  const mean = meanRh(stays, span);
  return last === null || mean === null || !(last >= 0 && last <= 1) ? null : Math.max(last, mean);
}

/**
 * What a weighing says beside an earlier one of the same coat, for a place of the shell; null where no pair can tell. The
 * nearest earlier one that can is taken.
 */
export function pairSays(second: Weight, span: CoatSpan, place: GeometryClass): PairSaid | null {
  const { drying, balanceG: scaleG } = chainOf(span.seen, span.weights, second.at);
  if (!drying.some(({ id }) => id === second.id)) return null;
  const weighing = ({ at, massG }: Weight) => ({ afterS: (at - span.from) / 1000, massG });
  const earlier = drying.filter(({ at }) => at <= second.at - steadyLeastS * 1000);
  for (const first of earlier.toReversed()) {
    const between = { from: first.at, to: second.at };
    const rh = rhBetween(span, between);
    const lossG = wetLossG(span, { ...between, place, massG: second.massG });
    if (rh === null || lossG === null) return null;
    const said = steadyMass({
      first: weighing(first),
      second: weighing(second),
      wetLossG: lossG,
      rh,
      scaleG,
    });
    if (said.kind !== "refused") return { first, said };
    if (said.code !== "balance-too-coarse" && said.code !== "unsure") return null;
  }
  return null;
}
