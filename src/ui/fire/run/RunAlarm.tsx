import { Link } from "wouter";
import sheet from "../../base/styles/sheet.module.css";
import { calendarFile } from "../../../device/calendarFile.ts";
import { handOver } from "../../../device/share.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useSettings } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { prodId } from "../../base/alarm/dueCalendar.ts";
import { layerWords } from "../../base/alarm/ringLabel.ts";
import { useNotifyPermission } from "../../base/alarm/useNotifyPermission.ts";
import { useScreenAlarm } from "../../base/alarm/useScreenAlarm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { instructionWords } from "./instructionWords.ts";
import type { StepDue } from "./runDues.ts";

/** What rings when the next thing is to be done, each way with what it can promise. */
export function RunAlarm({ dues, names }: { readonly dues: readonly StepDue[]; readonly names: string }) {
  const { clock } = useShop();
  const [{ calendarSequence, tone, speech }, changeSettings] = useSettings();
  const alarm = useScreenAlarm();
  const [permission, askPermission] = useNotifyPermission();
  const tell = useFleeting((fleeting) => fleeting.say);
  const coming = dues.filter(({ dueMs }) => dueMs > clock());

  const toCalendar = async (): Promise<void> => {
    const now = clock();
    const sequence = calendarSequence + 1;
    await changeSettings({ calendarSequence: sequence });
    const events = coming.map(({ id, dueMs, code }) => ({
      uid: `${id}@dipbook`,
      sequence,
      startMs: dueMs,
      durationMin: 10,
      summary: `Kiln, ${names}: ${instructionWords[code].short}`,
      description: `${instructionWords[code].title}. ${instructionWords[code].says} The time is a plan's: look at the kiln.`,
    }));
    const blob = new Blob([calendarFile({ events, now, prodId })], { type: "text/calendar;charset=utf-8" });
    const result = await handOver({ blob, name: "kiln-run.ics", by: "download" });
    tell(
      result === "failed"
        ? "The calendar file could not be made on this device."
        : "Open the file and add it to your calendar: only then does it ring. When the run is late, put it there again.",
      result === "failed" ? "refused" : "done",
    );
  };

  return (
    <Card title="What rings">
      <p className={sheet["soft"]}>
        {layerWords.screen} {alarm.words}{" "}
        {!tone && !speech && "Tone and voice are both switched off in Settings: nothing would be heard."}
      </p>
      <div className={`${sheet["row"]} ${sheet["middle"]}`}>
        <Button pressed={alarm.on} onPress={alarm.on ? alarm.stop : alarm.start}>
          {alarm.on ? "Stop keeping the screen on" : "Keep the screen on and ring here"}
        </Button>
        <Button
          onPress={toCalendar}
          disabledReason={coming.length === 0 ? "Nothing more to be reminded of." : null}
        >
          Calendar file of the next steps
        </Button>
        {permission === "not-asked" && <Button onPress={askPermission}>Allow notifications</Button>}
      </div>
      <p className={sheet["soft"]}>
        {layerWords.calendar} {permission === "granted" && layerWords.notice}{" "}
        <Link href={paths.ring}>Try what rings on this device</Link>. It reminds; it does not watch: a hot
        kiln needs its own controller and a person.
      </p>
    </Card>
  );
}
