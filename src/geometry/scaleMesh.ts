import { lengthUnitMm } from "./lengthUnit.ts";
import type { LengthUnit } from "./mesh.ts";

/** How a pattern is to be made larger or smaller: by percent (100 as it is), or so that a length becomes another. */
export type Scale =
  | { readonly kind: "percent"; readonly percent: number }
  | { readonly kind: "length"; readonly fromMm: number; readonly toMm: number };

const factors = { low: 1e-4, high: 1e4 };

/** What a scale multiplies lengths by. A RangeError outside 1/10 000–10 000 times. */
export function scaleFactor(scale: Scale): number {
  const factor = scale.kind === "percent" ? scale.percent / 100 : scale.toMm / scale.fromMm;
  if (!(factor >= factors.low && factor <= factors.high))
    throw new RangeError(`a scale must be ${factors.low}–${factors.high} times, found ${factor}`);
  return factor;
}

export type UnitGuess = {
  readonly unit: LengthUnit;
  /** The next likely unit is much less so; still to be confirmed by its maker. */
  readonly clear: boolean;
  /** All units, likeliest first, with the longest side each would give. */
  readonly all: readonly { readonly unit: LengthUnit; readonly longestMm: number }[];
};

/** A pattern's usual longest side, and how far behind mm each unit starts, in steps of e; judgement, no source. */
const usualMm = 150;
const behind: Readonly<Record<LengthUnit, number>> = { mm: 0, inch: 1, cm: 1.2, m: 1.5, foot: 3, micron: 3 };
const clearBy = 1.5;

/** Which unit a file most likely means, from its longest side (above 0) in that unit. */
export function guessUnit(longest: number): UnitGuess {
  if (!(longest > 0 && longest < Infinity)) throw new RangeError(`longest must be above 0, found ${longest}`);
  const ranked = (Object.keys(behind) as LengthUnit[])
    .map((unit) => ({ unit, longestMm: longest * lengthUnitMm[unit] }))
    .map((guess) => ({ ...guess, cost: Math.abs(Math.log(guess.longestMm / usualMm)) + behind[guess.unit] }))
    .toSorted((a, b) => a.cost - b.cost);
  const [first, second] = [ranked[0]!, ranked[1]!];
  return {
    unit: first.unit,
    clear: second.cost - first.cost > clearBy,
    all: ranked.map(({ unit, longestMm }) => ({ unit, longestMm })),
  };
}
