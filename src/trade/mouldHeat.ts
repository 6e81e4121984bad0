import { metalToShellWM2K as contact } from "../physics/heat/metalContact.ts";
import type { MouldHeat } from "../physics/metal/fluidity.ts";
import { silicaSand } from "../physics/metal/freezing.ts";
import type { Published } from "./published.ts";

/** What moulds are to heat. */
export const mouldHeat = {
  "silica-sand": {
    value: silicaSand,
    basis: "published",
    source: "from memory of Poirier & Geiger, Transport Phenomena in Materials Processing",
  },
  "loose-dry-sand": {
    value: { conductivityWMK: 0.6, densityKgM3: 1500, heatJKgK: 1100 },
    basis: "published",
    source: "from memory of the same, for sand that isn't rammed",
  },
  shell: {
    value: { conductivityWMK: 1, densityKgM3: 1900, heatJKgK: 1130 },
    basis: "measured",
    source:
      "conductivity 1.0 ± 0.1 and heat 1130 measured on an aluminosilicate shell: C. H. Konrad et al., J. Mater. Process. Technol. 211 (2011) 181–186; density from memory",
    note: "Pores of a fifth leave 0.69 of the solid's conductivity, of three tenths 0.53 (Int. J. Metalcasting 2016, doi 10.1007/s40962-016-0052-4).",
  },
} as const satisfies Record<string, Published<MouldHeat>>;

/** Metal to shell, W/m²K, while the metal is liquid against it. */
export const metalToShellWM2K: Published<{
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}> = {
  value: contact,
  basis: "measured",
  source:
    "measured 300–660 with a nickel alloy on an aluminosilicate shell: C. H. Konrad et al., J. Mater. Process. Technol. 211 (2011) 181–186; up to 1000 by judgement for bronze and aluminium",
};
