/** Thickness in five bands of round limits, thinnest first. */
export type HeatBands = {
  /** At most four limits between the bands, mm, rising. */
  readonly limitsMm: readonly number[];
  /** Share of the coloured triangles' area in each band, and of those nothing is known of. */
  readonly shares: readonly number[];
  readonly unknownShare: number;
};

/** Limits near the tenth, third, two thirds and nine tenths of the surface, each rounded to two figures. */
export function heatBands(field: Float32Array, areas: Float32Array): HeatBands {
  const known = [...field.keys()].filter((t) => field[t]! > 0).sort((a, b) => field[a]! - field[b]!);
  const knownArea = known.reduce((sum, t) => sum + areas[t]!, 0);
  const all = areas.reduce((sum, area) => sum + area, 0);
  const limitsMm: number[] = [];
  let walked = 0;
  let passed = 0;
  for (const t of known) {
    walked += areas[t]!;
    const next = cuts[passed];
    if (next === undefined) break;
    if (walked < next * knownArea) continue;
    passed++;
    const limit = rounded(field[t]!);
    // A surface of one thickness has fewer bands.
    if (limit > (limitsMm.at(-1) ?? 0)) limitsMm.push(limit);
  }
  const shares = Array.from({ length: limitsMm.length + 1 }, () => 0);
  for (const t of known) {
    const band = bandOf(limitsMm, field[t]!);
    shares[band]! += areas[t]! / all;
  }
  return { limitsMm, shares, unknownShare: all > 0 ? 1 - knownArea / all : 1 };
}

/** Band of a triangle of which nothing is known. */
export const unknownBand = 5;
const cuts = [0.1, 1 / 3, 2 / 3, 0.9];

export const bandOf = (limitsMm: readonly number[], thickness: number): number =>
  limitsMm.filter((limit) => thickness >= limit).length;

function rounded(value: number): number {
  const step = 10 ** (Math.floor(Math.log10(value)) - 1);
  return Math.round(value / step) * step;
}
