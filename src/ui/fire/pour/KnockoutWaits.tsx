import { useShop } from "../../base/state/shop.tsx";
import { memoOf } from "../../../storage/memoOf.ts";
import { Link } from "wouter";
import { meltFor } from "../../../logbook/pour/meltTie.ts";
import { alloyContents, meltContents } from "../../../logbook/pour/meltContents.ts";
import { useFigures, useMelts, usePours, type RackItem } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { useNow } from "../../base/state/useNow.ts";
import { ago, soonTime } from "../../base/format/time.ts";
import { cautionLines } from "../../base/cautions/cautionWords.ts";
import { weightsOf } from "../../base/cautions/weightsOf.ts";
import { Card } from "../../base/parts/Card.tsx";
import { knockoutDues } from "./knockoutDues.ts";
import { frozenWords, outSource } from "./knockoutWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./pour.module.css";

/** Full shells that wait to be broken out, and when they may be; nothing where none does. */
export function KnockoutWaits({
  items,
  isOwn = false,
}: {
  readonly items: readonly RackItem[];
  /** On the piece's own page its name need not be said again. */
  readonly isOwn?: boolean | undefined;
}) {
  const { db } = useShop();
  const format = useFormat();
  const now = useNow(15_000);
  const pours = usePours();
  const melts = useMelts();
  const shop = useFigures();
  if (pours === undefined || melts === undefined || shop === undefined) return null;
  const dues = knockoutDues(items, { pours, melts, shop, memo: memoOf(db) });
  if (dues.length === 0) return null;
  const contentsOf = (piece: RackItem["standing"]["piece"]) => {
    const melt = meltFor(piece, { melts, pours });
    return melt === null ? alloyContents(piece.plan.alloyId, shop) : meltContents(melt, shop);
  };
  return (
    <Card title="To knock out">
      <ul className={`${sheet["stack3"]} ${sheet["list"]} ${styles["list"]}`}>
        {dues.map((due) => (
          <li key={due.pieceId}>
            {!isOwn && (
              <strong>
                <Link href={paths.piece(due.pieceId)}>{due.name}</Link>
              </strong>
            )}
            <span className={sheet["strong"]}>
              {due.outAt > now
                ? `Not out of the shell before ${soonTime(due.outAt, now, format.locale)}, ${ago(due.outAt, now)}`
                : `Ready to knock out since ${soonTime(due.outAt, now, format.locale)}`}
            </span>
            <span>{frozenWords(due, now, format.locale)}</span>
            <span className={`${sheet["soft"]} ${styles["soft"]}`}>{outSource[due.from]}</span>
          </li>
        ))}
      </ul>
      {isOwn && (
        <ul>
          {items
            .slice(0, 1)
            .flatMap((item) =>
              cautionLines(
                {
                  step: "knock-out",
                  contents: contentsOf(item.standing.piece),
                  weights: weightsOf(item),
                },
                format,
              ),
            )
            .map((line) => (
              <li key={line}>{line}</li>
            ))}
        </ul>
      )}
    </Card>
  );
}
