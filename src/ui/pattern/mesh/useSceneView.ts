import { useMemo } from "react";
import { dot } from "../../../geometry/vector.ts";
import type { HotSpot } from "../../../geometry/hotSpots.ts";
import type { FlatSpan } from "../../../geometry/flatSpans.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import type { Patch, Place, SceneView } from "../scene/sceneView.ts";
import { cupLevelOf } from "./patternStudy.ts";
import type { Shape } from "./patternResults.ts";
import { rulerTicks } from "./rulerTicks.ts";
import { placesOf } from "./scenePlaces.ts";
import type { FillState } from "./useFill.ts";
import type { FreezeState } from "./useFreeze.ts";
import type { SceneController } from "./useSceneController.ts";
import { useTrappedSkins } from "./useTrappedSkins.ts";

export type Panel = "air" | "hang" | "fill" | "gating" | "walls";

type Shown = {
  readonly panel: Panel;
  readonly cut: SceneView["cut"];
  readonly fill: FillState;
  readonly freeze: FreezeState;
  readonly bands: Uint8Array | null;
};

const noPatches: readonly Patch[] = [];
const noBars: SceneView["bars"] = [];
const noSpots: readonly HotSpot[] = [];
const noFlats: readonly FlatSpan[] = [];

/** What the picture shows for the panel that is open. */
export function useSceneView(desk: SceneController, { panel, cut, fill, freeze, bands }: Shown): SceneView {
  const format = useFormat();
  const { mesh, study, rotation, results, spots, marks, chosen, tool } = desk;
  const { shape } = study;
  const hotSpots = freeze.found?.hotSpots ?? noSpots;
  const skins = useTrappedSkins(desk, panel === "air");
  const cupMm = results === null ? null : cupLevelOf(study, results.highMm);
  const heights = useMemo(() => {
    if (results === null || cupMm === null || dot(results.up, study.up) < 1 - 1e-9) return null;
    const { lowMm, highMm } = results;
    const ticks = rulerTicks(highMm - lowMm, format);
    const isCup = panel === "hang" || panel === "gating";
    const cup = isCup ? { atMm: cupMm, label: `Cup ${format.show("mm", cupMm - lowMm)}` } : null;
    return { lowMm, highMm, cup, ticks };
  }, [results, study.up, cupMm, format, panel]);
  const places = useMemo((): readonly Place[] => {
    const isWalls = panel === "walls";
    const shown = marks.filter(({ mark: { kind } }) => !isWalls || kind === "gate" || kind === "feeder");
    const withSpots = panel === "air" || panel === "hang";
    const put = placesOf(spots, shown, { up: study.up, chosen, withSpots });
    return isWalls ? [...wallPlaces(shape, hotSpots), ...put] : put;
  }, [spots, marks, study.up, chosen, panel, shape, hotSpots]);
  const hand: SceneView["hand"] =
    tool === "rings" ? "turn" : tool === "look" && chosen === null ? "look" : "tap";
  const flats = shape?.flats;
  return useMemo(
    () => ({
      mesh,
      rotation,
      places,
      bars: panel === "gating" || panel === "hang" ? study.bars : noBars,
      pockets: skins,
      patches: panel === "walls" ? (flats ?? noFlats).map(asPatch) : noPatches,
      heights,
      isGlass: panel === "air" && skins.length > 0,
      bands: panel === "walls" ? bands : null,
      fill: panel === "fill" ? fill.look : null,
      cut,
      hand,
    }),
    [mesh, rotation, places, study.bars, skins, panel, flats, heights, bands, fill.look, cut, hand],
  );
}

const asPatch = ({ point, normal, width, length }: FlatSpan): Patch => ({
  point,
  normal,
  widthMm: width,
  lengthMm: length,
});

/** Thin and thick places named in the picture, of each. */
export const pictured = 4;

function wallPlaces(shape: Shape | null, hotSpots: readonly HotSpot[]): readonly Place[] {
  const still = { ridge: [], isPut: true, canMove: false, isChosen: false } as const;
  const thin = (shape?.thickness?.thin ?? []).slice(0, pictured);
  const thick = (shape?.thickness?.thick ?? []).slice(0, pictured);
  const hot = hotSpots.slice(0, 12);
  return [
    ...thin.map(({ point }, n): Place => ({
      ...still,
      id: `thin ${n}`,
      kind: "thin",
      label: `T${n + 1}`,
      point,
    })),
    ...thick.map(({ point }, n): Place => ({
      ...still,
      id: `thick ${n}`,
      kind: "thick",
      label: `B${n + 1}`,
      point,
    })),
    ...hot.map(({ point }, n): Place => ({
      ...still,
      id: `hot ${n}`,
      kind: "hot",
      label: `H${n + 1}`,
      point,
    })),
  ];
}
