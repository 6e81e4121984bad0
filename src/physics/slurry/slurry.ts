import { closePackedShare } from "../shell/thickness.ts";
import { requireFraction, requirePositive, requireWithin } from "../stats/range.ts";
import { liquorSilica, requireDensity, requireVolume, requireWater } from "./sol.ts";
import type { SolidsKnown, SolidsRefusal } from "./solids.ts";
import { solidsFromLiquid, solidsFromOven } from "./solids.ts";
import { cupIdOf, lawMm2S, lawSeconds, viscosityCups } from "./viscosityCups.ts";

/** Where a time lies against the seconds the standard vouches for; outside, a viscosity is an index only. */
export type CupRange = "within" | "below" | "above";

export type CupRefusal =
  | { readonly ok: false; readonly code: "unknown-cup"; readonly cup: string }
  | {
      readonly ok: false;
      readonly code: "viscosity-not-positive";
      readonly viscosityMm2S: number;
      /** The time at which the cup's law crosses zero: no liquid is that quick. Null where a viscosity was asked with. */
      readonly zeroS: number | null;
    };

type CupStanding = {
  readonly ok: true;
  readonly range: CupRange;
  readonly lowS: number;
  readonly highS: number;
  readonly referenceC: number;
};
export type CupViscosity = (CupStanding & { readonly viscosityMm2S: number }) | CupRefusal;
export type CupSeconds = (CupStanding & { readonly seconds: number }) | CupRefusal;

/**
 * Kinematic viscosity, mm²/s, from a cup's seconds. `cup` is an id such as "zahn-4", "ford-4", "iso-4", or as people write it: "Zahn #4", "ISO 4 mm".
 *
 * ASTM D4212 (Zahn), ASTM D1200 (Ford), ISO 2431. The laws hold for Newtonian liquids; a slurry thins under
 * shear, so keep the seconds and read this as an index. A value for an unknown cup, and for a time so short
 * that the law gives no viscosity. Seconds above 0.
 */
export function cupViscosityMm2S({ cup, seconds }: { cup: string; seconds: number }): CupViscosity {
  requirePositive("seconds", seconds, { high: 1e7, unit: "s" });
  const id = cupIdOf(cup);
  if (id === null) return { ok: false, code: "unknown-cup", cup };
  const { law } = viscosityCups[id];
  const viscosityMm2S = lawMm2S(law, seconds);
  if (viscosityMm2S <= 0)
    return { ok: false, code: "viscosity-not-positive", viscosityMm2S, zeroS: lawSeconds(law, 0) };
  return { viscosityMm2S, ...standing(viscosityCups[id], seconds) };
}

/** Seconds a liquid of this viscosity, mm²/s, takes in a cup: the inverse of `cupViscosityMm2S`, same sources. */
export function cupSeconds({ cup, viscosityMm2S }: { cup: string; viscosityMm2S: number }): CupSeconds {
  requireWithin("viscosityMm2S", viscosityMm2S, { low: -1e6, high: 1e6, unit: "mm²/s" });
  const id = cupIdOf(cup);
  if (id === null) return { ok: false, code: "unknown-cup", cup };
  if (viscosityMm2S <= 0) return { ok: false, code: "viscosity-not-positive", viscosityMm2S, zeroS: null };
  const seconds = lawSeconds(viscosityCups[id].law, viscosityMm2S);
  return { seconds, ...standing(viscosityCups[id], seconds) };
}

function standing(
  { lowS, highS, referenceC }: { lowS: number; highS: number; referenceC: number },
  seconds: number,
): CupStanding {
  // A time turned there and back must not fall out of the range by its last digit.
  const range = seconds < lowS - 1e-9 ? "below" : seconds > highS + 1e-9 ? "above" : "within";
  return { ok: true, range, lowS, highS, referenceC };
}

/**
 * What is in a slurry, from its density, g/cm³.
 *
 * Give the liquor's density (settled, a known volume weighed; its silica is read from it unless given), or the
 * oven's total solids as a fraction (105–120 °C to constant mass). The oven can't tell flour from silica of the
 * same density: fused silica is refused there, with the total solids its density alone tells.
 * Derived: the volumes of flour, silica and water add up.
 */
export function solidsFromDensity({
  densityGCm3,
  flourGCm3,
  liquidGCm3,
  silicaInLiquid,
  ovenSolids,
  waterGCm3 = 1,
}: {
  densityGCm3: number;
  flourGCm3: number;
  liquidGCm3?: number | undefined;
  silicaInLiquid?: number | undefined;
  ovenSolids?: number | undefined;
  waterGCm3?: number | undefined;
}): SolidsKnown | SolidsRefusal {
  requireDensity("densityGCm3", densityGCm3);
  requireDensity("flourGCm3", flourGCm3);
  requireWater(waterGCm3);
  if (liquidGCm3 !== undefined) {
    const liquor = liquorSilica({ liquorGCm3: liquidGCm3, waterGCm3 });
    if (silicaInLiquid !== undefined) requireFraction("silicaInLiquid", silicaInLiquid);
    else if (!liquor.ok) return liquor;
    const silica = silicaInLiquid ?? (liquor.ok ? liquor.silica : 0);
    return solidsFromLiquid({ densityGCm3, flourGCm3, liquidGCm3, silica });
  }
  if (ovenSolids !== undefined) requireFraction("ovenSolids", ovenSolids);
  return solidsFromOven({ densityGCm3, flourGCm3, ovenSolids: ovenSolids ?? null, waterGCm3 });
}

export type Correction<Amount> =
  | ({ readonly ok: true; readonly newVolumeL: number } & Amount)
  | {
      readonly ok: false;
      readonly code: "water-lowers-density" | "flour-raises-density" | "target-out-of-reach";
      readonly densityGCm3: number;
      readonly targetGCm3: number;
      /** The density of what would be added; no target lies beyond it. */
      readonly addedGCm3: number;
    };

/**
 * Water that brings the density down to the target, litres and kg. Right only where lost water raised it.
 *
 * Refuses a density already below the target (water lowers it further) and a target of water or less.
 * Derived: masses and volumes add up.
 */
export function makeUpWaterL(from: {
  volumeL: number;
  densityGCm3: number;
  targetGCm3: number;
  waterGCm3?: number | undefined;
}): Correction<{ readonly waterL: number; readonly waterKg: number }> {
  const { volumeL, densityGCm3, targetGCm3, waterGCm3 = 1 } = from;
  requireVolume(volumeL);
  requireDensity("densityGCm3", densityGCm3);
  requireDensity("targetGCm3", targetGCm3);
  requireWater(waterGCm3);
  const refused = { ok: false, densityGCm3, targetGCm3, addedGCm3: waterGCm3 } as const;
  // Within a thousandth of water a target asks for a lake.
  if (targetGCm3 <= waterGCm3 + 1e-6) return { ...refused, code: "target-out-of-reach" };
  if (densityGCm3 < targetGCm3) return { ...refused, code: "water-lowers-density" };
  const waterL = (volumeL * (densityGCm3 - targetGCm3)) / (targetGCm3 - waterGCm3);
  return { ok: true, waterL, waterKg: waterL * waterGCm3, newVolumeL: volumeL + waterL };
}

/** Flour that lifts the density to the target, kg. Refuses a density already above it, and a target no flour reaches. Derived. */
export function flourToLift(from: {
  volumeL: number;
  densityGCm3: number;
  targetGCm3: number;
  flourGCm3: number;
}): Correction<{ readonly flourKg: number }> {
  const { volumeL, densityGCm3, targetGCm3, flourGCm3 } = from;
  requireVolume(volumeL);
  requireDensity("densityGCm3", densityGCm3);
  requireDensity("targetGCm3", targetGCm3);
  requireDensity("flourGCm3", flourGCm3);
  const refused = { ok: false, densityGCm3, targetGCm3, addedGCm3: flourGCm3 } as const;
  if (targetGCm3 >= flourGCm3 - 1e-6) return { ...refused, code: "target-out-of-reach" };
  if (densityGCm3 > targetGCm3) return { ...refused, code: "flour-raises-density" };
  const flourL = (volumeL * (targetGCm3 - densityGCm3)) / (flourGCm3 - targetGCm3);
  return { ok: true, flourKg: flourL * flourGCm3, newVolumeL: volumeL + flourL };
}

export type FirstMix =
  | ({
      readonly ok: true;
      readonly solKg: number;
      readonly solL: number;
      readonly flourKg: number;
      /** Nine tenths of the flour: mix that in, trim to the seconds with the rest (common practice, no source). */
      readonly firstFlourKg: number;
      readonly silicaKg: number;
      readonly waterKg: number;
      readonly densityGCm3: number;
    } & Pick<SolidsKnown, "ratio" | "solids" | "flourVolumeFraction">)
  | {
      readonly ok: false;
      readonly code: "cannot-flow";
      readonly flourVolumeFraction: number;
      readonly limit: number;
    };

/**
 * What goes into a first mix of `volumeL` litres: by `ratio`, kg of flour per kg of sol, or by the flour's volume
 * fraction (about 0.48 for a prime, 0.42–0.45 for a backup, whatever the flour: common practice, no source).
 *
 * Binder density, g/cm³, as on its label, silica as a mass fraction; untold, a sol of 30 % labelled 1.20. A ratio
 * goes before a fraction. Refuses a mix packed so close that it can't flow. Derived: volumes add up.
 */
export function firstMix(
  from: {
    readonly volumeL: number;
    readonly flourGCm3: number;
    readonly binderGCm3?: number | undefined;
    readonly binderSilica?: number | undefined;
  } & ({ readonly ratio: number } | { readonly ratio?: undefined; readonly flourVolumeFraction: number }),
): FirstMix {
  const { volumeL, flourGCm3, binderGCm3 = 1.2, binderSilica = 0.3 } = from;
  requireVolume(volumeL);
  requireDensity("flourGCm3", flourGCm3);
  requireDensity("binderGCm3", binderGCm3);
  requireFraction("binderSilica", binderSilica);
  const flourVolumeFraction =
    from.ratio === undefined
      ? from.flourVolumeFraction
      : fractionOf({ ratio: from.ratio, flourGCm3, binderGCm3 });
  // For a call that no type checked.
  if (flourVolumeFraction === undefined) throw new RangeError("ratio or flourVolumeFraction must be told");
  requireFraction("flourVolumeFraction", flourVolumeFraction);
  if (flourVolumeFraction >= closePackedShare)
    return { ok: false, code: "cannot-flow", flourVolumeFraction, limit: closePackedShare };
  const flourKg = flourVolumeFraction * volumeL * flourGCm3;
  const solL = (1 - flourVolumeFraction) * volumeL;
  const solKg = solL * binderGCm3;
  const silicaKg = binderSilica * solKg;
  return {
    ok: true,
    solKg,
    solL,
    flourKg,
    firstFlourKg: 0.9 * flourKg,
    silicaKg,
    waterKg: solKg - silicaKg,
    densityGCm3: (flourKg + solKg) / volumeL,
    ratio: flourKg / solKg,
    solids: (flourKg + silicaKg) / (flourKg + solKg),
    flourVolumeFraction,
  };
}

function fractionOf(mix: { ratio: number; flourGCm3: number; binderGCm3: number }): number {
  requireWithin("ratio", mix.ratio, { low: 0, high: 50, unit: "kg of flour per kg of sol" });
  const flour = mix.ratio / mix.flourGCm3;
  return flour / (flour + 1 / mix.binderGCm3);
}
