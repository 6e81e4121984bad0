import { indexedCoat } from "../../physics/evidence/surfaceEvidence.ts";
import { waterByMass } from "../../physics/slurry/targetMass.ts";
import { readObservations } from "./coatShares.ts";
import type { CoatSpan, UsedObservation } from "./coatSpan.ts";
import type { Weight } from "./coatWeights.ts";
import { chainOf, isWeight } from "./coatWeights.ts";
import type { DrynessSeen } from "../piece/piece.ts";
import { areaShareOf, isAsSlow } from "./slowPlace.ts";
import { pairSays } from "./weighPairs.ts";

/** How a coat was found dry; "felt" reads its outer film alone, the others count as measured. */
export type DryBy = "steady" | "target" | "surface" | "resistance" | "felt";

/**
 * What an observation says plainly, beside what it does to the belief in the water left.
 *
 * Measured dry is a weight that stands still or has come down to the dry mass, and a surface temperature or resistance
 * that is back at the dry shell's where it was read. `whole`: it speaks for the slowest place of the shell, not only for
 * the place its times are for. "wet" gives the least water still in it, as a share of what the coat went on with;
 * `isFelt`: by its outer film, which has then not broken. "losing": a steady weight from before `sinceAt` still holds,
 * a later one does not.
 */
export type DryEvidence =
  | { readonly says: "dry"; readonly by: DryBy; readonly whole: boolean; readonly seen: DrynessSeen }
  | {
      readonly says: "wet";
      readonly seen: DrynessSeen;
      readonly leastShare: number;
      readonly isFelt: boolean;
    }
  | { readonly says: "losing"; readonly seen: DrynessSeen; readonly sinceAt: number };

/** What is left in a coat that feels damp, as a share of the critical water; judgement. */
const dampShare = 0.5;

/** A hollow still wet must hold three times what the error of the weighing leaves open; judgement, as for a pair. */
const times = 3;

/** Reads the observations of one span of a coat, oldest first; those that say nothing plainly are left out. */
export function readEvidence(span: CoatSpan): readonly DryEvidence[] {
  const measures = span.seen.some(({ method }) => method === "surface" || method === "resistance");
  const heard = measures ? readObservations(span).heard : [];
  return span.seen.flatMap((one) => evidenceOf(one, span, heard));
}

function evidenceOf(
  seen: DrynessSeen,
  span: CoatSpan,
  heard: readonly UsedObservation[],
): readonly DryEvidence[] {
  switch (seen.method) {
    case "touch":
    case "colour": {
      const { criticalShare } = indexedCoat(span.wet, 0);
      if (seen.verdict !== "dry")
        return [
          {
            says: "wet",
            seen,
            leastShare: (seen.verdict === "wet" ? 1 : dampShare) * criticalShare,
            isFelt: true,
          },
        ];
      // A dry colour is the outer face's alone; a hand feels at least how cold it is.
      return seen.method === "touch" ? [{ says: "dry", by: "felt", whole: false, seen }] : [];
    }
    case "surface":
    case "resistance":
      return heard.filter((one) => one.seen.id === seen.id).flatMap((one) => measured(one, span));
    case "bag":
      // One source among others, weighed together with the sum; alone it overrides nothing.
      return [];
    case "weight":
      return isWeight(seen) ? fromWeight(seen, span) : [];
  }
}

/** Dry where it was read, if that is no sooner dry than the place asked about. */
function measured({ seen, said }: UsedObservation, { places }: CoatSpan): readonly DryEvidence[] {
  if (said.by !== "surface" && said.by !== "resistance") return [];
  const isDry = said.says === "dry" && (said.by === "resistance" || said.isSure);
  if (!isDry || !isAsSlow(said.place, places.named)) return [];
  return [{ says: "dry", by: said.by, whole: isAsSlow(said.place, places.slowest), seen }];
}

/** By the dry mass where three weighings give it and its whole error says so, else by the weighings before. */
function fromWeight(seen: Weight, span: CoatSpan): readonly DryEvidence[] {
  if ((seen.moment ?? "drying") !== "drying") return [];
  const byTarget = fromTarget(seen, span);
  if (byTarget?.says === "dry") return [byTarget];
  const pair = pairSays(seen, span, span.places.named);
  if (pair?.said.kind === "steady") {
    const { named, slowest } = span.places;
    const whole = named === slowest || pairSays(seen, span, slowest)?.said.kind === "steady";
    return [{ says: "dry", by: "steady", whole, seen }];
  }
  if (byTarget !== null) return [byTarget];
  return pair === null ? [] : [{ says: "losing", seen, sinceAt: pair.first.at }];
}

/** Standard deviations on either side that hold nine in ten. */
const bandSd = 1.645;

/** A weighing whose band spans the mark leaves the word to the sum. */
function fromTarget(seen: Weight, { seen: all, weights, wet, places }: CoatSpan): DryEvidence | null {
  const { three, drying, balanceG } = chainOf(all, weights, seen.at);
  if (three === null || !drying.some(({ id }) => id === seen.id)) return null;
  const { waterFraction } = weights;
  const water = waterByMass({ ...three, waterFraction, balanceG, massG: seen.massG });
  if (water === null || water.strays !== null) return null;
  const { readyShare, criticalShare } = indexedCoat(wet, 0);
  const reach = bandSd * water.sdShare;
  const [low, high] = [water.waterShare - reach, water.waterShare + reach];
  if (low > readyShare) return { says: "wet", seen, leastShare: Math.min(1, low), isFelt: false };
  if (high > readyShare) return null;
  const whole =
    isAsSlow("open", places.slowest) || times * reach <= areaShareOf(places.slowest) * criticalShare;
  return { says: "dry", by: "target", whole, seen };
}
