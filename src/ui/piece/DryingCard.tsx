import type { CoatDrying } from "../../logbook/standing.ts";
import { useFormat } from "../app/useFormat.ts";
import { DryingCurve } from "../charts/DryingCurve.tsx";
import { basisWords } from "../format/basisWords.ts";
import { coatWords } from "../format/coatWords.ts";
import { readyWords, verdictWords } from "../format/readyWords.ts";
import { Ago } from "../parts/Ago.tsx";
import { Card } from "../parts/Card.tsx";
import styles from "./DryingCard.module.css";
import { DoseDetails } from "./DoseDetails.tsx";
import { DrynessTaps } from "./DrynessTaps.tsx";

/** The outermost coat: how dry, since when, ready when, and what that is reckoned from. */
export function DryingCard(props: {
  readonly pieceId: string;
  readonly drying: CoatDrying;
  readonly now: number;
}) {
  const { pieceId, drying, now } = props;
  const format = useFormat();
  const { coat, verdict, leftShare } = drying;
  return (
    <Card title={`Coat ${coat.number}: ${verdictWords[verdict]}`}>
      <p>
        {coatWords(coat)}, dipped <Ago at={coat.redips.at(-1)?.at ?? coat.dippedAt} />.
        {leftShare !== null && leftShare > 0.005 && verdict !== "dry" && (
          <> About {format.show("percent", leftShare)} of the water it must lose is still in it.</>
        )}
      </p>
      {verdict !== "dry" && (
        <p className={styles["ready"]}>Ready {readyWords(drying, now, format.locale)}.</p>
      )}
      <DrynessTaps pieceId={pieceId} coatId={coat.id} />
      {verdict !== "dry" && <DryingCurve drying={drying} now={now} />}
      <details>
        <summary>What this is reckoned from</summary>
        <ul className={styles["basis"]}>
          {basisWords(drying, format).map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
        <DoseDetails drying={drying} />
        {verdict === "dry" && <DryingCurve drying={drying} now={now} />}
      </details>
    </Card>
  );
}
