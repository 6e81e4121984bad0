import type { Alloy } from "../../trade/metals/alloy.ts";
import { preheatOf } from "../../trade/preheat.ts";

/** Thinnest section where nobody measured one, mm: starting value. */
export const startingSectionMm = 5;
/** Hardly any casting is thicker than this at its thinnest: colder than this asks for is cold for all of them. */
const thickestThinMm = 15;

/** What a shell of this metal and section should be at when metal comes, °C. */
export type ShellHeat = {
  readonly lowC: number;
  readonly highC: number;
  /** Where a plan starts from: the middle, to ten degrees, never outside the range. */
  readonly startC: number;
  readonly sectionMm: number;
  /** False where nobody measured the thinnest section and the starting one stands in. */
  readonly isSectionKnown: boolean;
  /** Below this it is cold whatever its section may turn out to be. */
  readonly surelyColdC: number;
  readonly source: string;
};

/** Usual shell heat for a metal and its thinnest section, mm; null for metals with no known practice. */
export function shellHeatOf(alloy: Alloy, thinnestMm: number | null): ShellHeat | null {
  const sectionMm = thinnestMm ?? startingSectionMm;
  const usual = preheatOf({ alloy, wallMm: sectionMm });
  if (usual === null) return null;
  const { lowC, highC } = usual.value;
  const thick = preheatOf({ alloy, wallMm: Math.max(sectionMm, thickestThinMm) });
  return {
    lowC,
    highC,
    startC: Math.min(highC, Math.max(lowC, Math.round((lowC + highC) / 20) * 10)),
    sectionMm,
    isSectionKnown: thinnestMm !== null,
    surelyColdC: thinnestMm === null ? (thick?.value.lowC ?? lowC) : lowC,
    source: usual.source,
  };
}

/** Whether a shell at `shellC` is cold for its metal; `cold-if-thin` where its section decides and isn't known. */
export function coldShell(heat: ShellHeat, shellC: number): "ok" | "cold-if-thin" | "cold" {
  if (shellC < heat.surelyColdC) return "cold";
  return shellC < heat.lowC ? "cold-if-thin" : "ok";
}

const unknownMetalC = 500;
const belowSolidusK = 50;

/** Where a plan's shell heat starts, °C, for a metal of no known practice too: 500, well below its solidus. */
export function startingShellC(alloy: Alloy | null, thinnestMm: number | null): number {
  if (alloy === null) return unknownMetalC;
  const heat = shellHeatOf(alloy, thinnestMm);
  return heat?.startC ?? Math.floor(Math.min(unknownMetalC, alloy.solidusC.value - belowSolidusK));
}
