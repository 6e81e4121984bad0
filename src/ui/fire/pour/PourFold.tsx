import { useState, type ReactNode } from "react";
import styles from "./pour.module.css";

/** What is not needed at this minute: folded on a phone, open where the screen has room for it. */
export function PourFold({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  const [isOpen] = useState(() => matchMedia("(min-width: 900px)").matches);
  return (
    <details className={styles["fold"]} open={isOpen}>
      <summary>{title}</summary>
      <div className={styles["sheet"]}>{children}</div>
    </details>
  );
}
