import { headAt } from "../../../geometry/attitude.ts";
import { dot, type Vec3 } from "../../../geometry/vector.ts";
import { ranges, within } from "../../../logbook/entries/ranges.ts";
import type { WallStrength } from "../../../logbook/piece/wallBasis.ts";
import { headPressurePa, type WallPart } from "../../../physics/shell/wall.ts";
import { headNeeds, type WallLimits } from "../../../physics/shell/wallVerdict.ts";
import { wallFigures } from "../../../trade/wallFigures.ts";
import type { Shape } from "./patternResults.ts";

export type WallNeed = {
  readonly part: WallPart;
  readonly point: Vec3;
  /** From the level in the cup down to the part's lowest edge. */
  readonly headMm: number;
  /** What metal and handling ask for together. */
  readonly neededMm: number;
  /** What the metal alone asks for. */
  readonly bareMm: number;
};

export type WallFigures = {
  readonly densityKgM3: number;
  readonly strength: WallStrength;
  readonly limits: WallLimits;
  readonly floorMm: number;
};

/**
 * Wall each flat and round of a pattern needs at its own head, the most demanding first. A flat is judged at its lowest
 * edge, where the pressure is greatest; a round at half its diameter below its middle.
 */
export function wallNeeds({
  shape,
  up,
  cupLevelMm,
  lowMm,
  figures,
}: {
  shape: Pick<Shape, "flats" | "rounds">;
  up: Vec3;
  /** Height along up, mesh mm. */
  cupLevelMm: number;
  /** Lowest place of the piece along up, mesh mm: nothing stands under more head. */
  lowMm: number;
  figures: WallFigures;
}): readonly WallNeed[] {
  const { densityKgM3, strength, limits, floorMm } = figures;
  const spreads = {
    strength: strength.spread,
    wall: wallFigures.tableSpread.value,
    head: wallFigures.headSpread.value,
  };
  const need = (part: WallPart, point: Vec3, below: number): WallNeed & { readonly exactMm: number } => {
    const headMm = Math.min(cupLevelMm - lowMm, headAt({ up, cupLevel: cupLevelMm, point }) + below);
    const headM = Math.min(20, headMm / 1000);
    const pressurePa = headPressurePa({ densityKgM3, headM });
    const { mm, exactMm } = headNeeds(
      { pressurePa, part, morMPa: strength.morMPa, spreads },
      { least: limits.carries },
    );
    return { part, point, headMm, exactMm, bareMm: mm, neededMm: Math.max(floorMm, mm) };
  };
  const flats = (shape.flats ?? [])
    .filter(({ width, length }) => within(ranges.spanMm, width) && within(ranges.spanMm, length))
    .map(({ point, normal, width, length }) => {
      const lean = Math.sqrt(Math.max(0, 1 - dot(normal, up) ** 2));
      return need({ kind: "flat", widthMm: width, lengthMm: length }, point, (length / 2) * lean);
    });
  const rounds = (shape.rounds ?? [])
    .filter(({ diameter }) => within(ranges.spanMm, diameter))
    .map(({ point, diameter }) => need({ kind: "round", diameterMm: diameter }, point, diameter / 2));
  return [...flats, ...rounds].sort((a, b) => b.exactMm - a.exactMm);
}
