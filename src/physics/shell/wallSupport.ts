import { requirePositive, requireWithin } from "../stats/range.ts";

/** What takes load off a flat. Each may be left out; loose sand is worth no credit and is kept for the log. */
export type WallSupport = {
  /** Ribs or bars across the flat, this far apart, mm. They divide the span; whether they hold is not asked here. */
  readonly ribEveryMm?: number | undefined;
  /** How far the middle of the flat stands out over its short span, mm. */
  readonly crownMm?: number | undefined;
  readonly sand?: "loose" | "vibrated" | undefined;
  /** `held`: a thin plate whose two faces are one shell, so that neither edge can turn. */
  readonly edges?: "held" | undefined;
};

type Line = readonly [aspect: number, value: number];

/**
 * Clamped rectangular plate under even pressure, ν 0.3: stress factor in the middle of the long edge, and deflection
 * factor α in y = α·p·b⁴/(E·t³). Roark, 7th ed., table 11.4 case 8a (from memory; the first is checked by a clamped
 * series in the tests, the second by the endless strip, 0.91·12/384).
 */
const clampedFactors: readonly Line[] = [
  [1, 0.3078],
  [1.2, 0.3834],
  [1.4, 0.4356],
  [1.5, 0.4542],
  [1.6, 0.468],
  [1.8, 0.4872],
  [2, 0.4974],
  [3, 0.5],
];
const bendFactors: readonly Line[] = [
  [1, 0.0138],
  [1.2, 0.0188],
  [1.4, 0.0226],
  [1.6, 0.0251],
  [1.8, 0.0267],
  [2, 0.0277],
  [3, 0.0284],
];

/** Stress factor of a flat whose edges can't turn, from long over short span, 1 and more. */
export const heldFactor = (aspect: number): number => inTable(clampedFactors, aspect);

/**
 * Sand vibrated in a box, its stiffness, Pa/m, at the low end of dense: Bowles, Foundation Analysis and Design (64–128
 * MN/m³, from memory). Stiffness of a fired shell, Pa: 3–10 GPa from memory.
 */
const sandPaM = 64e6;
const shellPa = 5e9;

/**
 * Share of the load that vibrated, boxed sand (75 mm and more of it) leaves on a flat, never below `least` (judgement
 * 0.6): 1/(1 + k·α·b⁴/(E·t³)), sand as a bed of springs under a clamped plate. Nothing to speak of below 150 mm.
 */
export function sandShare({
  shortMm,
  aspect,
  wallMm,
  least = leastSandShare,
}: {
  shortMm: number;
  aspect: number;
  wallMm: number;
  least?: number | undefined;
}): number {
  requirePositive("shortMm", shortMm, { high: 5000, unit: "mm" });
  requirePositive("wallMm", wallMm, { high: 500, unit: "mm" });
  requireWithin("least", least, { low: 0, high: 1, unit: "" });
  const give =
    (sandPaM * inTable(bendFactors, aspect) * (shortMm / 1000) ** 4) / (shellPa * (wallMm / 1000) ** 3);
  return Math.max(least, 1 / (1 + give));
}

/** As much load as vibrated sand is trusted to leave at the least: judgement. */
export const leastSandShare = 0.6;

/** Radius, mm, of a flat that stands out by `crownMm` over a span; the chord's arc. Crown above 0, at most half the span. */
export function crownRadiusMm({ spanMm, crownMm }: { spanMm: number; crownMm: number }): number {
  requirePositive("spanMm", spanMm, { high: 5000, unit: "mm" });
  requirePositive("crownMm", crownMm, { high: 5000, unit: "mm" });
  // More crown than a half circle is a round, no flat.
  const rise = Math.min(crownMm, spanMm / 2);
  return spanMm ** 2 / (8 * rise) + rise / 2;
}

/** Linear between the lines of a table; its last value beyond it. */
function inTable(table: readonly Line[], aspect: number): number {
  if (!(aspect >= 1)) throw new RangeError(`aspect must be 1 or more, found ${aspect}`);
  for (const [i, [to, value]] of table.entries()) {
    if (aspect > to) continue;
    const [from, before] = table[i - 1] ?? [0, value];
    return before + ((value - before) * (aspect - from)) / (to - from);
  }
  return table.at(-1)?.[1] ?? NaN;
}
