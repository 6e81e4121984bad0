import { Link } from "wouter";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { useNow } from "../../base/state/useNow.ts";
import { Button } from "../../base/parts/Button.tsx";
import type { DueTime } from "../../base/alarm/dueTimes.ts";
import { dueTimeWords } from "./dueWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./due.module.css";

export function DueRow(props: {
  readonly due: DueTime;
  /** What will make it known; null for one that is past. */
  readonly label: string | null;
  readonly onCalendar?: (() => Promise<void>) | undefined;
}) {
  const { due, label, onCalendar } = props;
  const { locale } = useFormat();
  const now = useNow();
  return (
    <li className={`${sheet["row24"]} ${styles["row"]}`}>
      <div className={`${sheet["lines"]} ${styles["what"]}`}>
        <Link href={paths.piece(due.pieceId)} className={styles["name"]}>
          {due.name}
        </Link>
        <span>{dueTimeWords(due, now, locale)}</span>
        {label !== null && <span className={sheet["soft"]}>{label}</span>}
      </div>
      {onCalendar !== undefined && (
        <Button
          onPress={onCalendar}
          label={`Put ${due.name}, ${due.allows === "review" ? "final dry" : `coat ${due.coat}`}, in the calendar`}
        >
          Calendar
        </Button>
      )}
    </li>
  );
}
