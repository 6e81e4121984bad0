import { volumeText } from "../../base/format/figureText.ts";
import { useState } from "react";
import type { BarKind, TreeSums } from "../../../geometry/gatingBars.ts";
import { ownAlloy } from "../../../logbook/shop/ownAlloy.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import { castingMassKg } from "../../../physics/metal/castingMass.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Rows, type Given } from "../../base/parts/Reckoned.tsx";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { AddBar } from "./AddBar.tsx";
import { BarList } from "./BarList.tsx";
import { DrainWays } from "./DrainWays.tsx";
import { DrawTree } from "./MisfitCard.tsx";
import { sizeOf } from "./patternSize.ts";
import { treeMisfit, withBars } from "./patternStudy.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./scene.module.css";
import { hangsAt } from "./hangsAt.ts";
import { lowestPlace } from "./gatePlaces.ts";
import type { SceneController } from "./useSceneController.ts";

/** Sprue, cup, runners, vents and feeders as bars of wax on what was tapped, and what they come to. */
export function GatingPanel({ desk, shop }: { readonly desk: SceneController; readonly shop: Shop }) {
  const { study, results } = desk;
  const [kind, setKind] = useState<BarKind>("sprue");
  const at = results === null ? null : hangsAt(desk, results);
  const sums = sizeOf(study, desk.mmPerUnit).tree;
  const isFit = treeMisfit(study) === null;
  return (
    <>
      <Card title="Gating tree">
        {!isFit && <p>It does not fit the piece as it is placed now, so it is not counted.</p>}
        {study.bars.length === 0 ? (
          <p>
            Nothing drawn yet. A starting tree has a cup, a sprue, a runner to each gate and a rod up from
            each vent. Change each size below.
          </p>
        ) : (
          sums !== null && <TreeFigures desk={desk} shop={shop} sums={sums} />
        )}
        <div className={`${sheet["row"]} ${css["wrap"]}`}>
          {isFit && (
            <DrawTree
              desk={desk}
              label={study.bars.length === 0 ? "Draw a starting tree" : "Draw it again"}
            />
          )}
          {study.bars.length > 0 && (
            <Button kind="quiet" onPress={() => desk.act((now) => withBars(now, [], null))}>
              Remove the tree
            </Button>
          )}
          {desk.undo !== null && <Button onPress={desk.undo}>Undo</Button>}
        </div>
        {study.marks.length === 0 && <Starters desk={desk} />}
      </Card>
      {at !== null && <AddBar desk={desk} at={at} kind={kind} setKind={setKind} />}
      {study.bars.length > 0 && (
        <Card title="Gating parts">
          <BarList desk={desk} sums={sums} />
        </Card>
      )}
      <DrainWays desk={desk} />
    </>
  );
}

function Starters({ desk }: { readonly desk: SceneController }) {
  const { results } = desk;
  const lowest = results === null ? null : lowestPlace(results);
  if (lowest === null) return null;
  return (
    <div className={`${sheet["row"]} ${css["wrap"]}`}>
      <Button
        disabledReason={desk.placesWait}
        onPress={() => desk.put("gate", { point: lowest.point, normal: null })}
      >
        Gate at the lowest place
      </Button>
    </div>
  );
}

function TreeFigures({
  desk,
  shop,
  sums,
}: {
  readonly desk: SceneController;
  readonly shop: Shop;
  readonly sums: TreeSums;
}) {
  const format = useFormat();
  const { study, results, mmPerUnit } = desk;
  const { volumeMm3, gatingAreaMm2 } = sizeOf(study, mmPerUnit);
  const alloy = study.alloyId === null ? null : ownAlloy(study.alloyId, shop);
  const litre = (mm3: number): string => volumeText(mm3 / 1e6, format);
  const kg = (mm3: number): string =>
    alloy === null
      ? ""
      : `, ${format.show("kg", castingMassKg({ volumeCm3: mm3 / 1000, metalKgM3: alloy.solidKgM3.value }))}`;
  const up = (level: number): string => (results === null ? "" : format.show("mm", level - results.lowMm));
  const rows: readonly Given[] = [
    ["Bars", `${litre(sums.barVolume)}${kg(sums.barVolume)}`],
    ["Gating surface to coat", format.show("m2", gatingAreaMm2 / 1e6)],
    ...(volumeMm3 === null
      ? []
      : [
          ["Gating and piece", `${litre(sums.metalVolume)}${kg(sums.metalVolume)}`] satisfies Given,
          ["Piece in all the metal", format.show("percent", volumeMm3 / sums.metalVolume)] satisfies Given,
        ]),
    ["Highest place of the tree", up(sums.highest)],
    ...(sums.cupLevel === null || results === null
      ? []
      : [
          ["Level in the cup", up(sums.cupLevel)] satisfies Given,
          ["Head over the lowest place", format.show("mm", sums.cupLevel - results.lowMm)] satisfies Given,
        ]),
  ];
  return (
    <>
      <Rows rows={rows} />
      {alloy === null && <p className={sheet["soft"]}>Choose the alloy below to see weights.</p>}
      <details>
        <summary>How this is calculated</summary>
        <p>
          Each bar by the prismoid rule, exact for an even taper. Where bars run into each other or into the
          piece the metal counts twice, a per cent or so. The cooling area leaves out ends that touch; volume
          over cooling area is the modulus, and what has the greater one freezes later. The surface to coat
          leaves out the mouth of the cup and the skin of the piece under the ends of bars; where bars run
          into each other it counts twice, {format.show("m2", sums.doubledArea / 1e6)} at most.
        </p>
      </details>
    </>
  );
}
