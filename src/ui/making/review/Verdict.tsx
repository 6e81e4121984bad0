import type { Finding } from "../../../rules/finding.ts";
import { standingCaution } from "../../base/cautions/cautionWords.ts";
import { LevelMark } from "../../base/parts/LevelMark.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./ReviewPage.module.css";

const count = (findings: readonly Finding[], level: Finding["level"]): number =>
  findings.filter((finding) => finding.level === level).length;
const say = (howMany: number, one: string, many: string): string =>
  howMany === 1 ? one : `${howMany} ${many}`;

/** Hold, watch or clear, each with what it does not say. */
export function Verdict({
  verdict,
  findings,
}: {
  readonly verdict: "hold" | "watch" | "clear";
  readonly findings: readonly Finding[];
}) {
  const holds = count(findings, "hold");
  const watches = count(findings, "watch");
  const says = {
    hold: `${say(holds, "One warning says", "warnings say")} hold. Fix it, or override it with a written reason.`,
    watch: `Nothing stops it. Read ${say(watches, "the warning", "warnings")} below before it goes in the kiln.`,
    clear: "No warnings from what was logged. What was not logged was not checked.",
  }[verdict];
  return (
    <section className={`${sheet["stack2"]} ${css["verdict"]} ${css[verdict]}`} aria-label="Verdict">
      <p className={css["word"]}>
        <LevelMark level={verdict} />
      </p>
      <p>{says}</p>
      <p className={css["soft"]}>{standingCaution}</p>
    </section>
  );
}
