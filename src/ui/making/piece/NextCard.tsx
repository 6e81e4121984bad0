import type { RackItem } from "../../base/state/live.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { coverHold } from "../../../rules/coverHold.ts";
import { actionWords } from "../../base/format/actionWords.ts";
import { pieceWords } from "../../base/format/phaseWords.ts";
import { LevelMark } from "../../base/parts/LevelMark.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { nextMove } from "./nextMove.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./NextCard.module.css";

/** What to do next with this piece, in words, with the key that leads there. */
export function NextCard({ item }: { readonly item: RackItem }) {
  const { standing, findings, worst } = item;
  const { piece, now, coatsDone, coatsPlanned, room } = standing;
  const { locale } = useFormat();
  const { verb, when } = actionWords(item, now, locale);
  const isHeld = standing.action.kind === "dip" && coverHold(findings) !== null;
  const move = isHeld ? null : nextMove(piece, standing.action);
  const coats = coatsPlanned === null ? `${coatsDone} coats on` : `${coatsDone} of ${coatsPlanned} coats`;
  return (
    <section className={`${sheet["stack2"]} ${styles["next"]}`} aria-label="What is next">
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
      {when !== null && <p className={styles["when"]}>{when}</p>}
      {move !== null && (
        <LinkButton kind="primary" size="big" href={move.href}>
          {move.name}
        </LinkButton>
      )}
      {move?.byHand !== undefined && (
        <div>
          <LinkButton href={move.byHand.href}>{move.byHand.name}</LinkButton>
        </div>
      )}
    </section>
  );
}
