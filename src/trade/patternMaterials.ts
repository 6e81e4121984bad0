import type { Published } from "./published.ts";

export type PatternMaterial = "wax" | "pla" | "pvb" | "resin" | "foam" | "other";

export type Pattern = {
  readonly label: string;
  readonly isWax: boolean;
  /** Solid pattern; null where weight says nothing of volume. */
  readonly densityKgM3: Published | null;
  /** Linear growth per kelvin near room temperature; null where not known. */
  readonly growthPerK: Published | null;
};

/**
 * What a foam pattern weighs by its volume. Weight does not tell volume the other way: boards differ threefold.
 */
const foamKgM3: Published = {
  value: 25,
  basis: "published",
  source: "ASTM C578, least density by type: EPS 12–38, XPS 21–48 kg/m³; 25 is judgement",
};

/** Density of a pattern to estimate its mass by, kg/m³; null for one whose density is not known. */
export function patternKgM3(material: PatternMaterial | "pu-foam"): Published | null {
  if (material === "foam") return foamKgM3;
  return material === "pu-foam" ? null : patternMaterials[material].densityKgM3;
}

/** A thin shell hardly grows at all: what the pattern grows, the prime coat must bear. */
export const patternMaterials: Readonly<Record<PatternMaterial, Pattern>> = {
  wax: {
    label: "Wax",
    isWax: true,
    densityKgM3: {
      value: 930,
      basis: "practice",
      source: "common practice, no source; 900–970, filled waxes to 1200",
    },
    growthPerK: {
      value: 4e-4,
      basis: "published",
      source: "from memory: inlay waxes 3.5–4.5e-4, filled casting waxes 1–3e-4",
    },
  },
  pla: {
    label: "PLA",
    isWax: false,
    densityKgM3: { value: 1240, basis: "published", source: "Sci. Rep. 2022, s41598-022-22520-6, table 1" },
    growthPerK: { value: 0.7e-4, basis: "published", source: "from memory of polymer data" },
  },
  pvb: {
    label: "PVB",
    isWax: false,
    densityKgM3: { value: 1100, basis: "published", source: "from memory of polymer data, 1070–1120" },
    growthPerK: null,
  },
  resin: {
    label: "Castable resin",
    isWax: false,
    densityKgM3: { value: 1150, basis: "published", source: "from memory and common practice, 1050–1200" },
    growthPerK: { value: 0.85e-4, basis: "published", source: "from memory of acrylic resins, 0.7–1.0e-4" },
  },
  foam: {
    label: "EPS or XPS foam",
    isWax: false,
    densityKgM3: null,
    growthPerK: { value: 0.65e-4, basis: "published", source: "from memory of polystyrene, 0.6–0.7e-4" },
  },
  other: { label: "Other", isWax: false, densityKgM3: null, growthPerK: null },
};
