import { useState } from "react";
import type { Bucket } from "../../../logbook/piece/piece.ts";
import type { MaterialStock } from "../../../logbook/shop/stockView.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { dayName } from "../../base/format/time.ts";
import { Button } from "../../base/parts/Button.tsx";
import { moveNames } from "./stockWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./stock.module.css";

const shownFirst = 12;

/** Every movement, newest first; what was calculated from buckets and coats says so. */
export function StockLedger(props: {
  readonly stock: MaterialStock;
  readonly buckets: ReadonlyMap<string, Bucket>;
  readonly now: number;
}) {
  const { stock, buckets, now } = props;
  const format = useFormat();
  const [all, setAll] = useState(false);
  const { moves, balance } = stock;
  if (moves.length === 0) return null;
  const lines = moves.toReversed();
  const from = moves.find(({ kind }) => kind === "received" || kind === "counted")?.at ?? null;
  return (
    <details>
      <summary>Ledger ({moves.length})</summary>
      <div className={sheet["scroll"]}>
        <table>
          <thead>
            <tr>
              <th scope="col">When</th>
              <th scope="col">What</th>
              <th scope="col">Weight</th>
            </tr>
          </thead>
          <tbody>
            {lines.slice(0, all ? undefined : shownFirst).map((move) => {
              const sign = move.kind === "received" ? "+" : move.kind === "counted" ? "=" : "−";
              const bucket = move.bucketId === null ? undefined : buckets.get(move.bucketId)?.name;
              const about = [
                bucket,
                move.note,
                move.basis === "reckoned" ? "calculated" : null,
                from !== null && move.at < from ? "before the first count" : null,
              ].filter((word) => word != null);
              return (
                <tr key={move.id}>
                  <td>{dayName(move.at, now, format.locale)}</td>
                  <td>
                    {moveNames[move.kind]}
                    {about.length > 0 && <small className={sheet["soft"]}> {about.join(", ")}</small>}
                  </td>
                  <td className={css["number"]}>
                    {sign}&nbsp;{format.show("kg", move.kg)}
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
      {!all && lines.length > shownFirst && (
        <Button kind="quiet" onPress={() => setAll(true)}>
          Show all {lines.length}
        </Button>
      )}
      {balance !== null && balance.adjustedKg !== 0 && (
        <p className={sheet["soft"]}>
          Counts corrected it by {format.show("kg", balance.adjustedKg)} in all.
        </p>
      )}
    </details>
  );
}
