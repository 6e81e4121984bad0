import { dot, length, minus, unit, type Vec3 } from "./vector.ts";

/** Cut across a bar: round, or a rectangle, mesh units. */
export type Section =
  | { readonly kind: "round"; readonly diameter: number }
  | { readonly kind: "rectangle"; readonly width: number; readonly height: number };

export type BarKind = "sprue" | "cup" | "runner" | "gate" | "vent" | "feeder" | "drain";

/** A straight bar of wax that tapers evenly from one section to the other. */
export type GatingBar = {
  readonly id: string;
  readonly kind: BarKind;
  readonly from: Vec3;
  readonly to: Vec3;
  readonly fromSection: Section;
  readonly toSection: Section;
  /** The mark it stands on and goes with; left out for a bar between other bars. */
  readonly markId?: string | undefined;
};

export type BarSums = {
  readonly volume: number;
  /** The long sides, and the ends that touch nothing. */
  readonly coolingArea: number;
  /** What slurry comes on: as the cooling area, but the mouth of a cup is kept bare (common practice, no source). */
  readonly coatedArea: number;
  /** Volume over cooling area. */
  readonly modulus: number;
};

/** Area of a section. */
export function sectionArea(section: Section): number {
  if (section.kind === "round") return (Math.PI / 4) * positive("diameter", section.diameter) ** 2;
  return positive("width", section.width) * positive("height", section.height);
}

/**
 * Volume, cooling area and modulus of one bar, with the ends that stand free. Two rounds make a
 * frustum of a cone, two rectangles a frustum with plane or twisted sides; a round to a rectangle is reckoned as between
 * rounds of the same areas. Volume by the prismoid rule, exact for linear tapers.
 */
export function barSums(
  bar: GatingBar,
  { freeFrom, freeTo }: { freeFrom: boolean; freeTo: boolean },
): BarSums {
  const span = length(minus(bar.to, bar.from));
  if (!(span > 0)) throw new RangeError(`bar ${bar.id} must have a length, found ${span}`);
  const ends = [sectionArea(bar.fromSection), sectionArea(bar.toSection)] as const;
  const { middle, sides } = between(bar, span);
  const volume = (span / 6) * (ends[0] + 4 * middle + ends[1]);
  const coolingArea = sides + (freeFrom ? ends[0] : 0) + (freeTo ? ends[1] : 0);
  const mouth = bar.kind === "cup" ? mouthOf(ends, { freeFrom, freeTo }) : 0;
  return { volume, coolingArea, coatedArea: coolingArea - mouth, modulus: volume / coolingArea };
}

/** The wider free end. */
const mouthOf = (
  [from, to]: readonly [number, number],
  { freeFrom, freeTo }: { freeFrom: boolean; freeTo: boolean },
): number => Math.max(freeFrom ? from : 0, freeTo ? to : 0);

function between(
  { fromSection: a, toSection: b }: GatingBar,
  span: number,
): { middle: number; sides: number } {
  if (a.kind === "rectangle" && b.kind === "rectangle") {
    const middle = ((a.width + b.width) * (a.height + b.height)) / 4;
    const overWidth = (a.width + b.width) * Math.hypot(span, (a.height - b.height) / 2);
    const overHeight = (a.height + b.height) * Math.hypot(span, (a.width - b.width) / 2);
    return { middle, sides: overWidth + overHeight };
  }
  const [r, s] = [a, b].map((section) => Math.sqrt(sectionArea(section) / Math.PI)) as [number, number];
  return { middle: Math.PI * ((r + s) / 2) ** 2, sides: Math.PI * (r + s) * Math.hypot(span, r - s) };
}

export type TreeSums = {
  /** All bars together; where they run into each other and into the piece counts twice, a per cent or so. */
  readonly barVolume: number;
  /** Bars and piece. */
  readonly metalVolume: number;
  /** What slurry comes on of all bars; where they run into each other counts twice, `doubledArea` of it at most. */
  readonly coatedArea: number;
  readonly doubledArea: number;
  /** Skin of the piece under the ends of bars: no slurry comes there. */
  readonly coveredArea: number;
  /** Heights along up of the highest place of the tree and of the level in the cup; null without a cup. */
  readonly highest: number;
  readonly cupLevel: number | null;
  readonly bars: readonly (BarSums & { readonly id: string; readonly head: number | null })[];
};

/**
 * A tree of bars on a piece: its metal, its highest level and each bar's sums; `head` is from the cup level down to the
 * bar's lower end. Ends that lie within `touch` of another bar's axis or of a `tapped` point of the piece are joined,
 * others stand free.
 */
export function treeSums({
  bars,
  up,
  pieceVolume,
  tapped,
  touch,
}: {
  bars: readonly GatingBar[];
  up: Vec3;
  pieceVolume: number;
  /** Points of the piece at which bars stand. */
  tapped: readonly Vec3[];
  touch: number;
}): TreeSums {
  const upward = unit(up);
  const heights = (bar: GatingBar): readonly number[] => [dot(bar.from, upward), dot(bar.to, upward)];
  const isJoined = (bar: GatingBar, end: Vec3): boolean =>
    tapped.some((p) => length(minus(p, end)) <= touch) ||
    bars.some((other) => other !== bar && toAxis(other, end) <= touch);
  const cups = bars.filter((bar) => bar.kind === "cup").flatMap(heights);
  const cupLevel = cups.length > 0 ? Math.max(...cups) : null;
  const sums = bars.map((bar) => ({
    id: bar.id,
    ...barSums(bar, { freeFrom: !isJoined(bar, bar.from), freeTo: !isJoined(bar, bar.to) }),
    head: cupLevel === null ? null : cupLevel - Math.min(...heights(bar)),
  }));
  const barVolume = sums.reduce((sum, { volume }) => sum + volume, 0);
  const ends = bars.flatMap((bar) => [
    { bar, at: bar.from, section: bar.fromSection },
    { bar, at: bar.to, section: bar.toSection },
  ]);
  const isOnPiece = ({ at }: { at: Vec3 }): boolean => tapped.some((p) => length(minus(p, at)) <= touch);
  return {
    barVolume,
    coatedArea: sums.reduce((sum, { coatedArea }) => sum + coatedArea, 0),
    doubledArea: ends.reduce((sum, end) => sum + buriedAt(end, bars, touch), 0),
    coveredArea: ends.filter(isOnPiece).reduce((sum, { section }) => sum + sectionArea(section), 0),
    metalVolume: barVolume + pieceVolume,
    highest: Math.max(...bars.flatMap(heights)),
    cupLevel,
    bars: sums,
  };
}

/**
 * Skin that lies inside another bar where one ends on its axis: its own sides as deep as the other is thick, and the hole
 * it makes there. Bars in one line bury nothing. The widest bar met counts.
 */
function buriedAt(
  { bar, at, section }: { bar: GatingBar; at: Vec3; section: Section },
  bars: readonly GatingBar[],
  touch: number,
): number {
  const along = unit(minus(bar.to, bar.from));
  const area = sectionArea(section);
  const deep = bars
    .filter((other) => other !== bar && toAxis(other, at) <= touch)
    .filter(({ from, to }) => Math.abs(dot(along, unit(minus(to, from)))) < inLine)
    .map((other) =>
      Math.sqrt(Math.max(sectionArea(other.fromSection), sectionArea(other.toSection)) / Math.PI),
    );
  return deep.length === 0 ? 0 : 2 * Math.sqrt(Math.PI * area) * Math.max(...deep) + area;
}

/** Cosine between two bars from which they count as one line, about 8°. */
const inLine = 0.99;

/** Distance of a point from a bar's axis. */
export function toAxis({ from, to }: Pick<GatingBar, "from" | "to">, p: Vec3): number {
  const along = minus(to, from);
  const share = Math.min(1, Math.max(0, dot(minus(p, from), along) / dot(along, along)));
  return Math.hypot(
    ...minus(p, [from[0] + share * along[0], from[1] + share * along[1], from[2] + share * along[2]]),
  );
}

function positive(name: string, value: number): number {
  if (!(value > 0 && value < Infinity)) throw new RangeError(`${name} must be above 0, found ${value}`);
  return value;
}
