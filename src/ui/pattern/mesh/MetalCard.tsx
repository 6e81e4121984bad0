import { ownAlloy } from "../../../logbook/shop/ownAlloy.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import { castingMassKg } from "../../../physics/metal/castingMass.ts";
import { volumeRouteError } from "../../../trade/volumeRoutes.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Reckoned, type Given } from "../../base/parts/Reckoned.tsx";
import { Card } from "../../base/parts/Card.tsx";
import css from "./pattern.module.css";
import { volumeText } from "../../base/format/figureText.ts";
import { treeMisfit } from "./patternStudy.ts";
import { sizeOf } from "./patternSize.ts";
import type { PatternController } from "./usePatternController.ts";

export function MetalCard({
  door: { study, mmPerUnit },
  shop,
}: {
  readonly door: PatternController;
  readonly shop: Shop;
}) {
  const format = useFormat();
  if (mmPerUnit === null) return null;
  const { volumeMm3, lowMm3, highMm3, gatingMm3, hollows } = sizeOf(study, mmPerUnit);
  const alloy = study.alloyId === null ? null : ownAlloy(study.alloyId, shop);
  const litre = (mm3: number): string => volumeText(mm3 / 1e6, format);
  const kg = (mm3: number): string =>
    alloy === null
      ? ""
      : format.show("kg", castingMassKg({ volumeCm3: mm3 / 1000, metalKgM3: alloy.solidKgM3.value }));
  const isAsked = volumeMm3 === null && hollows !== null;
  const isRange =
    volumeMm3 === null && !isAsked && study.found.seams === null && lowMm3 !== null && highMm3 !== null;
  const isFit = treeMisfit(study) === null;
  const all = (volumeMm3 ?? 0) + gatingMm3;
  return (
    <Card title="Metal">
      {volumeMm3 !== null && (
        <>
          <p className={css["big"]}>
            {alloy === null ? litre(all) : kg(all)} <small>{alloy === null ? "" : litre(all)}</small>
          </p>
          <p>
            {gatingMm3 > 0
              ? `The piece ${litre(volumeMm3)}, what is drawn on it ${litre(gatingMm3)}.`
              : isFit
                ? "The bare piece: gating and cup not included."
                : "The bare piece: the tree drawn on it no longer fits and is not counted."}
            {alloy === null ? " Choose the alloy to see the weight." : ""}
          </p>
        </>
      )}
      {isAsked && lowMm3 !== null && highMm3 !== null && (
        <p>
          Between {litre(lowMm3 + gatingMm3)} and {litre(highMm3 + gatingMm3)}
          {alloy === null ? "" : `, ${kg(lowMm3 + gatingMm3)} to ${kg(highMm3 + gatingMm3)}`}: it depends on
          the closed void. Choose metal or core above.
        </p>
      )}
      {volumeMm3 === null && highMm3 !== null && study.found.seams !== null && (
        <p>The surface has open seams. Join them in “The mesh” to get a volume.</p>
      )}
      {isRange && lowMm3 >= 0.999 * highMm3 && (
        <p>
          {litre(highMm3)}
          {alloy === null ? "" : `, ${kg(highMm3)}`}, whichever way its holes are closed. Close them in “The
          mesh” for all results.
        </p>
      )}
      {isRange && lowMm3 < 0.999 * highMm3 && (
        <p>
          Between {litre(Math.max(0, lowMm3))} and {litre(Math.max(0, highMm3))}
          {alloy === null ? "" : `, ${kg(Math.max(0, lowMm3))} to ${kg(Math.max(0, highMm3))}`}: the mesh is
          open, so it depends on how the holes are closed.
        </p>
      )}
      {volumeMm3 === null && (lowMm3 === null || highMm3 === null) && (
        <p>The mesh is faulty, so it has no volume. Weigh the pattern, or measure the water it displaces.</p>
      )}
      {volumeMm3 !== null && (
        <Reckoned
          formula="metal = volume of the mesh in mm³ × density of the solid metal"
          given={[
            ["Volume", litre(volumeMm3)],
            ...(alloy === null
              ? []
              : [["Density", format.show("kgM3", alloy.solidKgM3.value)] satisfies Given]),
            ["Error", format.show("percent", volumeRouteError.mesh.value)],
          ]}
          source={`${alloy?.solidKgM3.source ?? "the mesh itself"}; ${volumeRouteError.mesh.source}`}
        />
      )}
    </Card>
  );
}
