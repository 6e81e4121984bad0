import { requirePositive, requireWithin } from "../stats/range.ts";

export type VolumeRoute = "mesh" | "displacement" | "hydrostatic" | "slicer" | "pattern-weight";

/** How a weighed pattern is filled; a print that is not solid weighs less than the metal's volume asks. */
export type PatternFill = "solid" | "vented-hollow" | "infill" | "closed-hollow" | "not-stated";

/** One way a pattern's volume was found. All masses g. */
export type VolumeReading =
  | {
      readonly route: "mesh";
      readonly volumeCm3: number;
      readonly isClosed: boolean;
      readonly scale?: number | undefined;
    }
  | {
      readonly route: "displacement";
      /** Water pushed out by pattern and sinker together. */
      readonly displacedG: number;
      readonly sinkerDisplacedG?: number | undefined;
      readonly isSealed: boolean;
    }
  | {
      readonly route: "hydrostatic";
      readonly airG: number;
      /** Hung under water, with its sinker if it floats. */
      readonly submergedG: number;
      /** The sinker alone, hung under water. */
      readonly sinkerSubmergedG?: number | undefined;
      readonly isSealed: boolean;
    }
  | { readonly route: "slicer"; readonly fullMassG: number; readonly densityKgM3: number }
  | {
      readonly route: "pattern-weight";
      readonly massG: number;
      readonly densityKgM3: number | null;
      readonly fill: PatternFill;
    };

export type VolumeRefusal =
  /** A mesh with holes has no volume. */
  | "open-mesh"
  | "hollow-unanswered"
  /** Open foam or infill drinks water: seal it first. */
  | "soaks"
  /** A printed part by weight: ask whether it is solid. */
  | "fill-not-stated"
  /** The cavity burns out full: the weight says nothing of it; give a volume. */
  | "infill-burns-out-full"
  | "density-not-known"
  /** The figures give no volume above zero. */
  | "no-volume";

export type PatternVolume =
  | { readonly ok: true; readonly route: VolumeRoute; readonly volumeCm3: number }
  | { readonly ok: false; readonly route: VolumeRoute; readonly code: VolumeRefusal };

/** Water at 20 °C, kg/m³ (from memory of CRC Handbook of Chemistry and Physics); between 10 and 30 °C within 0.3 %. */
const waterKgM3 = 998.2;

/**
 * Volume of metal the pattern stands for, cm³, or why this reading gives none. Archimedes for the wet routes; the
 * slicer's mass must be that of the same part at 100 % infill; a weighed pattern must be solid, or a hollow one
 * vented so that slurry coats its inside.
 */
export function patternVolume(reading: VolumeReading): PatternVolume {
  const { route } = reading;
  const refusal = refusalOf(reading);
  if (refusal !== null) return { ok: false, route, code: refusal };
  const volumeCm3 = volumeOf(reading);
  return volumeCm3 > 0 ? { ok: true, route, volumeCm3 } : { ok: false, route, code: "no-volume" };
}

function refusalOf(reading: VolumeReading): VolumeRefusal | null {
  switch (reading.route) {
    case "mesh":
      return reading.isClosed ? null : "open-mesh";
    case "displacement":
    case "hydrostatic":
      return reading.isSealed ? null : "soaks";
    case "slicer":
      return null;
    case "pattern-weight":
      if (reading.fill === "not-stated") return "fill-not-stated";
      if (reading.fill === "infill" || reading.fill === "closed-hollow") return "infill-burns-out-full";
      return reading.densityKgM3 === null ? "density-not-known" : null;
  }
}

function volumeOf(reading: VolumeReading): number {
  switch (reading.route) {
    case "mesh": {
      const { volumeCm3, scale = 1 } = reading;
      requirePositive("volumeCm3", volumeCm3, { high: 1e7, unit: "cm³" });
      requirePositive("scale", scale, { high: 1000, unit: "" });
      return volumeCm3 * scale ** 3;
    }
    case "displacement": {
      const { displacedG, sinkerDisplacedG = 0 } = reading;
      requireGrams({ displacedG, sinkerDisplacedG });
      return ((displacedG - sinkerDisplacedG) / waterKgM3) * 1000;
    }
    case "hydrostatic": {
      const { airG, submergedG, sinkerSubmergedG = 0 } = reading;
      requireGrams({ airG, sinkerSubmergedG });
      // A floating pattern without a sinker pulls upwards: a negative reading is honest.
      requireWithin("submergedG", submergedG, { low: -1e7, high: 1e7, unit: "g" });
      return ((airG - (submergedG - sinkerSubmergedG)) / waterKgM3) * 1000;
    }
    case "slicer":
      return byWeight(reading.fullMassG, reading.densityKgM3);
    case "pattern-weight":
      return byWeight(reading.massG, reading.densityKgM3 ?? Infinity);
  }
}

function byWeight(massG: number, densityKgM3: number): number {
  requirePositive("massG", massG, { high: 1e7, unit: "g" });
  requireWithin("densityKgM3", densityKgM3, { low: 100, high: 5000, unit: "kg/m³ (not g/cm³)" });
  return (massG / densityKgM3) * 1000;
}

function requireGrams(grams: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(grams))
    requireWithin(name, value, { low: 0, high: 1e7, unit: "g" });
}
