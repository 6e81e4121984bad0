import type { Alloy } from "../../../trade/metals/alloy.ts";
import { usualKnockoutMin } from "../../../trade/knockoutTime.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Card } from "../../base/parts/Card.tsx";
import type { ChainSum } from "../../../logbook/casting/chainSum.ts";
import { knockoutFloor } from "../../../logbook/casting/knockoutFloor.ts";
import { shortSpan } from "./heatWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./metal.module.css";

/** Not before ten freezings of the thickest section, and what the casting must have cooled to. */
export function KnockoutCard({
  sum,
  thickestMm,
  treeModulusMm,
  alloy,
}: {
  readonly sum: ChainSum | null;
  /** Thickest place on the mesh; null where it was not measured. */
  readonly thickestMm: number | null;
  /** Volume over area of the drawn tree's thickest part, mm; null where none is drawn. */
  readonly treeModulusMm: number | null;
  readonly alloy: Alloy;
}) {
  const format = useFormat();
  const { castingS, lastS, notBeforeS, isUsualLeast } = knockoutFloor(sum, thickestMm, treeModulusMm);
  const heat = alloy.knockout;
  const usual = format.show("min", usualKnockoutMin.value);
  return (
    <Card title="Knock-out">
      <p>
        {castingS !== null &&
          `The thickest section ${isUsualLeast ? "entered " : ""}is frozen after about ${shortSpan(castingS)}. `}
        {lastS !== null && lastS !== castingS && `The last part of all freezes after ${shortSpan(lastS)}. `}
        Not out of the shell before <strong>{shortSpan(notBeforeS)}</strong>, nor before its core is below{" "}
        {format.show("temp", heat.value)}.{" "}
        {isUsualLeast && `The thickest place is not entered, so the usual ${usual} is the minimum.`}
      </p>
      {heat.note !== undefined && <p className={css["warn"]}>{heat.note}</p>}
      <p className={sheet["soft"]}>
        The cooling itself is calculated at the pour. The core is hot long after the skin is cool.
      </p>
      <p className={sheet["soft"]} data-source>
        {heat.source}; ten freezings of the casting: common practice, no source; {usual}:{" "}
        {usualKnockoutMin.source}.
      </p>
    </Card>
  );
}
