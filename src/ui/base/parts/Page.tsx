import { ArrowLeft } from "lucide-react";
import { useEffect, useRef, type ReactNode } from "react";
import { Link } from "wouter";
import sheet from "../styles/sheet.module.css";
import styles from "./Page.module.css";

export function Page(props: {
  readonly title: string;
  /** Path of the screen this one lies under. */
  readonly back?: string | undefined;
  readonly actions?: ReactNode;
  readonly children: ReactNode;
}) {
  const { title, back, actions, children } = props;
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    document.title = title === "Dipbook" ? title : `${title} · Dipbook`;
  }, [title]);
  useEffect(() => {
    // A screen reader is told where it has arrived; a field that took the focus for itself keeps it.
    if (document.activeElement === document.body) heading.current?.focus({ preventScroll: true });
  }, []);
  return (
    <div className={`${sheet["stack"]} ${styles["page"]}`}>
      <header className={`${sheet["row23"]} ${styles["head"]}`}>
        <div className={`${sheet["line2"]} ${styles["name"]}`}>
          {back !== undefined && (
            <Link href={back} className={styles["back"]} aria-label="Back">
              <ArrowLeft aria-hidden="true" />
            </Link>
          )}
          <h1 ref={heading} tabIndex={-1} className={styles["title"]}>
            {title}
          </h1>
        </div>
        {actions !== undefined && <div className={`${sheet["row"]} ${styles["actions"]}`}>{actions}</div>}
      </header>
      {children}
    </div>
  );
}
