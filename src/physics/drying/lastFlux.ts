import type { WetLayer } from "./coat.ts";
import type { DryStep } from "./dryStep.ts";
import { requireFigures, requireFraction, requirePositive, requireWithin } from "../stats/range.ts";

/**
 * Water a square metre of a coat still loses just before it is ready, kg/m²s: the least it can lose while it is not dry.
 *
 * The front stands at the last of the depth, so the flux is Δρ/(A + G + B·f·H): film `surfaceSM`, pocket `pocketSM`
 * (s/m, 0 in the open) and the dry layer above the front (the two-stage model of `front.ts`), divided by the coat's
 * factor on time (1 = none). 0 in air that lays water down. Refuses a factor that is not above 0.
 */
export function lastFluxKgM2S(
  { deficitKgM3, parts, says }: Pick<DryStep, "deficitKgM3" | "parts" | "says">,
  { depthM, dryFraction }: Pick<WetLayer, "depthM" | "dryFraction">,
  { pocketSM, factor }: { readonly pocketSM: number; readonly factor: number },
): number {
  requireWithin("pocketSM", pocketSM, { low: 0, high: 1e6, unit: "s/m" });
  requireFigures({ deficitKgM3, surfaceSM: parts.surfaceSM, layerSM2: parts.layerSM2 });
  requireWithin("depthM", depthM, { low: 0, high: 1, unit: "m" });
  requireFraction("dryFraction", dryFraction);
  requirePositive("factor", factor, { high: 10_000, unit: "" });
  if (says === "condensing") return 0;
  return deficitKgM3 / (factor * (parts.surfaceSM + pocketSM + parts.layerSM2 * dryFraction * depthM));
}

/** Denser than any shell with its pattern, kg/m³: so no piece is smaller than this makes it. Judgement. */
const mostDensityKgM3 = 2500;

/**
 * The least surface a piece of this mass can have, m²: that of a ball, for no body of a volume has less (the
 * isoperimetric inequality), at 2500 kg/m³. `massKg` above 0, to 10,000.
 */
export function leastAreaM2(massKg: number): number {
  requirePositive("massKg", massKg, { high: 1e4, unit: "kg" });
  return Math.cbrt(36 * Math.PI) * Math.cbrt(massKg / mostDensityKgM3) ** 2;
}
