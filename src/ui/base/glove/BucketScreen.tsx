import { useEffect, useRef, type MouseEvent, type ReactNode } from "react";
import { Link } from "wouter";
import { useBareFrame } from "../state/useBareFrame.ts";
import { usePress } from "../parts/usePress.ts";
import sheet from "../styles/sheet.module.css";
import styles from "./BucketScreen.module.css";
import { useFootKeys } from "./useFootKeys.ts";
import type { SignalMessage } from "./useSignals.ts";

export type Way = { readonly text: string } & (
  { readonly href: string } | { readonly onPress: () => unknown; readonly isMain?: boolean }
);

/** A screen for wet gloves: a line that says what was done, few big keys, and the ways off it always in sight. */
export function BucketScreen(props: {
  readonly title: string;
  readonly sub?: string | undefined;
  readonly way: Way | null;
  /** The way out of all of it; with it the ways stand in a bar at the foot of the screen. */
  readonly out?: Way | undefined;
  /** A key beside the ways in that bar. */
  readonly beside?: ReactNode;
  /** What a foot switch does, where that is not the one main key. */
  readonly onMain?: (() => unknown) | undefined;
  readonly told: SignalMessage | null;
  readonly children: ReactNode;
}) {
  const { title, sub, way, out, beside, onMain, told, children } = props;
  const screen = useRef<HTMLDivElement>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  useBareFrame(true);
  useFootKeys(screen, onMain);
  useEffect(() => {
    document.title = `${title} · Dipbook`;
    // The key that led here has another meaning now: a foot switch begins at the main key again.
    if (screen.current?.contains(document.activeElement) === true)
      heading.current?.focus({ preventScroll: true });
  }, [title]);
  return (
    <div ref={screen} className={styles["screen"]} onMouseDown={keepFocusFree} role="presentation">
      <header className={styles["head"]}>
        <div className={styles["titles"]}>
          <h1 ref={heading} tabIndex={-1} className={styles["title"]}>
            {title}
          </h1>
          {sub !== undefined && <p className={styles["sub"]}>{sub}</p>}
        </div>
        {out === undefined && way !== null && <WayKey way={way} look={styles["way"]} />}
      </header>
      <p className={`${styles["told"]} ${told === null ? "" : styles[told.tone]}`} role="status">
        <span>{told?.words ?? ""}</span>
      </p>
      <div className={styles["keys"]}>{children}</div>
      {out !== undefined && (
        <footer className={styles["foot"]}>
          {beside}
          {way !== null && <WayKey way={way} look={footKey} />}
          <WayKey way={out} look={footKey} />
        </footer>
      )}
      {told !== null && <div key={told.turn} className={`${styles["flash"]} ${styles[told.tone]}`} />}
    </div>
  );
}

const footKey = `${sheet["bucketKey"]} ${styles["footKey"]}`;

/** A key that kept the focus after a touch would take the next press of the foot switch for itself. */
function keepFocusFree(event: MouseEvent): void {
  if (event.target instanceof Element && event.target.closest("button, a") !== null) event.preventDefault();
}

function WayKey({ way, look }: { readonly way: Way; readonly look: string | undefined }) {
  return "href" in way ? (
    <Link href={way.href} className={look}>
      {way.text}
    </Link>
  ) : (
    <WayButton onPress={way.onPress} isMain={way.isMain === true} look={look}>
      {way.text}
    </WayButton>
  );
}

function WayButton(props: {
  readonly onPress: () => unknown;
  readonly isMain: boolean;
  readonly look: string | undefined;
  readonly children: ReactNode;
}) {
  const press = usePress(props.onPress, { debounceMs: 700 });
  return (
    <button
      type="button"
      className={`${sheet["press"]} ${props.look} ${props.isMain ? styles["lead"] : ""}`}
      data-main={props.isMain || undefined}
      {...press}
    >
      {props.children}
    </button>
  );
}
