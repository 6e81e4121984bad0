import { useState } from "react";
import { asFiled, faceDown, turnedBy, upOf } from "../../../geometry/rotation.ts";
import { dot, negated } from "../../../geometry/vector.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Choice } from "../../base/forms/Choice.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./scene.module.css";
import type { SceneController, Tool } from "./useSceneController.ts";

const turns = [
  { label: "Tip it towards you", axis: "x", sign: 1 },
  { label: "Tip it away", axis: "x", sign: -1 },
  { label: "Lean it left", axis: "y", sign: -1 },
  { label: "Lean it right", axis: "y", sign: 1 },
  { label: "Spin it left", axis: "z", sign: 1 },
  { label: "Spin it right", axis: "z", sign: -1 },
] as const;

const tools: readonly { readonly value: Tool; readonly label: string }[] = [
  { value: "look", label: "Turn the view" },
  { value: "rings", label: "Rotate the piece with a ring" },
  { value: "face", label: "Set the piece on the tapped face" },
];

const degrees = (deg: number): number => (deg * Math.PI) / 180;

/** Turning the piece: by steps about the shop's axes, by rings in the picture, or by what should lie underneath. */
export function TurnCard({ desk }: { readonly desk: SceneController }) {
  const format = useFormat();
  const [step, setStep] = useState<"15" | "90">("90");
  const { rotation, turnTo, study } = desk;
  const isAsFiled = rotation.every((row, k) => dot(row, asFiled[k as 0 | 1 | 2]) > 1 - 1e-9);
  const flats = (study.shape?.flats ?? []).slice(0, 6);
  return (
    <Card title="Turn the piece">
      <Choice label="Touch on the picture" options={tools} value={desk.tool} onChange={desk.setTool} />
      <Choice
        label="Step"
        options={[
          { value: "90", label: "90°" },
          { value: "15", label: "15°" },
        ]}
        value={step}
        onChange={setStep}
      />
      <div className={css["pairs"]}>
        {turns.map(({ label, axis, sign }) => (
          <Button key={label} onPress={() => turnTo(turnedBy(rotation, axis, sign * degrees(Number(step))))}>
            {label}
          </Button>
        ))}
      </div>
      <div className={`${sheet["row"]} ${css["wrap"]}`}>
        <Button onPress={() => turnTo(asFiled)} disabledReason={isAsFiled ? "It is as in its file." : null}>
          As in its file
        </Button>
        {desk.undo !== null && <Button onPress={desk.undo}>Undo</Button>}
      </div>
      {flats.length > 0 && (
        <details>
          <summary>Set it on a flat face</summary>
          <ul className={css["spots"]}>
            {flats.map(({ point, normal, width, length }, n) => (
              <li key={point.join(" ")} className={css["spot"]}>
                <span className={css["chip"]}>{n + 1}</span>
                <p>
                  Flat of {format.show("mm", width)} by {format.show("mm", length)}
                </p>
                <div className={`${sheet["row"]} ${css["wrap"]}`}>
                  <Button
                    label={`Set it on flat ${n + 1}`}
                    pressed={dot(negated(normal), upOf(rotation)) > 1 - 1e-6}
                    onPress={() => turnTo(faceDown(rotation, normal))}
                  >
                    Set it down
                  </Button>
                </div>
              </li>
            ))}
          </ul>
        </details>
      )}
    </Card>
  );
}
