import type { Published } from "./published.ts";

/** What a core is taken to be until someone has measured it. */
export const coreFigures = {
  coreKgM3: {
    value: 1600,
    basis: "practice",
    source: "aluminosilicate or plaster core, common practice, no source",
  },
  /** Bending strength of a fired core. */
  coreMPa: { value: 2, basis: "judgement", source: "judgement: half a fired shell's" },
  /** How deep a pin stands in the core, mm. */
  pinSeatMm: { value: 10, basis: "practice", source: "common practice, no source" },
  holdSpread: { value: 2, basis: "judgement", source: "judgement: the spread of a fired shell's strength" },
} as const satisfies Record<string, Published>;
