import { metalToShellWM2K } from "../heat/metalContact.ts";
import { requireFraction, requirePositive, requireWithin } from "../stats/range.ts";
import { dayS } from "../stats/time.ts";

/** What the shell's wall is to a heat front: k in W/m·K, kg/m³, J/kg·K. */
export type MouldHeat = {
  readonly conductivityWMK: number;
  readonly densityKgM3: number;
  readonly heatJKgK: number;
};

export type RunAsked = {
  readonly liquidKgM3: number;
  readonly wallMm: number;
  readonly latentJKg: number;
  readonly liquidJKgK: number;
  readonly superheatK: number;
  readonly liquidusC: number;
  readonly shellC: number;
  readonly mould: MouldHeat;
  /** Solid that stops the stream, 0.2–0.35. */
  readonly stopShare: number;
  /** Metal to shell, W/m²K: see `metalToShellWM2K`. */
  readonly interfaceWM2K: number;
};

export type RunTime = {
  readonly timeS: number;
  readonly shellS: number;
  readonly interfaceS: number;
  readonly limitedBy: "shell" | "interface";
};

/** Heat a root second takes, W·s^½/m²K: √(kρc). */
export function effusivity({ conductivityWMK, densityKgM3, heatJKgK }: MouldHeat): number {
  requirePositive("conductivityWMK", conductivityWMK, { high: 500, unit: "W/m·K" });
  requireWithin("densityKgM3", densityKgM3, { low: 100, high: 25_000, unit: "kg/m³" });
  requireWithin("heatJKgK", heatJKgK, { low: 50, high: 5000, unit: "J/kg·K" });
  return Math.sqrt(conductivityWMK * densityKgM3 * heatJKgK);
}

/**
 * Time a stream between two faces runs before it stops, s, or null where the shell is as hot as the liquidus, or so
 * near it that a day would not stop it. Heat to stop E = ρ·(s/2)·(f·L + c·ΔT) a face; the shell alone takes it in (E·√π/2e·θ)², the interface
 * alone in E/(h·θ), θ = TL − Tshell. Being in series, the truth is at least the longer: that one is given, slightly
 * on the safe side. After M. C. Flemings, Solidification Processing (1974), ch. 7, from memory.
 */
export function runTime(asked: RunAsked): RunTime | null {
  const { liquidKgM3, wallMm, latentJKg, liquidJKgK, superheatK, liquidusC, shellC, interfaceWM2K } = asked;
  requireWithin("liquidKgM3", liquidKgM3, { low: 500, high: 25_000, unit: "kg/m³ (not g/cm³)" });
  requirePositive("wallMm", wallMm, { high: 500, unit: "mm" });
  requireWithin("latentJKg", latentJKg, { low: 1000, high: 3e6, unit: "J/kg (not kJ/kg)" });
  requireWithin("liquidJKgK", liquidJKgK, { low: 50, high: 5000, unit: "J/kg·K" });
  requireWithin("superheatK", superheatK, { low: 0, high: 2500, unit: "K" });
  requireWithin("liquidusC", liquidusC, { low: 30, high: 2500, unit: "°C" });
  requireWithin("shellC", shellC, { low: -50, high: 2000, unit: "°C" });
  requireFraction("stopShare", asked.stopShare);
  requirePositive("interfaceWM2K", interfaceWM2K, { high: 1e5, unit: "W/m²K" });
  const gapK = liquidusC - shellC;
  if (gapK <= 0) return null;
  const stopJM2 = liquidKgM3 * (wallMm / 2000) * (asked.stopShare * latentJKg + liquidJKgK * superheatK);
  const shellS = ((stopJM2 * Math.sqrt(Math.PI)) / (2 * effusivity(asked.mould) * gapK)) ** 2;
  const interfaceS = stopJM2 / (interfaceWM2K * gapK);
  const timeS = Math.max(shellS, interfaceS);
  if (timeS > dayS) return null;
  return {
    timeS,
    shellS,
    interfaceS,
    limitedBy: shellS > interfaceS ? "shell" : "interface",
  };
}

/**
 * What is not known to better than this: solid that stops a stream (Flemings, from memory), metal to shell, and the
 * cavity's face against what is read (judgement: a controller's swing and its sensor). Between crucible and section
 * metal loses heat to lip, cup and runner: 20 to 40 K (common practice, no source). No cast wall is even: it may be
 * thinner in places (judgement).
 */
export const runSpread = {
  stopShare: { low: 0.2, likely: 0.25, high: 0.35 },
  interfaceWM2K: metalToShellWM2K,
  shellK: 30,
  lostK: 30,
  thinnerMm: 0.3,
} as const;

/** Time a front has, s; null where it is so hot that it does not stop. */
export type RunBand = {
  readonly lowS: number;
  readonly likelyS: number | null;
  readonly highS: number | null;
};

/**
 * Time a front has before it stops, with its band, s: from little solid, good contact, a colder face and a thinner place to much solid,
 * poor contact and a hotter face. `superheatK` is that of the crucible. Null where even the low end does not stop.
 */
export function runTimeBandS(asked: Omit<RunAsked, "stopShare" | "interfaceWM2K">): RunBand | null {
  const { stopShare, interfaceWM2K, shellK, lostK, thinnerMm } = runSpread;
  requireWithin("superheatK", asked.superheatK, { low: 0, high: 2500, unit: "K" });
  const entering = { ...asked, superheatK: Math.max(0, asked.superheatK - lostK) };
  const likely = runTime({
    ...entering,
    stopShare: stopShare.likely,
    interfaceWM2K: interfaceWM2K.likely,
  });
  const low = runTime({
    ...entering,
    shellC: Math.max(-50, asked.shellC - shellK),
    wallMm: Math.max(asked.wallMm / 2, asked.wallMm - thinnerMm),
    stopShare: stopShare.low,
    interfaceWM2K: interfaceWM2K.high,
  });
  const high = runTime({
    ...entering,
    shellC: Math.min(2000, asked.shellC + shellK),
    stopShare: stopShare.high,
    interfaceWM2K: interfaceWM2K.low,
  });
  return low === null
    ? null
    : { lowS: low.timeS, likelyS: likely?.timeS ?? null, highS: high?.timeS ?? null };
}
