import { requireFraction, requirePositive, requireWithin } from "../stats/range.ts";

/** A printed part as its slicer knows it: outer volume and face, skin thickness all round, infill of the inside. */
export type Printed = {
  readonly volumeCm3: number;
  readonly areaCm2: number;
  readonly wallMm: number;
  readonly infillShare: number;
};

/**
 * Polymer in a print, cm³: A·t + f·(V − A·t), the skin taken as flat and never more than the whole. Derived here.
 * Infill 0–1. A skin thicker than half the part makes it solid.
 */
export function printedPolymerCm3({ volumeCm3, areaCm2, wallMm, infillShare }: Printed): number {
  requirePositive("volumeCm3", volumeCm3, { high: 1e6, unit: "cm³" });
  requirePositive("areaCm2", areaCm2, { high: 1e6, unit: "cm²" });
  requireWithin("wallMm", wallMm, { low: 0, high: 100, unit: "mm" });
  requireFraction("infillShare", infillShare);
  const skinCm3 = Math.min(volumeCm3, (areaCm2 * wallMm) / 10);
  return skinCm3 + infillShare * (volumeCm3 - skinCm3);
}

/** Share of a print's outer volume that is polymer, above 0 to 1: what a mass over density falls short by. */
export function effectiveSolidity(print: Printed): number {
  return printedPolymerCm3(print) / print.volumeCm3;
}

/** Mass a print should have, g: to set beside the scale. */
export function printedMassG({ densityKgM3, ...print }: Printed & { densityKgM3: number }): number {
  requireWithin("densityKgM3", densityKgM3, { low: 10, high: 5000, unit: "kg/m³" });
  return (printedPolymerCm3(print) * densityKgM3) / 1000;
}

/**
 * Metal a hollow print becomes, cm³. Closed, the slurry coats the outside only and the cavity is full: the outer
 * volume. Vented, slurry also coats the inside and the metal is the wall alone: A·t, never more than the whole.
 */
export function hollowMetalCm3({
  volumeCm3,
  areaCm2,
  wallMm,
  isVented,
}: {
  volumeCm3: number;
  areaCm2: number;
  wallMm: number;
  isVented: boolean;
}): number {
  const walled = printedPolymerCm3({ volumeCm3, areaCm2, wallMm, infillShare: 0 });
  return isVented ? walled : volumeCm3;
}
