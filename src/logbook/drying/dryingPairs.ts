import { startTrack } from "../../physics/drying/coatTrack.ts";
import { millisecondsInDay as dayMs } from "date-fns/constants";
import { pairWeights } from "../../physics/evidence/calibration.ts";
import type { GroupedPair } from "../../physics/evidence/shopLearning.ts";
import { indexedCoat } from "../../physics/evidence/surfaceEvidence.ts";
import type { Said } from "./coatSaid.ts";
import { readObservations } from "./coatShares.ts";
import type { CoatSpan } from "./coatSpan.ts";
import { dryTo } from "./coatTrack.ts";
import { chainOf } from "./coatWeights.ts";
import { spanOf } from "./coatDrying.ts";
import { groupOf } from "./dryingFactor.ts";
import { makeMemo } from "../log/memo.ts";
import { airAt } from "../air/hanging.ts";
import type { Piece } from "../piece/piece.ts";
import { coatCaseOf } from "./shellDrying.ts";
import type { Surroundings } from "../piece/surroundings.ts";
import { pairSays } from "./weighPairs.ts";

/** By what a coat was found dry, or last found wet. */
export type PairMethod = keyof typeof pairWeights;

/** One covered or fired coat that was found dry or still wet by a scale or an instrument, against what the sum said of it without any factor. */
export type ShopPair = GroupedPair & {
  readonly pieceId: string;
  readonly coatId: string;
  readonly coatNumber: number;
  readonly dippedAt: number;
  readonly method: PairMethod;
};

const forecastMs = 14 * dayMs;

/**
 * The pairs of one piece: each coat dipped once, in air that was read, and found dry or still wet by a scale or an
 * instrument. A hand or a colour tells of the outer film and teaches nothing; nor does a coat that is still open, of
 * which more may yet be seen. The sum walks it at factor 1 whatever the shop has learned, so that learning never
 * feeds on itself.
 */
export function pairsOf(
  whole: Piece,
  from: { readonly surroundings: Surroundings; readonly now: number },
): readonly ShopPair[] {
  // What a hand says is left out altogether, for by way of the water carried up it would reach the next coat's time.
  const piece = {
    ...whole,
    dryness: whole.dryness.filter(({ method }) => method !== "touch" && method !== "colour"),
  };
  if (piece.dryness.length === 0) return [];
  const { surroundings, now } = from;
  const plain = { ...surroundings, learned: null, shop: { ...surroundings.shop, dryingFactor: null } };
  // Of its own: this piece has lost some of its lines, and the shop its learning.
  const memory = { memo: makeMemo(), rest: [] };
  const recipe = surroundings.recipes.get(piece.plan.recipeId ?? "") ?? null;
  return piece.coats.flatMap((coat): readonly ShopPair[] => {
    const { id: coatId, dippedAt, redips, kind, number, beforeLog } = coat;
    // When it was dipped, and in what air it began to dry, is from memory.
    if (beforeLog !== undefined) return [];
    // A coat dipped twice dries as two do; what it teaches can't be told apart.
    if (redips.length > 0 || !piece.dryness.some((seen) => seen.coatId === coatId)) return [];
    const of = coatCaseOf(piece, coatId, { surroundings: plain, recipe, now, memory });
    const there = of && airAt(of.stays, dippedAt);
    if (of === null || there === null) return [];
    const fireAt = Math.min(...of.fires.filter((at) => at >= dippedAt));
    if (of.isOuter && fireAt === Infinity) return [];
    const span = spanOf(of, { span: 0, wet: of.wet });
    const bounds = boundsOf({ ...span, seen: span.seen.filter(({ at }) => at < fireAt) });
    const predictedS = bounds && predictedOf(span);
    if (bounds === null || predictedS === null || predictedS <= 0) return [];
    const group = groupOf(kind, there.reading.air);
    return [{ pieceId: piece.id, coatId, coatNumber: number, dippedAt, group, predictedS, ...bounds }];
  });
}

/** Seconds from the dip until the sum calls it ready in the air it hung in, without any factor; null where it never does. */
function predictedOf({ wet, from, stays }: CoatSpan): number | null {
  const track = startTrack(wet, { at: from, spread: { early: 1, likely: 1, late: 1, sigmaLn: 0 } });
  dryTo(track, stays, { to: from + forecastMs, stopWhenReady: true });
  const { readyAt } = track.likely;
  return readyAt === null ? null : (readyAt - from) / 1000;
}

type Bound = { readonly at: number; readonly says: "wet" | "dry"; readonly method: PairMethod };

/** The last time it was surely wet, and the first after that at which it was dry. What came later takes back what came before. */
function boundsOf(span: CoatSpan): Pick<ShopPair, "wetAtS" | "dryAtS" | "weight" | "method"> | null {
  const bounds = [...heardBounds(span), ...weightBounds(span)].toSorted((a, b) => a.at - b.at);
  const wet = bounds.findLast(({ says }) => says === "wet") ?? null;
  const dry = bounds.find(({ says, at }) => says === "dry" && at > (wet?.at ?? -Infinity)) ?? null;
  const closing = dry ?? wet;
  if (closing === null) return null;
  const seconds = (bound: Bound | null): number | null =>
    bound === null ? null : (bound.at - span.from) / 1000;
  const wetAtS = seconds(wet);
  const dryAtS = seconds(dry);
  // Wet at the moment of the dip is no news, and dry then can't be.
  if (dryAtS !== null && dryAtS <= 0) return null;
  if (dryAtS === null && (wetAtS ?? 0) <= 0) return null;
  return { wetAtS, dryAtS, weight: pairWeights[closing.method], method: closing.method };
}

function heardBounds(span: CoatSpan): readonly Bound[] {
  const { readyShare } = indexedCoat(span.wet, 0);
  return readObservations(span).heard.flatMap(({ seen, said }): readonly Bound[] => {
    const bound = plainly(said, readyShare);
    return bound === null ? [] : [{ at: seen.at, ...bound }];
  });
}

function plainly(said: Said, readyShare: number): Omit<Bound, "at"> | null {
  switch (said.by) {
    case "touch":
    case "colour":
      return null;
    case "target-mass":
      if (said.waterShare <= readyShare) return { says: "dry", method: "weighing" };
      return said.waterShare - said.sdShare > readyShare ? { says: "wet", method: "weighing" } : null;
    case "surface":
      // A dry face says nothing of the pocket whose time is predicted.
      if (said.says === "nearly" || (said.says === "dry" && said.outerFaceOnly)) return null;
      return { says: said.says, method: "surface" };
    case "bag":
      if (said.says === "between") return null;
      return { says: said.says === "dry" ? "dry" : "wet", method: "bag" };
    case "resistance":
      return { says: said.says, method: "resistance" };
    case "weight-loss":
    case "approach":
      return null;
  }
}

/** Two weighings that can tell of the place the times are for: no loss is dry at the second, a loss was wet at the first. */
function weightBounds(span: CoatSpan): readonly Bound[] {
  return chainOf(span.seen, span.weights).drying.flatMap((second): readonly Bound[] => {
    const pair = pairSays(second, span, span.places.named);
    if (pair === null) return [];
    const isDry = pair.said.kind === "steady";
    return [{ at: isDry ? second.at : pair.first.at, says: isDry ? "dry" : "wet", method: "weighing" }];
  });
}
