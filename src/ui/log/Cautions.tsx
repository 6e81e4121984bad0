import { builtInShop } from "../../logbook/builtIns.ts";
import { ownAlloy } from "../../logbook/ownAlloy.ts";
import type { BurnoutMaterial } from "../../trade/patternBurnout.ts";
import { useFigures } from "../app/live.ts";
import { useFormat } from "../app/useFormat.ts";
import { cautionLines, standingCaution, type CautionStep } from "./cautions.ts";
import css from "./Cautions.module.css";

/** The cautions of a step, shown where the step is logged. */
export function Cautions({
  step,
  alloyId,
  material = null,
}: {
  /** Several are told as one list, in that order. */
  readonly step: CautionStep | readonly CautionStep[];
  readonly alloyId: string | undefined;
  /** What is in the shells; left out where nobody said. */
  readonly material?: BurnoutMaterial | null | undefined;
}) {
  const format = useFormat();
  const alloy = ownAlloy(alloyId ?? "", useFigures() ?? builtInShop);
  const steps = typeof step === "string" ? [step] : step;
  const lines = new Set(steps.flatMap((one) => cautionLines(one, format, alloy?.hazards ?? null, material)));
  return (
    <section className={css["cautions"]} aria-label="Cautions">
      <h2 className={css["title"]}>Before you do</h2>
      <ul>
        {[...lines].map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <p>{standingCaution}</p>
    </section>
  );
}
