import { lazy, Suspense, useMemo, useRef, useState } from "react";
import { faceDown } from "../../../geometry/rotation.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Choice } from "../../base/forms/Choice.tsx";
import type { SceneHandle } from "../scene/SceneCanvas.tsx";
import type { Hit } from "../scene/pickPiece.ts";
import type { SceneView } from "../scene/sceneView.ts";
import { FillPanel } from "./FillPanel.tsx";
import { GatingPanel } from "./GatingPanel.tsx";
import { HangCard } from "./HangCard.tsx";
import { KeepPicture } from "./KeepPicture.tsx";
import { MisfitCard } from "./MisfitCard.tsx";
import { PictureKeys } from "./PictureKeys.tsx";
import { sceneLabel } from "./sceneLabel.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./scene.module.css";
import { TurnCard } from "./TurnCard.tsx";
import { useFill } from "./useFill.ts";
import { useFreeze } from "./useFreeze.ts";
import type { PatternController } from "./usePatternController.ts";
import { useSceneController } from "./useSceneController.ts";
import { useSceneView, type Panel } from "./useSceneView.ts";
import { useThickBands } from "./useThickBands.ts";
import { VentsPanel } from "./VentsPanel.tsx";
import { WallsPanel } from "./WallsPanel.tsx";
import { Working } from "./Working.tsx";

// The whole of the picture's machinery is one chunk, fetched when a pattern is looked at.
const SceneCanvas = lazy(async () => ({ default: (await import("../scene/SceneCanvas.tsx")).SceneCanvas }));

const panels: readonly { readonly value: Panel; readonly label: string }[] = [
  { value: "air", label: "Air" },
  { value: "hang", label: "Position" },
  { value: "fill", label: "Fill" },
  { value: "gating", label: "Gating" },
  { value: "walls", label: "Thickness" },
];

/** The pattern in 3D with all that is done to it there; nothing while its unit is not known. */
export function PatternScene({ door, shop }: { readonly door: PatternController; readonly shop: Shop }) {
  return door.mmPerUnit === null ? null : <Desk door={door} shop={shop} mmPerUnit={door.mmPerUnit} />;
}

function Desk({
  door,
  shop,
  mmPerUnit,
}: {
  readonly door: PatternController;
  readonly shop: Shop;
  readonly mmPerUnit: number;
}) {
  const desk = useSceneController(door, mmPerUnit);
  const format = useFormat();
  const [panel, setPanel] = useState<Panel>("air");
  const [cut, setCut] = useState<SceneView["cut"]>(null);
  const handle = useRef<SceneHandle>(null);
  const fill = useFill(desk, panel === "fill");
  const freeze = useFreeze(desk);
  const thickness = desk.study.shape?.thickness ?? null;
  const thick = useThickBands(desk.mesh, thickness);
  const view = useSceneView(desk, { panel, cut, fill, freeze, bands: thick?.ofTriangle ?? null });
  const label = useMemo(() => sceneLabel(desk, format), [desk, format]);

  const onTap = (hit: Hit): void => {
    const { tool, chosen } = desk;
    if (chosen !== null) desk.move(chosen, hit);
    else if (tool === "face") desk.turnTo(faceDown(desk.rotation, hit.normal));
    else if (tool !== "look" && tool !== "rings") desk.put(tool, hit);
  };
  const choose = (next: Panel): void => {
    setPanel(next);
    if (next !== panel) desk.setTool("look");
  };

  return (
    <section className={`${sheet["stack"]} ${css["desk"]}`} aria-label="The pattern in 3D">
      <div className={css["hold"]}>
        <div className={css["frame"]}>
          <Suspense fallback={null}>
            <SceneCanvas
              view={view}
              label={label}
              onTap={onTap}
              onMove={desk.move}
              onTurned={desk.turnTo}
              handle={handle}
            />
          </Suspense>
          {/* Over the picture, so that nothing moves under a finger when a sum begins. */}
          {door.working !== null && (
            <div className={css["busy"]}>
              <Working progress={door.working} />
            </div>
          )}
        </div>
        <PictureKeys
          onLook={(name) => handle.current?.look(name)}
          onNearer={(by) => handle.current?.nearer(by)}
          cut={cut}
          setCut={setCut}
        />
      </div>
      <div className={`${sheet["stack"]} ${css["panel"]}`}>
        <Choice label="Look at" options={panels} value={panel} onChange={choose} />
        <MisfitCard desk={desk} />
        {panel === "air" && <VentsPanel desk={desk} />}
        {panel === "hang" && (
          <>
            <TurnCard desk={desk} />
            <HangCard door={door} />
          </>
        )}
        {panel === "fill" && <FillPanel desk={desk} fill={fill} />}
        {panel === "gating" && <GatingPanel desk={desk} shop={shop} />}
        {panel === "walls" && (
          <WallsPanel desk={desk} bands={thick?.bands ?? null} freeze={freeze} shop={shop} />
        )}
        <KeepPicture study={desk.study} picture={async () => (await handle.current?.picture()) ?? null} />
      </div>
    </section>
  );
}
