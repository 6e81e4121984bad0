import { requirePositive, requireWithin } from "../stats/range.ts";
import { risingRoot } from "../stats/root.ts";

/** Constants of Caine's curve X = a/(Y − b) + c for a family of metal. */
export type CaineConstants = { readonly a: number; readonly b: number; readonly c: number };

type Bulk = { readonly volumeMm3: number; readonly areaMm2: number };

export type CaineCheck = {
  /** X: the casting's face over volume, over the riser's. */
  readonly freezingRatio: number;
  /** Y: the riser's volume over the casting's. */
  readonly volumeRatio: number;
  /** X the curve asks at this Y; null where the riser is too small at any X. */
  readonly neededRatio: number | null;
  readonly isSound: boolean;
};

/** Caine's check, a second opinion on the modulus: J. B. Caine, Trans. AFS 57 (1949), by way of P. N. Rao, from memory. */
export function caineCheck({
  casting,
  riser,
  constants: { a, b, c },
}: {
  casting: Bulk;
  riser: Bulk;
  constants: CaineConstants;
}): CaineCheck {
  requireConstants({ a, b, c });
  for (const { volumeMm3, areaMm2 } of [casting, riser]) {
    requirePositive("volumeMm3", volumeMm3, { high: 1e12, unit: "mm³" });
    requirePositive("areaMm2", areaMm2, { high: 1e10, unit: "mm²" });
  }
  const freezingRatio = casting.areaMm2 / casting.volumeMm3 / (riser.areaMm2 / riser.volumeMm3);
  const volumeRatio = riser.volumeMm3 / casting.volumeMm3;
  const neededRatio = volumeRatio > b ? a / (volumeRatio - b) + c : null;
  return {
    freezingRatio,
    volumeRatio,
    neededRatio,
    isSound: neededRatio !== null && freezingRatio >= neededRatio,
  };
}

function requireConstants({ a, b, c }: CaineConstants): void {
  for (const [name, value] of Object.entries({ a, b, c }))
    requireWithin(name, value, { low: 0, high: 10, unit: "" });
}

/** Least diameter of a riser as high as wide, all faces cooling, that lies on Caine's curve, mm. */
export function caineDiameterMm({
  casting,
  constants,
}: {
  casting: Bulk;
  constants: CaineConstants;
}): number {
  requireConstants(constants);
  requireWithin("volumeMm3", casting.volumeMm3, { low: 1, high: 1e12, unit: "mm³" });
  requireWithin("areaMm2", casting.areaMm2, { low: 1, high: 1e10, unit: "mm²" });
  const short = (d: number): number => {
    const riser = { volumeMm3: (Math.PI / 4) * d ** 3, areaMm2: 1.5 * Math.PI * d * d };
    const { freezingRatio, neededRatio } = caineCheck({ casting, riser, constants });
    return neededRatio === null ? -1 : freezingRatio - neededRatio;
  };
  const modulus = casting.volumeMm3 / casting.areaMm2;
  return risingRoot(short, { low: 0.1 * modulus, high: 100 * (modulus + Math.cbrt(casting.volumeMm3)) });
}

/** Shape of a casting, (length + width)/thickness; a bar's width is its thickness. */
export function shapeFactor({
  lengthMm,
  widthMm,
  thicknessMm,
}: {
  lengthMm: number;
  widthMm: number;
  thicknessMm: number;
}): number {
  requirePositive("thicknessMm", thicknessMm, { high: 20_000, unit: "mm" });
  requireWithin("widthMm", widthMm, { low: thicknessMm, high: 20_000, unit: "mm (not below the thickness)" });
  requireWithin("lengthMm", lengthMm, { low: widthMm, high: 20_000, unit: "mm (not below the width)" });
  return (lengthMm + widthMm) / thicknessMm;
}

/** Bishop, Myskowski & Pellini, Trans. AFS 63 (1955) 271–281, read from the curve from memory, ± 20 %. */
const steelCurve: readonly (readonly [shape: number, ratio: number])[] = [
  [2, 1],
  [5, 0.6],
  [10, 0.4],
  [15, 0.3],
  [20, 0.22],
  [30, 0.18],
];

/**
 * Riser over casting by volume that steel of a shape took in the Naval Research Laboratory's trials; null outside
 * 2–30. For steel: look at it, don't size by it.
 */
export function steelRiserRatio(shape: number): number | null {
  requirePositive("shape", shape, { high: 1e5, unit: "" });
  for (const [i, [to, ratio]] of steelCurve.entries()) {
    if (shape > to) continue;
    const before = steelCurve[i - 1];
    if (before === undefined) return shape < to ? null : ratio;
    return before[1] + ((ratio - before[1]) * (shape - before[0])) / (to - before[0]);
  }
  return null;
}
