import { knockoutTime } from "../../../physics/heat/knockout.ts";
import type { Alloy } from "../../../trade/metals/alloy.ts";
import { usualKnockoutMin } from "../../../trade/knockoutTime.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Card } from "../../base/parts/Card.tsx";
import type { ChainSum } from "../../../logbook/casting/chainSum.ts";
import { shortSpan } from "./heatWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./metal.module.css";

/** Not before ten freezings, and what the casting must have cooled to. */
export function KnockoutCard({ sum, alloy }: { readonly sum: ChainSum; readonly alloy: Alloy }) {
  const format = useFormat();
  const { links } = sum.chain;
  const lastS = Math.max(...links.map(({ freezeS }) => freezeS));
  const castingS = Math.max(
    ...links.filter(({ role }) => role === "casting").map(({ freezeS }) => freezeS),
    0,
  );
  const { timeS } = knockoutTime({ freezeS: castingS > 0 ? castingS : lastS, coolS: null });
  const heat = alloy.knockout;
  return (
    <Card title="Breaking it out">
      <p>
        {castingS > 0 ? `The casting is frozen after about ${shortSpan(castingS)}, the` : "The"} last part of
        all after {shortSpan(lastS)}. Not out of the shell before{" "}
        <strong>{shortSpan(Math.max(timeS, lastS, 60))}</strong>, nor before its core is below{" "}
        {format.show("temp", heat.value)}. Small bronzes come out after about{" "}
        {format.show("min", usualKnockoutMin.value)}.
      </p>
      {heat.note !== undefined && <p className={css["warn"]}>{heat.note}</p>}
      <p className={sheet["soft"]}>
        {heat.source}; ten freezings of the casting: common practice, no source; an hour:{" "}
        {usualKnockoutMin.source}. The cooling itself is reckoned at the pour. The core is hot long after the
        skin is cool.
      </p>
    </Card>
  );
}
