import type { Finding, Level } from "../../../rules/finding.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { findingText } from "../../base/format/findingWords.ts";
import { LevelMark } from "../../base/parts/LevelMark.tsx";
import { holdKey } from "./reviewForm.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./ReviewPage.module.css";

const levels: readonly Level[] = ["hold", "watch", "note"];

/** Findings by level, worst first, each with its figures and what to do. */
export function FindingLines({ findings }: { readonly findings: readonly Finding[] }) {
  const format = useFormat();
  return (
    <section className={`${sheet["stack2"]} ${css["section"]}`} aria-labelledby="review-findings">
      <h2 id="review-findings">Findings</h2>
      {findings.length === 0 && <p>None.</p>}
      <ul className={`${sheet["stack3"]} ${sheet["list"]} ${css["findings"]}`}>
        {levels.flatMap((level) =>
          findings
            .filter((finding) => finding.level === level)
            .map((finding) => {
              const { title, says, remedy } = findingText(finding, format);
              return (
                <li key={holdKey(finding)} className={css[`at-${level}`]}>
                  <LevelMark level={level} /> <strong>{title}.</strong> {says}
                  <span className={css["remedy"]}> {remedy}</span>
                </li>
              );
            }),
        )}
      </ul>
    </section>
  );
}
