import type { Standing } from "../../../logbook/piece/standing.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Fold } from "./Fold.tsx";
import { coatLines, shortDateTime } from "./coatLines.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./ReviewPage.module.css";

export function CoatTable({ standing }: { readonly standing: Standing }) {
  const format = useFormat();
  const { piece, recipe, coatsDone, coatsPlanned } = standing;
  const lines = coatLines(standing, format);
  return (
    <section className={`${sheet["stack2"]} ${css["section"]}`} aria-labelledby="review-coats">
      <Fold
        level="h2"
        title={
          <span id="review-coats">
            Coats: {coatsDone}
            {coatsPlanned === null || recipe === null
              ? " on, no recipe to compare with"
              : ` of ${coatsPlanned} in ${recipe.name}`}
          </span>
        }
      >
        <table className={css["coats"]}>
          <thead>
            <tr>
              <th scope="col">No.</th>
              <th scope="col">Coat</th>
              <th scope="col">Went on</th>
              <th scope="col">Thickness</th>
              <th scope="col">Dryness when covered; last coat: now</th>
            </tr>
          </thead>
          <tbody>
            {lines.map((line) => (
              <tr key={line.id}>
                <td>{line.number}</td>
                <td>
                  {line.coat}
                  {line.departs !== null && <em> ({line.departs})</em>}
                </td>
                <td>
                  {line.dippedAt === null ? (
                    "before the log"
                  ) : (
                    <time dateTime={new Date(line.dippedAt).toISOString()}>
                      {shortDateTime(line.dippedAt, format.locale)}
                    </time>
                  )}
                </td>
                <td>
                  {line.mm === null
                    ? "–"
                    : `${line.isBeforeLog ? "about " : ""}${format.show("mm", line.mm)}`}
                </td>
                <td>{line.evidence}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Fold>
      {piece.skipped.map(({ id, step, reason }) => (
        <p key={id}>
          Step {step + 1} of the recipe was left out: {reason}
        </p>
      ))}
    </section>
  );
}
