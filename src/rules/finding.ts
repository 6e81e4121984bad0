import type { SaidThen } from "../logbook/drying/said.ts";
import type { WeighToTell } from "../logbook/drying/weighToTell.ts";

/** A finding's weight: do not go on; go on knowing this; for information. */
export type Level = "hold" | "watch" | "note";

/** Unit of a figure in a finding; the page converts it. */
export type FigureUnit =
  | "share"
  | "mm"
  | "MPa"
  | "Pa"
  | "C"
  | "K"
  | "K/h"
  | "m"
  | "N"
  | "litre"
  | "kg"
  | "h"
  | "min"
  | "count"
  | "factor"
  | "epoch-ms";

/** A figure of a finding; null says that the number is not known. */
export type Figure = { readonly value: number | null; readonly unit: FigureUnit };
export const figure = (value: number | null, unit: FigureUnit): Figure => ({ value, unit });

/**
 * What a rule says of a piece. It holds numbers and the entries it rests on; the page makes the sentence from
 * `rule` and `variant` (see `ui/format/findingWords.ts`).
 */
export type Finding = {
  readonly rule: RuleId;
  readonly variant: string;
  readonly level: Level;
  /** Figures by name, so that words can ask for `figures.leftShare`. */
  readonly figures: Readonly<Record<string, Figure>>;
  /** Words the rule passes on as they stand, such as a stucco's label or where a crack is. */
  readonly texts: Readonly<Record<string, string>>;
  readonly entries: readonly string[];
  readonly source: string;
  /** True once nothing can be done about it: it is read at the review, with the whole shell, and nowhere else. */
  readonly past?: true;
  /** What was said of the coat at the dip that covered it, as of `now` (epoch ms); left out where nothing was kept. */
  readonly said?: { readonly kept: SaidThen; readonly now: number } | undefined;
  /** How a weighing would settle it, as of `now` (epoch ms); left out where none would. */
  readonly weigh?: { readonly toTell: WeighToTell; readonly now: number } | undefined;
};

export type RuleId =
  | "recoated-before-dry"
  | "wall-too-thin"
  | "cannot-judge-wall"
  | "air-too-damp"
  | "frost"
  | "air-reading-old"
  | "prime-temperature-moved"
  | "prime-drying-hard"
  | "prime-left-bare"
  | "stucco-out-of-order"
  | "recipe-not-followed"
  | "no-seal-coat"
  | "last-coat-damp"
  | "open-crack"
  | "patched-without-wire"
  | "core-lift"
  | "pattern-inside"
  | "burnout-residue"
  | "shell-damp-again"
  | "fired-too-little"
  | "dipped-from-unfit-bucket"
  | "run-broke-a-limit"
  | "poured-cold-shell";
