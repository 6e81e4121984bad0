import type { Published } from "./published.ts";

/** A refractory flour by kind; makers' lots differ, so the density is the shop's to change. */
export type Flour = {
  readonly id: string;
  readonly label: string;
  readonly densityGCm3: Published;
  /** How far lots reach, g/cm³. */
  readonly low: number;
  readonly high: number;
  /** Which density tolerance its slurries take. */
  readonly family: "light" | "heavy";
};

const usual = "usual density of the kind; starting value, from memory";

export const flours: readonly Flour[] = [
  {
    id: "fused-silica",
    label: "Fused silica",
    densityGCm3: { value: 2.2, basis: "published", source: "density of vitreous silica; from memory" },
    low: 2.18,
    high: 2.22,
    family: "light",
  },
  {
    id: "zircon",
    label: "Zircon",
    densityGCm3: { value: 4.6, basis: "judgement", source: usual },
    low: 4.5,
    high: 4.7,
    family: "heavy",
  },
  {
    id: "alumino-silicate",
    label: "Alumino-silicate",
    densityGCm3: { value: 2.65, basis: "judgement", source: usual },
    low: 2.6,
    high: 2.7,
    family: "light",
  },
  {
    id: "zircon-fused-silica",
    label: "Zircon and fused silica, half and half by volume",
    densityGCm3: {
      value: 3.4,
      basis: "published",
      source: "derived: mean of 2.20 and 4.60; 67.6 % zircon by mass",
      note: "Bundy & Viswanathan (2008) give 67 % by mass for the half and half",
    },
    low: 3.35,
    high: 3.45,
    family: "heavy",
  },
];

export const flourOf = (id: string): Flour | null => flours.find((flour) => flour.id === id) ?? null;
