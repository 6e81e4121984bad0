/** Metals by the practice their shells are preheated by. */
export type PreheatMetal = "bronze" | "brass" | "aluminium" | "silver" | "other";

/**
 * Shell temperature at the pour by the thinnest section, °C; a thinner section wants a hotter shell before hotter
 * metal. A section on the limit itself counts as the thinner one: people type round figures.
 */
type PreheatRange = {
  readonly upToMm: number;
  readonly lowC: number;
  readonly highC: number;
};

export const preheatSource =
  "common practice, no source; art bronze shells are poured near 590 °C, and hotter for thin work";

const copperBase: readonly PreheatRange[] = [
  { upToMm: 2, lowC: 800, highC: 950 },
  { upToMm: 4, lowC: 650, highC: 850 },
  { upToMm: 8, lowC: 500, highC: 700 },
  { upToMm: 15, lowC: 350, highC: 550 },
  { upToMm: Infinity, lowC: 200, highC: 450 },
];
const aluminium: readonly PreheatRange[] = [
  { upToMm: 2, lowC: 350, highC: 450 },
  { upToMm: 4, lowC: 250, highC: 400 },
  { upToMm: 8, lowC: 150, highC: 300 },
  { upToMm: 15, lowC: 20, highC: 200 },
  { upToMm: Infinity, lowC: 20, highC: 150 },
];
const silver: readonly PreheatRange[] = [
  { upToMm: 2, lowC: 600, highC: 700 },
  { upToMm: 4, lowC: 550, highC: 650 },
  { upToMm: 8, lowC: 450, highC: 600 },
  { upToMm: 15, lowC: 400, highC: 500 },
  { upToMm: Infinity, lowC: 350, highC: 450 },
];
/** Ranges by metal; null where no practice is known. */
export const preheatRanges: Readonly<Record<PreheatMetal, readonly PreheatRange[] | null>> = {
  bronze: copperBase,
  brass: copperBase,
  aluminium,
  silver,
  other: null,
};

/** Kelvins a shell stays below the solidus: hotter, grain coarsens and gas is drawn (common practice, no source). */
const belowSolidusK = 50;

/** Preheat for a thinnest section and a metal, never within 50 K of its solidus; null where no practice is known. */
export function shellPreheat({
  metal,
  thinnestMm,
  solidusC,
}: {
  metal: PreheatMetal;
  thinnestMm: number;
  solidusC: number;
}): { readonly lowC: number; readonly highC: number } | null {
  if (!(thinnestMm > 0)) throw new RangeError(`thinnestMm must be above 0 mm, found ${thinnestMm}`);
  const row = preheatRanges[metal]?.find(({ upToMm }) => thinnestMm <= upToMm);
  if (row === undefined) return null;
  const ceilingC = solidusC - belowSolidusK;
  return { lowC: Math.min(row.lowC, ceilingC), highC: Math.min(row.highC, ceilingC) };
}
