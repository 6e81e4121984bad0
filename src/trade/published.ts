/**
 * What a figure rests on: measured on shells, patterns or metals like these and told with its conditions; published in a
 * book, sheet or standard (from memory of it too, as its source says); common practice; judgement, estimates among it;
 * or the shop's own.
 */
export type Basis = "measured" | "published" | "practice" | "judgement" | "own";

/** A figure with what it rests on and where it comes from; a rule that quotes one can show its source. */
export type Published<T = number> = {
  readonly value: T;
  readonly basis: Basis;
  readonly source: string;
  readonly note?: string | undefined;
};
