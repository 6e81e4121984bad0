/** A figure with where it comes from; a rule that quotes one can show its source. */
export type Published<T = number> = {
  readonly value: T;
  readonly source: string;
  readonly note?: string | undefined;
};
