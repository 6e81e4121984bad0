import type { FindingText } from "../../base/format/findingSay.ts";
import { LevelMark } from "../../base/parts/LevelMark.tsx";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./run.module.css";

/** A finding of a plan or a run, in words. */
export function FindingBlock({
  level,
  text: { title, says, remedy },
}: {
  readonly level: "hold" | "watch" | "note";
  readonly text: FindingText;
}) {
  return (
    <article className={`${sheet["lines"]} ${styles["finding"]}`}>
      <h3>
        <LevelMark level={level} />
        {title}
      </h3>
      <p>{says}</p>
      {remedy !== "" && (
        <p>
          <strong>What to do: </strong>
          {remedy}
        </p>
      )}
    </article>
  );
}
