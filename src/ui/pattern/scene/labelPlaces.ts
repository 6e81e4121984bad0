/** A label by the point it belongs to and its own size, pixels of the screen; the lower `rank`, the sooner it has its place. */
export type LabelBox = {
  readonly x: number;
  readonly y: number;
  readonly wide: number;
  readonly high: number;
  readonly rank: number;
  /** Where it stands by itself: its middle from the point, in its own widths and heights, x right and y down. */
  readonly own: readonly [x: number, y: number];
};

/** Between two labels, pixels. */
const gap = 2;

/**
 * How far the middle of each label is from its point, so that none covers another: where it stands by itself, else the
 * nearest of a few places round the point that is free. Where all are taken it has the one least covered. In widths and
 * heights of the label, in the order given.
 */
export function labelPlaces(labels: readonly LabelBox[]): readonly (readonly [x: number, y: number])[] {
  const taken: Rect[] = [];
  const places = labels.map(({ own }) => own);
  const inTurn = [...labels.keys()].sort((a, b) => labels[a]!.rank - labels[b]!.rank || a - b);
  for (const n of inTurn) {
    const label = labels[n]!;
    let best = label.own;
    let least = Infinity;
    for (const place of [label.own, ...around]) {
      const rect = rectOf(label, place);
      const covered = taken.reduce((sum, other) => sum + common(rect, other), 0);
      if (covered < least) [least, best] = [covered, place];
      if (least === 0) break;
    }
    places[n] = best;
    taken.push(rectOf(label, best));
  }
  return places;
}

type Rect = { readonly x0: number; readonly y0: number; readonly x1: number; readonly y1: number };

function rectOf({ x, y, wide, high }: LabelBox, [across, down]: readonly [number, number]): Rect {
  const [middleX, middleY] = [x + across * wide, y + down * high];
  return {
    x0: middleX - wide / 2 - gap / 2,
    y0: middleY - high / 2 - gap / 2,
    x1: middleX + wide / 2 + gap / 2,
    y1: middleY + high / 2 + gap / 2,
  };
}

/** What two have in common, square pixels. */
const common = (a: Rect, b: Rect): number =>
  Math.max(0, Math.min(a.x1, b.x1) - Math.max(a.x0, b.x0)) *
  Math.max(0, Math.min(a.y1, b.y1) - Math.max(a.y0, b.y0));

/** Places round a point, in its widths and heights, the nearest first: above and below rather than beside. */
const around: readonly (readonly [number, number])[] = Array.from({ length: 13 }, (_, i) => (i - 6) / 2)
  .flatMap((x) => Array.from({ length: 15 }, (_, j): readonly [number, number] => [x, (j - 7) / 2]))
  .filter(([x, y]) => Math.abs(x) >= 0.75 || Math.abs(y) >= 0.75)
  .sort(([a, b], [x, y]) => Math.hypot(1.5 * a, b) - Math.hypot(1.5 * x, y));
