import type { Basis, Published } from "../../../trade/published.ts";

/** One figure as the page shows it. `own` is the shop's, where it stands in place of the starting value. */
export type ShownFigure = {
  readonly name: string;
  readonly value: string;
  readonly basis: Basis;
  readonly source: string;
  /** What in the app rests on it. */
  readonly decides: string;
  readonly note?: string | undefined;
  readonly own?: string | undefined;
  /** The figure of the tables that stands behind it. */
  readonly of?: object | undefined;
};
export type FigureGroup = {
  readonly title: string;
  readonly about: string;
  readonly figures: readonly ShownFigure[];
};

/** A published figure with its words and what it decides. */
export const published = <T>(
  name: string,
  figure: Published<T>,
  show: (value: T) => string,
  decides: string,
): ShownFigure => ({
  name,
  value: show(figure.value),
  basis: figure.basis,
  source: figure.source,
  decides,
  note: figure.note,
  of: figure,
});

/** A table's row of its own shape, shown in words. */
export const tabled = (
  name: string,
  row: { readonly basis: Basis; readonly source: string },
  value: string,
  decides: string,
): ShownFigure => ({ name, value, basis: row.basis, source: row.source, decides, of: row });
