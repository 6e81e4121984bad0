import { compositionOf } from "../../../trade/metals/contents.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Card } from "../../base/parts/Card.tsx";
import { limitName, limitWords } from "./elementWords.ts";
import sheet from "../../base/styles/sheet.module.css";

/** What the alloy may hold, with the edition that says so. */
export function CompositionCard({ alloyId }: { readonly alloyId: string }) {
  const format = useFormat();
  const composition = compositionOf(alloyId);
  return (
    <Card title="Composition limits">
      {composition === null ? (
        <p>No limits listed for this metal.</p>
      ) : (
        <>
          <table>
            <thead>
              <tr>
                <th scope="col">Element</th>
                <th scope="col">By weight</th>
              </tr>
            </thead>
            <tbody>
              {composition.limits.map((limit) => (
                <tr key={limit.of.join()}>
                  <td>{limitName(limit)}</td>
                  <td>{limitWords(limit, format)}</td>
                </tr>
              ))}
            </tbody>
          </table>
          <p className={sheet["soft"]}>
            {composition.source}; edition {composition.edition}. {composition.note} Limits change from edition
            to edition: check before you sell by a name.
          </p>
        </>
      )}
    </Card>
  );
}
