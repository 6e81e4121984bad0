import { requirePositive, requireWithin } from "../stats/range.ts";

/**
 * How a cup's seconds become mm²/s: a line, K·(t − c), or the line with the term of the short times, A·t − B/t.
 */
export type CupLaw =
  | { readonly kind: "line"; readonly slope: number; readonly offsetS: number }
  | { readonly kind: "root"; readonly slope: number; readonly drag: number };

export type ViscosityCup = {
  readonly law: CupLaw;
  /** Seconds between which the standard vouches for the law. */
  readonly lowS: number;
  readonly highS: number;
  /** Temperature of the liquid the law was drawn up for, °C. */
  readonly referenceC: number;
};

const line = (slope: number, offsetS: number, lowS: number, highS: number): ViscosityCup => ({
  law: { kind: "line", slope, offsetS },
  lowS,
  highS,
  referenceC: 25,
});
const root = (slope: number, drag: number): ViscosityCup => ({
  law: { kind: "root", slope, drag },
  lowS: 30,
  highS: 100,
  referenceC: 23,
});

/**
 * The laws, t in s, ν in mm²/s.
 *
 * Zahn: ASTM D4212 app. X3. Ford: ASTM D1200, times of its § 11.2. ISO: ISO 2431, annex on kinematic viscosity
 * (coefficients from memory of it). Sources figure by figure stand in the table of cups.
 */
export const viscosityCups = {
  "zahn-1": line(1.1, 29, 35, 80),
  "zahn-2": line(3.5, 14, 20, 80),
  "zahn-3": line(11.7, 7.5, 20, 80),
  "zahn-4": line(14.8, 5, 20, 80),
  "zahn-5": line(23, 0, 20, 80),
  "ford-1": line(0.49, 35, 55, 100),
  "ford-2": line(1.44, 18, 40, 100),
  "ford-3": line(2.31, 6.58, 20, 100),
  "ford-4": line(3.85, 4.49, 20, 100),
  "ford-5": line(12.1, 2, 20, 100),
  "iso-3": root(0.443, 200),
  "iso-4": root(1.37, 200),
  "iso-5": root(3.28, 220),
  "iso-6": root(6.9, 570),
} as const satisfies Record<string, ViscosityCup>;

export type CupId = keyof typeof viscosityCups;

export const isCupId = (id: string): id is CupId => Object.hasOwn(viscosityCups, id);

/** The cup meant by "zahn-4", "Zahn #4", "Ford cup no. 4" or "ISO 4 mm"; null where it is none of the table. */
export function cupIdOf(written: unknown): CupId | null {
  if (typeof written !== "string") return null;
  const plain = written.toLowerCase().replaceAll(/[\s\-_.#]/g, "");
  const parts = /^(zahn|ford|iso)(?:2431)?(?:cup)?(?:no)?(\d)(?:mm)?$/.exec(plain);
  const id = parts === null ? "" : `${parts[1]}-${parts[2]}`;
  return isCupId(id) ? id : null;
}

/** mm²/s by a law; zero or below where the time is too short for it. */
export function lawMm2S(law: CupLaw, seconds: number): number {
  requireLaw(law);
  requirePositive("seconds", seconds, { high: 1e7, unit: "s" });
  return law.kind === "line" ? law.slope * (seconds - law.offsetS) : law.slope * seconds - law.drag / seconds;
}

/** Seconds by a law, its exact inverse for ν above zero. */
export function lawSeconds(law: CupLaw, viscosityMm2S: number): number {
  requireLaw(law);
  requireWithin("viscosityMm2S", viscosityMm2S, { low: 0, high: 1e6, unit: "mm²/s" });
  if (law.kind === "line") return viscosityMm2S / law.slope + law.offsetS;
  const { slope, drag } = law;
  return (viscosityMm2S + Math.sqrt(viscosityMm2S * viscosityMm2S + 4 * slope * drag)) / (2 * slope);
}

function requireLaw(law: CupLaw): void {
  requireWithin("slope", law.slope, { low: 1e-3, high: 1e3, unit: "mm²/s²" });
  if (law.kind === "line") requireWithin("offsetS", law.offsetS, { low: 0, high: 1000, unit: "s" });
  else requireWithin("drag", law.drag, { low: 0, high: 1e5, unit: "mm²" });
}
