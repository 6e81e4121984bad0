import type { ShellHeat } from "../physics/heat/heat.ts";
import { propertyAt, propertyBetween, type Property } from "../physics/heat/heatProperty.ts";
import type { Basis } from "./published.ts";

/** What most of the wall is made of: it decides how the wall conducts and what fire does to it. */
export type StuccoFamily = "fused-silica" | "aluminosilicate" | "zircon" | "quartz";

/** A likely figure with the ends to allow for. */
export type Ranged = {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly basis: Basis;
  readonly source: string;
};

export type ShellThermal = {
  readonly label: string;
  readonly conductivityWMK: Ranged;
  readonly densityKgM3: Ranged;
  /** Mean from the room to 1000 °C; its ends are those of 20 and of 1000 °C. */
  readonly heatJKgK: Ranged;
  /** From 600 °C up: what a shell holds when metal comes, or just out of the kiln. */
  readonly hotHeatJKgK: Ranged;
  readonly emissivity: Ranged;
  readonly expansionPerK: Ranged;
  readonly modulusGPa: Ranged;
  /** Tension a fired wall bears after its safety factor, MPa. */
  readonly strengthMPa: Ranged;
};

const memory = "from memory; editable";
const conduction =
  "from memory of Sabau & Viswanathan, AFS Trans. 2004, and Xu, Lekakh & Richards, Int. J. Metalcasting 2016, 200–800 °C";
const measuredHot =
  "measured 1130 to 1300 °C on an aluminosilicate shell: C. H. Konrad et al., J. Mater. Process. Technol. 211 (2011) 181–186";
const faces = "from memory of Incropera & DeWitt, table A.11, refractories at 500–900 °C";
const judgement = "judgement: about a quarter of the bending strength; starting value";

const ranged = (value: number, low: number, high: number, basis: Basis, source: string): Ranged => ({
  value,
  low,
  high,
  basis,
  source,
});

/** Nobody measured the maker's own shell: each figure is a starting value with its range. */
export const shellThermal: Readonly<Record<StuccoFamily, ShellThermal>> = {
  "fused-silica": {
    label: "Fused silica",
    conductivityWMK: ranged(0.7, 0.4, 0.9, "published", conduction),
    densityKgM3: ranged(1700, 1550, 1800, "judgement", memory),
    heatJKgK: ranged(1000, 750, 1150, "judgement", `${memory}; 750 at 20 °C, 1150 at 1000 °C`),
    hotHeatJKgK: ranged(
      1130,
      1080,
      1150,
      "judgement",
      "judgement: as aluminosilicate; vitreous silica is near it at 600 °C",
    ),
    emissivity: ranged(0.85, 0.75, 0.9, "published", faces),
    expansionPerK: ranged(
      1e-6,
      0.6e-6,
      1.5e-6,
      "judgement",
      `${memory}; dense fused silica 0.5–0.57e-6; 3e-6 and more with cristobalite`,
    ),
    modulusGPa: ranged(5, 3, 10, "judgement", memory),
    strengthMPa: ranged(1, 0.6, 1.7, "judgement", judgement),
  },
  aluminosilicate: {
    label: "Aluminosilicate",
    conductivityWMK: ranged(
      1,
      0.85,
      1.2,
      "measured",
      "measured 1.0 ± 0.1 with zircon prime and mullite backups: C. H. Konrad et al., J. Mater. Process. Technol. 211 (2011) 181–186",
    ),
    densityKgM3: ranged(1900, 1800, 2050, "judgement", memory),
    heatJKgK: ranged(1000, 800, 1150, "judgement", `${memory}; 800 at 20 °C, 1150 at 1000 °C`),
    hotHeatJKgK: ranged(1130, 1080, 1150, "measured", measuredHot),
    emissivity: ranged(0.8, 0.65, 0.85, "published", faces),
    expansionPerK: ranged(5e-6, 4e-6, 6e-6, "judgement", memory),
    modulusGPa: ranged(8, 5, 12, "judgement", memory),
    strengthMPa: ranged(1.2, 0.7, 2, "judgement", judgement),
  },
  zircon: {
    label: "Zircon-rich",
    conductivityWMK: ranged(1.2, 0.9, 1.6, "published", conduction),
    densityKgM3: ranged(2700, 2500, 2900, "judgement", memory),
    heatJKgK: ranged(680, 550, 800, "judgement", `${memory}; 550 at 20 °C, 800 at 1000 °C`),
    hotHeatJKgK: ranged(770, 700, 800, "judgement", "judgement: zircon near 600 °C, from memory"),
    emissivity: ranged(0.7, 0.6, 0.8, "published", faces),
    expansionPerK: ranged(4.2e-6, 3.5e-6, 5e-6, "judgement", memory),
    modulusGPa: ranged(8, 5, 15, "judgement", memory),
    strengthMPa: ranged(1.2, 0.7, 2, "judgement", judgement),
  },
  quartz: {
    label: "Quartz sand",
    conductivityWMK: ranged(
      0.9,
      0.6,
      1.3,
      "judgement",
      "estimate between fused silica and aluminosilicate; no source",
    ),
    densityKgM3: ranged(1700, 1550, 1850, "judgement", "estimate, as fused silica; no source"),
    heatJKgK: ranged(1000, 750, 1150, "judgement", "estimate, as fused silica; no source"),
    hotHeatJKgK: ranged(1130, 1080, 1150, "judgement", "estimate, as fused silica; no source"),
    emissivity: ranged(0.8, 0.7, 0.9, "published", faces),
    expansionPerK: ranged(
      14e-6,
      10e-6,
      16e-6,
      "judgement",
      `${memory}, below 573 °C; linear step 0.45 % there`,
    ),
    modulusGPa: ranged(5, 3, 10, "judgement", memory),
    strengthMPa: ranged(1, 0.6, 1.7, "judgement", judgement),
  },
};

/** Density times heat of any shell, about its likely figure: judgement, 1.5–2.1 about 1.8 MJ/(m³·K). */
const storageShare = [0.83, 1.17] as const;

/** Heat of a shell over its temperature, °C and J/kg·K: cold, from 600 °C up, and at 1000 °C. */
const heatOver = ({ heatJKgK, hotHeatJKgK }: ShellThermal): Property => [
  [20, heatJKgK.low],
  [600, hotHeatJKgK.value],
  [1000, heatJKgK.high],
];

/** Mean heat of a shell on its way from a temperature to half of it, J/kg·K: what counts while metal waits. A table in the solver takes ten times as long. */
function meanHeatJKgK(family: StuccoFamily, fromC: number): number {
  const heat = heatOver(shellThermal[family]);
  const toC = fromC / 2;
  return fromC > 40
    ? propertyBetween(heat, { fromC: toC, toC: fromC }) / (fromC - toC)
    : propertyAt(heat, fromC);
}

/** What `wallCooling` wants of a family that leaves the kiln at `startC`, °C, with the ranges as factors. */
export function coolingHeatOf(family: StuccoFamily, startC: number): ShellHeat {
  const { conductivityWMK, densityKgM3, emissivity } = shellThermal[family];
  const shareOf = ({ value, low, high }: Ranged): readonly [number, number] => [low / value, high / value];
  return {
    conductivityWMK: conductivityWMK.value,
    densityKgM3: densityKgM3.value,
    heatJKgK: meanHeatJKgK(family, startC),
    emissivity: emissivity.value,
    conductivityShare: shareOf(conductivityWMK),
    storageShare,
    emissivityShare: shareOf(emissivity),
  };
}
