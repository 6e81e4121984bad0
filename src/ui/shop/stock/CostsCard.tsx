import { Link } from "wouter";
import { shellCost, type ShellCost } from "../../../logbook/piece/pieceCost.ts";
import type { Piece } from "../../../logbook/piece/piece.ts";
import { materialLoss } from "../../../trade/pickup.ts";
import type { TakenData } from "../../../storage/taken.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Reckoned } from "../../base/parts/Reckoned.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { lackText, moneyText } from "./stockWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./stock.module.css";

type Priced<Ok extends boolean> = {
  readonly piece: Piece;
  readonly cost: Extract<ShellCost, { readonly ok: Ok }>;
};

/** What the shell of each piece in work costs in material. */
export function CostsCard({ data }: { readonly data: TakenData }) {
  const format = useFormat();
  const pieces = data.pieces.filter(({ archived, phase }) => !archived && phase !== "scrapped");
  if (pieces.length === 0) return null;
  const known: Priced<true>[] = [];
  const unknown: Priced<false>[] = [];
  for (const piece of pieces) {
    const recipe = data.recipes.get(piece.plan.recipeId ?? "") ?? null;
    const cost = shellCost(piece, { ...data, recipe });
    if (cost.ok) known.push({ piece, cost });
    else unknown.push({ piece, cost });
  }
  return (
    <Card title="What a shell costs">
      {known.length > 0 && (
        <ul className={`${sheet["stack3"]} ${sheet["list"]} ${css["plain"]}`}>
          {known.map(({ piece, cost }) => (
            <li key={piece.id}>
              <Link href={paths.piece(piece.id)}>{piece.plan.name}</Link>
              <span>
                <strong>{moneyText(cost.total, cost.currency, format)}</strong>:{" "}
                {format.show("kg", cost.slurryKg)} of slurry {moneyText(cost.slurry, cost.currency, format)},{" "}
                {format.show("kg", cost.stuccoKg)} of stucco {moneyText(cost.stucco, cost.currency, format)}
                {cost.coatsToCome > 0 && `; ${cost.coatsToCome} of its coats to come`}.
              </span>
            </li>
          ))}
        </ul>
      )}
      {unknown.length > 0 && (
        <>
          <p>Missing: {[...new Set(unknown.flatMap(({ cost }) => cost.lacks.map(lackText)))].join("; ")}.</p>
          <details>
            <summary>Not calculated ({unknown.length})</summary>
            <ul className={`${sheet["stack3"]} ${sheet["list"]} ${css["plain"]}`}>
              {unknown.map(({ piece, cost }) => (
                <li key={piece.id}>
                  <Link href={paths.piece(piece.id)}>{piece.plan.name}</Link>
                  <span className={sheet["soft"]}>{cost.lacks.map(lackText).join(", ")}</span>
                </li>
              ))}
            </ul>
          </details>
        </>
      )}
      <Reckoned
        formula="Σ area · gain · price, the area grown by each coat’s wall"
        given={[
          ["Lost with slurry", format.show("percent", materialLoss.slurry.value)],
          ["Lost with stucco", format.show("percent", materialLoss.stucco.value)],
        ]}
        source="gains: own weighings where there are any, else starting values; losses: common practice, no source. Without metal, gas and hours"
      />
    </Card>
  );
}
