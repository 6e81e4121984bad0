import { requirePositive, requireWithin } from "../stats/range.ts";

/** Brim share a crucible may be filled to: 0.80 lifted in a shank, 0.75 by tongs (common practice, no source). */
export const brimShare = { shank: 0.8, tongs: 0.75 } as const;

/** Room a melt takes, mL. Use a density at the low end of what is known, so that it isn't under-reckoned. */
export function meltMl({ meltKg, liquidKgM3 }: { meltKg: number; liquidKgM3: number }): number {
  requireWithin("meltKg", meltKg, { low: 0, high: 100_000, unit: "kg" });
  requireWithin("liquidKgM3", liquidKgM3, { low: 500, high: 25_000, unit: "kg/m³ (not g/cm³)" });
  return (meltKg / liquidKgM3) * 1e6;
}

/** Brim volume a crucible needs for a melt, mL. Fill share above 0 to 1. */
export function brimNeededMl({
  meltKg,
  liquidKgM3,
  fillShare,
}: {
  meltKg: number;
  liquidKgM3: number;
  fillShare: number;
}): number {
  requirePositive("fillShare", fillShare, { high: 1, unit: "(a fraction, not percent)" });
  return meltMl({ meltKg, liquidKgM3 }) / fillShare;
}

export type CrucibleFill = {
  readonly meltMl: number;
  readonly share: number;
  readonly fits: boolean;
  /** Metal this crucible holds at the share allowed. */
  readonly mostKg: number;
};

/** How full a crucible of a known brim volume stands with a melt, and what it may hold. */
export function crucibleFill({
  meltKg,
  liquidKgM3,
  brimMl,
  fillShare,
}: {
  meltKg: number;
  liquidKgM3: number;
  brimMl: number;
  fillShare: number;
}): CrucibleFill {
  requirePositive("brimMl", brimMl, { high: 1e6, unit: "mL" });
  requirePositive("fillShare", fillShare, { high: 1, unit: "(a fraction, not percent)" });
  const ml = meltMl({ meltKg, liquidKgM3 });
  const share = ml / brimMl;
  return { meltMl: ml, share, fits: share <= fillShare, mostKg: (brimMl * fillShare * liquidKgM3) / 1e6 };
}

/** Brim volume by filling with dry sand of a known bulk density, mL. Never with water. */
export function brimBySandMl({ sandG, bulkKgM3 }: { sandG: number; bulkKgM3: number }): number {
  requirePositive("sandG", sandG, { high: 1e6, unit: "g" });
  requireWithin("bulkKgM3", bulkKgM3, { low: 500, high: 5000, unit: "kg/m³" });
  return (sandG / bulkKgM3) * 1000;
}

/**
 * Brim volume a numbered clay-graphite crucible suggests, mL: the number is about its pounds of aluminium,
 * brim-full, of liquid density 2400 kg/m³. Common practice, no source, and makers differ: measure it with sand.
 */
export function brimByNumberMl(number: number): number {
  requirePositive("number", number, { high: 500, unit: "" });
  return (number * 0.453_592_37 * 1e6) / 2400;
}
