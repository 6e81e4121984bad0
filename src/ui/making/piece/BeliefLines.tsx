import type { CoatBelief } from "../../../logbook/piece/standing.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { methodWords, saidWords, unsaidWords } from "../../base/format/saidWords.ts";
import { Ago } from "../../base/parts/Ago.tsx";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./BeliefLines.module.css";

const weights: readonly string[] = ["target-mass", "weight-loss", "approach"];
const isWeight = (by: string): boolean => weights.includes(by);

/** So many of the newest checks stand open; the others fold. */
const shownOpen = 2;

type Checks = Pick<CoatBelief, "heard" | "unheard" | "conflicts">;

/** Each check of a coat, the newest first: by what, what it said with its error, and whether it goes with the rest. */
export function BeliefLines({ heard, unheard, conflicts }: Checks) {
  const place = Math.max(0, heard.length - shownOpen);
  const [others, first] = [heard.slice(0, place), heard.slice(place)];
  const unheardPlace = Math.max(0, unheard.length - (shownOpen - first.length));
  const [unheardOthers, unheardFirst] = [unheard.slice(0, unheardPlace), unheard.slice(unheardPlace)];
  const count = others.length + unheardOthers.length;
  return (
    <>
      <Lines heard={first} unheard={unheardFirst} conflicts={conflicts} />
      {count > 0 && (
        <details>
          <summary>{count === 1 ? "1 more check" : `${count} more checks`}</summary>
          <Lines heard={others} unheard={unheardOthers} conflicts={conflicts} />
        </details>
      )}
    </>
  );
}

function Lines({ heard, unheard, conflicts }: Checks) {
  const format = useFormat();
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
