import type { ReactNode } from "react";
import styles from "./Empty.module.css";

/** Nothing here yet, and what to do about it. */
export function Empty({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <div className={styles["empty"]}>
      <h2>{title}</h2>
      {children}
    </div>
  );
}
