import { minus, times, dot, length } from "../../../geometry/vector.ts";
import type { HangsAt } from "../../../logbook/casting/gatingTree.ts";
import { cupLevelOf } from "./patternStudy.ts";
import type { UpResults } from "./patternResults.ts";
import type { SceneController } from "./useSceneController.ts";

/** Where a tree finds the piece as it hangs. */
export function hangsAt(
  { mesh, study }: Pick<SceneController, "mesh" | "study">,
  results: UpResults,
): HangsAt {
  const { up } = study;
  let reachMm = 0;
  for (let at = 0; at < mesh.pos.length; at += 3) {
    const p = [mesh.pos[at]!, mesh.pos[at + 1]!, mesh.pos[at + 2]!] as const;
    reachMm = Math.max(reachMm, length(minus(p, times(up, dot(p, up)))));
  }
  return { up, highMm: results.highMm, cupLevelMm: cupLevelOf(study, results.highMm), reachMm };
}
