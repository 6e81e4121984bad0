import type { MisrunAdvice } from "../../../physics/metal/misrun.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { runBecause, runStepWords, runVerdicts } from "./runWords.ts";
import type { ReactNode } from "react";

/** Whether it runs full, why, and what would help, one step a line. `before` stands in front of the verdict. */
export function RunVerdictText(props: {
  readonly advice: MisrunAdvice;
  readonly className?: string | undefined;
  readonly before?: ReactNode;
}) {
  const { advice, className, before } = props;
  const format = useFormat();
  return (
    <>
      <p className={className}>
        {before}
        <strong>{runVerdicts[advice.verdict].says}</strong> {runBecause(advice, format)}
      </p>
      {advice.steps.length > 0 && (
        <ul>
          {advice.steps.map((step) => (
            <li key={step.do}>{runStepWords(step, format)}</li>
          ))}
        </ul>
      )}
    </>
  );
}
