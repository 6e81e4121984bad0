import type { Recipe, Shop } from "../../../logbook/piece/piece.ts";
import { strengthFromWords } from "../../base/format/wallWords.ts";
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
    <Card title="Shell this pattern needs">
      {figures === null && <p>Choose the alloy: its weight presses on the shell.</p>}
      {figures !== null && needs.length === 0 && <p>No flat panel or tube found that loads the shell.</p>}
      {figures !== null && needs[0] !== undefined && (
        <>
          <p className={css["big"]}>
            {format.show("mm", needs[0].neededMm)}{" "}
            <small>
              {needs[0].neededMm > figures.floorMm
                ? `${partWords(needs[0].part, format)} decides`
                : "the minimum for handling decides"}
            </small>
          </p>
          <div className={`${sheet["scroll"]} ${css["wide"]}`}>
            <table>
              <thead>
                <tr>
                  <th scope="col">Part of the shell</th>
                  <th scope="col">Head over it</th>
                  <th scope="col">Thickness needed</th>
                </tr>
              </thead>
              <tbody>
                {needs.slice(0, shown).map((need) => (
                  <tr key={need.point.join(" ")}>
                    <td>{partWords(need.part, format)}</td>
                    <td>{format.show("mm", need.headMm)}</td>
                    <td>
                      {format.show("mm", need.bareMm)}
                      {need.bareMm < figures.floorMm && ", less than handling needs"}
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
          <Reckoned
            formula="flat: β × ρ g h × width² ÷ thickness² against strength; round: ρ g h × radius ÷ thickness against half the strength; with the doubt in strength, thickness and head counted in"
            given={[
              ["Liquid metal", format.show("kgM3", figures.densityKgM3)],
              [
                "Strength of the fired shell",
                `${format.show("MPa", figures.strength.morMPa)}, ${strengthFromWords[figures.strength.from]}`,
              ],
              ["Strength known to", `× or ÷ ${format.number(figures.strength.spread, 1)}`],
              ["Minimum for handling", format.show("mm", figures.floorMm)],
            ]}
            source="plate and hoop formulas after Roark; first-order reliability after ISO 2394. The head is taken at the lowest edge of each part. Ribs and bends inside a flat are not seen as edges unless they turn it by more than 8°"
          />
          <p className={sheet["soft"]}>An estimate: inspect the shell, and stay clear at the pour.</p>
        </>
      )}
    </Card>
  );
}
