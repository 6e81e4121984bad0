import type { Published } from "./published.ts";

const guerra =
  "M. Guerra & G. Dooley, Drying of ceramic shells, part 1, INCAST June 2020 p. 24, and G. Dooley & M. Everden, part 2, INCAST Nov 2020 p. 20";

/** Bending strength of a dried shell before its first fire, without polymer, MPa. */
export const greenBendMPa: Published = {
  value: 1.4,
  basis: "measured",
  source: `measured, derived from ${guerra}: 133 psi at 1 h between coats, 55 % more from 4 h on`,
};
/** Tension that a wall is held to in the fire, as a share of its bending strength. */
export const fireTensionShare: Published = {
  value: 0.25,
  basis: "judgement",
  source: "judgement: half of the bending strength in tension, half of that to be safe",
};
/** What polymer in the binder does to a shell: strength over that of the same shell without, before the first fire and hot. */
export const polymerStrength = {
  green: {
    value: 1.6,
    basis: "measured",
    source: "measured: G. Dooley & M. Everden, INCAST Nov 2020 p. 21, fig. 4; about + 60 %",
  },
  hot: {
    value: 0.65,
    basis: "measured",
    source: "measured: G. Dooley & M. Everden, INCAST Nov 2020 p. 21, fig. 4; about − 35 % at 1000 °C",
  },
} as const satisfies Record<string, Published>;

/** Share of its strength that a shell of this recipe has while it is hot: 1 without polymer. */
export const hotStrengthShare = (polymer: boolean | undefined): number =>
  polymer === true ? polymerStrength.hot.value : 1;

/** Share of a plain shell's strength that one of this recipe has before its first fire: 1 without polymer. */
export const greenStrengthShare = (polymer: boolean | undefined): number =>
  polymer === true ? polymerStrength.green.value : 1;

/** Tension a shell bears in its first fire, MPa; `greenShare` is its green strength over a plain, well dried one's. */
export const firstFireMPa = (greenShare: number): number =>
  greenBendMPa.value * fireTensionShare.value * greenShare;

/** First-fire tension of plans that were made before it was measured, MPa: a run keeps the limits it was planned with. */
export const earlierFirstFireMPa = 0.5;

/** Water left in a coat, as a share of what had to leave, at which covering it begins to cost strength, and costs all it can. */
export const dampFrom = {
  none: { value: 0.1, basis: "measured", source: `measured: 11–14 % left cost little; ${guerra}` },
  full: {
    value: 0.35,
    basis: "measured",
    source: `measured: 36 % left at 1 h; ${guerra}; a straight line between is judgement`,
  },
} as const satisfies Record<string, Published>;
/** What a coat that was covered damp leaves of the load the wall bears. */
export const dampLeaves = {
  /** Its strength alone: where the wall as it came out was measured. */
  measuredWall: {
    value: 0.65,
    basis: "measured",
    source: `measured: green strength + 55 % from 1 h to 4 h between coats; ${guerra}`,
  },
  /** Its strength and a thinner wall together: where the wall is taken from the table. */
  tableWall: {
    value: 0.5,
    basis: "judgement",
    source: `derived: 0.65 in strength, and 1 mm less on 10 mm of wall (0.81 squared), 0.52; ${guerra}`,
  },
} as const satisfies Record<string, Published>;

/**
 * Share of its load that a wall bears with a coat covered over this water left, 0–1 of what had to leave; null is not
 * known and counts as wet. 1 up to a tenth left, least from 0.35 on, a straight line between.
 */
export function dampLoadShare({
  leftShare,
  isWallMeasured,
}: {
  readonly leftShare: number | null;
  readonly isWallMeasured: boolean;
}): number {
  const least = (isWallMeasured ? dampLeaves.measuredWall : dampLeaves.tableWall).value;
  if (leftShare === null) return least;
  const { none, full } = dampFrom;
  const way = (leftShare - none.value) / (full.value - none.value);
  return 1 - (1 - least) * Math.min(1, Math.max(0, way));
}
