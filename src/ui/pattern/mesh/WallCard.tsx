import type { Recipe, Shop } from "../../../logbook/piece/piece.ts";
import { strengthSpread } from "../../../physics/shell/wall.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { partWords } from "../../base/format/planWords.ts";
import { Reckoned } from "../../base/parts/Reckoned.tsx";
import { Card } from "../../base/parts/Card.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./pattern.module.css";
import type { PatternController } from "./usePatternController.ts";
import { needsOf, wallFiguresOf } from "./wallFigures.ts";

const shown = 6;

/** Wall the flats and rounds of the mesh need, each at its own head. */
export function WallCard({
  door: { study, mmPerUnit },
  shop,
  recipe,
}: {
  readonly door: PatternController;
  readonly shop: Shop;
  readonly recipe: Recipe | null;
}) {
  const format = useFormat();
  if (mmPerUnit === null || study.shape?.flats == null) return null;
  const figures = wallFiguresOf(study, { shop, recipe });
  const needs = needsOf(study, { shop, recipe });
  return (
    <Card title="Wall the shell needs">
      {figures === null && <p>Choose the alloy: what it weighs is what presses on the wall.</p>}
      {figures !== null && needs.length === 0 && (
        <p>No flat and no round was found that a wall would feel.</p>
      )}
      {figures !== null && needs[0] !== undefined && (
        <>
          <p className={css["big"]}>
            {format.show("mm", needs[0].likelyMm)}{" "}
            <small>
              {needs[0].likelyMm > figures.floorMm
                ? `${partWords(needs[0].part, format)} decides`
                : "the least wall for handling decides; no flat and no round asks for more"}
            </small>
          </p>
          <div className={`${sheet["scroll"]} ${css["wide"]}`}>
            <table>
              <thead>
                <tr>
                  <th scope="col">Part of the wall</th>
                  <th scope="col">Head over it</th>
                  <th scope="col">Wall needed</th>
                </tr>
              </thead>
              <tbody>
                {needs.slice(0, shown).map((need) => (
                  <tr key={need.point.join(" ")}>
                    <td>{partWords(need.part, format)}</td>
                    <td>{format.show("mm", need.headMm)}</td>
                    <td>
                      {need.highMm > figures.floorMm
                        ? `${format.show("mm", need.lowMm)} to ${format.show("mm", need.highMm)}`
                        : `${format.show("mm", need.bareMm)}, less than handling asks`}
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
          <Reckoned
            formula="flat: width × √(β × ρ g h × safety ÷ strength); round: ρ g h × radius × safety ÷ half the strength"
            given={[
              ["Liquid metal", `${format.number(figures.densityKgM3, 0)} kg/m³`],
              ["Strength of the fired shell", format.show("MPa", figures.morMPa)],
              ["Strength known to", `× or ÷ ${format.number(strengthSpread, 1)}`],
              ["Safety factor", format.number(figures.safetyFactor, 1)],
              ["Least wall for handling", format.show("mm", figures.floorMm)],
            ]}
            source="plate and hoop formulas after Roark; strength a starting value until you measure your own. The head is taken at the lowest edge of each part. Ribs and bends inside a flat are not seen as edges unless they turn it by more than 8°"
          />
          <p className={sheet["soft"]}>
            A number is never permission: look at the shell, and keep out of its way at the pour.
          </p>
        </>
      )}
    </Card>
  );
}
