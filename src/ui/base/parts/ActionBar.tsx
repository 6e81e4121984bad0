import type { ReactNode } from "react";
import styles from "./ActionBar.module.css";

/** A page with an action bar in it: its parts under one another, the bar at the foot of the screen. */
export function WithActionBar({ children }: { readonly children: ReactNode }) {
  return <div className={styles["page"]}>{children}</div>;
}

/**
 * The bar that stays at the foot of the screen, over the tabs, while its page is read. It takes its own room at the end of
 * the page, so it never lies over the last line. On a screen too low for it, as at 200 % zoom, it stands in its place.
 */
export function ActionBar({ children }: { readonly children: ReactNode }) {
  return (
    <div className={styles["bar"]} data-action-bar>
      {children}
    </div>
  );
}
