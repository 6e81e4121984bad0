import type { SpeaksOf } from "../../physics/evidence/surfaceEvidence.ts";
import type { GeometryClass } from "../../trade/geometryClasses.ts";
import { geometryClasses } from "../../trade/geometryClasses.ts";
import type { PiecePlan } from "../entries/pieceBodies.ts";
import { corePlace } from "../piece/coreStanding.ts";

/** Where a piece dries: the place its times are for, and the one of all its places that dries last. */
export type SlowPlaces = { readonly named: GeometryClass; readonly slowest: GeometryClass };

/** Open walls, corners and undercuts are the face: what is read on it speaks for all three. Judgement. */
const rank: Readonly<Record<GeometryClass, number>> = { open: 0, corner: 0, recess: 1, blind: 2 };

/** Every place of a piece, the named one first, each once; the inside of a core is one of them. */
export const placesOfPlan = (plan: PiecePlan): readonly GeometryClass[] => [
  ...new Set([
    plan.geometry ?? "open",
    ...(plan.pockets ?? []),
    ...(plan.core ? [corePlace(plan.core)] : []),
  ]),
];

export function slowPlacesOf(plan: PiecePlan): SlowPlaces {
  const places = placesOfPlan(plan);
  const slowest = places.reduce((slow, one) =>
    geometryClasses[one].pocketSM > geometryClasses[slow].pocketSM ? one : slow,
  );
  return { named: places[0] ?? "open", slowest };
}

/** Whether what is dry at `place` is dry at `other` too: it dries no sooner. */
export const isAsSlow = (place: GeometryClass, other: GeometryClass): boolean => rank[place] >= rank[other];

/** Where a reading of this piece can have been taken: the outer face, and each place that dries more slowly. */
export const readingPlaces = (plan: PiecePlan): readonly GeometryClass[] => [
  "open",
  ...placesOfPlan(plan).filter((place) => rank[place] > rank.open),
];

/** What a reading taken at `place` says of `other`. */
export function speaksOf(place: GeometryClass, other: GeometryClass): SpeaksOf {
  if (rank[place] === rank[other]) return "both";
  return rank[place] > rank[other] ? "dry" : "wet";
}

/**
 * The least share of a piece's surface that a place worth naming has: judgement. A steady weight of the whole shell has
 * to tell that much of it, still wet. The face is the whole shell.
 */
const pocketShare = 0.1;

export const areaShareOf = (place: GeometryClass): number => (rank[place] === 0 ? 1 : pocketShare);
