import { useFormat } from "../../base/state/useFormat.ts";
import { soonTime } from "../../base/format/time.ts";
import type { DecisionPast, GoStanding } from "../../../rules/pourGo.ts";
import { lapseTexts } from "./goWords.ts";
import { lineName } from "./sheetWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./pour.module.css";

/** Every decision so far, newest first, what was passed for it and why it lapsed. */
export function GoPast({
  past,
  known,
  now,
}: {
  readonly past: readonly DecisionPast[];
  readonly known: GoStanding["known"];
  readonly now: number;
}) {
  const format = useFormat();
  const when = (at: number): string => soonTime(at, now, format.locale);
  if (past.length === 0) return null;
  return (
    <ol className={`${sheet["stack3"]} ${sheet["list"]} ${styles["list"]}`} aria-label="Decisions">
      {past.toReversed().map(({ decided, lapse }) => (
        <li key={decided.id}>
          <span>
            <strong>{decided.go ? "Go" : "No-go"}</strong> by {decided.name} {when(decided.at)}
            {lapse === null
              ? "."
              : `, lapsed ${when(lapse.at)}: ${lapseTexts(lapse.because, known, { format, now }).join("; ")}.`}
          </span>
          {decided.passed.map(({ item, reason }) => (
            <span key={item} className={`${sheet["soft"]} ${styles["soft"]}`}>
              {lineName(item)}: passed, “{reason}”
            </span>
          ))}
        </li>
      ))}
    </ol>
  );
}
