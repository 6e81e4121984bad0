import { dot, length, minus, squareTo, type Vec3 } from "../../../geometry/vector.ts";
import type { Place } from "../scene/sceneView.ts";
import type { Spot, UpResults } from "./patternResults.ts";
import type { PatternStudy } from "./patternStudy.ts";
import type { Mark, MarkKind } from "../../../logbook/casting/mark.ts";
import { isServed } from "./spotServed.ts";
import { tipLimits } from "./patternStudy.ts";

/** A place where air or plastic stays, with its name in list and picture, and what stands there. */
export type NamedSpot = {
  readonly spot: Spot;
  readonly label: string;
  readonly mark: Mark | null;
  readonly isServed: boolean;
};
/** A mark by the name of the spot it stands at, or by one of its own. */
export type NamedMark = { readonly mark: Mark; readonly label: string };

const letters: Readonly<Record<MarkKind, string>> = { vent: "V", drain: "D", gate: "G", feeder: "F" };

const at = (spot: Spot, mark: Mark, up: Vec3): boolean =>
  isServed({ spot, openings: [mark.point], up, within: tipLimits.minRise });

/** Air leaves by vents, plastic by whatever opens the shell. */
export function namedSpots(
  { marks, up }: Pick<PatternStudy, "marks" | "up">,
  results: Pick<UpResults, "tips" | "drains"> | null,
): { readonly air: readonly NamedSpot[]; readonly plastic: readonly NamedSpot[] } {
  const named = (spots: readonly Spot[], kind: "vent" | "drain"): readonly NamedSpot[] =>
    spots.map((spot, n) => {
      const here = marks.filter((mark) => at(spot, mark, up));
      const mark = here.find((one) => one.kind === kind) ?? (kind === "drain" ? here[0] : undefined) ?? null;
      return { spot, label: `${letters[kind]}${n + 1}`, mark, isServed: mark !== null };
    });
  return { air: named(results?.tips ?? [], "vent"), plastic: named(results?.drains ?? [], "drain") };
}

export function namedMarks(
  marks: readonly Mark[],
  { air, plastic }: ReturnType<typeof namedSpots>,
): readonly NamedMark[] {
  const counts: Record<MarkKind, number> = { vent: air.length, drain: plastic.length, gate: 0, feeder: 0 };
  return marks.map((mark) => {
    const spots = mark.kind === "vent" ? air : mark.kind === "drain" ? plastic : [];
    const spot = spots.find((one) => one.mark?.id === mark.id);
    if (spot !== undefined) return { mark, label: spot.label };
    counts[mark.kind] += 1;
    return { mark, label: `${letters[mark.kind]}${counts[mark.kind]}` };
  });
}

/** Marks that stand and spots that still want one, for the picture. */
export function placesOf(
  spots: ReturnType<typeof namedSpots>,
  marks: readonly NamedMark[],
  {
    up,
    chosen,
    withSpots,
  }: { readonly up: Vec3; readonly chosen: string | null; readonly withSpots: boolean },
): readonly Place[] {
  const put = marks.map(({ mark, label }): Place => ({
    id: mark.id,
    kind: mark.kind,
    label,
    point: mark.point,
    ridge: [],
    isPut: true,
    canMove: true,
    isChosen: mark.id === chosen,
  }));
  const wanted = (of: readonly NamedSpot[], kind: "air" | "plastic"): readonly Place[] =>
    of
      .filter((one) => !one.isServed)
      .map(({ spot, label }) => ({
        id: label,
        kind,
        label,
        point: spot.point,
        ridge: runOf(spot, up),
        isPut: false,
        canMove: false,
        isChosen: label === chosen,
      }));
  return withSpots ? [...wanted(spots.air, "air"), ...wanted(spots.plastic, "plastic"), ...put] : put;
}

/** The spot whose point or ridge lies nearest to a tap, within so many mm; null when none is near. */
export function nearestSpot(spots: readonly Spot[], point: Vec3, withinMm: number): Spot | null {
  let best: { readonly spot: Spot; readonly apart: number } | null = null;
  for (const spot of spots) {
    for (const place of [spot.point, ...spot.ridge]) {
      const apart = length(minus(place, point));
      if (apart <= withinMm && apart < (best?.apart ?? Infinity)) best = { spot, apart };
    }
  }
  return best?.spot ?? null;
}

/** Where a tap with a tool puts its mark: on the spot beside it, so that no rest of air stays above the vent. */
export function snapped(
  kind: MarkKind,
  hit: Pick<Mark, "point" | "normal">,
  {
    results,
    withinMm,
  }: { readonly results: Pick<UpResults, "tips" | "drains"> | null; readonly withinMm: number },
): Pick<Mark, "point" | "normal"> {
  const spots = kind === "vent" ? results?.tips : kind === "drain" ? results?.drains : undefined;
  const spot = nearestSpot(spots ?? [], hit.point, withinMm);
  return spot === null ? hit : { point: spot.point, normal: null };
}

/** Height of a point above the lowest place of the piece as it hangs. */
export const heightOf = (point: Vec3, { up, lowMm }: Pick<UpResults, "up" | "lowMm">): number =>
  dot(point, up) - lowMm;

/** What is drawn of a spot's extent: a ridge as it runs, a flat by its hull, closed. */
function runOf({ shape, ridge }: Spot, up: Vec3): readonly Vec3[] {
  if (shape !== "flat" || ridge.length < 3) return ridge;
  const [u, v] = squareTo(up);
  const flat = ridge.map((point) => ({ point, x: dot(point, u), y: dot(point, v) }));
  flat.sort((a, b) => a.x - b.x || a.y - b.y);
  type Corner = (typeof flat)[number];
  const turns = (a: Corner, b: Corner, c: Corner): number =>
    (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
  // Monotone chain (A. M. Andrew, 1979): the lower side, then the upper one back.
  const side = (corners: readonly Corner[]): Corner[] => {
    const kept: Corner[] = [];
    for (const corner of corners) {
      while (kept.length > 1 && turns(kept.at(-2)!, kept.at(-1)!, corner) <= 0) kept.pop();
      kept.push(corner);
    }
    return kept;
  };
  return [...side(flat), ...side(flat.toReversed()).slice(1)].map(({ point }) => point);
}
