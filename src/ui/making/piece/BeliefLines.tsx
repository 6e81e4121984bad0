import type { CoatBelief } from "../../../logbook/piece/standing.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { methodWords, saidWords, unsaidWords } from "../../base/format/saidWords.ts";
import { Ago } from "../../base/parts/Ago.tsx";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./BeliefLines.module.css";

const weights: readonly string[] = ["target-mass", "weight-loss", "approach"];
const isWeight = (by: string): boolean => weights.includes(by);

/** Each check of a coat: by what, what it said with its error, and whether it goes with the rest. */
export function BeliefLines(props: Pick<CoatBelief, "heard" | "unheard" | "conflicts">) {
  const format = useFormat();
  const { heard, unheard, conflicts } = props;
  return (
    <ul className={`${sheet["stack2"]} ${sheet["bullets"]}`}>
      {heard.toReversed().map(({ seenId, at, said }) => {
        const conflict = conflicts.find((one) => one.seenId === seenId);
        return (
          <li key={`${seenId} ${said.by}`}>
            <strong>{methodWords[said.by]}</strong> <Ago at={at} />: {saidWords(said, format)}.
            {conflict !== undefined && (
              <span className={styles["conflict"]}>
                {isWeight(said.by)
                  ? " This weight doesn’t fit the others. Check it or delete it."
                  : " This check doesn’t fit the others. Check it or delete it."}
              </span>
            )}
          </li>
        );
      })}
      {unheard.toReversed().map(({ seenId, at, why }) => (
        <li key={`${seenId} ${why.code}`} className={sheet["pale"]}>
          {why.code === "nothing-before" ? (
            <>
              First weighing saved <Ago at={at} />. Weigh again later to compare.
            </>
          ) : (
            <>
              The check <Ago at={at} /> can't be used: {unsaidWords(why, format)}.
            </>
          )}
        </li>
      ))}
    </ul>
  );
}
