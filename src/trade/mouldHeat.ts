import type { MouldHeat } from "../physics/metal/fluidity.ts";
import { silicaSand } from "../physics/metal/freezing.ts";
import type { Published } from "./published.ts";

/** What moulds are to heat. */
export const mouldHeat = {
  "silica-sand": {
    value: silicaSand,
    source: "from memory of Poirier & Geiger, Transport Phenomena in Materials Processing",
  },
  "loose-dry-sand": {
    value: { conductivityWMK: 0.6, densityKgM3: 1500, heatJKgK: 1100 },
    source: "from memory of the same, for sand that isn't rammed",
  },
  shell: {
    value: { conductivityWMK: 1, densityKgM3: 1900, heatJKgK: 1100 },
    source: "from memory; fused silica and mullite shells 0.5–1.5 W/m·K",
    note: "Pores of a fifth leave 0.69 of the solid's conductivity, of three tenths 0.53 (Int. J. Metalcasting 2016, doi 10.1007/s40962-016-0052-4).",
  },
} as const satisfies Record<string, Published<MouldHeat>>;

/** Metal to shell, W/m²K, while the metal is liquid against it. */
export const metalToShellWM2K: Published<{
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}> = {
  value: { low: 500, likely: 1000, high: 1500 },
  source: "literature spread, from memory",
};
