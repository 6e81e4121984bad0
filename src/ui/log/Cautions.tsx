import { builtInShop } from "../../logbook/builtIns.ts";
import { alloyContents } from "../../logbook/meltContents.ts";
import type { Contents } from "../../physics/scrap.ts";
import { useFigures } from "../app/live.ts";
import { useFormat } from "../app/useFormat.ts";
import { cautionLines, standingCaution, type CautionStep } from "./cautions.ts";
import css from "./Cautions.module.css";
import type { Weights } from "./liftWords.ts";

type Props = {
  readonly step: CautionStep;
  readonly alloyId: string | undefined;
  /** What the metal may hold, where more is known than its alloy's name. */
  readonly contents?: Contents | null | undefined;
  readonly weights?: Weights | undefined;
  /** False where the page has said it already. */
  readonly saysCodes?: boolean | undefined;
};

const titles: Readonly<Record<CautionStep, string>> = {
  burnout: "Before you do",
  firing: "Before you do",
  melt: "Before and while it melts",
  pour: "Before you do",
  "knock-out": "Before you do",
  finishing: "Before you do",
};

/** The cautions of a step, shown where the step is logged. */
export function Cautions({ step, alloyId, contents = null, weights, saysCodes = true }: Props) {
  const format = useFormat();
  const shop = useFigures() ?? builtInShop;
  const metal = contents ?? alloyContents(alloyId, shop);
  return (
    <section className={css["cautions"]} aria-label="Cautions">
      <h2 className={css["title"]}>{titles[step]}</h2>
      <ul>
        {cautionLines({ step, contents: metal, weights }, format).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {saysCodes && <p>{standingCaution}</p>}
    </section>
  );
}
