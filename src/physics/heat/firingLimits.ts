import type { BurningPattern } from "../drying/burnAir.ts";
import { burnRateKPerH, requireBurning } from "../drying/burnAir.ts";
import type { ReasonCode } from "./firingSegments.ts";
import { rampLimitKPerH, requireWall } from "./heat.ts";
import type { Kiln } from "./kilnPower.ts";
import { requireKiln } from "./kilnPower.ts";
import { requirePositive, requireWithin } from "../stats/range.ts";

/** A shell's figures for its stress in the fire. */
export type FiringShell = {
  readonly wallMm: number;
  readonly diffusivityM2S: number;
  readonly modulusGPa: number;
  readonly expansionPerK: number;
  /** Above 600 °C, where quartz no longer grows; as below unless given. */
  readonly hotExpansionPerK?: number | undefined;
  /** Tension borne once fired, after its safety factor. */
  readonly strengthMPa: number;
  /** Tension borne in its first fire, MPa; `firingPractice` stands in unless given. */
  readonly firstStrengthMPa?: number | undefined;
  readonly hasQuartz: boolean;
  /** Fused silica alone bears being put into a hot kiln without a thought. */
  readonly bearsFlash: boolean;
};

export type FiringFor = {
  readonly purpose: "burnout" | "fire" | "preheat";
  readonly route: "flash" | "staged";
  /** What is still inside the shell; null for nothing. */
  readonly pattern: BurningPattern | null;
  /** Where wax that melts in the kiln goes; "no" and a key left out are a pattern that burns inside. */
  readonly waxLeaves?: "floor" | "tray" | "no" | undefined;
  readonly shell: FiringShell;
  readonly shellKg: number;
  readonly damp: "dry" | "damp" | "patched-wet";
  readonly firedBefore: boolean;
  readonly seenAbove1100: boolean;
  readonly kiln: Kiln;
  readonly startC: number;
  /** What comes after: the kiln cools for the shell to be looked at, or goes to the preheat for a pour. */
  readonly after: "inspect" | "pour";
  readonly preheatC?: number | undefined;
  readonly fireC?: number | undefined;
  /** Depth of the deepest blind cavity that air must find its way into. */
  readonly blindMm?: number | undefined;
};

/** A band of temperature that no ramp may take faster. */
export type RateLimit = {
  readonly code: ReasonCode;
  readonly fromC: number;
  readonly toC: number;
  readonly way: "heating" | "cooling" | "both";
  readonly rateKPerH: number;
};

/** What a schedule or a run of this piece is held against. */
export type FiringLimits = {
  readonly rates: readonly RateLimit[];
  readonly steamHold: { readonly fromC: number; readonly toC: number; readonly minutes: number } | null;
  /** Time in the window where the pattern runs out. In a hot kiln: after it was put in. */
  readonly drain: { readonly fromC: number; readonly toC: number; readonly minutes: number } | null;
  readonly finish: { readonly atLeastC: number; readonly minutes: number; readonly code: ReasonCode } | null;
  readonly pattern: BurningPattern | null;
  /** A tray of wax stands under the shell: hottest the kiln may be until it is out. Null where there is none. */
  readonly tray: { readonly mostC: number } | null;
  readonly loadsHot: boolean;
  readonly kiln: Kiln;
  readonly loadKg: number;
};

/** Figures of practice; none of them has a source but what is said beside it. */
export const firingPractice = {
  /**
   * A shell in its first fire: a quarter of the 1.4 MPa in bending that was measured of green shells without polymer
   * (Guerra & Dooley, INCAST June 2020; Dooley & Everden, INCAST Nov 2020), six tenths of the fired modulus (judgement).
   */
  firstStrengthMPa: 0.35,
  firstModulusShare: 0.6,
  /** α–β inversion of quartz at 573 °C; 50 K/h is the rule for ware, thin porous walls bear 150. */
  quartzFromC: 523,
  quartzToC: 623,
  quartzThinMm: 12,
  quartzThinKPerH: 150,
  quartzThickKPerH: 50,
  /** Cristobalite's inversion, about 5 % by volume: Salomon, Doles & Batllo, "Cristobalite formation in investment casting shells", 2016. */
  cristobaliteFromC: 180,
  cristobaliteToC: 300,
  cristobaliteKPerH: 100,
  devitrifyC: 1100,
  steamFromC: 105,
  steamToC: 150,
  steamHoldC: 110,
  steamRampKPerH: 100,
  steamAfterToC: 300,
  steamAfterKPerH: 200,
  patchedHoldMin: 60,
  drainMin: 30,
  drainNearK: 15,
  flashDrainMin: 15,
  flashC: 870,
  /** A tray of wax comes out this far below the wax's flash point, K: judgement, for a kiln that overshoots. */
  trayMarginK: 30,
  /** With the kiln off and the door open: to take the tray out. */
  trayOutMin: 5,
  bondC: 700,
  firedC: 800,
  fireC: 870,
  fireMin: 60,
  perWallMin: 3,
  perBlindMin: 3,
  soakMin: 30,
  burnKPerH: 200,
} as const;

/** Minutes a shell of this wall, 0–1000 mm, stands at its heat before it is hot right through: common practice, no source. */
export function soakMinutes(wallMm: number): number {
  requireWithin("wallMm", wallMm, { low: 0, high: 1000, unit: "mm" });
  return firingPractice.soakMin + firingPractice.perWallMin * wallMm;
}

/** The limits of this piece, this pattern and this kiln: what its plan keeps and its run is judged by. */
export function firingLimits(of: FiringFor): FiringLimits {
  requireFiring(of);
  const { shell, pattern, damp, kiln } = of;
  const p = firingPractice;
  const loadsHot = of.route === "flash" && of.purpose === "burnout" && pattern !== null;
  const firstMPa = shell.firstStrengthMPa ?? p.firstStrengthMPa;
  const strength = of.firedBefore ? shell.strengthMPa : Math.min(shell.strengthMPa, firstMPa);
  const modulusGPa = shell.modulusGPa * (of.firedBefore ? 1 : p.firstModulusShare);
  const hotExpansionPerK = shell.hotExpansionPerK ?? shell.expansionPerK;
  const stress = (expansionPerK: number, way: "heating" | "cooling"): number =>
    rampLimitKPerH({ ...shell, expansionPerK, modulusGPa, strengthMPa: strength, way });
  const rates: RateLimit[] = (["heating", "cooling"] as const).flatMap((way) => [
    { code: "thermal-stress", fromC: -50, toC: 600, way, rateKPerH: stress(shell.expansionPerK, way) },
    { code: "thermal-stress", fromC: 600, toC: 1700, way, rateKPerH: stress(hotExpansionPerK, way) },
  ]);
  if (damp !== "dry")
    rates.push(
      { code: "steam", fromC: 80, toC: p.steamFromC, way: "heating", rateKPerH: p.steamRampKPerH },
      {
        code: "steam",
        fromC: p.steamFromC,
        toC: p.steamAfterToC,
        way: "heating",
        rateKPerH: p.steamAfterKPerH,
      },
    );
  if (shell.hasQuartz)
    rates.push({
      code: "quartz",
      fromC: p.quartzFromC,
      toC: p.quartzToC,
      way: "both",
      rateKPerH: shell.wallMm <= p.quartzThinMm ? p.quartzThinKPerH : p.quartzThickKPerH,
    });
  const peakC = of.purpose === "preheat" ? (of.preheatC ?? 0) : fireGoalC(of);
  if (of.seenAbove1100 || peakC > p.devitrifyC)
    rates.push({
      code: "cristobalite",
      fromC: p.cristobaliteFromC,
      toC: p.cristobaliteToC,
      way: of.seenAbove1100 ? "both" : "cooling",
      rateKPerH: p.cristobaliteKPerH,
    });
  if (pattern !== null && !loadsHot) {
    const { burnFromC: fromC, burnToC: toC } = pattern;
    rates.push({ code: "decomposition", fromC, toC, way: "heating", rateKPerH: p.burnKPerH });
    const byHeat = burnRateKPerH({ pattern, volumeL: kiln.volumeL });
    if (byHeat < p.burnKPerH)
      rates.push({ code: "heat-release", fromC, toC, way: "heating", rateKPerH: byHeat });
  }
  return {
    rates,
    steamHold: steamHold(of),
    drain: drain(of, loadsHot),
    finish: finish(of),
    pattern,
    tray: trayLimit(of, loadsHot),
    loadsHot,
    kiln,
    loadKg: of.shellKg,
  };
}

/** What the kiln is brought to for firing, °C, within what it can. */
export function fireGoalC({ fireC, pattern, kiln }: Pick<FiringFor, "fireC" | "pattern" | "kiln">): number {
  for (const [name, atC] of Object.entries({ fireC, finishC: pattern?.finishC, maxC: kiln.maxC }))
    if (atC !== undefined) requireWithin(name, atC, { low: 0, high: 2500, unit: "°C" });
  const wanted = fireC ?? Math.max(firingPractice.fireC, pattern?.finishC ?? 0);
  return Math.min(wanted, kiln.maxC);
}

function steamHold({ damp, shell }: FiringFor): FiringLimits["steamHold"] {
  const p = firingPractice;
  if (damp === "dry") return null;
  const byWall = 30 + 5 * shell.wallMm;
  const minutes = damp === "patched-wet" ? Math.max(p.patchedHoldMin, byWall) : byWall;
  return { fromC: p.steamFromC, toC: p.steamToC, minutes };
}

function drain({ purpose, pattern }: FiringFor, loadsHot: boolean): FiringLimits["drain"] {
  const p = firingPractice;
  if (pattern === null || purpose !== "burnout") return null;
  if (loadsHot) return { fromC: p.flashC - 20, toC: 1700, minutes: p.flashDrainMin };
  if (pattern.drainC === null) return null;
  return {
    fromC: pattern.drainC - p.drainNearK,
    toC: Math.min(pattern.drainC + p.drainNearK, pattern.burnFromC),
    minutes: p.drainMin,
  };
}

function trayLimit({ pattern, waxLeaves }: FiringFor, loadsHot: boolean): FiringLimits["tray"] {
  if (pattern?.flashC === undefined || waxLeaves !== "tray" || loadsHot) return null;
  return { mostC: pattern.flashC - firingPractice.trayMarginK };
}

function finish(of: FiringFor): FiringLimits["finish"] {
  const p = firingPractice;
  if (of.purpose === "preheat") return null;
  const { pattern, shell, blindMm = 0 } = of;
  const goalC = fireGoalC(of);
  // Carbon in a blind cavity waits for air to find its way: half an hour a centimetre.
  const carbon = pattern === null ? 0 : pattern.finishMin + p.perBlindMin * blindMm;
  const sinter = p.fireMin + p.perWallMin * shell.wallMm;
  const code = carbon > sinter ? "carbon-burn-off" : "sintering";
  const atLeastC = Math.min(goalC, Math.max(p.firedC, pattern?.finishC ?? 0));
  return { atLeastC, minutes: Math.max(carbon, sinter), code };
}

function requireFiring({ shell, shellKg, kiln, startC, preheatC, fireC, blindMm, pattern }: FiringFor): void {
  requireWall(shell.wallMm);
  requireKiln(kiln);
  requirePositive("shellKg", shellKg, { high: 5000, unit: "kg" });
  requireWithin("startC", startC, { low: -40, high: 1700, unit: "°C" });
  if (preheatC !== undefined) requireWithin("preheatC", preheatC, { low: 20, high: 1300, unit: "°C" });
  if (fireC !== undefined) requireWithin("fireC", fireC, { low: 400, high: 1500, unit: "°C" });
  if (blindMm !== undefined) requireWithin("blindMm", blindMm, { low: 0, high: 2000, unit: "mm" });
  if (pattern !== null) requireBurning(pattern);
  if (shell.hotExpansionPerK !== undefined)
    requireWithin("hotExpansionPerK", shell.hotExpansionPerK, { low: 1e-8, high: 1e-3, unit: "1/K" });
  if (pattern !== null && !(pattern.burnToC > pattern.burnFromC))
    throw new RangeError(`burnToC must be above burnFromC, found ${pattern.burnFromC}–${pattern.burnToC} °C`);
}
