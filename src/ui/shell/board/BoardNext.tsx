import { allDues, useAlarmSources } from "../../base/alarm/alarmSources.ts";
import type { RingDue } from "../../base/alarm/ringDue.ts";
import { soonTime } from "../../base/format/time.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import styles from "./BoardPage.module.css";
import { useTurning } from "./useTurning.ts";

/** What comes, and when: the times that ring, of rack, kiln, melt and pour in one list. */
export function BoardNext({ now }: { readonly now: number }) {
  const { locale } = useFormat();
  const sources = useAlarmSources((list) => list.sources);
  const say = (at: number): string => soonTime(at, now, locale);
  const coming = allDues(sources).filter(({ dueMs }) => dueMs > now);
  const { box, shown, fits, part } = useTurning<HTMLOListElement, RingDue>(coming);
  return (
    <section className={styles["next"]} aria-label="Next">
      <h2>Next{part !== null && <span>{part}</span>}</h2>
      {coming.length === 0 && <p>Nothing is timed.</p>}
      <ol ref={box}>
        {shown.map(({ id, dueMs, calendar }, place) => (
          <li key={id} data-over={place >= fits || undefined}>
            <time dateTime={new Date(dueMs).toISOString()}>{say(dueMs)}</time>{" "}
            <span>{calendar(say).summary}</span>
          </li>
        ))}
      </ol>
    </section>
  );
}
