import type { ReactNode } from "react";
import { Link } from "wouter";
import sheet from "../styles/sheet.module.css";
import styles from "./Button.module.css";

/** A link that looks and measures like a button, for going somewhere. */
export function LinkButton(props: {
  readonly href: string;
  readonly kind?: "primary" | "secondary" | "quiet" | undefined;
  readonly size?: "normal" | "big" | undefined;
  readonly children: ReactNode;
}) {
  const { href, kind = "secondary", size = "normal", children } = props;
  return (
    <Link
      href={href}
      className={`${sheet["press"]} ${sheet["link"]} ${styles["button"]} ${styles["link"]} ${styles[kind]} ${styles[size]}`}
    >
      {children}
    </Link>
  );
}
