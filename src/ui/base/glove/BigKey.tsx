import type { ReactNode } from "react";
import { usePress } from "../parts/usePress.ts";
import sheet from "../styles/sheet.module.css";
import styles from "./BigKey.module.css";

/** A key for a wet glove: a verb, and under it what it means. */
export function BigKey(props: {
  readonly main?: boolean | undefined;
  readonly onPress: () => unknown;
  readonly under?: ReactNode;
  readonly disabled?: boolean | undefined;
  readonly children: ReactNode;
}) {
  const { main = false, onPress, under, disabled = false, children } = props;
  const press = usePress(onPress, { debounceMs: 700, disabled });
  return (
    <button
      type="button"
      className={`${sheet["bucketKey"]} ${sheet["press"]} ${styles["key"]} ${main ? styles["main"] : ""}`}
      aria-disabled={disabled || undefined}
      data-main={(main && !disabled) || undefined}
      {...press}
    >
      <span className={styles["verb"]}>{children}</span>
      {under !== undefined && <span className={styles["under"]}>{under}</span>}
    </button>
  );
}
