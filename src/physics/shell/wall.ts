import { requirePositive, requireWithin } from "../stats/range.ts";
import { crownRadiusMm, heldFactor, sandShare, type WallSupport } from "./wallSupport.ts";

/**
 * The part of the wall that suffers most: a flat of two spans, the same with one edge open (a rim), or a round (tube or
 * cup) of a diameter, all measured on the metal's side, mm.
 */
export type WallPart =
  | { readonly kind: "flat" | "rim"; readonly widthMm: number; readonly lengthMm: number }
  | { readonly kind: "round"; readonly diameterMm: number };

/**
 * Long span over short span, and the stress factor of a rectangular plate under even pressure, β in
 * σ = β·p·b²/t²: the greater of clamped edges (mid long edge) and simply supported (centre), ν 0.3.
 *
 * Simply supported: Roark's Formulas for Stress and Strain, 7th ed., table 11.4 case 1a. Clamped, greater
 * only up to about 1.35: case 8a (from memory; checked in the tests by a clamped series). 1.5: Timoshenko & Woinowsky-Krieger,
 * Theory of Plates and Shells, table 8 (from memory). 2.5: Navier's series (in the tests). How a real shell holds its edges is unknown; the
 * envelope is safe for both.
 */
const flatFactors: readonly (readonly [aspect: number, beta: number])[] = [
  [1, 0.3078],
  [1.2, 0.3834],
  [1.4, 0.453],
  [1.5, 0.4872],
  [1.6, 0.5172],
  [1.8, 0.5688],
  [2, 0.6102],
  [2.5, 0.6776],
  [3, 0.7134],
  [4, 0.741],
  [5, 0.7476],
];
const endlessFactor = 0.75;

/** Direct tension a brittle porous ceramic bears, over its bending strength (from memory of Davidge, Mechanical Behaviour of Ceramics). */
const hoopShare = 0.5;

/** Pressure of standing metal, Pa: ρ·g·h. Liquid density 500–25 000 kg/m³, head 0–20 m. */
export function headPressurePa({ densityKgM3, headM }: { densityKgM3: number; headM: number }): number {
  requireWithin("densityKgM3", densityKgM3, { low: 500, high: 25_000, unit: "kg/m³ (not g/cm³)" });
  requireWithin("headM", headM, { low: 0, high: 20, unit: "m (not mm)" });
  return densityKgM3 * 9.81 * headM;
}

/**
 * Stress factor β of a flat wall from its aspect, linear in the table (between its lines within
 * 2.5 % of plate theory, 1.3 % in wall); Infinity is a very long flat.
 *
 * An aspect below 1 is read the other way round. Beyond 5 it rises to 0.75 with the inverse of the aspect.
 */
export function flatFactor(aspect: number): number {
  if (!(aspect > 0)) throw new RangeError(`aspect must be above 0, found ${aspect}`);
  const long = aspect < 1 ? 1 / aspect : aspect;
  for (const [i, [to, beta]] of flatFactors.entries()) {
    if (long > to) continue;
    const [from, betaFrom] = flatFactors[i - 1] ?? [0, beta];
    return betaFrom + ((beta - betaFrom) * (long - from)) / (to - from);
  }
  const [last, betaLast] = flatFactors.at(-1) ?? [1, endlessFactor];
  return endlessFactor - ((endlessFactor - betaLast) * last) / long;
}

/**
 * A rim bears about twice what a flat of its size does. Judgement; plate theory has 1.3 to 2.4 for three supported edges
 * (Timoshenko & Woinowsky-Krieger, table 40, from memory).
 */
const rimTimes = 2;

export type WallPress = {
  readonly pressurePa: number;
  readonly part: WallPart;
  readonly support?: WallSupport | undefined;
};

/**
 * Load index, MPa: the bending strength this wall would need to just bear this head. Compare with what shells have held.
 *
 * Flat: β·p·b²/t². Round: p·r/(t/2), thin wall; it reads low by about half of wall/radius against Lamé (11 % in stress
 * at wall/radius 0.2), a fifth of what strength is known to. A crowned flat bears as the better of plate and round.
 */
export const loadIndexMPa = (of: WallPress & { readonly wallMm: number }): number =>
  Math.min(...wallLoads(of).map(({ loadMPa }) => loadMPa));

/** Strength over load, both likely: bending strength over load index. Infinity where there is no pressure. Strength 0.05–100 MPa. */
export function strengthOverLoad({
  morMPa,
  ...of
}: WallPress & { readonly morMPa: number; readonly wallMm: number }): number {
  requireWithin("morMPa", morMPa, { low: 0.05, high: 100, unit: "MPa" });
  const loadMPa = loadIndexMPa(of);
  return loadMPa === 0 ? Infinity : morMPa / loadMPa;
}

/**
 * The ways a part can bear, each with its load index and the power of the wall it goes with: bending with the square, the
 * pull round a round with the wall itself. Wall up to 500 mm, pressure up to 10 MPa.
 */
export function wallLoads({
  pressurePa,
  part,
  support = {},
  wallMm,
}: WallPress & { readonly wallMm: number }): readonly { readonly loadMPa: number; readonly power: 1 | 2 }[] {
  requirePositive("wallMm", wallMm, { high: 500, unit: "mm" });
  requireWithin("pressurePa", pressurePa, { low: 0, high: 1e7, unit: "Pa" });
  const pressureMPa = pressurePa / 1e6;
  const hoopMPa = (radiusMm: number): number => (pressureMPa * radiusMm) / hoopShare / wallMm;
  if (part.kind === "round") {
    requirePositive("diameterMm", part.diameterMm, { high: 5000, unit: "mm" });
    return [{ loadMPa: hoopMPa(part.diameterMm / 2), power: 1 }];
  }
  const { shortMm, longMm } = spansOf(part, support.ribEveryMm);
  const aspect = longMm / shortMm;
  const isHeld = part.kind === "flat" && support.edges === "held";
  const beta = (isHeld ? heldFactor(aspect) : flatFactor(aspect)) * (part.kind === "rim" ? rimTimes : 1);
  const share = support.sand === "vibrated" ? sandShare({ shortMm, aspect, wallMm }) : 1;
  const plate = { loadMPa: (share * beta * pressureMPa * shortMm ** 2) / wallMm ** 2, power: 2 as const };
  const { crownMm = 0 } = support;
  requireWithin("crownMm", crownMm, { low: 0, high: 5000, unit: "mm" });
  if (part.kind === "rim" || crownMm < leastCrownMm) return [plate];
  const spanMm = Math.min(part.widthMm, part.lengthMm);
  return [plate, { loadMPa: hoopMPa(crownRadiusMm({ spanMm, crownMm })), power: 1 }];
}

/** Less crown than this no shell has, mm. */
const leastCrownMm = 0.1;

/** The spans between edges, shorter and longer. Ribs cut the long side. */
function spansOf(
  { widthMm, lengthMm }: Extract<WallPart, { widthMm: number }>,
  ribEveryMm: number = Math.max(widthMm, lengthMm),
): { readonly shortMm: number; readonly longMm: number } {
  requirePositive("widthMm", widthMm, { high: 5000, unit: "mm" });
  requirePositive("lengthMm", lengthMm, { high: 5000, unit: "mm" });
  requirePositive("ribEveryMm", ribEveryMm, { high: 5000, unit: "mm" });
  const short = Math.min(widthMm, lengthMm);
  const cut = Math.min(ribEveryMm, Math.max(widthMm, lengthMm));
  return { shortMm: Math.min(short, cut), longMm: Math.max(short, cut) };
}

/** Coats still to add, a whole number >= 0. */
export function coatsToAdd({
  requiredMm,
  haveMm,
  coatMm,
}: {
  requiredMm: number;
  haveMm: number;
  coatMm: number;
}): number {
  requireWithin("requiredMm", requiredMm, { low: 0, high: 500, unit: "mm" });
  requireWithin("haveMm", haveMm, { low: 0, high: 500, unit: "mm" });
  requirePositive("coatMm", coatMm, { high: 50, unit: "mm" });
  // A wall that is there to the last digit must not cost a coat.
  return Math.max(0, Math.ceil((requiredMm - haveMm) / coatMm - 1e-9));
}

/** Wall a coat gives, mm: slurry film and 1.1 of the stucco's mean grain (estimate, ± 25 %); no stucco is 0 and 0. */
export function coatBuildMm({
  coarseMm,
  fineMm,
  filmMm,
}: {
  coarseMm: number;
  fineMm: number;
  filmMm: number;
}): number {
  requireWithin("coarseMm", coarseMm, { low: 0, high: 10, unit: "mm" });
  requireWithin("fineMm", fineMm, { low: 0, high: 10, unit: "mm" });
  requireWithin("filmMm", filmMm, { low: 0, high: 5, unit: "mm" });
  return filmMm + (1.1 * (coarseMm + fineMm)) / 2;
}
