import type { Recess } from "../../geometry/recesses.ts";
import type { GeometryClass } from "../../trade/geometryClasses.ts";

/** Depth over mouth from which damp air leaves as slowly as from each class: judgement, no source. */
const cornerFrom = 0.5;
const recessFrom = 1;
const blindFrom = 4;

/** The drying class of a hollow; null for one that dries with the body, and for a closed void, into which no slurry comes. */
export function pocketClass({ kind, depth, mouth }: Pick<Recess, "kind" | "depth" | "mouth">) {
  if (kind === "closed" || !(mouth > 0)) return null;
  const steepness = depth / mouth;
  if (steepness < cornerFrom) return null;
  if (steepness < recessFrom) return "corner";
  return steepness < blindFrom ? "recess" : "blind";
}

/** The classes among some hollows, the slowest first. */
export function pocketClasses(recesses: readonly Recess[]): readonly GeometryClass[] {
  const found = new Set(recesses.map(pocketClass));
  return (["blind", "recess", "corner"] as const).filter((one) => found.has(one));
}
