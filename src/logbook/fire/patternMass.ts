import { printedPolymerCm3 } from "../../physics/shell/printSolidity.ts";
import type { Alloy } from "../../trade/metals/alloy.ts";
import { waxFilmShare, type BurnoutMaterial } from "../../trade/patternBurnout.ts";
import { patternKgM3 } from "../../trade/patternMaterials.ts";
import { ranges, within } from "../entries/ranges.ts";
import type { Piece } from "../piece/piece.ts";
import { metalLitreOf } from "../piece/pieceMetal.ts";

/** Where a pattern's mass comes from; all but a weighing are estimates, and those of solid volumes the most it can be. */
export type MassSource = "weighed" | "printed" | "mesh" | "metal-volume" | "film";
export type PatternMass = { readonly massKg: number; readonly source: MassSource };

/** What a person knows of the pattern and the log doesn't. Null or left out is not known. */
export type PatternSaid = {
  /** In place of the plan's. */
  readonly material?: BurnoutMaterial | undefined;
  /** A print's skin, mm, and the share of its inside that is filled, 0–1; counted together only. */
  readonly skinMm?: number | null | undefined;
  readonly infill?: number | null | undefined;
};

/** A print's skin, mm, as its sums take it. */
export const skinRange = { low: 0, high: 20 } as const;
const infillRange = { low: 0, high: 1 } as const;
/** A volume and a face the sums of a print take, cm³ and cm². */
const printSize = { low: 1e-6, high: 1e6 } as const;

/**
 * What is inside, kg: weighed bare, else the plan's volume, litres or its metal's, else the mesh's, times the density of
 * its material. A print whose skin and infill are given counts what is printed. Null without a material that has a
 * density, or without a volume.
 */
export function patternMass(
  piece: Piece,
  { alloy, said = {} }: { readonly alloy: Alloy | null; readonly said?: PatternSaid | undefined },
): PatternMass | null {
  const { plan, weighings, patterns } = piece;
  const weighed = weighings.findLast(({ coats, massG }) => coats === 0 && within(ranges.massG, massG));
  if (weighed !== undefined) return { massKg: weighed.massG / 1000, source: "weighed" };
  const kgM3 = patternKgM3(said.material ?? plan.material ?? "other")?.value ?? null;
  if (kgM3 === null) return null;
  const litre = metalLitreOf(piece, alloy);
  const mesh = patterns.at(-1);
  const meshMm3 = mesh?.volumeMm3 ?? null;
  // A hollow pattern that is cast solid holds less than its metal: then the mesh says what there is to burn.
  const hollowMm3 = mesh?.patternMm3 === undefined ? null : mesh.patternMm3 + (mesh.gatingMm3 ?? 0);
  const volume =
    hollowMm3 !== null && hollowMm3 > 0
      ? ({ cm3: hollowMm3 / 1000, source: "mesh" } as const)
      : within(ranges.metalLitre, litre)
        ? ({ cm3: litre * 1000, source: "metal-volume" } as const)
        : meshMm3 !== null && meshMm3 > 0
          ? ({ cm3: meshMm3 / 1000, source: "mesh" } as const)
          : null;
  if (volume === null) return null;
  const printedCm3 = printed(piece, { volumeCm3: volume.cm3, said });
  const source = printedCm3 === null ? volume.source : "printed";
  return { massKg: ((printedCm3 ?? volume.cm3) * kgM3) / 1e6, source };
}

function printed(
  { plan, patterns }: Piece,
  { volumeCm3, said: { skinMm, infill } }: { readonly volumeCm3: number; readonly said: PatternSaid },
): number | null {
  const meshMm2 = patterns.at(-1)?.areaMm2 ?? null;
  const areaCm2 = within(ranges.areaM2, plan.areaM2)
    ? plan.areaM2 * 1e4
    : meshMm2 === null
      ? null
      : meshMm2 / 100;
  const isKnown =
    within(skinRange, skinMm) &&
    within(infillRange, infill) &&
    within(printSize, areaCm2) &&
    within(printSize, volumeCm3);
  return isKnown ? printedPolymerCm3({ volumeCm3, areaCm2, wallMm: skinMm, infillShare: infill }) : null;
}

/** What the wax that was weighed back leaves of the pattern; where only one of the two is known, the usual film. */
export function filmMass(
  piece: Piece,
  of: { readonly alloy: Alloy | null; readonly said?: PatternSaid | undefined },
): PatternMass | null {
  const whole = patternMass(piece, of);
  const backG = piece.dewaxes.at(-1)?.waxBackG ?? null;
  const backKg = within(ranges.massG, backG) ? backG / 1000 : null;
  const { value: share } = waxFilmShare;
  const massOf = (massKg: number): PatternMass => ({ massKg, source: "film" });
  if (whole === null) return backKg === null ? null : massOf((backKg * share) / (1 - share));
  const isBalanced = whole.source === "weighed" && backKg !== null && backKg <= whole.massKg;
  return massOf(isBalanced ? whole.massKg - backKg : whole.massKg * share);
}
