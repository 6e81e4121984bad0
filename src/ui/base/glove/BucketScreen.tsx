import { useEffect, type ReactNode } from "react";
import { Link } from "wouter";
import { useBareFrame } from "../state/useBareFrame.ts";
import { usePress } from "../parts/usePress.ts";
import styles from "./BucketScreen.module.css";
import type { SignalMessage } from "./useSignals.ts";

type Way = { readonly text: string } & ({ readonly href: string } | { readonly onPress: () => void });

/** A screen for wet gloves: one small link away, a line that says what was done, and few big keys. */
export function BucketScreen(props: {
  readonly title: string;
  readonly sub?: string | undefined;
  readonly way: Way;
  readonly told: SignalMessage | null;
  readonly children: ReactNode;
}) {
  const { title, sub, way, told, children } = props;
  useBareFrame(true);
  useEffect(() => {
    document.title = `${title} · Dipbook`;
  }, [title]);
  return (
    <div className={styles["screen"]}>
      <header className={styles["head"]}>
        <div className={styles["titles"]}>
          <h1 className={styles["title"]}>{title}</h1>
          {sub !== undefined && <p className={styles["sub"]}>{sub}</p>}
        </div>
        {"href" in way ? (
          <Link href={way.href} className={styles["way"]}>
            {way.text}
          </Link>
        ) : (
          <WayKey onPress={way.onPress}>{way.text}</WayKey>
        )}
      </header>
      <p className={`${styles["told"]} ${told === null ? "" : styles[told.tone]}`} role="status">
        <span>{told?.words ?? ""}</span>
      </p>
      <div className={styles["keys"]}>{children}</div>
      {told !== null && <div key={told.turn} className={`${styles["flash"]} ${styles[told.tone]}`} />}
    </div>
  );
}

function WayKey({ onPress, children }: { readonly onPress: () => void; readonly children: ReactNode }) {
  const press = usePress(onPress, { debounceMs: 700 });
  return (
    <button type="button" className={styles["way"]} {...press}>
      {children}
    </button>
  );
}
