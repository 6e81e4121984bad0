import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { useId } from "react";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { dayTime } from "../../base/format/time.ts";
import { Button } from "../../base/parts/Button.tsx";
import { localText, readLocalText } from "../../base/parts/localTime.ts";
import sheet from "../../base/styles/sheet.module.css";
import field from "../../base/parts/field.module.css";
import styles from "./pour.module.css";

const quarterMs = 15 * minuteMs;

/** A moment to come, moved by quarters of an hour or set on the clock. */
export function MomentField(props: {
  readonly label: string;
  readonly at: number;
  readonly onChange: (at: number) => void;
}) {
  const { label, at, onChange } = props;
  const { clock } = useShop();
  const { locale } = useFormat();
  const id = useId();
  return (
    <div className={styles["stack"]}>
      <p className={sheet["huge"]} role="status">
        {dayTime(at, clock(), locale)}
      </p>
      <div className={styles["keys"]}>
        <Button onPress={() => onChange(at - quarterMs)}>15 min earlier</Button>
        <Button onPress={() => onChange(at + quarterMs)}>15 min later</Button>
      </div>
      <div className={field["field"]}>
        <label htmlFor={id} className={field["label"]}>
          {label}
        </label>
        <input
          id={id}
          className={field["input"]}
          type="datetime-local"
          value={localText(at)}
          onChange={(event) => {
            const chosen = readLocalText(event.target.value);
            if (chosen !== null) onChange(chosen);
          }}
        />
      </div>
    </div>
  );
}
