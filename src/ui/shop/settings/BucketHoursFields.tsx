import { useSettings } from "../../base/state/live.ts";
import { startingSettings } from "../../../storage/settings.ts";
import { Button } from "../../base/parts/Button.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./BucketHoursFields.module.css";

const mostSpans = 6;

/** When the maker is at the bucket, each spell with its two ends. Written as it is changed. */
export function BucketHoursFields() {
  const [{ bucketHours }, change] = useSettings();
  const set = (place: number, part: "fromMin" | "toMin", text: string): void => {
    const minutes = minutesOf(text);
    if (minutes === null) return;
    const hours = bucketHours.map((span, i) => (i === place ? { ...span, [part]: minutes } : span));
    void change({ bucketHours: hours });
  };
  return (
    <fieldset className={`${sheet["stack2"]} ${css["hours"]}`}>
      <legend>Hours at the bucket</legend>
      {bucketHours.map(({ fromMin, toMin }, place) => (
        <div
          key={place}
          className={`${sheet["row23"]} ${sheet["middle"]} ${css["span"]}`}
          role="group"
          aria-label={`Time slot ${place + 1}`}
        >
          <label>
            from
            <input
              type="time"
              value={textOf(fromMin)}
              onChange={(event) => set(place, "fromMin", event.target.value)}
            />
          </label>
          <label>
            to
            <input
              type="time"
              value={textOf(toMin)}
              onChange={(event) => set(place, "toMin", event.target.value)}
            />
          </label>
          <Button
            kind="quiet"
            label={`Remove time slot ${place + 1}`}
            onPress={() => change({ bucketHours: bucketHours.filter((_, i) => i !== place) })}
          >
            Take out
          </Button>
        </div>
      ))}
      {bucketHours.length === 0 && <p>None set, so nothing can be proposed.</p>}
      <div className={sheet["row"]}>
        {bucketHours.length < mostSpans && (
          <Button onPress={() => change({ bucketHours: [...bucketHours, { fromMin: 720, toMin: 780 }] })}>
            Add a time slot
          </Button>
        )}
        <Button kind="quiet" onPress={() => change({ bucketHours: startingSettings.bucketHours })}>
          Reset to starting hours
        </Button>
      </div>
      <p className={sheet["soft"]}>By this device's clock, each day. A time slot may run past midnight.</p>
    </fieldset>
  );
}

function textOf(minutes: number): string {
  const two = (value: number): string => String(value).padStart(2, "0");
  return `${two(Math.floor(minutes / 60) % 24)}:${two(minutes % 60)}`;
}

function minutesOf(text: string): number | null {
  const found = /^(\d\d):(\d\d)/.exec(text);
  return found === null ? null : Number(found[1]) * 60 + Number(found[2]);
}
