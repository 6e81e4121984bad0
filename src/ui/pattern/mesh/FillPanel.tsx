import { volumeText } from "../../base/format/figureText.ts";
import { Pause, Play } from "lucide-react";
import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { moments } from "../scene/fillTimeline.ts";
import { SelectField } from "../../base/forms/SelectField.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./scene.module.css";
import { hollowsOf } from "./studyHollows.ts";
import type { FillState } from "./useFill.ts";
import { lowestPlace } from "./gatePlaces.ts";
import type { SceneController } from "./useSceneController.ts";

/** Metal rising from a gate, moment by moment, and the air it cuts off. */
export function FillPanel({ desk, fill }: { readonly desk: SceneController; readonly fill: FillState }) {
  const format = useFormat();
  if (hollowsOf(desk.study, desk.mmPerUnit)?.are === null)
    return (
      <Card title="The metal rises">
        <p>First choose above: closed void metal or core. The fill depends on it.</p>
      </Card>
    );
  if (fill.gates.length === 0) return <NoGate desk={desk} />;
  const { told, found, at } = fill;
  const low = found === null ? 0 : (desk.results?.lowMm ?? 0);
  const isStill = matchMedia("(prefers-reduced-motion: reduce)").matches;
  const nameOf = (id: string): string => desk.marks.find(({ mark }) => mark.id === id)?.label ?? "Gate";
  return (
    <>
      <Card title="The metal rises">
        {fill.gates.length > 1 && (
          <SelectField
            label="Gate"
            options={fill.gates.map(({ id }) => ({ value: id, label: nameOf(id) }))}
            value={fill.gateId}
            onChange={(id) => id !== null && fill.setGateId(id)}
            empty={null}
          />
        )}
        {fill.isWorking && <p role="status">Calculating…</p>}
        {fill.trouble !== null && <p role="alert">It could not be calculated: {fill.trouble}</p>}
        <div className={`${sheet["stack"]} ${css["panel"]} ${fill.isWorking ? css["stale"] : ""}`}>
          {told !== null && found !== null && (
            <>
              <label className={`${sheet["stack1"]} ${css["slider"]}`}>
                <span>Fill level</span>
                <input
                  type="range"
                  min={0}
                  max={moments}
                  value={at}
                  aria-valuetext={`${format.show("percent", at / moments)} of the volume`}
                  onChange={(event) => fill.setAt(Number(event.target.value))}
                />
              </label>
              <div className={`${sheet["row"]} ${css["wrap"]}`}>
                {isStill ? (
                  <Button
                    onPress={() => fill.setAt(at >= moments ? 0 : Math.min(moments, at + moments / 10))}
                  >
                    {at >= moments ? "From the start" : "A step further"}
                  </Button>
                ) : (
                  <Button onPress={() => fill.play(!fill.isPlaying)}>
                    {fill.isPlaying ? <Pause aria-hidden="true" /> : <Play aria-hidden="true" />}
                    {fill.isPlaying ? "Pause" : "Play"}
                  </Button>
                )}
              </div>
              <p className={css["answer"]}>
                {volumeText(told.metalMl / 1000, format)} of metal
                {told.topMm === null ? "" : `, up to ${format.show("mm", told.topMm - low)}`}
                {told.airMl > 0 ? `; ${volumeText(told.airMl / 1000, format)} of air cut off` : ""}
              </p>
            </>
          )}
        </div>
      </Card>
      {found !== null && <Pockets desk={desk} found={found} />}
    </>
  );
}

function NoGate({ desk }: { readonly desk: SceneController }) {
  const lowest = desk.results === null ? null : lowestPlace(desk.results);
  const highest = desk.results?.tips[0] ?? null;
  return (
    <Card title="The metal rises">
      <p>Where does the metal come in? Tap a gate in the picture, or choose one:</p>
      <div className={`${sheet["row"]} ${css["wrap"]}`}>
        {lowest !== null && (
          <Button
            disabledReason={desk.placesWait}
            onPress={() => desk.put("gate", { point: lowest.point, normal: null })}
          >
            Gate at the lowest place
          </Button>
        )}
        {highest !== null && (
          <Button
            disabledReason={desk.placesWait}
            onPress={() => desk.put("gate", { point: highest.point, normal: null })}
          >
            Gate at the top
          </Button>
        )}
        <Button pressed={desk.tool === "gate"} onPress={() => desk.setTool("gate")}>
          Tap it in the picture
        </Button>
      </div>
    </Card>
  );
}

function Pockets({
  desk,
  found,
}: {
  readonly desk: SceneController;
  readonly found: NonNullable<FillState["found"]>;
}) {
  const format = useFormat();
  const low = desk.results?.lowMm ?? 0;
  const ml = (mm3: number): string => volumeText(mm3 / 1e6, format);
  return (
    <Card title="Air this fill cuts off">
      {found.pockets.length === 0 ? (
        <p className={css["answer"]}>None that {format.show("mm", found.grid.pitch)} cells can tell.</p>
      ) : (
        <div className={sheet["scroll"]}>
          <table>
            <thead>
              <tr>
                <th scope="col">Amount</th>
                <th scope="col">From</th>
                <th scope="col">To</th>
              </tr>
            </thead>
            <tbody>
              {found.pockets.slice(0, 20).map(({ volume, top, level, point }) => (
                <tr key={point.join(" ")}>
                  <td>{ml(volume)}</td>
                  <td>{format.show("mm", level - low)}</td>
                  <td>{format.show("mm", top - low)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      {found.unreached > 0.001 * found.solidVolume && (
        <p>{ml(found.unreached)} of the pattern is another body that this gate does not reach.</p>
      )}
      <details>
        <summary>How this is calculated</summary>
        <p>
          In cells of {format.show("mm", found.grid.pitch)}: the metal always goes to the lowest place it can
          reach, over a weir and down beyond it, and air that has no way left to a vent stays. Parts thinner
          than {format.show("mm", 3 * found.grid.pitch)} are not followed. Even and slow: no splash, no
          freezing, no pressure of the air, none that the shell lets through. It can differ from the even
          level in both directions; the places for vents are the same.
        </p>
      </details>
    </Card>
  );
}
