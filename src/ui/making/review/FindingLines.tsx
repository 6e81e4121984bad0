import type { Finding, Level } from "../../../rules/finding.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { findingText } from "../../base/format/findingWords.ts";
import { LevelMark } from "../../base/parts/LevelMark.tsx";
import { Fold } from "./Fold.tsx";
import { holdKey } from "./reviewForm.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./ReviewPage.module.css";

const levels: readonly Level[] = ["hold", "watch", "note"];

/** Findings by level, worst first: what still asks something in full, a note or what is past behind its title. */
export function FindingLines({ findings }: { readonly findings: readonly Finding[] }) {
  return (
    <section className={`${sheet["stack2"]} ${css["section"]}`} aria-labelledby="review-findings">
      <h2 id="review-findings">Findings</h2>
      {findings.length === 0 && <p>None.</p>}
      <ul className={`${sheet["stack2"]} ${sheet["list"]} ${css["findings"]}`}>
        {levels.flatMap((level) =>
          findings
            .filter((finding) => finding.level === level)
            .map((finding) => (
              <li key={holdKey(finding)} className={css[`at-${level}`]}>
                <Line finding={finding} />
              </li>
            )),
        )}
      </ul>
    </section>
  );
}

function Line({ finding }: { readonly finding: Finding }) {
  const { title, says, remedy } = findingText(finding, useFormat());
  const { level } = finding;
  const text = (
    <>
      {says}
      <span className={css["remedy"]}> {remedy}</span>
    </>
  );
  if (level !== "note" && finding.past !== true)
    return (
      <>
        <LevelMark level={level} /> <strong>{title}.</strong> {text}
      </>
    );
  return (
    <Fold
      title={
        <>
          <LevelMark level={level} /> {title}
        </>
      }
    >
      {text}
    </Fold>
  );
}
