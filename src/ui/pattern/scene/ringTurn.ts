export type ScreenPoint = { readonly x: number; readonly y: number };
export type RingAxis = "x" | "y" | "z";

/** A ring round the piece as it is seen: the screen places of its points in turning order, and whether each is in front. */
export type SeenRing = {
  readonly axis: RingAxis;
  readonly points: readonly (ScreenPoint & { readonly isFront: boolean })[];
};

export type RingGrip = {
  readonly axis: RingAxis;
  /** Unit direction on the screen in which the ring runs where it was taken, with the turn. */
  readonly along: ScreenPoint;
  /** Screen pixels for one radian at that place. */
  readonly pxPerRad: number;
};

/**
 * The ring a finger has taken, the nearest within `within` pixels; of near equals the one in front, and the one that runs
 * across the screen there rather than into it. Null for none.
 */
export function gripOf(rings: readonly SeenRing[], at: ScreenPoint, within: number): RingGrip | null {
  let best: { readonly apart: number; readonly ring: SeenRing; readonly n: number } | null = null;
  for (const ring of rings) {
    const runs = ring.points.map((_, n) => Math.hypot(...runAt(ring, n)));
    const longest = Math.max(...runs);
    for (const [n, point] of ring.points.entries()) {
      const near = Math.hypot(point.x - at.x, point.y - at.y);
      const apart = near + (point.isFront ? 0 : 8) + 24 * (1 - runs[n]! / longest);
      if (near <= within && apart < (best?.apart ?? Infinity)) best = { apart, ring, n };
    }
  }
  if (best === null) return null;
  const { ring, n } = best;
  const count = ring.points.length;
  const [x, y] = runAt(ring, n);
  const length = Math.hypot(x, y);
  if (!(length > 0)) return null;
  const rad = (4 * Math.PI) / count;
  // Seen edge on a ring hardly moves under the finger; a floor keeps a small drag from a wild turn.
  const pxPerRad = Math.max(length / rad, 40);
  return { axis: ring.axis, along: { x: x / length, y: y / length }, pxPerRad };
}

/** How the ring runs on the screen from the point before to the one after. */
function runAt({ points }: SeenRing, n: number): readonly [number, number] {
  const before = points[(n + points.length - 1) % points.length]!;
  const after = points[(n + 1) % points.length]!;
  return [after.x - before.x, after.y - before.y];
}

/** Turn in radians, right-handed about the ring's axis, for a drag of the finger on the screen. */
export const ringTurn = ({ along, pxPerRad }: RingGrip, drag: ScreenPoint): number =>
  (drag.x * along.x + drag.y * along.y) / pxPerRad;

/** To whole steps when near one, so that a level can be found again by hand. */
export function caught(rad: number, stepRad = Math.PI / 12): number {
  const nearest = Math.round(rad / stepRad) * stepRad;
  return Math.abs(rad - nearest) < 0.2 * stepRad ? nearest : rad;
}
