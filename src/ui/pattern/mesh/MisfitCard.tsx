import type { Misfit } from "../../../logbook/casting/drawnTree.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { LevelMark } from "../../base/parts/LevelMark.tsx";
import { hangsAt } from "./hangsAt.ts";
import { treeMisfit, withTree } from "./patternStudy.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./scene.module.css";
import type { SceneController } from "./useSceneController.ts";

const misfitWords: Readonly<Record<Misfit, string>> = {
  turned: "The pour position changed after the tree was drawn.",
  scaled: "The size changed after the tree was drawn.",
  gate: "The first gate moved after the tree was drawn.",
  cup: "The tree does not fit the new level in the cup.",
  marks: "The tree does not fit a part you placed or moved.",
};

/** A tree that no longer fits its piece, why, and the one key that mends it; nothing where it fits. */
export function MisfitCard({ desk }: { readonly desk: SceneController }) {
  const misfit = treeMisfit(desk.study);
  if (misfit === null) return null;
  return (
    <Card title="The tree no longer fits" tone="watch">
      <LevelMark level="watch" />
      <p role="status">
        {misfitWords[misfit]} Its metal, surface, head and drains are not counted until you redraw it.
      </p>
      <div className={`${sheet["row"]} ${css["wrap"]}`}>
        <DrawTree desk={desk} label="Redraw the tree" />
        {desk.undo !== null && <Button onPress={desk.undo}>Undo</Button>}
      </div>
    </Card>
  );
}

/** A starting tree for the piece as it hangs now, in place of the one there was. */
export function DrawTree({ desk, label }: { readonly desk: SceneController; readonly label: string }) {
  // What was found for another way to hang would put the cup at the wrong height.
  const at = desk.results === null || desk.areSpotsStale ? null : hangsAt(desk, desk.results);
  const why =
    at === null
      ? "Calculating the position."
      : desk.study.marks.length === 0
        ? "Place a gate or a vent first."
        : null;
  return (
    <Button
      disabledReason={why}
      onPress={() => {
        if (at !== null) desk.act((now) => withTree(now, at, desk.newId));
      }}
    >
      {label}
    </Button>
  );
}
