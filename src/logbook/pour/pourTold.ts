import type { PourBodies, PourTold } from "../entries/fireBodies.ts";
import { ranges, within } from "../entries/ranges.ts";

export const startingTold: PourTold = {
  family: "fused-silica",
  people: 2,
  carryMin: 1.5,
  metalKg: null,
  thinnestMm: [],
};

/** What a plan was told; the starting values where it tells nothing that can be reckoned with. */
export function readTold({ told }: Pick<PourBodies["pour-planned"], "told">): PourTold {
  if (told === undefined) return startingTold;
  const { family, people, carryMin, metalKg, thinnestMm } = told;
  return {
    family,
    people: within(ranges.people, people) ? Math.round(people) : startingTold.people,
    carryMin: within(ranges.carryMin, carryMin) ? carryMin : startingTold.carryMin,
    metalKg: within(ranges.metalKg, metalKg) ? metalKg : null,
    // A section of 0 mm has no metal in it: nobody said how thin it is.
    thinnestMm: thinnestMm.map((mm) => (within(ranges.thickMm, mm) && mm > 0 ? mm : null)),
  };
}
