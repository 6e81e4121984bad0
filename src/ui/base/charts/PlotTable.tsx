import { useState, type ReactNode } from "react";
import css from "./plot.module.css";

export type PlotRow = {
  readonly key: string;
  /** The last of too few spans what is left. */ readonly cells: readonly ReactNode[];
};

type Table = {
  readonly caption?: string;
  readonly head: readonly string[];
  readonly rows: readonly PlotRow[];
  /** The first cell of a row names it. */
  readonly hasRowHeads?: boolean;
};

/** A plot's numbers as a table, folded away. Rows given as a function are made once they are asked for. */
export function PlotTable(
  props: Omit<Table, "rows"> & {
    readonly summary?: string;
    readonly rows: readonly PlotRow[] | (() => readonly PlotRow[]);
    /** More tables under the same fold. */
    readonly children?: ReactNode;
  },
) {
  const { summary = "The same as a table", children, rows, ...table } = props;
  const [open, setOpen] = useState(false);
  const isMade = open || typeof rows !== "function";
  return (
    <details className={css["table"]} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{summary}</summary>
      {isMade && (
        <div className={css["wide"]}>
          <PlainTable {...table} rows={typeof rows === "function" ? rows() : rows} />
        </div>
      )}
      {children}
    </details>
  );
}

export function PlainTable({ caption, head, rows, hasRowHeads = false }: Table) {
  return (
    <table>
      {caption !== undefined && <caption>{caption}</caption>}
      <thead>
        <tr>
          {head.map((name) => (
            <th key={name} scope="col">
              {name}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ key, cells }) => (
          <tr key={key}>
            {cells.map((cell, place) =>
              hasRowHeads && place === 0 ? (
                <th key={head[place]} scope="row">
                  {cell}
                </th>
              ) : (
                <td key={head[place]} colSpan={place === cells.length - 1 ? head.length - place : 1}>
                  {cell}
                </td>
              ),
            )}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
