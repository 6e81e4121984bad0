import { Link } from "wouter";
import type { RingDue } from "../../base/alarm/ringDue.ts";
import { soonTime } from "../../base/format/time.ts";
import { Button } from "../../base/parts/Button.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { useNow } from "../../base/state/useNow.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./due.module.css";

/** One thing to do at kiln, furnace or pour, and when. */
export function FireRow({
  due,
  label,
  onCalendar,
}: {
  readonly due: RingDue;
  readonly label: string;
  readonly onCalendar: () => Promise<void>;
}) {
  const { locale } = useFormat();
  const now = useNow();
  return (
    <li className={`${sheet["row24"]} ${styles["row"]}`}>
      <div className={`${sheet["lines"]} ${styles["what"]}`}>
        <Link href={due.path} className={styles["name"]}>
          {due.words}
        </Link>
        <span>{soonTime(due.dueMs, now, locale)}</span>
        <span className={sheet["soft"]}>{label}</span>
      </div>
      <Button onPress={onCalendar} label={`Put “${due.words}” in the calendar`}>
        Calendar
      </Button>
    </li>
  );
}
