import { useState } from "react";
import { treeSums, type BarKind } from "../../../geometry/gatingBars.ts";
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
import { startingTree, touchMm } from "../../../logbook/casting/gatingTree.ts";
import { sizeOf } from "./patternSize.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./scene.module.css";
import { hangsAt } from "./hangsAt.ts";
import type { SceneController } from "./useSceneController.ts";

/** Sprue, cup, runners, vents and feeders as bars of wax on what was tapped, and what they come to. */
export function GatingPanel({ desk, shop }: { readonly desk: SceneController; readonly shop: Shop }) {
  const { study, results } = desk;
  const [kind, setKind] = useState<BarKind>("sprue");
  const at = results === null ? null : hangsAt(desk, results);
  const sums = treeOf(desk);
  return (
    <>
      <Card title="The tree">
        {study.bars.length === 0 ? (
          <p>
            Nothing is drawn yet. A start: a cup over a sprue beside the piece, a bar to every gate, a rod up
            from every vent. Sizes are starting values from common practice; change each below.
          </p>
        ) : (
          sums !== null && <TreeFigures desk={desk} shop={shop} sums={sums} />
        )}
        <div className={`${sheet["row"]} ${css["wrap"]}`}>
          <Button
            disabledReason={
              at === null
                ? "How it hangs is being reckoned."
                : study.marks.length === 0
                  ? "Put a gate or a vent first."
                  : null
            }
            onPress={() => {
              if (at !== null) desk.act((now) => ({ ...now, bars: startingTree(now.marks, at, desk.newId) }));
            }}
          >
            {study.bars.length === 0 ? "Draw a starting tree" : "Draw it anew"}
          </Button>
          {study.bars.length > 0 && (
            <Button kind="quiet" onPress={() => desk.act((now) => ({ ...now, bars: [] }))}>
              Take the tree away
            </Button>
          )}
          {desk.undo !== null && <Button onPress={desk.undo}>Undo</Button>}
        </div>
        {study.marks.length === 0 && <Starters desk={desk} />}
      </Card>
      {at !== null && <AddBar desk={desk} at={at} kind={kind} setKind={setKind} />}
      {study.bars.length > 0 && sums !== null && (
        <Card title="Bars">
          <BarList desk={desk} sums={sums} />
        </Card>
      )}
      <DrainWays desk={desk} />
    </>
  );
}

type Sums = ReturnType<typeof treeSums>;

function treeOf({ study, mmPerUnit }: SceneController): Sums | null {
  if (study.bars.length === 0) return null;
  const { volumeMm3 } = sizeOf(study, mmPerUnit);
  const tapped = study.marks.map(({ point }) => point);
  return treeSums({ bars: study.bars, up: study.up, pieceVolume: volumeMm3 ?? 0, tapped, touch: touchMm });
}

function Starters({ desk }: { readonly desk: SceneController }) {
  const { results } = desk;
  const lowest = results?.drains.find(({ isLast }) => isLast) ?? null;
  if (lowest === null) return null;
  return (
    <div className={`${sheet["row"]} ${css["wrap"]}`}>
      <Button onPress={() => desk.put("gate", { point: lowest.point, normal: null })}>
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
  readonly sums: Sums;
}) {
  const format = useFormat();
  const { study, results, mmPerUnit } = desk;
  const { volumeMm3 } = sizeOf(study, mmPerUnit);
  const alloy = study.alloyId === null ? null : ownAlloy(study.alloyId, shop);
  const litre = (mm3: number): string => format.show("cm3", mm3 / 1000);
  const kg = (mm3: number): string =>
    alloy === null
      ? ""
      : `, ${format.show("kg", castingMassKg({ volumeCm3: mm3 / 1000, metalKgM3: alloy.solidKgM3.value }))}`;
  const up = (level: number): string => (results === null ? "" : format.show("mm", level - results.lowMm));
  const rows: readonly Given[] = [
    ["Bars", `${litre(sums.barVolume)}${kg(sums.barVolume)}`],
    ...(volumeMm3 === null
      ? []
      : [
          ["Bars and piece", `${litre(sums.metalVolume)}${kg(sums.metalVolume)}`] satisfies Given,
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
      {alloy === null && <p className={sheet["soft"]}>Choose the alloy below to have weights.</p>}
      <details>
        <summary>How this is reckoned</summary>
        <p>
          Each bar by the prismoid rule, exact for an even taper. Where bars run into each other or into the
          piece the metal counts twice, a per cent or so. The cooling area leaves out ends that touch; volume
          over cooling area is the modulus, and what has the greater one freezes later.
        </p>
      </details>
    </>
  );
}
