import { seeded } from "./seeded.ts";

/** Sideways offsets of a rough edge, one each `stepPx` down its height, between 0 and `roughPx`. */
export function roughEdge(of: {
  readonly seed: number;
  readonly heightPx: number;
  readonly stepPx: number;
  readonly roughPx: number;
}): readonly number[] {
  const next = seeded(of.seed);
  const count = Math.ceil(of.heightPx / of.stepPx) + 1;
  return Array.from({ length: count }, () => next() * of.roughPx);
}

type Edge = {
  readonly xs: readonly number[];
  readonly stepPx: number;
  readonly topPx: number;
  readonly bottomPx: number;
};

/** The line of one edge down the page, its corners rounded off. */
export const edgePath = (edge: Edge): string => `M${smooth(pointsOf(edge))}`;

/** A closed path between an outer edge and the inner one beside it. */
export function bandPath(inner: Edge, outer: Edge): string {
  return `M${smooth(pointsOf(outer))}L${smooth(pointsOf(inner).toReversed())}Z`;
}

type Point = readonly [x: number, y: number];

const pointsOf = ({ xs, stepPx, topPx, bottomPx }: Edge): readonly Point[] =>
  xs.map((x, place) => [x, Math.min(topPx + place * stepPx, bottomPx)]);

/** Curves from the middle of one stretch to the middle of the next, with the corner between as their control. */
function smooth(points: readonly Point[]): string {
  return points
    .map(([x, y], place) => {
      const next = points[place + 1];
      if (place === 0 || next === undefined) return `${place === 0 ? "" : "L"}${fixed(x)} ${fixed(y)}`;
      return `Q${fixed(x)} ${fixed(y)} ${fixed((x + next[0]) / 2)} ${fixed((y + next[1]) / 2)}`;
    })
    .join("");
}

const mostGrains = 220;

/** Grains of stucco scattered over a band without lying on one another, as one path of small polygons. */
export function grainPath(of: {
  readonly seed: number;
  readonly leftPx: number;
  readonly widthPx: number;
  readonly topPx: number;
  readonly heightPx: number;
  readonly finePx: number;
  readonly coarsePx: number;
}): string {
  const next = seeded(of.seed);
  const meanRadius = (of.finePx + of.coarsePx) / 4;
  const tries = Math.min(
    mostGrains,
    Math.round((2.4 * of.widthPx * of.heightPx) / (Math.PI * meanRadius ** 2)),
  );
  const grains: { readonly x: number; readonly y: number; readonly r: number }[] = [];
  for (let i = 0; i < tries; i += 1) {
    const r = (of.finePx + next() * (of.coarsePx - of.finePx)) / 2;
    const grain = { x: of.leftPx + next() * of.widthPx, y: of.topPx + next() * of.heightPx, r };
    const clear = grains.every(
      (other) => Math.hypot(other.x - grain.x, other.y - grain.y) > (other.r + r) * 1.02,
    );
    if (clear) grains.push(grain);
  }
  return grains.map((grain) => polygon(grain, next)).join("");
}

function polygon({ x, y, r }: { x: number; y: number; r: number }, next: () => number): string {
  const corners = 5 + Math.floor(next() * 3);
  const turn = next() * Math.PI;
  const points = Array.from({ length: corners }, (_, corner) => {
    const angle = turn + (corner / corners) * 2 * Math.PI;
    const out = r * (0.72 + 0.28 * next());
    return `${fixed(x + out * Math.cos(angle))} ${fixed(y + out * Math.sin(angle))}`;
  });
  return `M${points.join("L")}Z`;
}

const fixed = (n: number): string => n.toFixed(1);
