import type { PreviewRow } from "../../../../workers/airCsv/previewAirCsv.ts";
import { useFormat } from "../../../base/state/useFormat.ts";
import { useShop } from "../../../base/state/shop.tsx";
import { dayTime } from "../../../base/format/time.ts";
import { Card } from "../../../base/parts/Card.tsx";
import { badLineWords } from "./badLineWords.ts";
import sheet from "../../../base/styles/sheet.module.css";
import styles from "./csv.module.css";

/** The file's first lines as they stand, and beneath each what is made of it. */
export function PreviewTable({
  rows,
  isOrderOpen,
}: {
  readonly rows: readonly PreviewRow[];
  readonly isOrderOpen: boolean;
}) {
  const format = useFormat();
  const { clock } = useShop();
  const now = clock();
  return (
    <Card title="The first lines">
      <div className={sheet["scroll"]}>
        <table className={styles["preview"]}>
          <thead>
            <tr>
              <th scope="col">Line</th>
              <th scope="col">Time</th>
              <th scope="col">Temp.</th>
              <th scope="col">Hum.</th>
              <th scope="col">As it stands</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ line, cells, result }) => (
              <tr key={line} data-bad={result?.ok === false || undefined}>
                <td>{line}</td>
                {result === null ? (
                  <td colSpan={3} className={sheet["pale2"]}>
                    no reading
                  </td>
                ) : result.ok ? (
                  <>
                    <td>{isOrderOpen ? "which day?" : dayTime(result.row.atS * 1000, now, format.locale)}</td>
                    <td>{format.show("temp", result.row.airC)}</td>
                    <td>{format.show("percent", result.row.rh)}</td>
                  </>
                ) : (
                  <td colSpan={3}>✕ {badLineWords(result.bad, format, now)}</td>
                )}
                <td className={styles["raw"]}>{cells.join(" | ")}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </Card>
  );
}
