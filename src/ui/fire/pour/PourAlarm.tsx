import { Link } from "wouter";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./pour.module.css";
import { calendarFile } from "../../../device/calendarFile.ts";
import { handOver } from "../../../device/share.ts";
import type { Pour } from "../../../logbook/fire/fireStates.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useSettings } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { prodId } from "../../base/alarm/dueCalendar.ts";
import { layerWords } from "../../base/alarm/ringLabel.ts";
import { useNotifyPermission } from "../../base/alarm/useNotifyPermission.ts";
import { useScreenAlarm } from "../../base/alarm/useScreenAlarm.ts";
import { soonTime } from "../../base/format/time.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import type { PourDue } from "./pourDues.ts";

const shown = 4;

/** What rings next, and what each way of ringing can promise. */
export function PourAlarm({
  pour,
  dues,
  awakeWords,
}: {
  readonly pour: Pour;
  readonly dues: readonly PourDue[];
  readonly awakeWords: string;
}) {
  const { clock } = useShop();
  const { locale } = useFormat();
  const [{ calendarSequence, tone, speech }, changeSettings] = useSettings();
  const alarm = useScreenAlarm();
  const [permission, askPermission] = useNotifyPermission();
  const tell = useFleeting((fleeting) => fleeting.say);
  const now = clock();
  const coming = dues.filter(({ dueMs }) => dueMs > now);

  const toCalendar = async (): Promise<void> => {
    const sequence = calendarSequence + 1;
    await changeSettings({ calendarSequence: sequence });
    const events = coming.map(({ id, dueMs, title, says }) => ({
      uid: `${id}@dipbook`,
      sequence,
      startMs: dueMs,
      durationMin: 5,
      summary: title,
      description: `${says} The time is a plan's: when something is late, put it in the calendar again.`,
    }));
    const blob = new Blob([calendarFile({ events, now, prodId })], { type: "text/calendar;charset=utf-8" });
    const result = await handOver({ blob, name: `pour-${pour.id.slice(-6)}.ics`, by: "download" });
    tell(
      result === "failed"
        ? "The calendar file could not be made on this device."
        : "Open the file and add it to your calendar: only then does it ring.",
      result === "failed" ? "refused" : "done",
    );
  };

  return (
    <Card title="What rings">
      {coming.length === 0 ? (
        <p>Nothing more to be reminded of.</p>
      ) : (
        <ul>
          {coming.slice(0, shown).map(({ id, dueMs, title }) => (
            <li key={id}>
              {soonTime(dueMs, now, locale)} {title}
            </li>
          ))}
        </ul>
      )}
      <p className={`${sheet["soft"]} ${styles["soft"]}`}>
        {layerWords.screen} {awakeWords}{" "}
        {!tone && !speech && "Tone and voice are both switched off in Settings: nothing would be heard."}
      </p>
      <div className={styles["keys"]}>
        <Button pressed={alarm.on} onPress={alarm.on ? alarm.stop : alarm.start}>
          {alarm.on ? "Stop ringing here" : "Let it ring here"}
        </Button>
        <Button
          onPress={toCalendar}
          disabledReason={coming.length === 0 ? "Nothing more to be reminded of." : null}
        >
          Calendar file
        </Button>
        {permission === "not-asked" && <Button onPress={askPermission}>Allow notifications</Button>}
      </div>
      <p className={`${sheet["soft"]} ${styles["soft"]}`}>
        {layerWords.calendar} {permission === "granted" && layerWords.notice}{" "}
        <Link href={paths.ring}>Try what rings on this device</Link>. It reminds; it does not watch fire or
        metal.
      </p>
    </Card>
  );
}
