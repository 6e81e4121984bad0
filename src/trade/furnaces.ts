import type { Published } from "./published.ts";

type Between = Published<{ readonly low: number; readonly high: number }>;

/** Share of the heat spent that ends in the metal. */
export const furnaceEfficiency = {
  "gas-first-heat": {
    value: { low: 0.05, high: 0.15 },
    basis: "practice",
    source: "common practice, no source",
  },
  "gas-hot": {
    value: { low: 0.15, high: 0.2 },
    basis: "practice",
    source: "common practice, no source; a course text gives 3.5–28 %, 15 % usual",
  },
  "electric-resistance": {
    value: { low: 0.4, high: 0.65 },
    basis: "practice",
    source: "common practice, no source",
  },
  induction: { value: { low: 0.5, high: 0.7 }, basis: "practice", source: "common practice, no source" },
} as const satisfies Record<string, Between>;

/** A first melt in a cold lining takes longer than a hot one by these shares of it. */
export const coldStartMore: Between = {
  value: { low: 0.5, high: 1.5 },
  basis: "practice",
  source: "common practice, no source",
};

const tables = "from memory of tables of lower heating values";

/** Heat of burning without condensing the steam, J/kg. */
export const fuels = {
  propane: { value: 46.4e6, basis: "published", source: tables },
  butane: { value: 45.7e6, basis: "published", source: tables },
  "natural-gas": { value: 48e6, basis: "published", source: `${tables}; 45–50 by place` },
  "diesel-oil": { value: 42.6e6, basis: "published", source: tables },
  "waste-oil": {
    value: 40e6,
    basis: "published",
    source: `${tables}; 36–42`,
    note: "What is in it also goes up the flue.",
  },
} as const satisfies Record<string, Published>;

/** What a small propane bottle boils off by itself, kg/h: less in the cold. */
export const bottleDrawKgH: Between = {
  value: { low: 0.5, high: 1 },
  basis: "practice",
  source: "common practice, no source",
};
