import { tooDampRh } from "../drying/dryStep.ts";
import { requireFraction, requireWithin } from "../stats/range.ts";
import type { ShareEvidence } from "./shareEvidence.ts";
import { evidenceWeights, shareWithin } from "./shareEvidence.ts";
import type { IndexedCoat } from "./surfaceEvidence.ts";
import { requireIndexed } from "./surfaceEvidence.ts";

/** Shortest time in the bag, s; common practice, no source. */
const leastBagS = 20 * 60;
const wetRh = 0.95;
const losingRh = 0.8;
const likeRoomRh = 0.05;

export type BagVerdict =
  | {
      readonly kind: "heard";
      readonly says: "wet" | "losing" | "between" | "dry";
      readonly evidence: ShareEvidence;
    }
  | { readonly kind: "refused"; readonly code: "too-soon"; readonly baggedS: number; readonly leastS: number }
  | { readonly kind: "refused"; readonly code: "air-too-damp"; readonly rh: number; readonly mostRh: number };

/**
 * A hygrometer bagged with the shell, or taped into its cup, for 20 min or more: from 95 % wet, from 80 % still
 * losing, within 5 % of the room dry, else between. It hears the pocket too. Common practice, no source.
 *
 * Refused before 20 min, and in a room above 75 %, where "like the room" and "still losing" run together.
 */
export function bagEvidence({
  bagRh,
  roomRh,
  baggedS,
  afterS,
  coat,
}: {
  readonly bagRh: number;
  readonly roomRh: number;
  readonly baggedS: number;
  readonly afterS: number;
  readonly coat: IndexedCoat;
}): BagVerdict {
  requireFraction("bagRh", bagRh);
  requireFraction("roomRh", roomRh);
  requireWithin("baggedS", baggedS, { low: 0, high: 1e7, unit: "s" });
  requireWithin("afterS", afterS, { low: 0, high: 1e10, unit: "s" });
  requireIndexed(coat);
  if (baggedS < leastBagS) return { kind: "refused", code: "too-soon", baggedS, leastS: leastBagS };
  const mostRh = tooDampRh - likeRoomRh;
  if (roomRh > mostRh) return { kind: "refused", code: "air-too-damp", rh: roomRh, mostRh };
  const { criticalShare, readyShare } = coat;
  const says =
    bagRh >= wetRh ? "wet" : bagRh >= losingRh ? "losing" : bagRh <= roomRh + likeRoomRh ? "dry" : "between";
  const band = {
    wet: { above: 0.4 * criticalShare },
    losing: { above: readyShare },
    between: { below: 0.3 * criticalShare },
    dry: { below: readyShare },
  }[says];
  return {
    kind: "heard",
    says,
    evidence: {
      source: "bag",
      weight: evidenceWeights.bag,
      afterS,
      sinceS: null,
      logLikelihood: shareWithin({ ...band, sd: Math.max(0.01, readyShare / 2), mistaken: 0.05 }),
    },
  };
}
