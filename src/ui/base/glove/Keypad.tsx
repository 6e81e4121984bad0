import { Delete, Minus, Plus } from "lucide-react";
import { useEffect, useRef, type ReactNode } from "react";
import { useFormat } from "../state/useFormat.ts";
import sheet from "../styles/sheet.module.css";
import styles from "./Keypad.module.css";
import { padPressed, padStepped, type PadKey, type PadText } from "./keypadText.ts";
import { usePress } from "../parts/usePress.ts";
import { useRepeat } from "../parts/useRepeat.ts";
import { numberFormat } from "../format/formatters.ts";

export type PadStep = {
  readonly step: number;
  /** Where the first step from an empty display lands. */
  readonly from: number;
  readonly digits: number;
  readonly low: number;
  readonly high: number;
};

/**
 * A number from zero up by big keys, for wet gloves: the system's keyboard stays away. Text in and out is what stands on the
 * display, in the shown unit, with a point as its mark.
 */
export function Keypad(props: {
  readonly label: string;
  readonly unit: string;
  readonly value: PadText;
  readonly onChange: (value: PadText) => void;
  readonly stepping: PadStep;
  /** What Enter of a keyboard or a foot switch does. */
  readonly onEnter?: (() => void) | undefined;
}) {
  const { label, unit, value, onChange, stepping, onEnter } = props;
  const { locale } = useFormat();
  const mark = numberFormat(locale).format(0.5).replaceAll(/\d/g, "");
  const step = (sign: 1 | -1): void =>
    onChange(padStepped(value.text, { ...stepping, step: sign * stepping.step }));
  const less = useRepeat(() => step(-1));
  const more = useRepeat(() => step(1));
  const press = (key: PadKey): void => onChange(padPressed(value, key));
  useKeyboard({ press, step, enter: onEnter });
  const stepText = stepping.step
    .toFixed(stepping.step < 0.1 ? 2 : stepping.step < 1 ? 1 : 0)
    .replace(".", mark);
  return (
    <div className={sheet["stack"]} role="group" aria-label={label} data-pad>
      <div className={styles["top"]}>
        <button
          type="button"
          className={`${sheet["bucketKey"]} ${sheet["press"]} ${styles["key"]}`}
          aria-label={`${label}: ${stepText} less`}
          {...less}
        >
          <Minus aria-hidden="true" />
          <small>{stepText}</small>
        </button>
        <output
          className={`${styles["display"]} ${value.text === "" ? styles["empty"] : ""} ${value.isWhole ? styles["whole"] : ""}`}
          aria-label={label}
        >
          <span>
            {value.text === "" ? "–" : value.text.replace(".", mark)} <small>{unit}</small>
          </span>
        </output>
        <button
          type="button"
          className={`${sheet["bucketKey"]} ${sheet["press"]} ${styles["key"]}`}
          aria-label={`${label}: ${stepText} more`}
          {...more}
        >
          <Plus aria-hidden="true" />
          <small>{stepText}</small>
        </button>
      </div>
      <div className={styles["keys"]}>
        {digits.map((digit) => (
          <Key key={digit} onPress={() => press(digit)}>
            {digit}
          </Key>
        ))}
        <Key label="Decimal mark" onPress={() => press("mark")}>
          {mark}
        </Key>
        <Key onPress={() => press("0")}>0</Key>
        <Key label="Back by one" onPress={() => press("back")}>
          <Delete aria-hidden="true" size={30} />
        </Key>
      </div>
    </div>
  );
}

const digits = ["1", "2", "3", "4", "5", "6", "7", "8", "9"] as const;

function Key(props: { readonly label?: string; readonly onPress: () => void; readonly children: ReactNode }) {
  const press = usePress(props.onPress);
  return (
    <button
      type="button"
      className={`${sheet["bucketKey"]} ${sheet["press"]} ${styles["key"]}`}
      aria-label={props.label}
      {...press}
    >
      {props.children}
    </button>
  );
}

type Doing = {
  readonly press: (key: PadKey) => void;
  readonly step: (sign: 1 | -1) => void;
  readonly enter: (() => void) | undefined;
};

/** A keyboard beside the phone writes on the display too. */
function useKeyboard(doing: Doing): void {
  const latest = useRef(doing);
  useEffect(() => {
    latest.current = doing;
  });
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      const { press, step, enter } = latest.current;
      if (/^\d$/.test(event.key)) press(event.key as PadKey);
      else if (event.key === "." || event.key === ",") press("mark");
      else if (event.key === "Backspace") press("back");
      else if (event.key === "ArrowUp") step(1);
      else if (event.key === "ArrowDown") step(-1);
      // On a key that has the focus Enter presses that key.
      else if (event.key === "Enter" && !(event.target instanceof HTMLButtonElement)) enter?.();
      else return;
      event.preventDefault();
    };
    window.addEventListener("keydown", onKey);
    return () => window.removeEventListener("keydown", onKey);
  }, []);
}
