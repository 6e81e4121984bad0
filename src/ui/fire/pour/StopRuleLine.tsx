import type { StopRule } from "./stopWords.ts";
import styles from "./pour.module.css";

/** The stop rule, in the largest words of its screen once the pour is near. */
export function StopRuleLine({
  rule,
  isSmall = false,
}: {
  readonly rule: StopRule;
  readonly isSmall?: boolean;
}) {
  const late = rule.kind === "stop" ? styles["ruleStop"] : rule.kind === "late" ? styles["ruleLate"] : "";
  return (
    <p className={`${styles[isSmall ? "ruleSmall" : "rule"]} ${late}`} role="status" aria-label="Stop rule">
      {rule.text}
    </p>
  );
}
