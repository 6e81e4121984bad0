import sheet from "../styles/sheet.module.css";

export type Given = readonly [name: string, value: string];

/** How a figure came about: its formula, what went in, and who says so. */
export function Reckoned({
  title = "How this is calculated",
  formula,
  given = [],
  source,
}: {
  readonly title?: string;
  readonly formula: string;
  readonly given?: readonly Given[];
  readonly source: string;
}) {
  return (
    <details>
      <summary>{title}</summary>
      <p className={`${sheet["sunk"]} ${sheet["breaks"]} ${sheet["inset"]}`}>{formula}</p>
      {given.length > 0 && <Rows rows={given} />}
      <p className={sheet["soft"]}>Source: {source}.</p>
    </details>
  );
}

/** Names and their figures, one a line. */
export function Rows({ rows }: { readonly rows: readonly Given[] }) {
  return (
    <dl className={`${sheet["cell"]} ${sheet["rows"]}`}>
      {rows.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
