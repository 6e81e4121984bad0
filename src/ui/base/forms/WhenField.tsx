import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { useId, useState } from "react";
import { useShop } from "../state/shop.tsx";
import { useFormat } from "../state/useFormat.ts";
import { dayTime } from "../format/time.ts";
import { Button } from "../parts/Button.tsx";
import field from "../parts/field.module.css";
import styles from "./WhenField.module.css";
import { localText, readLocalText } from "../parts/localTime.ts";

const quarterMs = 15 * minuteMs;

/** When it happened: now (null) unless said otherwise; never in the future. */
export function WhenField(props: {
  readonly label: string;
  readonly at: number | null;
  readonly onChange: (at: number | null) => void;
}) {
  const { label, at, onChange } = props;
  const { clock } = useShop();
  const { locale } = useFormat();
  const [open, setOpen] = useState(false);
  const id = useId();
  const now = clock();
  const back = (ms: number): void => onChange((at ?? clock()) - ms);
  const take = (text: string): void => {
    const chosen = readLocalText(text);
    if (chosen !== null) onChange(Math.min(chosen, clock()));
  };
  return (
    <fieldset className={field["field"]}>
      <legend className={field["label"]}>{label}</legend>
      <output className={styles["shown"]}>{at === null ? "now" : dayTime(at, now, locale)}</output>
      <div className={styles["keys"]}>
        <Button pressed={at === null} onPress={() => onChange(null)}>
          Now
        </Button>
        <Button onPress={() => back(quarterMs)}>15 min earlier</Button>
        <Button onPress={() => back(4 * quarterMs)}>1 h earlier</Button>
        <Button pressed={open} onPress={() => setOpen(!open)}>
          Choose…
        </Button>
      </div>
      {open && (
        <>
          <label htmlFor={id} className={field["hint"]}>
            Day and time
          </label>
          <input
            id={id}
            className={field["input"]}
            type="datetime-local"
            value={localText(at ?? now)}
            max={localText(now)}
            onChange={(event) => take(event.target.value)}
          />
        </>
      )}
    </fieldset>
  );
}
