import { alloyContents } from "../../../logbook/pour/meltContents.ts";
import type { Contents } from "../../../physics/metal/scrap.ts";
import type { BurnoutMaterial } from "../../../trade/patternBurnout.ts";
import { useFigures } from "../state/live.ts";
import { useFormat } from "../state/useFormat.ts";
import { cautionLines, standingCaution, type CautionStep } from "./cautionWords.ts";
import sheet from "../styles/sheet.module.css";
import css from "./Cautions.module.css";
import type { Weights } from "./liftWords.ts";

type Props = {
  /** Several are told as one list, in that order. */
  readonly step: CautionStep | readonly CautionStep[];
  readonly alloyId: string | undefined;
  /** What the metal may hold, where more is known than its alloy's name. */
  readonly contents?: Contents | null | undefined;
  /** What is in the shells; left out where nobody said. */
  readonly material?: BurnoutMaterial | null | undefined;
  readonly weights?: Weights | undefined;
  /** False where the page has said it already. */
  readonly saysCodes?: boolean | undefined;
};

const titleOf = (step: CautionStep | undefined): string =>
  step === "melt" ? "Before and while it melts" : "Before you do";

/** The cautions of a step, shown where the step is logged. */
export function Cautions(props: Props) {
  const { step, alloyId, contents = null, material = null, weights, saysCodes = true } = props;
  const format = useFormat();
  const shop = useFigures();
  // An own alloy is known by the shop alone: without it its hazards would be missing.
  if (shop === undefined) return null;
  const metal = contents ?? alloyContents(alloyId, shop);
  const steps = typeof step === "string" ? [step] : step;
  const lines = new Set(
    steps.flatMap((one) => cautionLines({ step: one, contents: metal, weights, material }, format)),
  );
  return (
    <section className={`${sheet["stack2"]} ${css["cautions"]}`} aria-label="Cautions">
      <h2 className={css["title"]}>{titleOf(steps[0])}</h2>
      <ul>
        {[...lines].map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {saysCodes && <p>{standingCaution}</p>}
    </section>
  );
}
