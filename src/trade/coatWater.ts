import type { CoatKind } from "./coats.ts";
import type { Basis, Published } from "./published.ts";

export type CoatWater = {
  /** Water a fresh coat holds, kg per m² of outer face. */
  readonly waterKgM2: number;
  /** Share of it left when the face stops being wet, 0–1. */
  readonly criticalShare: number;
  readonly basis: Basis;
  readonly source: string;
};

const source =
  "derived from common slurry ratios and films (common practice); the critical share is an estimate, 0.4–0.75";

const firstPrime: CoatWater = { waterKgM2: 0.08, criticalShare: 0.5, basis: "judgement", source };
const laterPrime: CoatWater = { waterKgM2: 0.1, criticalShare: 0.6, basis: "judgement", source };
const others: Readonly<Record<Exclude<CoatKind, "prime">, CoatWater>> = {
  intermediate: { waterKgM2: 0.15, criticalShare: 0.6, basis: "judgement", source },
  backup: { waterKgM2: 0.2, criticalShare: 0.6, basis: "judgement", source },
  seal: { waterKgM2: 0.12, criticalShare: 0.75, basis: "judgement", source },
};

/** Water of a fresh coat. `primeNumber` is 1 for the first prime coat on the piece; other kinds ignore it. */
export function coatWaterOf(kind: CoatKind, primeNumber: number): CoatWater {
  if (kind !== "prime") return others[kind];
  return primeNumber <= 1 ? firstPrime : laterPrime;
}

/** What a prewet dip adds, kg/m². */
export const prewetKgM2: Published = {
  value: 0.045,
  basis: "practice",
  source: "common practice, no source; 0.03–0.06",
};
