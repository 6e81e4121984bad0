import { useId, useState, type ReactNode } from "react";
import sheet from "../../base/styles/sheet.module.css";
import css from "./Fold.module.css";

/** What the review keeps behind a line until it is asked for. On paper all of it stands. */
export function Fold(props: {
  readonly title: ReactNode;
  readonly level?: "h2" | "h3" | undefined;
  readonly children: ReactNode;
}) {
  const { title, level: Heading = "h3", children } = props;
  const [isOpen, setIsOpen] = useState(false);
  const id = useId();
  return (
    <div className={`${sheet["stack2"]} ${css["fold"]}`}>
      <Heading className={css["title"]}>
        <button
          type="button"
          className={`${sheet["press"]} ${css["key"]}`}
          aria-expanded={isOpen}
          aria-controls={id}
          onClick={() => setIsOpen(!isOpen)}
        >
          <span>{title}</span>
        </button>
      </Heading>
      <div id={id} className={isOpen ? "" : css["closed"]}>
        {children}
      </div>
    </div>
  );
}
