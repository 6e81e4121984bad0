import type { BurnoutMaterial } from "../../trade/patternBurnout.ts";
import type { RunBasis } from "../entries/fireBodies.ts";

/**
 * How a kiln usually takes this pattern out: wax by flash fire, for slow heat swells it against the wall; plastic,
 * foam and a film of wax from cold. Null where nobody said what the pattern is: from cold as well.
 */
export const usualRoute = (
  material: BurnoutMaterial | null,
  { isFilm }: { readonly isFilm: boolean },
): RunBasis["route"] => (material === "wax" && !isFilm ? "flash" : "staged");

/** Where wax that melts in the kiln goes, by the way it is done; left out where there is no wax to run. */
export function waxLeavesBy(
  material: BurnoutMaterial | null,
  { isFilm, route, leaves }: { isFilm: boolean; route: RunBasis["route"]; leaves: boolean },
): RunBasis["waxLeaves"] {
  if (material !== "wax" || isFilm) return undefined;
  if (!leaves) return "no";
  return route === "flash" ? "floor" : "tray";
}
