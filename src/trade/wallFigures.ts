import type { Published } from "./published.ts";

/**
 * What the verdict of a wall is worked out with. A spread is a factor: the middle nine in ten of all cases lie between
 * the likely figure divided by it and times it.
 */
export const wallFigures = {
  /** Bending strength of a fired shell that was never measured, MPa. */
  strengthMPa: {
    value: 4,
    basis: "published",
    source:
      "fired fused silica, from memory of Jones & Yuan 2003 and Beeley & Smart, Investment Casting (1995)",
  },
  strengthSpread: {
    value: 2,
    basis: "judgement",
    source:
      "judgement: 2 to 8 MPa. Values by trade lie between 1.54 and 4.90 MPa (“benchmarking values” of modulus of rupture of ceramic shells, abstract without author or year)",
  },
  /** The same with the mean of the shop's own test bars. */
  barsSpread: {
    value: 1.5,
    basis: "judgement",
    source:
      "judgement: one shell against another of the same shop. Bars of one batch scatter by about 15 % (from memory); a bar is small and sound, a wall is not",
  },
  /** Thickness by the table of stuccos. */
  tableSpread: {
    value: 1.25,
    basis: "judgement",
    source: "estimate: slurry film and 1.1 of the mean grain, ± 25 %",
  },
  /** Thickness by caliper: exact where it was read, but a wall is not even. */
  caliperSpread: {
    value: 1.1,
    basis: "judgement",
    source: "judgement: a dipped wall differs by about a tenth from place to place",
  },
  headSpread: {
    value: 1.1,
    basis: "judgement",
    source: "judgement: a head measured with a rule, the cup filled or not",
  },
} as const satisfies Record<string, Published>;

const calibrated =
  "judgement, set by practice: the highest round figure at which the walls of usual work still carry, the leanest of them an aluminium plaque of 400 by 300 mm poured at 0.15 m of head in 8 mm of shell";

/** From which reliability index on a wall gets each word; below the last one it fails. */
export const wallLimits = {
  carries: { value: 1.2, basis: "judgement", source: calibrated },
  marginal: { value: 0.8, basis: "judgement", source: "judgement: two thirds of what carries" },
  thin: { value: 0.4, basis: "judgement", source: "judgement: a third of what carries" },
} as const satisfies Record<string, Published>;

/** The factor a recipe asks for that stands for the usual limit. */
export const usualFactor: Published = {
  value: 3,
  basis: "judgement",
  source:
    "judgement: 3 asks for the usual shell; another one for as much more or less load as it stands to 3, never for less than the limit of marginal",
};

/** Sand all round a shell from which on it counts as boxed, mm. */
export const sandCoverMm: Published = { value: 75, basis: "practice", source: "common practice, no source" };
