import { useId, type ReactNode } from "react";
import sheet from "../styles/sheet.module.css";
import styles from "./Card.module.css";

export function Card(props: {
  readonly children: ReactNode;
  readonly title?: string | undefined;
  readonly tone?: "plain" | "hold" | "watch" | "note" | "clear" | "ember" | undefined;
}) {
  const { children, title, tone = "plain" } = props;
  const id = useId();
  return (
    <section
      className={`${sheet["stack3"]} ${sheet["panel"]} ${styles["card"]} ${styles[tone]}`}
      aria-labelledby={title === undefined ? undefined : id}
    >
      {title !== undefined && (
        <h2 id={id} className={styles["title"]}>
          {title}
        </h2>
      )}
      {children}
    </section>
  );
}
