import type { PatternFill } from "../../physics/metal/patternVolume.ts";
import type { PatternMeasured, PiecePlan } from "../entries/pieceBodies.ts";
import { usualChargeKind, type ChargeKind } from "../../trade/metals/losses.ts";
import { patternMaterials, type PatternMaterial } from "../../trade/patternMaterials.ts";
import type { Limits } from "./limits.ts";

/** What is measured and chosen for one piece's metal. Masses g and kg as named, densities g/cm³, shares 0–1. */
export type MassDraft = {
  readonly hollow: "solid" | "closed-hollow" | "vented-hollow";
  readonly hollowWallMm: number | null;
  readonly displacedG: number | null;
  readonly sinkerDisplacedG: number | null;
  readonly airG: number | null;
  readonly submergedG: number | null;
  readonly sinkerSubmergedG: number | null;
  readonly isSealed: "yes" | "no" | null;
  readonly slicerG: number | null;
  readonly slicerGCm3: number | null;
  readonly patternG: number | null;
  readonly patternGCm3: number | null;
  readonly fill: PatternFill;
  readonly skinMm: number | null;
  readonly infill: number | null;
  readonly withGating: "yes" | "no";
  readonly gatingBy: "mass" | "wax" | "mesh";
  readonly gatingKg: number | null;
  readonly gatingWaxG: number | null;
  readonly marginBy: "measured" | "weighed" | "guessed" | null;
  readonly heelKg: number | null;
  readonly chargeKind: ChargeKind;
  readonly lossShare: number | null;
  readonly furnaceId: string | null;
  readonly lift: "shank" | "tongs";
  readonly brimBy: "furnace" | "sand" | "number";
  readonly sandG: number | null;
  readonly sandGCm3: number | null;
  readonly crucibleNumber: number | null;
  readonly start: "hot" | "cold";
  readonly pourC: number | null;
  readonly rubber: "yes" | "no";
};

const grams = { low: 0.1, high: 1_000_000 };
const gramsOrNone = { low: 0, high: 1_000_000 };

export const massLimits: Limits<MassDraft> = {
  hollowWallMm: { low: 0.2, high: 60 },
  displacedG: grams,
  sinkerDisplacedG: gramsOrNone,
  airG: grams,
  submergedG: { low: -1_000_000, high: 1_000_000 },
  sinkerSubmergedG: gramsOrNone,
  slicerG: grams,
  slicerGCm3: { low: 0.5, high: 3 },
  patternG: grams,
  patternGCm3: { low: 0.5, high: 3 },
  skinMm: { low: 0.1, high: 20 },
  infill: { low: 0, high: 1 },
  gatingKg: { low: 0, high: 1000 },
  gatingWaxG: gramsOrNone,
  heelKg: { low: 0, high: 500 },
  lossShare: { low: 0, high: 0.6 },
  sandG: { low: 10, high: 500_000 },
  sandGCm3: { low: 1, high: 3 },
  crucibleNumber: { low: 1, high: 400 },
  pourC: { low: 100, high: 2200 },
};

/** Nothing typed yet: what the plan says, and the gating off the mesh where one is drawn there. */
export function massDraftOf(plan: PiecePlan, mesh: PatternMeasured | null = null): MassDraft {
  const material = plan.material ?? null;
  const density = material === null ? null : (patternMaterials[material].densityKgM3?.value ?? null);
  return {
    hollow: "solid",
    hollowWallMm: null,
    displacedG: null,
    sinkerDisplacedG: null,
    airG: null,
    submergedG: null,
    sinkerSubmergedG: null,
    isSealed: material === "wax" || material === "resin" ? "yes" : null,
    slicerG: null,
    slicerGCm3: material === null || !isPrinted(material) || density === null ? null : density / 1000,
    patternG: null,
    patternGCm3: density === null ? null : density / 1000,
    fill: material === "wax" ? "solid" : "not-stated",
    skinMm: null,
    infill: null,
    withGating: "no",
    gatingBy: (mesh?.gatingMm3 ?? 0) > 0 ? "mesh" : "mass",
    gatingKg: null,
    gatingWaxG: null,
    marginBy: null,
    heelKg: null,
    chargeKind: usualChargeKind,
    lossShare: null,
    furnaceId: null,
    lift: "tongs",
    brimBy: "furnace",
    sandG: null,
    sandGCm3: 1.5,
    crucibleNumber: null,
    start: "cold",
    pourC: null,
    rubber: "no",
  };
}

export const isPrinted = (material: PatternMaterial | null): boolean =>
  material === "pla" || material === "pvb" || material === "resin";
