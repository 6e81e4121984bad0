import type { LiquorSilica } from "./sol.ts";
import { requireFraction } from "../stats/range.ts";
import { requireDensity, requireWater, silicaGCm3 } from "./sol.ts";

/** What a slurry holds. Fractions are of mass unless they say volume; ratio is kg of flour per kg of liquid. */
export type SolidsKnown = {
  readonly ok: true;
  readonly flourVolumeFraction: number;
  readonly flourMassFraction: number;
  readonly ratio: number;
  /** Flour and binder silica together. */
  readonly solids: number;
  readonly silicaInLiquid: number;
  readonly liquidGCm3: number;
};

export type SolidsRefusal =
  | Extract<LiquorSilica, { readonly ok: false }>
  | {
      readonly ok: false;
      readonly code: "density-not-between";
      readonly densityGCm3: number;
      readonly lowGCm3: number;
      readonly highGCm3: number;
    }
  | {
      readonly ok: false;
      /** One measurement too few, or a flour the oven can't tell from silica: weigh the settled liquor. */
      readonly code: "liquor-density-needed";
      readonly because: "flour-like-silica" | "one-measurement-short";
      readonly flourGCm3: number;
      readonly silicaGCm3: number;
      /** Total solids the density alone tells where the flour is like silica; null otherwise. */
      readonly solids: number | null;
    }
  | {
      readonly ok: false;
      readonly code: "oven-and-density-disagree";
      readonly flourMassFraction: number;
      readonly silicaInLiquid: number | null;
    };

/**
 * Below this difference of specific volumes, cm³/g, an error of 0.003 in density moves the flour share by more
 * than 0.05: the oven tells nothing. Flour of 2.06–2.36 g/cm³. Derived.
 */
const tooLike = 0.03;

/** Between the liquid's density and the flour's lies the flour's share by volume: a mixing rule (derived). */
export function solidsFromLiquid({
  densityGCm3,
  flourGCm3,
  liquidGCm3,
  silica,
}: {
  densityGCm3: number;
  flourGCm3: number;
  liquidGCm3: number;
  silica: number;
}): SolidsKnown | SolidsRefusal {
  for (const [name, density] of Object.entries({ densityGCm3, flourGCm3, liquidGCm3 }))
    requireDensity(name, density);
  requireFraction("silica", silica);
  if (densityGCm3 < liquidGCm3 || densityGCm3 >= flourGCm3)
    return notBetween({ densityGCm3, lowGCm3: liquidGCm3, highGCm3: flourGCm3 });
  const flourVolumeFraction = (densityGCm3 - liquidGCm3) / (flourGCm3 - liquidGCm3);
  const flourMassFraction = (flourVolumeFraction * flourGCm3) / densityGCm3;
  return {
    ok: true,
    flourVolumeFraction,
    flourMassFraction,
    ratio: flourMassFraction / (1 - flourMassFraction),
    solids: flourMassFraction + (1 - flourMassFraction) * silica,
    silicaInLiquid: silica,
    liquidGCm3,
  };
}

/** Two equations, volume and dry mass, for two unknowns, flour and silica (derived). `ovenSolids` null: density alone. */
export function solidsFromOven({
  densityGCm3,
  flourGCm3,
  ovenSolids,
  waterGCm3,
}: {
  densityGCm3: number;
  flourGCm3: number;
  ovenSolids: number | null;
  waterGCm3: number;
}): SolidsKnown | SolidsRefusal {
  for (const [name, density] of Object.entries({ densityGCm3, flourGCm3 })) requireDensity(name, density);
  requireWater(waterGCm3);
  if (ovenSolids !== null) requireFraction("ovenSolids", ovenSolids);
  const apart = 1 / flourGCm3 - 1 / silicaGCm3;
  const like = Math.abs(apart) < tooLike;
  const between = densityGCm3 >= waterGCm3 && densityGCm3 < flourGCm3;
  // A flour like silica is told first: whatever the density, the oven is the wrong tool.
  if (like || (between && ovenSolids === null))
    return {
      ok: false,
      code: "liquor-density-needed",
      because: like ? "flour-like-silica" : "one-measurement-short",
      flourGCm3,
      silicaGCm3,
      solids: like && between ? (1 / waterGCm3 - 1 / densityGCm3) / (1 / waterGCm3 - 1 / flourGCm3) : null,
    };
  if (!between || ovenSolids === null)
    return notBetween({ densityGCm3, lowGCm3: waterGCm3, highGCm3: flourGCm3 });
  const volume = 1 / densityGCm3 - ovenSolids / silicaGCm3 - (1 - ovenSolids) / waterGCm3;
  const flourMassFraction = volume / apart;
  const silicaMass = ovenSolids - flourMassFraction;
  const liquid = 1 - flourMassFraction;
  // A sliver of error may put the silica of a plain water slurry below nothing; more is a contradiction.
  if (!(flourMassFraction >= -0.01 && silicaMass >= -0.01 && liquid > 0 && ovenSolids < 1))
    return {
      ok: false,
      code: "oven-and-density-disagree",
      flourMassFraction,
      silicaInLiquid: liquid > 0 ? silicaMass / liquid : null,
    };
  const flour = Math.max(0, flourMassFraction);
  const silicaInLiquid = Math.max(0, silicaMass) / (1 - flour);
  const flourVolumeFraction = (flour * densityGCm3) / flourGCm3;
  return {
    ok: true,
    flourVolumeFraction,
    flourMassFraction: flour,
    ratio: flour / (1 - flour),
    solids: ovenSolids,
    silicaInLiquid,
    liquidGCm3: ((1 - flour) * densityGCm3) / (1 - flourVolumeFraction),
  };
}

function notBetween(densities: { densityGCm3: number; lowGCm3: number; highGCm3: number }): SolidsRefusal {
  return { ok: false, code: "density-not-between", ...densities };
}
