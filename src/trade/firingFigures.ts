import type { BurningPattern } from "../physics/drying/burnAir.ts";
import type { FiringShell } from "../physics/heat/firingLimits.ts";
import type { BurnoutMaterial } from "./patternBurnout.ts";
import { patternBurnout, waxFilmShare } from "./patternBurnout.ts";
import { earlierFirstFireMPa, firstFireMPa } from "./shellStrength.ts";
import type { StuccoFamily } from "./shellThermal.ts";
import { shellThermal } from "./shellThermal.ts";

/** Smoke is reckoned at least from here to here, °C, whatever a data sheet's own points: common practice, no source. */
const smokeFromC = 300;
const smokeToC = 430;
/** Where wax is held to run out of a staged burnout: common practice, no source; home casters hold it near 195. */
const waxDrainC = 150;

/** Where wax goes that melts in the kiln, and whether only its film is left. */
type WaxOut = {
  readonly waxLeaves?: "floor" | "tray" | "no" | undefined;
  readonly isFilm?: boolean | undefined;
};

/** A pattern's fire in plain numbers, by the unlucky end of each range; null for a material nobody named. */
export function burningPatternOf(
  material: BurnoutMaterial,
  massKg: number,
  { waxLeaves = "no", isFilm = false }: WaxOut = {},
): BurningPattern | null {
  const burnout = patternBurnout[material];
  if (burnout === null) return null;
  const { drainC, fivePercentLossC, peakLossC, flashC, heatMJKg, airKgKg, finishC, finishMin } = burnout;
  // A film neither swells against the wall nor has anything to run out.
  const isWax = material === "wax" && !isFilm;
  return {
    massKg,
    isWax,
    drainC: isWax ? waxDrainC : isFilm ? null : (drainC?.value[1] ?? null),
    burnFromC: Math.min(smokeFromC, fivePercentLossC.value[0]),
    burnToC: Math.max(smokeToC, peakLossC.value[1]),
    heatMJKg: heatMJKg.value,
    airKgKg: airKgKg.value,
    finishC: finishC.value,
    finishMin: finishMin.value,
    flashC: flashC.value[0],
    staysShare: isWax && waxLeaves !== "no" ? waxFilmShare.value : 1,
  };
}

/** Cristobalite's share in a fused-silica shell that saw more than 1100 °C: from memory, 3e-6 and 6 GPa. */
const devitrified = { expansionPerK: 3e-6, modulusGPa: 6 };
/** Above its inversion quartz hardly grows: from memory. */
const hotQuartzPerK = 1e-6;

/** A family's figures for the stress of a fire. */
export function firingShellOf(
  family: StuccoFamily,
  {
    wallMm,
    seenAbove1100,
    greenShare,
  }: {
    wallMm: number;
    seenAbove1100: boolean;
    /** Green strength over a plain, well dried shell's; a plan without it is an earlier one. */
    greenShare?: number | undefined;
  },
): FiringShell {
  const { conductivityWMK, densityKgM3, heatJKgK, ...of } = shellThermal[family];
  const isDevitrified = family === "fused-silica" && seenAbove1100;
  return {
    wallMm,
    diffusivityM2S: conductivityWMK.value / (densityKgM3.value * heatJKgK.value),
    modulusGPa: isDevitrified ? devitrified.modulusGPa : of.modulusGPa.value,
    expansionPerK: isDevitrified ? devitrified.expansionPerK : of.expansionPerK.value,
    hotExpansionPerK: family === "quartz" ? hotQuartzPerK : undefined,
    strengthMPa: of.strengthMPa.value,
    firstStrengthMPa: greenShare === undefined ? earlierFirstFireMPa : firstFireMPa(greenShare),
    hasQuartz: family === "quartz",
    bearsFlash: family === "fused-silica" && !seenAbove1100,
  };
}
