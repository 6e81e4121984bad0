import { coolingOf, type CoolingSolid } from "../heat/coolingSolid.ts";
import { effusivity, type MouldHeat } from "./fluidity.ts";
import { freezingHeatJKg } from "./melt.ts";
import { requirePositive, requireWithin } from "../stats/range.ts";

/** Modulus of a solid, mm: volume over cooling face, by its shape or by its volume and face alone. Long hollow cylinders are exact, not the thin-wall limit. */
export function modulusMm(solid: CoolingSolid): number {
  const { volumeMm3, areaMm2 } = coolingOf(solid);
  return volumeMm3 / areaMm2;
}

/** Rammed silica sand: from memory of Poirier & Geiger, Transport Phenomena in Materials Processing. */
export const silicaSand: MouldHeat = { conductivityWMK: 0.61, densityKgM3: 1600, heatJKgK: 1130 };

/**
 * Chvorinov's constant of a metal in a thick, cold mould, s/mm²:
 * (π/4)·[ρ·(L + c·ΔT)/(Tf − T0)]²/(kρc of the mould), from memory of M. C. Flemings, Solidification Processing (1974)
 * and Poirier & Geiger, Transport Phenomena in Materials Processing.
 *
 * Superheat counts inside the square; a variant adds it as 1 + (c·ΔT/L)² and gives little more than half for
 * bronze at 150 K. `freezeC` is where the metal stands while it freezes, between solidus and liquidus. Not for a
 * thin hot shell, which soaks through in seconds: see `hotShellFreezeS`. Silica sand at 20 °C unless given.
 */
export function chvorinovConstant({
  metalKgM3,
  latentJKg,
  liquidJKgK,
  superheatK,
  freezeC,
  mouldC = 20,
  mould = silicaSand,
}: {
  metalKgM3: number;
  latentJKg: number;
  liquidJKgK: number;
  superheatK: number;
  freezeC: number;
  mouldC?: number | undefined;
  mould?: MouldHeat | undefined;
}): number {
  requireWithin("metalKgM3", metalKgM3, { low: 500, high: 25_000, unit: "kg/m³ (not g/cm³)" });
  requireWithin("freezeC", freezeC, { low: 30, high: 2500, unit: "°C" });
  requireWithin("mouldC", mouldC, { low: -50, high: freezeC - 1, unit: "°C (below the freezing heat)" });
  const heatJM3 = metalKgM3 * freezingHeatJKg({ latentJKg, liquidJKgK, superheatK });
  return ((Math.PI / 4) * (heatJM3 / (freezeC - mouldC) / effusivity(mould)) ** 2) / 1e6;
}

/** Time to freeze, s: C·M^n. Chvorinov 1940; n 2 unless given (1.5–2 are quoted, about 1 in a thin hot shell). */
export function freezeTimeS({
  constantSMm2,
  modulusMm,
  exponent = 2,
}: {
  constantSMm2: number;
  modulusMm: number;
  exponent?: number | undefined;
}): number {
  requirePositive("constantSMm2", constantSMm2, { high: 1e6, unit: "s/mm²" });
  requirePositive("modulusMm", modulusMm, { high: 10_000, unit: "mm" });
  requireWithin("exponent", exponent, { low: 0.5, high: 2.5, unit: "" });
  return constantSMm2 * modulusMm ** exponent;
}
