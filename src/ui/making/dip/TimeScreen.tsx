import { useId, useState } from "react";
import { useFormat } from "../../base/state/useFormat.ts";
import { useShop } from "../../base/state/shop.tsx";
import { dayTime } from "../../base/format/time.ts";
import { localText } from "../../base/parts/localTime.ts";
import { BigKey } from "../../base/glove/BigKey.tsx";
import { BucketScreen, type Way } from "../../base/glove/BucketScreen.tsx";
import { backHour, backQuarter, lastTimeClockShowed } from "./clockSteps.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./TimeScreen.module.css";
import type { SignalMessage } from "../../base/glove/useSignals.ts";

/** "I did this at six": back by quarters and hours, or by the clock. */
export function TimeScreen(props: {
  readonly name: string;
  readonly coatNumber: number;
  readonly from: number;
  readonly told: SignalMessage | null;
  readonly out: Way;
  readonly onSave: (at: number) => Promise<boolean>;
  readonly onBack: () => void;
}) {
  const { name, coatNumber, from, told, out, onSave, onBack } = props;
  const { clock } = useShop();
  const { locale } = useFormat();
  const [at, setAt] = useState(from);
  const id = useId();
  const take = (text: string): void => {
    const shown = lastTimeClockShowed(text, clock());
    if (shown !== null) setAt(shown);
  };
  const save = async (): Promise<void> => {
    if (at === from || (await onSave(at))) onBack();
  };
  return (
    <BucketScreen title={`${name}: when?`} way={{ text: "Back", onPress: onBack }} out={out} told={told}>
      <div className={`${sheet["stack1"]} ${styles["clock"]}`}>
        <label htmlFor={id}>Coat {coatNumber} went on</label>
        <input
          id={id}
          type="time"
          value={localText(at).slice(11, 16)}
          onChange={(event) => take(event.target.value)}
        />
        <output>{dayTime(at, clock(), locale)}</output>
      </div>
      <BigKey onPress={() => setAt(backHour(at))}>1 h earlier</BigKey>
      <BigKey onPress={() => setAt(backQuarter(at))}>15 min earlier</BigKey>
      <BigKey main onPress={save}>
        Set {dayTime(at, clock(), locale)}
      </BigKey>
    </BucketScreen>
  );
}
