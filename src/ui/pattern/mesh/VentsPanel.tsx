import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Choice } from "../../base/forms/Choice.tsx";
import { HeldAnswer } from "./HeldAnswer.tsx";
import { MarkList } from "./MarkList.tsx";
import { markDiameterMm, withMark } from "./patternStudy.ts";
import type { MarkKind } from "../../../logbook/casting/mark.ts";
import type { NamedSpot } from "./scenePlaces.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./scene.module.css";
import { SpotList } from "./SpotList.tsx";
import type { SceneController, Tool } from "./useSceneController.ts";

const tools: readonly { readonly value: Tool; readonly label: string }[] = [
  { value: "look", label: "Look" },
  { value: "vent", label: "Vent" },
  { value: "drain", label: "Drain" },
  { value: "gate", label: "Gate" },
  { value: "feeder", label: "Feeder" },
];

/** Where air and plastic stay, what to do there, and what is placed; all of it works without the picture. */
export function VentsPanel({ desk }: { readonly desk: SceneController }) {
  const format = useFormat();
  const { spots, results, isStale } = desk;
  const left = (all: readonly NamedSpot[]): readonly NamedSpot[] => all.filter((one) => !one.isServed);
  const putAll = (kind: MarkKind, all: readonly NamedSpot[]): void =>
    desk.act((study) =>
      left(all).reduce(
        (now, { spot }) =>
          withMark(now, {
            id: desk.newId(),
            kind,
            point: spot.point,
            normal: null,
            diameterMm: markDiameterMm[kind],
          }),
        study,
      ),
    );
  return (
    <>
      <Card title="Trapped air and plastic">
        <HeldAnswer desk={desk} />
        <Choice label="Tap on the picture" options={tools} value={desk.tool} onChange={desk.setTool} />
        {desk.tool !== "look" && (
          <p className={sheet["soft"]}>
            Tap the piece. Near a listed place the mark snaps to it. Drag a mark to move it.
          </p>
        )}
        {desk.undo !== null && (
          <div className={`${sheet["row"]} ${css["wrap"]}`}>
            <Button onPress={desk.undo}>Undo</Button>
          </div>
        )}
      </Card>
      <Card title="Trapped air">
        {results !== null && spots.air.length === 0 && <p>None: no high place traps air.</p>}
        <SpotList desk={desk} spots={spots.air} kind="vent" />
        {left(spots.air).length > 1 && (
          <div className={`${sheet["row"]} ${css["wrap"]}`}>
            <Button disabledReason={desk.placesWait} onPress={() => putAll("vent", spots.air)}>
              Put vents at all {left(spots.air).length}
            </Button>
          </div>
        )}
      </Card>
      <Card title="Trapped plastic">
        <p className={sheet["soft"]}>
          For patterns that melt out in this position. Cup down for burnout, the vents drain the plastic.
        </p>
        <SpotList desk={desk} spots={spots.plastic} kind="drain" />
        {left(spots.plastic).length > 1 && (
          <div className={`${sheet["row"]} ${css["wrap"]}`}>
            <Button disabledReason={desk.placesWait} onPress={() => putAll("drain", spots.plastic)}>
              Put drains at all {left(spots.plastic).length}
            </Button>
          </div>
        )}
      </Card>
      <Card title="Placed">
        <MarkList desk={desk} />
      </Card>
      <Card>
        <details>
          <summary>How this is calculated</summary>
          <p>
            Tops of the solid by the way its surface joins as a level sinks through it: those that rise at
            least {format.show("mm", 2)} and hold {format.show("cm3", 0.05)} are listed, others are the noise
            of a scan. What stays is counted in columns{" "}
            {results?.held ? format.show("mm", results.held.air.pitchMm) : "a cell"} wide, for metal that
            rises evenly; overlapping bodies count once. Where vents belong does not hang on the gate, how
            much stays does: see the fill. No splash, no freezing, and no air that the shell itself lets
            through.
          </p>
        </details>
        {isStale && <p className={sheet["soft"]}>Calculating again…</p>}
      </Card>
    </>
  );
}
