import type { PourFix } from "../../../logbook/pour/pourFixes.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Card } from "../../base/parts/Card.tsx";
import { fixWords } from "./fixWords.ts";
import sheet from "../../base/styles/sheet.module.css";

/** Stands before all else of a plan that can't work: what would make it work. Nothing where it works. */
export function FixesCard({
  fixes,
  shellC,
  shells,
}: {
  readonly fixes: readonly PourFix[];
  /** Planned to leave the kiln with. */
  readonly shellC: number;
  readonly shells: number;
}) {
  const format = useFormat();
  if (fixes.length === 0) return null;
  return (
    <Card title="Fix the plan" tone="hold">
      {fixes.map((fix) => (
        <p
          key={fix.is === "shell-cold" ? fix.id : fix.is}
          className={`${sheet["held"]} ${sheet["firm"]} ${sheet["inset"]}`}
        >
          {fixWords(fix, { format, shellC, isNamed: shells > 1 })}
        </p>
      ))}
    </Card>
  );
}
