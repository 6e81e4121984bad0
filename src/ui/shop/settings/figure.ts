import type { Published } from "../../../trade/published.ts";

/** One figure as the page shows it. `own` is the shop's, where it stands in place of the starting value. */
export type ShownFigure = {
  readonly name: string;
  readonly value: string;
  readonly source: string;
  readonly note?: string | undefined;
  readonly own?: string | undefined;
};
export type FigureGroup = {
  readonly title: string;
  readonly about: string;
  readonly figures: readonly ShownFigure[];
};

/** A published figure with its words. */
export const published = (name: string, figure: Published, show: (value: number) => string): ShownFigure => ({
  name,
  value: show(figure.value),
  source: figure.source,
  note: figure.note,
});
