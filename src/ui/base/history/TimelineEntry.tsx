import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { useState } from "react";
import { useShop } from "../state/shop.tsx";
import { entryWords } from "../format/entryWords.ts";
import type { EntryNames } from "../format/entryNames.ts";
import { Button } from "../parts/Button.tsx";
import { When } from "../parts/When.tsx";
import { CorrectTime } from "./CorrectTime.tsx";
import { StrikeEntry } from "./StrikeEntry.tsx";
import sheet from "../styles/sheet.module.css";
import styles from "./Timeline.module.css";
import type { TimelineLine } from "./timelineLines.ts";

const lateMs = 10 * minuteMs;

export function TimelineEntry(props: {
  readonly stream: string;
  readonly line: TimelineLine;
  readonly names: EntryNames;
}) {
  const { stream, line, names } = props;
  const { entry, strike } = line;
  const { takeBack } = useShop();
  const [doing, setDoing] = useState<"time" | "strike" | null>(null);
  const { title, detail } = entryWords(entry, names);
  const done = (): void => setDoing(null);
  const bringBack = async (): Promise<void> => {
    if (strike === null) return;
    await takeBack(strike.id, "deleted by mistake");
  };
  return (
    <li id={`entry-${entry.id}`} className={styles["line"]} data-struck={strike !== null || undefined}>
      <details>
        <summary>
          <span className={styles["text"]}>
            <span className={sheet["soft"]}>
              <When at={entry.at} />
            </span>
            <span className={`${sheet["firm"]} ${styles["what"]}`}>
              {strike === null ? title : <s>{title}</s>}
            </span>
            {detail !== null && strike === null && (
              <span className={`${sheet["small"]} ${sheet["breaks"]}`}>{detail}</span>
            )}
            {strike !== null && (
              <span className={`${sheet["small"]} ${sheet["breaks"]}`}>deleted: {strike.body.reason}</span>
            )}
          </span>
        </summary>
        <div className={`${sheet["stack3"]} ${styles["more"]}`}>
          {entry.recordedAt - entry.at > lateMs && (
            <p>
              Written down <When at={entry.recordedAt} />.
            </p>
          )}
          {strike === null && doing === null && (
            <div className={sheet["row"]}>
              <Button onPress={() => setDoing("time")}>Correct the time</Button>
              <Button onPress={() => setDoing("strike")}>Delete (kept in history)</Button>
            </div>
          )}
          {doing === "time" && <CorrectTime stream={stream} entry={entry} onDone={done} />}
          {doing === "strike" && <StrikeEntry stream={stream} entry={entry} onDone={done} />}
          {strike !== null && strike.body.replacedBy === undefined && (
            <Button onPress={bringBack}>Restore it</Button>
          )}
        </div>
      </details>
    </li>
  );
}
