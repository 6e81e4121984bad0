import { requireFraction, requirePositive, requireWithin } from "../stats/range.ts";

/** What a metal takes up on its way into the melt: mean heat of the solid from room to liquidus, latent heat, heat of the liquid. */
export type MeltHeat = {
  readonly liquidusC: number;
  readonly solidJKgK: number;
  readonly latentJKg: number;
  readonly liquidJKgK: number;
};

/**
 * Heat to take a charge from `fromC` to `pourC`, J: m·[cs·(TL − T0) + L + cl·(T − TL)]; an alloy's freezing range is
 * lumped into L. Groover, Fundamentals of Modern Manufacturing, ch. 10 (from memory), there with one melting point.
 *
 * Mass 0–100 000 kg; from 20 °C unless given. Refuses metal that starts above its liquidus or is poured below it. A mean solid heat of the
 * room's value reads low by about 8 % for copper alloys.
 */
export function meltEnergyJ({
  massKg,
  fromC = 20,
  pourC,
  liquidusC,
  solidJKgK,
  latentJKg,
  liquidJKgK,
}: MeltHeat & { massKg: number; fromC?: number | undefined; pourC: number }): number {
  requireWithin("massKg", massKg, { low: 0, high: 100_000, unit: "kg" });
  requireWithin("liquidusC", liquidusC, { low: 30, high: 2500, unit: "°C" });
  requireWithin("fromC", fromC, { low: -50, high: liquidusC, unit: "°C (not above the liquidus)" });
  requireWithin("pourC", pourC, { low: liquidusC, high: 2500, unit: "°C (not below the liquidus)" });
  requireHeats({ solidJKgK, latentJKg, liquidJKgK });
  return massKg * (solidJKgK * (liquidusC - fromC) + latentJKg + liquidJKgK * (pourC - liquidusC));
}

/** Heat above the solidus side of a melt, J/kg: superheat and latent, what has to leave before it is frozen. */
export function freezingHeatJKg({
  latentJKg,
  liquidJKgK,
  superheatK,
}: {
  latentJKg: number;
  liquidJKgK: number;
  superheatK: number;
}): number {
  requireHeats({ solidJKgK: liquidJKgK, latentJKg, liquidJKgK });
  requireWithin("superheatK", superheatK, { low: 0, high: 2500, unit: "K" });
  return latentJKg + liquidJKgK * superheatK;
}

/** Mean power that must go into the metal, W. */
export function meltPowerW({ energyJ, timeS }: { energyJ: number; timeS: number }): number {
  requireWithin("energyJ", energyJ, { low: 0, high: 1e11, unit: "J" });
  requirePositive("timeS", timeS, { high: 1e6, unit: "s" });
  return energyJ / timeS;
}

/**
 * Time to melt, s: energy over useful power (power times efficiency, or what the furnace has shown), and a hold of
 * 5–10 min to skim, stir and measure (common practice, no source; 7 min unless given).
 */
export function meltTimeS({
  energyJ,
  usefulW,
  holdS = 420,
}: {
  energyJ: number;
  usefulW: number;
  holdS?: number | undefined;
}): number {
  requireWithin("energyJ", energyJ, { low: 0, high: 1e11, unit: "J" });
  requirePositive("usefulW", usefulW, { high: 1e7, unit: "W" });
  requireWithin("holdS", holdS, { low: 0, high: 86_400, unit: "s" });
  return energyJ / usefulW + holdS;
}

/** Fuel burned, kg: energy over efficiency and lower heating value (MJ/kg in the tables, J/kg here). */
export function fuelKg({
  energyJ,
  efficiency,
  heatingJKg,
}: {
  energyJ: number;
  efficiency: number;
  heatingJKg: number;
}): number {
  requireWithin("energyJ", energyJ, { low: 0, high: 1e11, unit: "J" });
  requirePositive("efficiency", efficiency, { high: 1, unit: "(a fraction, not percent)" });
  requireWithin("heatingJKg", heatingJKg, { low: 1e6, high: 1.5e8, unit: "J/kg (not MJ/kg)" });
  return energyJ / (efficiency * heatingJKg);
}

/** Heat a burner sets free, W, from the fuel it draws. */
export function burnerW({ fuelKgH, heatingJKg }: { fuelKgH: number; heatingJKg: number }): number {
  requireWithin("fuelKgH", fuelKgH, { low: 0, high: 1000, unit: "kg/h" });
  requireWithin("heatingJKg", heatingJKg, { low: 1e6, high: 1.5e8, unit: "J/kg (not MJ/kg)" });
  return (fuelKgH * heatingJKg) / 3600;
}

/** Efficiency of a furnace as a melt has shown it, 0–1 and above where the figures do not fit together. */
export function shownEfficiency({ energyJ, spentJ }: { energyJ: number; spentJ: number }): number {
  requireWithin("energyJ", energyJ, { low: 0, high: 1e11, unit: "J" });
  requirePositive("spentJ", spentJ, { high: 1e12, unit: "J" });
  return energyJ / spentJ;
}

export type ChargeAsked = {
  readonly castingKg: number;
  /** Cup, sprue, runners, gates, vents and risers; 0 unless given, where the casting's figure holds them already. */
  readonly gatingKg?: number | undefined;
  /** 0.05 with a measured volume, 0.10 by weight, 0.15–0.20 guessed (common practice, no source). */
  readonly marginShare: number;
  /** The margin never falls below this, 0.2 kg unless given (common practice, no source). */
  readonly leastMarginKg?: number | undefined;
  /** Left in the crucible on purpose. */
  readonly heelKg?: number | undefined;
  readonly lossShare: number;
};

export type ChargeParts = {
  readonly castingKg: number;
  readonly gatingKg: number;
  readonly marginKg: number;
  readonly heelKg: number;
  /** What must be there when the metal is poured: all of the above. */
  readonly meltKg: number;
  readonly lossKg: number;
  readonly chargeKg: number;
  /** Casting over all that is poured. */
  readonly yieldShare: number;
};

/**
 * The metal to weigh in and where it goes, kg: (casting + gating + margin + heel)/(1 − loss). Derived here as a mass
 * balance; loss is a share of the charge. Shares 0–1; refuses a margin of nothing.
 */
export function chargeParts({
  castingKg,
  gatingKg = 0,
  marginShare,
  leastMarginKg = 0.2,
  heelKg = 0,
  lossShare,
}: ChargeAsked): ChargeParts {
  requirePositive("castingKg", castingKg, { high: 100_000, unit: "kg" });
  requireWithin("gatingKg", gatingKg, { low: 0, high: 100_000, unit: "kg" });
  requireFraction("marginShare", marginShare);
  requireWithin("leastMarginKg", leastMarginKg, { low: 0, high: 100, unit: "kg" });
  requireWithin("heelKg", heelKg, { low: 0, high: 1000, unit: "kg" });
  requireWithin("lossShare", lossShare, { low: 0, high: 0.9, unit: "(a fraction, not percent)" });
  const netKg = castingKg + gatingKg;
  const marginKg = Math.max(netKg * marginShare, leastMarginKg);
  if (!(marginKg > 0)) throw new RangeError("a charge needs a margin above 0 kg, found marginShare 0");
  const meltKg = netKg + marginKg + heelKg;
  const chargeKg = meltKg / (1 - lossShare);
  return {
    castingKg,
    gatingKg,
    marginKg,
    heelKg,
    meltKg,
    lossKg: chargeKg - meltKg,
    chargeKg,
    yieldShare: castingKg / (netKg + marginKg),
  };
}

function requireHeats({
  solidJKgK,
  latentJKg,
  liquidJKgK,
}: {
  solidJKgK: number;
  latentJKg: number;
  liquidJKgK: number;
}): void {
  requireWithin("solidJKgK", solidJKgK, { low: 50, high: 5000, unit: "J/kg·K" });
  requireWithin("liquidJKgK", liquidJKgK, { low: 50, high: 5000, unit: "J/kg·K" });
  requireWithin("latentJKg", latentJKg, { low: 1000, high: 3e6, unit: "J/kg (not kJ/kg)" });
}
