import { metalPatternRatio } from "../../../physics/metal/castingMass.ts";
import type { Alloy } from "../../../trade/metals/alloy.ts";
import type { PatternMaterial } from "../../../trade/patternMaterials.ts";
import { studioWaxRatio } from "../../../trade/volumeRoutes.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Card } from "../../base/parts/Card.tsx";
import { kept } from "../../../logbook/casting/limits.ts";
import { massLimits, type MassDraft } from "../../../logbook/casting/massDraft.ts";
import sheet from "../../base/styles/sheet.module.css";

/** The ratio of this pattern to this metal, and for wax the round ten of the studios beside it. */
export function StudioRatio({
  draft,
  material,
  alloy,
}: {
  readonly draft: MassDraft;
  readonly material: PatternMaterial | null;
  readonly alloy: Alloy;
}) {
  const format = useFormat();
  const { patternGCm3, patternG } = kept(draft, massLimits);
  if (patternGCm3 === null) return null;
  const ratio = metalPatternRatio({
    metalKgM3: alloy.solidKgM3.value,
    patternKgM3: patternGCm3 * 1000,
  });
  const isWaxOfBronze = material === "wax" && (alloy.family === "bronze" || alloy.family === "brass");
  const more = studioWaxRatio.value / ratio - 1;
  return (
    <Card title="Rule of thumb">
      <p>
        A solid pattern of {format.show("density", patternGCm3)} times {format.number(ratio, 2)} is{" "}
        {alloy.name}: the ratio of the two densities.
      </p>
      {isWaxOfBronze && (
        <p>
          Ten of bronze to one of wax is {format.show("percent", Math.abs(more))}{" "}
          {more >= 0 ? "more, a hidden margin" : "less"}
          {patternG === null
            ? "."
            : `: ${format.show("kg", (patternG / 1000) * studioWaxRatio.value)} instead of ${format.show("kg", (patternG / 1000) * ratio)}.`}
        </p>
      )}
      <p className={sheet["soft"]} data-source>
        Densities: {alloy.solidKgM3.source}; ten to one: {studioWaxRatio.source}.
      </p>
    </Card>
  );
}
