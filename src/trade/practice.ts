import type { AlloyFamily } from "./alloys.ts";
import type { Published } from "./published.ts";

/**
 * Limits the rules speak from. One that no publication is known for says "common practice, no source" or
 * "starting value"; a shop that knows better writes its own recipe and reasons.
 */
export const practice = {
  /** Room temperature may move this much, K, while a prime coat is the outer one. */
  primeSwingK: {
    value: 1.7,
    source: "Investment Casting Institute, Atlas of Casting Defects, prime coat lift: ± 3 °F",
  },
  /** Cooling of a wet prime below the room, K, beyond which a wax pattern shrinks more than the coat bears. */
  primeDropK: { value: 5, source: "derived: wax at 4e-4/K shrinks 0.2 %; starting value" },
  /** Air film from which a prime coat dries hard: a fan on the rack. */
  primeHardFilmWM2K: { value: 15, source: "common practice, no source" },
  /** Hours a prime coat may stand bare. */
  primeBareH: { value: 24, source: "common practice, no source" },
  /** Above this humidity, fraction, gel keeps its water and nothing counts as dry. */
  rhNeverDry: { value: 0.8, source: "derived from the Kelvin radius of 2–5 nm pores (Thomson's equation)" },
  /** Above this humidity, fraction, a last coat isn't taken as dry right through. */
  rhFinalDry: { value: 0.7, source: "derived from the Kelvin radius of 2–5 nm pores (Thomson's equation)" },
  /** Age of a room reading, h, past which the sums guess. */
  readingOldH: { value: 6, source: "starting value; common practice, no source" },
  /** Mean grain of a stucco over that of the coat beneath, past which grains bridge instead of bedding in. */
  gradeRatio: { value: 4, source: "starting value; judgement, no source" },
  /** Coarsest grain for the first prime, mm. */
  firstPrimeCoarseMm: { value: 0.3, source: "common practice, no source" },
  /** Hours a last coat hangs before fire on open work; within it a touch alone is weak evidence. */
  finalDryH: { value: 12, source: "common practice, no source; 12–24 h open, 24–72 h deep or thick" },
  /** Hours within which an open shell is through in drier air than `finalDryRh`; it takes them all in damper air. */
  finalDryMostH: { value: 24, source: "common practice, no source; 12–24 h open" },
  /** The same two for a shell that is deep or thick. */
  finalDryDeepH: { value: 24, source: "common practice, no source; 24–72 h deep or thick" },
  finalDryDeepMostH: { value: 72, source: "common practice, no source; 24–72 h deep or thick" },
  /** Humidity, fraction, under which those hours are meant. */
  finalDryRh: { value: 0.5, source: "common practice, no source" },
  /** Wall, mm, above which a shell counts as thick. */
  thickWallMm: { value: 10, source: "judgement: nine or ten coats of common practice come to about 10 mm" },
  /** Water, as a share, left by the sum above which a touch that says "dry" speaks of the skin only. */
  skinShare: { value: 0.3, source: "judgement: a face feels dry as soon as the front goes inwards" },
  firedC: {
    value: 800,
    source: "common practice, no source; silica gel bonds from about 700, well from 850 °C",
  },
  /** Below this, °C, the silica gel has not bonded. */
  bondC: { value: 700, source: "common practice, no source" },
  firedMin: { value: 30, source: "common practice, no source" },
  /** A shell that is damp between its layers, or under-fired, is reckoned at this share of its strength. */
  weakShare: {
    value: 0.5,
    source:
      "judgement; order of Dooley & Everden, INCAST Nov 2020 p. 20: green strength + 55 % from 1 h to 4 h between coats",
  },
  /** Hours after which a fired shell that stood cold counts as damp again. */
  coldShellH: { value: 24, source: "judgement: a porous shell takes up water from the air of the room" },
  /** Minutes from kiln to metal. */
  outOfKilnMin: {
    value: 5,
    source: "starting value; derived: a 10 mm shell from 540 °C is at 370 °C on its inner face after 5 min",
  },
} as const satisfies Record<string, Published>;

/** Least shell temperature at the pour, °C, by family of metal; null where none is known. */
export const leastShellC: Readonly<Record<AlloyFamily, Published | null>> = {
  bronze: { value: 400, source: "starting value; common practice pours at 500–700 °C" },
  brass: { value: 400, source: "starting value; common practice pours at 500–700 °C" },
  aluminium: { value: 150, source: "starting value; common practice pours at 200–400 °C" },
  other: null,
};
