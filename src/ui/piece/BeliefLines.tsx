import type { CoatBelief } from "../../logbook/standing.ts";
import { useFormat } from "../app/useFormat.ts";
import { methodWords, saidWords, unsaidWords } from "../format/saidWords.ts";
import { Ago } from "../parts/Ago.tsx";
import styles from "./BeliefLines.module.css";

/** Each check of a coat: by what, what it said with its error, and whether it goes with the rest. */
export function BeliefLines(props: Pick<CoatBelief, "heard" | "unheard" | "conflicts">) {
  const format = useFormat();
  const { heard, unheard, conflicts } = props;
  return (
    <ul className={styles["lines"]}>
      {heard.toReversed().map(({ seenId, at, said }) => {
        const conflict = conflicts.find((one) => one.seenId === seenId);
        return (
          <li key={`${seenId} ${said.by}`}>
            <strong>{methodWords[said.by]}</strong> <Ago at={at} />: {saidWords(said, format)}.
            {conflict !== undefined && (
              <span className={styles["conflict"]}>
                {conflict.why === "apart"
                  ? ` It does not go with the rest (${format.number(conflict.apart, 1)} standard deviations off): check it, or strike it.`
                  : " With it less is known than without: check it, or strike it."}
              </span>
            )}
          </li>
        );
      })}
      {unheard.toReversed().map(({ seenId, at, why }) => (
        <li key={`${seenId} ${why.code}`} className={styles["unheard"]}>
          A check <Ago at={at} /> says nothing: {unsaidWords(why, format)}.
        </li>
      ))}
    </ul>
  );
}
