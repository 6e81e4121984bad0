import { metalContentsOf } from "../../../trade/metals/contents.ts";
import { hazardsOf } from "../../../trade/metals/hazards.ts";
import { useState } from "react";
import { Link } from "wouter";
import { alloyChoices, findAlloys, ownAlloy, ownMeltFigures } from "../../../logbook/shop/ownAlloy.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import { freezingGroup } from "../../../trade/metals/freezingGroup.ts";
import { useFigures } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Page } from "../../base/parts/Page.tsx";
import { TextField } from "../../base/forms/TextField.tsx";
import { hazardName } from "../../base/cautions/hazardWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./metal.module.css";

const groupShort = { skin: "skin freezing", between: "in between", pasty: "mushy freezing" } as const;

/** Every metal, the shop's own copies first. */
export function AlloysPage() {
  const shop = useFigures();
  const [sought, setSought] = useState("");
  if (shop === undefined) return <Page title="Alloys">{null}</Page>;
  const choices = findAlloys(alloyChoices(shop), sought);
  return (
    <Page title="Alloys" back={paths.fire}>
      <p className={`${sheet["pale"]} ${sheet["wideText"]}`}>
        Figures for melting, pouring and freezing, each with its source. Open one to see them or to enter the
        figures of your own ingot.
      </p>
      <TextField
        label="Find"
        value={sought}
        onChange={setSought}
        hint="By name or other standard: CuSn12, gunmetal, LM25."
      />
      {choices.length === 0 && <p role="status">No alloy of that name.</p>}
      <ul className={`${sheet["stack3"]} ${sheet["list"]}`}>
        {choices.map(({ id, isOwn, foundBy }) => (
          <li key={id}>
            <AlloyLine id={id} isOwn={isOwn} foundBy={foundBy} shop={shop} />
          </li>
        ))}
      </ul>
    </Page>
  );
}

function AlloyLine({
  id,
  isOwn,
  foundBy,
  shop,
}: {
  readonly id: string;
  readonly isOwn: boolean;
  readonly foundBy: readonly string[];
  readonly shop: Shop;
}) {
  const format = useFormat();
  const [alloy, figures] = [ownAlloy(id, shop), ownMeltFigures(id, shop)];
  if (alloy === null) return null;
  const temp = (c: number): string => format.show("temp", c);
  const hazards = hazardsOf(metalContentsOf(alloy.id) ?? {});
  const group = freezingGroup({ solidusC: alloy.solidusC.value, liquidusC: alloy.liquidusC.value });
  return (
    <Link href={paths.alloy(id)} className={`${sheet["lines"]} ${sheet["panel"]} ${css["card"]}`}>
      <strong>
        {alloy.name}
        {isOwn && <small> (your own)</small>}
      </strong>
      {foundBy.length > 0 && <span>Near {foundBy.join(", ")}</span>}
      <span>
        Pour {temp(alloy.pourLowC.value)} to {temp(alloy.pourHighC.value)} light
        {figures !== null && `, ${temp(figures.heavyLowC.value)} to ${temp(figures.heavyHighC.value)} heavy`}
      </span>
      <span className={sheet["soft"]}>
        Melts {temp(alloy.solidusC.value)} to {temp(alloy.liquidusC.value)}, {groupShort[group]} ·{" "}
        {format.show("density", alloy.solidKgM3.value / 1000)}
        {figures !== null && ` · shrinks ${format.show("share", figures.shrinkHigh.value)}`}
        {hazards.length > 0 && ` · ${hazards.map((hazard) => hazardName[hazard]).join(", ")}`}
      </span>
    </Link>
  );
}
