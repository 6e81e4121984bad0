import type { Format } from "../../base/format/units.ts";
import type { SceneController } from "./useSceneController.ts";

/** The picture in words, for who can't see it; the lists beside it say the rest. */
export function sceneLabel(
  { study, results, spots, marks }: Pick<SceneController, "study" | "results" | "spots" | "marks">,
  format: Format,
): string {
  const name = study.name === "" ? "The pattern" : study.name;
  const tall =
    results === null ? "" : `, ${format.show("mm", results.highMm - results.lowMm)} high as it hangs`;
  const open = (all: readonly { readonly isServed: boolean }[]): number =>
    all.filter((one) => !one.isServed).length;
  return (
    `${name} in 3D${tall}. ${spots.air.length} places for air, ${open(spots.air)} without a vent; ` +
    `${spots.plastic.length} for plastic, ${open(spots.plastic)} without an opening; ${marks.length} placed. ` +
    "Arrow keys turn the view, plus and minus bring it nearer."
  );
}
