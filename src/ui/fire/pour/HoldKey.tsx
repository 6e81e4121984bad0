import { useEffect, useRef, useState, type ReactNode } from "react";
import sheet from "../../base/styles/sheet.module.css";
import big from "../../base/glove/BigKey.module.css";
import styles from "./pour.module.css";

const holdMs = 1_200;

/** A key that acts only when it is held down, for what must not happen by a slip. From a keyboard it is pressed. */
export function HoldKey(props: {
  readonly onHeld: () => unknown;
  readonly under: ReactNode;
  readonly children: ReactNode;
}) {
  const { onHeld, under, children } = props;
  const [isHeld, setHeld] = useState(false);
  const act = useRef(onHeld);
  useEffect(() => {
    act.current = onHeld;
  });
  useEffect(() => {
    if (!isHeld) return undefined;
    const timer = setTimeout(() => {
      setHeld(false);
      act.current();
    }, holdMs);
    return () => clearTimeout(timer);
  }, [isHeld]);
  const letGo = (): void => setHeld(false);
  return (
    <button
      type="button"
      className={`${sheet["bucketKey"]} ${sheet["press"]} ${big["key"]} ${styles["holdKey"]}`}
      data-held={isHeld || undefined}
      onPointerDown={(event) => setHeld(event.isPrimary && event.button === 0)}
      onPointerUp={letGo}
      onPointerLeave={letGo}
      onPointerCancel={letGo}
      onContextMenu={(event) => event.preventDefault()}
      // A press with no pointer: a key, a switch, a screen reader.
      onClick={(event) => (event.detail === 0 ? onHeld() : undefined)}
    >
      <span className={big["verb"]}>{children}</span>
      <span className={big["under"]}>{under}</span>
    </button>
  );
}
