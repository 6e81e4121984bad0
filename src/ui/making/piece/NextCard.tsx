import type { RackItem } from "../../base/state/live.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { coverHold } from "../../../rules/coverHold.ts";
import { actionWords } from "../../base/format/actionWords.ts";
import { pieceWords } from "../../base/format/phaseWords.ts";
import { ActionBar } from "../../base/parts/ActionBar.tsx";
import { LevelMark } from "../../base/parts/LevelMark.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { LogSheet } from "./LogSheet.tsx";
import { nextMove } from "./nextMove.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./NextCard.module.css";

/** What to do next with this piece, in words; the key that leads there stands in the bar with the key to log. */
export function NextCard({ item }: { readonly item: RackItem }) {
  const { standing, findings, worst } = item;
  const { piece, now, coatsDone, coatsPlanned, room } = standing;
  const { locale } = useFormat();
  const { verb, when } = actionWords(item, now, locale);
  const isHeld = coverHold(findings) !== null;
  const move = nextMove(piece, standing.action, isHeld);
  const coats = coatsPlanned === null ? `${coatsDone} coats on` : `${coatsDone} of ${coatsPlanned} coats`;
  return (
    <section className={styles["next"]} aria-label="What is next">
      <div className={sheet["stack2"]}>
        <p className={styles["state"]}>
          <span>{piece.phase === "coating" ? coats : pieceWords(piece)}</span>
          {room !== null && piece.pours.length === 0 && <span>{room.name}</span>}
          {worst !== null && (
            <a href="#findings" className={`${sheet["link"]} ${styles["worst"]}`}>
              <LevelMark level={worst} />
              <span>{findings.length === 1 ? "1 finding" : `${findings.length} findings`}</span>
            </a>
          )}
        </p>
        <p className={styles["verb"]}>{verb}</p>
        {when !== null && <p>{when}</p>}
        {move?.byHand !== undefined && (
          <div>
            <LinkButton href={move.byHand.href}>{move.byHand.name}</LinkButton>
          </div>
        )}
      </div>
      <ActionBar>
        {move !== null && (
          <LinkButton kind={move.isWait === true ? "secondary" : "primary"} href={move.href}>
            {move.name}
          </LinkButton>
        )}
        <LogSheet piece={piece} />
      </ActionBar>
    </section>
  );
}
