import { requirePositive, requireWithin } from "../stats/range.ts";
import type { ShareEvidence } from "./shareEvidence.ts";
import { evidenceWeights, shareWithin } from "./shareEvidence.ts";
import type { IndexedCoat } from "./surfaceEvidence.ts";

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
