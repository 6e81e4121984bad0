import { useEffect, useState } from "react";
import type { Mesh } from "../../geometry/mesh.ts";
import type { SceneView } from "../scene/sceneView.ts";
import { pointsOf, type PatternStudy } from "./patternStudy.ts";
import { heldPlasticSkin, trappedSkin } from "./trappedSkins.ts";

const cells = 88;
const restMs = 160;
type Skins = SceneView["pockets"];
const none: Skins = [];

/** What stays, as volumes in place, a moment after the last change; the numbers beside it come from the worker. */
export function useTrappedSkins(
  mesh: Mesh,
  study: Pick<PatternStudy, "marks" | "up">,
  isWanted: boolean,
): Skins {
  const [found, setFound] = useState<{ readonly marks: PatternStudy["marks"]; readonly skins: Skins } | null>(
    null,
  );
  const { marks, up } = study;
  useEffect(() => {
    if (!isWanted) return;
    let gone = false;
    const draw = async (): Promise<void> => {
      const breathe = (): Promise<void> => new Promise((done) => setTimeout(done, 0));
      const air = quietly(() => trappedSkin({ mesh, up, openings: pointsOf({ marks }, "vent"), cells }));
      await breathe();
      if (gone) return;
      const plastic = quietly(() =>
        heldPlasticSkin({ mesh, up, openings: marks.map(({ point }) => point), cells }),
      );
      const skins: SceneView["pockets"] = [
        ...(air === null ? [] : [{ colour: "water" as const, mesh: air }]),
        ...(plastic === null ? [] : [{ colour: "hold" as const, mesh: plastic }]),
      ];
      if (!gone) setFound({ marks, skins });
    };
    const timer = setTimeout(() => void draw(), restMs);
    return () => {
      gone = true;
      clearTimeout(timer);
    };
  }, [mesh, up, marks, isWanted]);
  return isWanted ? (found?.skins ?? none) : none;
}

/** A mark that no cell lies near, on a wall thinner than a cell, draws nothing; the list still tells of it. */
function quietly(draw: () => Mesh | null): Mesh | null {
  try {
    return draw();
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}
