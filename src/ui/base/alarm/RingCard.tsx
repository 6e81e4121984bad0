import type { ReactNode } from "react";
import { Link } from "wouter";
import { soonTime } from "../format/time.ts";
import { Button } from "../parts/Button.tsx";
import { Card } from "../parts/Card.tsx";
import { useSettings } from "../state/live.ts";
import { paths } from "../state/paths.ts";
import { useShop } from "../state/shop.tsx";
import { useFormat } from "../state/useFormat.ts";
import type { RingDue } from "./ringDue.ts";
import { layerWords } from "./ringLabel.ts";
import styles from "./RingCard.module.css";
import { useCalendarExport } from "./useCalendarExport.ts";
import { useNotifyPermission } from "./useNotifyPermission.ts";
import { useScreenAlarm } from "./useScreenAlarm.ts";

/** The next alarms at the fire, and what each kind of alarm can promise. */
export function RingCard({
  dues,
  listed = 0,
  keys,
  awakeWords = null,
  fileName,
  children,
}: {
  readonly dues: readonly RingDue[];
  /** So many of the next are named. */
  readonly listed?: number | undefined;
  readonly keys: { readonly start: string; readonly stop: string; readonly calendar: string };
  /** Where the page itself keeps the screen on, whether it does; else the key here does. */
  readonly awakeWords?: string | null | undefined;
  readonly fileName: string;
  /** What it does not do. */
  readonly children: ReactNode;
}) {
  const { clock } = useShop();
  const { locale } = useFormat();
  const [{ tone, speech }] = useSettings();
  const alarm = useScreenAlarm();
  const [permission, askPermission] = useNotifyPermission();
  const giveToCalendar = useCalendarExport();
  const now = clock();
  const coming = dues.filter(({ dueMs }) => dueMs > now);
  return (
    <Card title="Alarms">
      {listed > 0 && coming.length === 0 && <p>No more alarms to come.</p>}
      {listed > 0 && coming.length > 0 && (
        <ul>
          {coming.slice(0, listed).map(({ id, dueMs, words }) => (
            <li key={id}>
              {soonTime(dueMs, now, locale)} {words}
            </li>
          ))}
        </ul>
      )}
      <p className={styles["soft"]}>
        {layerWords.screen} {awakeWords ?? alarm.words}{" "}
        {!tone && !speech && "Tone and voice are both off in Settings: the alarm is silent."}
      </p>
      <div className={styles["keys"]}>
        <Button pressed={alarm.on} onPress={alarm.on ? alarm.stop : alarm.start}>
          {alarm.on ? keys.stop : keys.start}
        </Button>
        <Button
          onPress={() => giveToCalendar(coming, fileName)}
          disabledReason={coming.length === 0 ? "No more alarms to come." : null}
        >
          {keys.calendar}
        </Button>
        {permission === "not-asked" && <Button onPress={askPermission}>Allow notifications</Button>}
      </div>
      <p className={styles["soft"]}>
        {layerWords.calendar} {permission === "granted" && layerWords.notice}{" "}
        <Link href={paths.ring}>Test the alarms on this device</Link>. {children}
      </p>
    </Card>
  );
}
