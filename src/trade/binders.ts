import type { Published } from "./published.ts";

/** A colloidal silica sol as bought. */
export type Binder = {
  readonly id: string;
  readonly label: string;
  readonly silica: Published;
  readonly densityGCm3: Published;
};

const label = "as on a label; starting value";

export const binders: readonly Binder[] = [
  {
    id: "sol-30",
    label: "Silica sol, 30 %",
    silica: {
      value: 0.3,
      basis: "published",
      source: "a published specification of 30 % colloidal silica: at least 30 % SiO₂",
    },
    densityGCm3: {
      value: 1.2,
      basis: "published",
      source: "a published specification of 30 % colloidal silica: 1.200",
    },
  },
  {
    id: "sol-24",
    label: "Silica sol, 24 %",
    silica: { value: 0.24, basis: "judgement", source: label },
    densityGCm3: {
      value: 1.151,
      basis: "published",
      source: "derived from silica of 2.2 and water of 1.0 g/cm³",
    },
  },
  {
    id: "sol-40",
    label: "Silica sol, 40 %",
    silica: { value: 0.4, basis: "judgement", source: label },
    densityGCm3: {
      value: 1.279,
      basis: "published",
      source: "derived from silica of 2.2 and water of 1.0 g/cm³",
    },
  },
];

export const binderOf = (id: string): Binder | null => binders.find((binder) => binder.id === id) ?? null;

/** A sealed sol keeps so long, months, above 5 °C and never frozen. */
export const solShelfMonths = {
  value: 6,
  basis: "practice",
  source: "common practice, no source; 6–12 months",
} as const satisfies Published;
