import {
  burnerW,
  fuelKg,
  meltEnergyJ,
  meltPowerW,
  meltTimeS,
  type MeltHeat,
} from "../../physics/metal/melt.ts";
import type { PowerKnown } from "../fire/furnaceMemory.ts";
import type { Furnace } from "../shop/shopThings.ts";
import { bottleDrawKgH, fuels } from "../../trade/furnaces.ts";

/** Skimming, stirring and measuring at the end, s (common practice, no source: 5–10 min). */
const holdS = 420;

export type MeltTimes = { readonly lowS: number; readonly likelyS: number; readonly highS: number };

export type HeatSum = {
  readonly energyJ: number;
  readonly times: MeltTimes | null;
  /** Into the metal, over the likely time without its hold. */
  readonly powerW: number | null;
  readonly fuel: {
    readonly kg: number;
    /** Drawn at full power; null for a fuel that isn't bottled. */
    readonly drawKgH: number;
    readonly isBeyondBottle: boolean;
  } | null;
  readonly spentKWh: number | null;
};

/** Heat, time and fuel of a melt; null where the metal is to be poured below its liquidus. */
export function heatSum({
  massKg,
  heat,
  fromC = 20,
  pourC,
  furnace,
  power,
}: {
  readonly massKg: number;
  readonly heat: MeltHeat;
  readonly fromC?: number | undefined;
  readonly pourC: number;
  readonly furnace: Furnace | null;
  readonly power: PowerKnown | null;
}): HeatSum | null {
  if (pourC < heat.liquidusC || pourC > 2500 || !(massKg > 0)) return null;
  const energyJ = meltEnergyJ({ ...heat, massKg, fromC, pourC });
  if (furnace === null || power === null)
    return { energyJ, times: null, powerW: null, fuel: null, spentKWh: null };
  const timeAt = (usefulW: number): number => meltTimeS({ energyJ, usefulW, holdS });
  const times = { lowS: timeAt(power.highW), likelyS: timeAt(power.likelyW), highS: timeAt(power.lowW) };
  const efficiency = Math.min(1, power.likelyW / (furnace.powerKW * 1000));
  return {
    energyJ,
    times,
    powerW: meltPowerW({ energyJ, timeS: times.likelyS - holdS }),
    fuel: fuelOf({ energyJ, efficiency, furnace }),
    spentKWh: energyJ / efficiency / 3.6e6,
  };
}

function fuelOf({
  energyJ,
  efficiency,
  furnace: { heat, powerKW },
}: {
  readonly energyJ: number;
  readonly efficiency: number;
  readonly furnace: Furnace;
}): HeatSum["fuel"] {
  if (heat !== "propane" && heat !== "natural-gas") return null;
  const heatingJKg = fuels[heat].value;
  // What one kilogram an hour sets free tells what the burner's whole power draws.
  const drawKgH = (powerKW * 1000) / burnerW({ fuelKgH: 1, heatingJKg });
  return {
    kg: fuelKg({ energyJ, efficiency, heatingJKg }),
    drawKgH,
    isBeyondBottle: heat === "propane" && drawKgH > bottleDrawKgH.value.high,
  };
}
