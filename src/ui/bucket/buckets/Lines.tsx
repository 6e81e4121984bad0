import sheet from "../../base/styles/sheet.module.css";
import css from "./BucketsPage.module.css";

/** Names and values, one a line. */
export function Lines({ lines }: { readonly lines: readonly (readonly [name: string, value: string])[] }) {
  return (
    <dl className={`${sheet["cell"]} ${css["lines"]}`}>
      {lines.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
