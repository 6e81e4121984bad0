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
  turned: "The piece hangs another way than when the tree was drawn.",
  scaled: "The piece has another size than when the tree was drawn.",
  gate: "The first gate is not where it was when the tree was drawn.",
  cup: "The level asked for in the cup is one the tree could not follow.",
  marks: "Something was placed or moved that the tree could not follow.",
};

/** A tree that no longer fits its piece, why, and the one key that mends it; nothing where it fits. */
export function MisfitCard({ desk }: { readonly desk: SceneController }) {
  const misfit = treeMisfit(desk.study);
  if (misfit === null) return null;
  return (
    <Card title="The tree no longer fits" tone="watch">
      <LevelMark level="watch" />
      <p role="status">
        {misfitWords[misfit]} Its metal, surface, head and drain ways are not counted until it is drawn anew.
      </p>
      <div className={`${sheet["row"]} ${css["wrap"]}`}>
        <DrawTree desk={desk} label="Draw the tree anew" />
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
      ? "The way it hangs is being worked out."
      : desk.study.marks.length === 0
        ? "Put a gate or a vent first."
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
