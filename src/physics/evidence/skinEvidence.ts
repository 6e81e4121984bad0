import type { MovingAir } from "../air/film.ts";
import { evaporativeDropK } from "../air/film.ts";
import { logBelow } from "../stats/normal.ts";
import { requirePositive, requireWithin } from "../stats/range.ts";
import type { ShareEvidence } from "./shareEvidence.ts";
import { evidenceWeights, shareWithin } from "./shareEvidence.ts";
import type { IndexedCoat } from "./surfaceEvidence.ts";
import { indexEvidence, requireIndexed } from "./surfaceEvidence.ts";

/** Drop a cheek can feel, K, and how sharply; common practice, no source. */
const feltDropK = 2;
const feltSdK = 0.7;

/**
 * Touch and colour read the outer film only: "dry" is the start of the front, not its end, and of a pocket it says
 * nothing. `saw` "damp" is a face in between, in which water is left.
 *
 * Each speaks to one side alone, so that "dry" can never make a coat later and "damp" or "wet" never earlier: the
 * likelihood of "dry" only falls with the water left, that of the others only rises.
 */
export function skinEvidence({
  source,
  saw,
  afterS,
  coat,
}: {
  readonly source: "touch" | "colour";
  readonly saw: "dry" | "damp" | "wet";
  readonly afterS: number;
  readonly coat: IndexedCoat;
}): ShareEvidence {
  requirePositive("criticalShare", coat.criticalShare, { high: 1, unit: "(a fraction)" });
  requireWithin("pocketSM", coat.pocketSM, { low: 0, high: 1e6, unit: "s/m" });
  requireWithin("afterS", afterS, { low: 0, high: 1e10, unit: "s" });
  const { criticalShare } = coat;
  const bands = {
    dry: { below: 0.8 * criticalShare },
    damp: { above: 0.3 * criticalShare },
    wet: { above: 0.8 * criticalShare },
  };
  return {
    source,
    weight: evidenceWeights[source],
    afterS,
    sinceS: null,
    // A dry face says nothing of a pocket; a wet face means a wet pocket.
    logLikelihood:
      coat.pocketSM > 0 && saw === "dry"
        ? () => 0
        : shareWithin({ ...bands[saw], sd: 0.15 * criticalShare, mistaken: 0.1 }),
  };
}

export type CheekVerdict =
  | { readonly kind: "heard"; readonly evidence: ShareEvidence; readonly dropK: number }
  | {
      readonly kind: "refused";
      readonly code: "signal-too-small";
      readonly dropK: number;
      readonly leastK: number;
    };

/** Cold or not cold to the cheek: a difference of about 2 K can be felt. Refused where even a wet face is not so cold. */
export function cheekEvidence({
  cold,
  afterS,
  air,
  coat,
}: {
  readonly cold: boolean;
  readonly afterS: number;
  readonly air: MovingAir;
  readonly coat: IndexedCoat;
}): CheekVerdict {
  requireIndexed(coat);
  requireWithin("afterS", afterS, { low: 0, high: 1e10, unit: "s" });
  const dropK = evaporativeDropK(air);
  const leastK = feltDropK + feltSdK;
  if (dropK < leastK) return { kind: "refused", code: "signal-too-small", dropK, leastK };
  const evidence = indexEvidence({ source: "cheek", air, coat, afterS }, (index) => {
    const z = (dropK * (1 - index) - feltDropK) / feltSdK;
    if (cold) return Math.log(0.05 + 0.95 * Math.exp(logBelow(z)));
    // A face that has warmed says nothing of a pocket.
    return coat.pocketSM > 0 ? 0 : Math.log(0.05 + 0.95 * Math.exp(logBelow(-z)));
  });
  return { kind: "heard", evidence, dropK };
}
