import type { Published } from "./published.ts";

/**
 * Limits the rules speak from. One that no publication is known for says "common practice, no source" or
 * "starting value"; a shop that knows better writes its own recipe and reasons.
 */
export const practice = {
  /** Room temperature may move this much, K, while a prime coat is the outer one. */
  primeSwingK: {
    value: 1.7,
    basis: "published",
    source: "Investment Casting Institute, Atlas of Casting Defects, prime coat lift: ± 3 °F",
  },
  /** Past this, K, a moved prime is to be watched; below it most primes on wax come through. */
  primeSwingWatchK: {
    value: 3,
    basis: "judgement",
    source: "judgement: twice the narrow limit of an atlas of wax casting",
  },
  /** Cooling of a wet prime below the room, K, beyond which a wax pattern shrinks more than the coat bears. */
  primeDropK: {
    value: 5,
    basis: "judgement",
    source: "derived: wax at 4e-4/K shrinks 0.2 %; starting value",
  },
  /** Air film from which a prime coat dries hard: a fan on the rack. */
  primeHardFilmWM2K: { value: 15, basis: "practice", source: "common practice, no source" },
  /** Hours a prime coat may stand bare. */
  primeBareH: { value: 24, basis: "practice", source: "common practice, no source" },
  /** Above this humidity, fraction, gel keeps its water and nothing counts as dry. */
  rhNeverDry: {
    value: 0.8,
    basis: "judgement",
    source: "derived from the Kelvin radius of 2–5 nm pores (Thomson's equation)",
  },
  /** Above this humidity, fraction, a last coat isn't taken as dry right through. */
  rhFinalDry: {
    value: 0.7,
    basis: "judgement",
    source: "derived from the Kelvin radius of 2–5 nm pores (Thomson's equation)",
  },
  /** Age of a room reading, h, past which the sums guess. */
  readingOldH: { value: 6, basis: "judgement", source: "starting value; common practice, no source" },
  /** The same in hours of working days, seven to seven, h: once it is older a reading is asked for. */
  readingOldWorkH: { value: 8, basis: "judgement", source: "judgement: one reading serves a working day" },
  /** Coats a shell usually gets; half of them on, its numbers are asked for. */
  usualCoats: { value: 8, basis: "practice", source: "common practice, no source: 7 to 10 coats" },
  /** A bucket dipped from for so many days without one reading, is to be watched. */
  neverReadDays: {
    value: 3,
    basis: "judgement",
    source: "judgement: an open bucket loses water every day; checks each session are common practice",
  },
  /** Slurry this near, K, to the temperature it should have is no finding by itself. */
  slurryOffK: {
    value: 2,
    basis: "judgement",
    source: "judgement: the viscosity tells more, and is read together with it",
  },
  /** Hours for which something that is told once is to be watched; then it is a note. */
  toldOnceH: { value: 2, basis: "judgement", source: "judgement: whoever logs it is warned there and then" },
  /** Mean grain of a stucco over that of the coat beneath, past which grains bridge instead of bedding in. */
  gradeRatio: { value: 4, basis: "judgement", source: "starting value; judgement, no source" },
  /** Coarsest grain for the first prime, mm. */
  firstPrimeCoarseMm: { value: 0.3, basis: "practice", source: "common practice, no source" },
  /** Humidity, fraction, up to which the shorter hours of the last drying hold (see `finalDryH`). */
  finalDryRh: { value: 0.5, basis: "practice", source: "common practice, no source" },
  /** Wall, mm, above which a shell counts as thick. */
  thickWallMm: {
    value: 10,
    basis: "judgement",
    source: "judgement: nine or ten coats of common practice come to about 10 mm",
  },
  firedC: {
    value: 800,
    basis: "practice",
    source: "common practice, no source; silica gel bonds from about 700, well from 850 °C",
  },
  /** Below this, °C, the silica gel has not bonded. */
  bondC: { value: 700, basis: "practice", source: "common practice, no source" },
  firedMin: { value: 30, basis: "practice", source: "common practice, no source" },
  /** An under-fired shell counts with this share of its strength. For coats covered damp see `dampLoadShare`. */
  weakShare: { value: 0.5, basis: "judgement", source: "judgement: half of what it bears once fired well" },
  /** Hours after which a fired shell that stood cold counts as damp again. */
  coldShellH: {
    value: 24,
    basis: "judgement",
    source: "judgement: a porous shell takes up water from the air of the room",
  },
} as const satisfies Record<string, Published>;
