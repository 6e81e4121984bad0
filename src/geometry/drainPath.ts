import { sectionArea, toAxis, type GatingBar } from "./gatingBars.ts";
import { dot, length, minus, unit, type Vec3 } from "./vector.ts";

/** The way plastic takes through the bars from a tapped point to where it leaves: the cup, or a drain's free end. */
export type DrainPath = {
  /** Bars in order from the piece. */
  readonly bars: readonly string[];
  /** Smallest section passed, as the diameter of a round of the same area. */
  readonly narrowest: number;
  /** How far it has to climb on the way, mesh units: above 0, plastic stays in that bend. */
  readonly climbs: number;
};

/**
 * The best way out for plastic that runs against `outUp`: the least climb, and of equal climbs the widest. Hung for
 * dewax with the cup down, `outUp` is the pour's up turned over. Null when no bar at the point leads out.
 */
export function drainPath({
  bars,
  at,
  outUp,
  touch,
}: {
  bars: readonly GatingBar[];
  at: Vec3;
  outUp: Vec3;
  touch: number;
}): DrainPath | null {
  const up = unit(outUp);
  const left = new Set(bars);
  const waiting: Way[] = bars
    .filter(({ from, to }) => [from, to].some((end) => length(minus(end, at)) <= touch))
    .map((bar) => into({ bar, place: at, before: null, up }));
  while (waiting.length > 0) {
    const way = waiting.reduce((best, other) => (isBetter(other, best) ? other : best));
    waiting.splice(waiting.indexOf(way), 1);
    if (!left.delete(way.bar)) continue;
    if (isOut(way.bar)) {
      const climbs = way.climbs + Math.max(0, dot(minus(farEnd(way.bar, way.place), way.place), up));
      return { bars: way.ids, narrowest: 2 * Math.sqrt(way.area / Math.PI), climbs };
    }
    for (const bar of left) {
      for (const place of joints(way.bar, bar, touch)) waiting.push(into({ bar, place, before: way, up }));
    }
  }
  return null;
}

type Way = {
  readonly bar: GatingBar;
  /** Where the plastic comes into the bar. */
  readonly place: Vec3;
  readonly ids: readonly string[];
  readonly climbs: number;
  readonly area: number;
};

const isOut = ({ kind }: GatingBar): boolean => kind === "cup" || kind === "drain";
const isBetter = (a: Way, b: Way): boolean => (a.climbs === b.climbs ? a.area > b.area : a.climbs < b.climbs);
const farEnd = ({ from, to }: GatingBar, p: Vec3): Vec3 =>
  length(minus(from, p)) > length(minus(to, p)) ? from : to;

/** On from one bar into the next at a place they share; bars are straight, so the climb is between places. */
function into({
  bar,
  place,
  before,
  up,
}: {
  bar: GatingBar;
  place: Vec3;
  before: Way | null;
  up: Vec3;
}): Way {
  const rise = before ? Math.max(0, dot(minus(place, before.place), up)) : 0;
  return {
    bar,
    place,
    ids: [...(before?.ids ?? []), bar.id],
    climbs: (before?.climbs ?? 0) + rise,
    area: Math.min(before?.area ?? Infinity, sectionArea(bar.fromSection), sectionArea(bar.toSection)),
  };
}

/** Places where two bars touch: an end of one near the axis of the other. */
function joints(a: GatingBar, b: GatingBar, touch: number): readonly Vec3[] {
  return [
    ...[a.from, a.to].filter((end) => toAxis(b, end) <= touch),
    ...[b.from, b.to].filter((end) => toAxis(a, end) <= touch),
  ];
}
