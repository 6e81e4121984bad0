import type { BurnoutGas } from "./patternBurnout.ts";
import type { Published } from "./published.ts";

/** A limit on what is breathed. Fractions of a limit are no promise of safety: fume fever has been seen at the limit of zinc oxide. */
export type FumeLimit = {
  readonly label: string;
  readonly unit: "mg/m³" | "ppm";
  /** Mean over eight hours, or the ceiling where `kind` says so. */
  readonly limit: Published;
  readonly kind: "mean-8-h" | "ceiling";
  readonly actionLevel: Published | null;
};

const law = (section: string): string => `29 CFR ${section} (from memory)`;
const table = "29 CFR 1910.1000, table Z-1 (from memory)";
const tableTwo = "29 CFR 1910.1000, table Z-2 (from memory)";

const mean = (label: string, unit: FumeLimit["unit"], value: number, source: string): FumeLimit => ({
  label,
  unit,
  limit: { value, basis: "published", source },
  kind: "mean-8-h",
  actionLevel: null,
});
const ceiling = (label: string, value: number, source: string): FumeLimit => ({
  ...mean(label, "ppm", value, source),
  kind: "ceiling",
});

export const fumeLimits = {
  "crystalline-silica": {
    ...mean("Respirable crystalline silica", "mg/m³", 0.05, "29 CFR 1910.1053"),
    actionLevel: { value: 0.025, basis: "published", source: "29 CFR 1910.1053" },
  },
  "copper-fume": mean("Copper fume", "mg/m³", 0.1, "29 CFR 1910.1000, table Z-1"),
  "zinc-oxide-fume": {
    ...mean("Zinc oxide fume", "mg/m³", 5, "29 CFR 1910.1000, table Z-1"),
    limit: {
      value: 5,
      basis: "published",
      source: "29 CFR 1910.1000, table Z-1",
      note: "Ten of twelve unaccustomed people got fever from two hours at this limit: Beckett et al., NTIS PB97-206379, 1996.",
    },
  },
  lead: {
    ...mean("Lead", "mg/m³", 0.05, law("1910.1025")),
    actionLevel: { value: 0.03, basis: "published", source: law("1910.1025") },
  },
  beryllium: {
    ...mean("Beryllium", "mg/m³", 0.0002, law("1910.1024")),
    actionLevel: { value: 0.0001, basis: "published", source: law("1910.1024") },
  },
  cadmium: mean("Cadmium", "mg/m³", 0.005, law("1910.1027")),
  "carbon-monoxide": mean("Carbon monoxide", "ppm", 50, table),
  styrene: mean("Styrene", "ppm", 100, tableTwo),
  "hydrogen-cyanide": mean("Hydrogen cyanide (also through the skin)", "ppm", 10, table),
  acetaldehyde: mean("Acetaldehyde", "ppm", 200, table),
  acrolein: mean("Acrolein", "ppm", 0.1, table),
  butenal: mean("Crotonaldehyde (butenal)", "ppm", 2, table),
  benzene: mean("Benzene", "ppm", 1, law("1910.1028")),
  isocyanates: ceiling("Isocyanates (MDI)", 0.02, table),
  "nitrogen-dioxide": ceiling("Nitrogen dioxide", 5, table),
  "hydrogen-sulphide": ceiling("Hydrogen sulphide", 20, tableTwo),
} as const satisfies Record<string, FumeLimit>;

/** Limits of what a burning pattern gives off; those with none of their own are left out. */
export function limitsOfGases(gases: readonly BurnoutGas[]): readonly FumeLimit[] {
  return gases.flatMap((gas) => (gas in fumeLimits ? [fumeLimits[gas as keyof typeof fumeLimits]] : []));
}
