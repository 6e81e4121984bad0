import { useId, type ReactNode } from "react";
import sheet from "../styles/sheet.module.css";
import styles from "./Button.module.css";
import { usePress } from "./usePress.ts";

type ButtonProps = {
  readonly kind?: "primary" | "secondary" | "quiet" | "danger" | undefined;
  readonly size?: "normal" | "big" | undefined;
  /** May return a promise: while it is under way the button takes no second press. */
  readonly onPress: () => unknown;
  /** Why it can't be pressed now, told under the button; null when it can. */
  readonly disabledReason?: string | null | undefined;
  readonly debounceMs?: number | undefined;
  readonly pressed?: boolean | undefined;
  readonly label?: string | undefined;
  readonly children: ReactNode;
};

export function Button(props: ButtonProps) {
  const {
    kind = "secondary",
    size = "normal",
    onPress,
    disabledReason = null,
    debounceMs,
    pressed,
    label,
  } = props;
  const disabled = disabledReason !== null;
  const press = usePress(onPress, { disabled, debounceMs });
  const reasonId = useId();
  return (
    <span className={size === "big" ? styles["wide"] : styles["box"]}>
      <button
        type="button"
        className={`${sheet["press"]} ${sheet["link"]} ${styles["button"]} ${styles[kind]} ${styles[size]}`}
        aria-disabled={disabled || undefined}
        aria-describedby={disabled ? reasonId : undefined}
        aria-pressed={pressed}
        aria-label={label}
        {...press}
      >
        {props.children}
      </button>
      {disabled && (
        <span id={reasonId} className={sheet["soft"]}>
          {disabledReason}
        </span>
      )}
    </span>
  );
}
