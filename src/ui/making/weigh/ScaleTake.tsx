import { useFormat } from "../../base/state/useFormat.ts";
import { balanceWords } from "../../base/format/saidWords.ts";
import { SensorButton } from "../../air/sensors/SensorButton.tsx";
import { useSensor } from "../../air/sensors/useSensor.ts";
import { isTooCoarse, neededStepG, scaleStepG } from "./scaleStep.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./WeighForm.module.css";

/** Takes the number from a Bluetooth scale, and says for which coat such a scale is fine enough. */
export function ScaleTake({
  waterG,
  onTake,
}: {
  /** Water the coat took on, g; null where it isn't known. */
  readonly waterG: number | null;
  readonly onTake: (massG: number) => void;
}) {
  const format = useFormat();
  const { canConnect } = useSensor("scale");
  const step = balanceWords(scaleStepG, format);
  const coarse = isTooCoarse(waterG);
  return (
    <section className={sheet["stack2"]} aria-label="Bluetooth scale">
      <SensorButton kind="scale" onValue={({ massG }) => onTake(massG)} />
      {canConnect && (
        <p className={coarse ? styles["coarse"] : sheet["soft"]}>
          {waterG === null
            ? `By the Bluetooth standard a scale sends steps of ${step} at best. A balance must show a twentieth of the coat’s water. For a small piece use a finer balance and type the weight.`
            : coarse
              ? `Too coarse for this coat: it took on about ${balanceWords(waterG, format)} of water, so the balance must show ${balanceWords(neededStepG(waterG), format)}. By the Bluetooth standard a scale sends steps of ${step} at best. Use a finer balance and type the weight.`
              : `Fine enough for this coat: it took on about ${balanceWords(waterG, format)} of water, and the balance must show a twentieth of it, ${balanceWords(neededStepG(waterG), format)}. By the Bluetooth standard a scale sends steps of ${step} at best.`}
        </p>
      )}
    </section>
  );
}
