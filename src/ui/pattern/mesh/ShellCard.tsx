import { pickupOf } from "../../../logbook/bucket/dippedOut.ts";
import { coatMm } from "../../../logbook/drying/coatMm.ts";
import type { Recipe, Shop } from "../../../logbook/piece/piece.ts";
import { pieceMaterial } from "../../../physics/slurry/stock.ts";
import { materialLoss, pickups } from "../../../trade/pickup.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Reckoned, Rows, type Given } from "../../base/parts/Reckoned.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { treeMisfit } from "./patternStudy.ts";
import { sizeOf } from "./patternSize.ts";
import type { PatternController } from "./usePatternController.ts";

/** Slurry and stucco the pattern takes by its recipe. */
export function ShellCard({
  door: { study, mmPerUnit },
  shop,
  recipe,
}: {
  readonly door: PatternController;
  readonly shop: Shop;
  readonly recipe: Recipe | null;
}) {
  const format = useFormat();
  if (mmPerUnit === null) return null;
  const { areaMm2, outerMm2, gatingAreaMm2, hollows, tree } = sizeOf(study, mmPerUnit);
  const areaM2 = (areaMm2 + gatingAreaMm2) / 1e6;
  if (hollows !== null && hollows.are === null)
    return (
      <Card title="Slurry and stucco">
        <p>
          Between {format.show("m2", (outerMm2 + gatingAreaMm2) / 1e6)} and {format.show("m2", areaM2)} to be
          coated: it depends on the closed void. Choose metal or core above.
        </p>
      </Card>
    );
  const partsWords =
    tree !== null
      ? `The piece ${format.show("m2", areaMm2 / 1e6)}, what is drawn on it ${format.show("m2", gatingAreaMm2 / 1e6)}.`
      : treeMisfit(study) === null
        ? "The bare piece: gating not included."
        : "The bare piece: the tree drawn on it no longer fits and is not counted.";
  if (recipe === null)
    return (
      <Card title="Slurry and stucco">
        <p>
          {format.show("m2", areaM2)} to be coated. {partsWords} Choose a recipe to see the amounts.
        </p>
      </Card>
    );
  if (!(areaM2 > 0 && areaM2 <= 1000)) return null;
  const takes = pieceMaterial({
    areaM2,
    coats: recipe.coats.map((coat) => ({
      ...pickupOf(coat.kind, { shop, gains: new Map(), densityGCm3: null }),
      buildMm: coatMm(coat, shop.buildMm),
    })),
    slurryLoss: materialLoss.slurry.value,
    stuccoLoss: materialLoss.stucco.value,
    grows: true,
  });
  return (
    <Card title="Slurry and stucco">
      <Rows
        rows={[
          ["Surface to coat", format.show("m2", areaM2)],
          ["Slurry", `about ${format.show("kg", takes.slurryWithLossKg)}`],
          ["Stucco", `about ${format.show("kg", takes.stuccoWithLossKg)}`],
        ]}
      />
      <p>{partsWords}</p>
      <Reckoned
        formula="sum over the coats of surface, grown by the wall beneath, × what a coat keeps, + what drips and falls"
        given={[
          ["Recipe", recipe.name],
          ["Slurry lost", format.show("percent", materialLoss.slurry.value)],
          ["Stucco lost", format.show("percent", materialLoss.stucco.value)],
          ...(tree === null
            ? []
            : [
                [
                  "Bars in bars, counted twice at most",
                  format.show("m2", tree.doubledArea / 1e6),
                ] satisfies Given,
              ]),
        ]}
        source={`${pickups.backup.source}; your own figures where you have weighed them. The mouth of the cup is kept bare; skin under the ends of bars is left out`}
      />
    </Card>
  );
}
