import {
  useEffect,
  useRef,
  useState,
  type CSSProperties,
  type KeyboardEvent,
  type PointerEvent,
  type ReactNode,
} from "react";
import styles from "./HoldButton.module.css";
import { swallowGhostClick } from "./ghostClick.ts";

/** For what can't be taken back: acts only after it has been held down. */
export function HoldButton(props: {
  readonly onHeld: () => unknown;
  readonly children: ReactNode;
  readonly holdMs?: number | undefined;
}) {
  const { onHeld, children, holdMs = 800 } = props;
  const timer = useRef<ReturnType<typeof setTimeout> | null>(null);
  const [held, setHeld] = useState(false);
  const letGo = (): void => {
    if (timer.current !== null) clearTimeout(timer.current);
    timer.current = null;
    setHeld(false);
  };
  const begin = (): void => {
    if (timer.current !== null) return;
    setHeld(true);
    timer.current = setTimeout(() => {
      letGo();
      swallowGhostClick();
      onHeld();
    }, holdMs);
  };
  useEffect(() => () => clearTimeout(timer.current ?? undefined), []);
  const isPressKey = (event: KeyboardEvent): boolean => event.key === " " || event.key === "Enter";
  return (
    <button
      type="button"
      className={styles["button"]}
      data-held={held || undefined}
      style={{ "--hold-for": `${holdMs}ms` } as CSSProperties}
      onPointerDown={(event: PointerEvent) => {
        if (event.isPrimary && event.button === 0) begin();
      }}
      onPointerUp={letGo}
      onPointerLeave={letGo}
      onPointerCancel={letGo}
      onBlur={letGo}
      onContextMenu={(event) => event.preventDefault()}
      onKeyDown={(event) => {
        if (!isPressKey(event)) return;
        event.preventDefault();
        if (!event.repeat) begin();
      }}
      onKeyUp={(event) => {
        if (isPressKey(event)) letGo();
      }}
    >
      <span className={styles["fill"]} aria-hidden="true" />
      <span className={styles["label"]}>
        {children}
        <small>hold to confirm</small>
      </span>
    </button>
  );
}
