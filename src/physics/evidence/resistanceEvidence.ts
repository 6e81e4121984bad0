import { requireWithin } from "../stats/range.ts";
import type { ShareEvidence } from "./shareEvidence.ts";
import { evidenceWeights } from "./shareEvidence.ts";
import type { SpeaksOf } from "./surfaceEvidence.ts";
import { missHeard } from "./surfaceEvidence.ts";

export type ResistanceVerdict =
  | {
      readonly kind: "heard";
      /** Resistance now, brought to the first reading's temperature, over the first. */
      readonly ratio: number;
      /** Water left as a share of the just-set coat's, by Archie's law. */
      readonly waterShare: number;
      /** A hundredfold resistance: what a shop may call dry once it has proved it. */
      readonly says: "dry" | "wet";
      readonly evidence: ShareEvidence;
    }
  | {
      readonly kind: "refused";
      readonly code: "below-start";
      readonly ratio: number;
      readonly leastRatio: number;
    };

/** Archie's saturation exponent (Archie, Trans. AIME 146 (1942) 54, from memory) and its error. */
const archie = 2;
const archieSd = 0.2;

/** Conductivity of a salt solution rises by this share a kelvin; from memory. */
const perK = 0.02;
const dryRatio = 100;

/** Two readings at one place with one force differ by this much, of ln R; estimate. */
const repeatSd = 0.3;

/**
 * Water left from the resistance between two contacts, against the same contacts in the just-set coat:
 * S = (R0/R)^(1/2), R brought to the first reading's temperature by 2 % a kelvin.
 *
 * Only the ratio counts, as the binder's salts move R0 tenfold. Ohm in both; °C. Refuses a resistance under half
 * of the first, which no drying gives (a contact that slipped, or salt). `speaks`: of the place it is held against.
 */
export function resistanceEvidence({
  firstOhm,
  firstC,
  ohm,
  tempC,
  afterS,
  speaks = "both",
}: {
  readonly firstOhm: number;
  readonly firstC: number;
  readonly ohm: number;
  readonly tempC: number;
  readonly afterS: number;
  readonly speaks?: SpeaksOf | undefined;
}): ResistanceVerdict {
  for (const [name, value] of Object.entries({ firstOhm, ohm }))
    requireWithin(name, value, { low: 1e-3, high: 1e13, unit: "Ω" });
  for (const [name, value] of Object.entries({ firstC, tempC }))
    requireWithin(name, value, { low: 0, high: 60, unit: "°C" });
  requireWithin("afterS", afterS, { low: 0, high: 1e10, unit: "s" });
  const ratio = (ohm / firstOhm) * (1 + perK * (tempC - firstC));
  const leastRatio = 0.5;
  if (!(ratio >= leastRatio)) return { kind: "refused", code: "below-start", ratio, leastRatio };
  const lnShare = -Math.log(ratio) / archie;
  const sd = Math.hypot(repeatSd / archie, (lnShare * archieSd) / archie);
  // Past a hundredfold the films break up and the law ends: less water than that, no more is known.
  const floor = dryRatio ** (-1 / archie);
  const lnSeen = Math.max(lnShare, Math.log(floor));
  return {
    kind: "heard",
    ratio,
    waterShare: Math.min(1, Math.exp(lnShare)),
    says: ratio >= dryRatio ? "dry" : "wet",
    evidence: {
      source: "resistance",
      weight: evidenceWeights.resistance,
      afterS,
      sinceS: null,
      // Less water expected than was seen is a reading wetter than expected.
      logLikelihood: (waterShare) =>
        -0.5 * missHeard((Math.log(Math.max(waterShare, floor)) - lnSeen) / sd, speaks) ** 2,
    },
  };
}
