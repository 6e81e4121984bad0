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
            ? `By the Bluetooth standard a scale tells steps of ${step} at best. The balance must tell a twentieth of the coat's water: on a small piece that is finer, so read a finer balance there and type it.`
            : coarse
              ? `Too coarse for this coat: it took on about ${balanceWords(waterG, format)} of water, so the balance must tell ${balanceWords(neededStepG(waterG), format)}. By the Bluetooth standard a scale tells steps of ${step} at best. Read a finer balance and type it.`
              : `Fine enough for this coat: it took on about ${balanceWords(waterG, format)} of water, of which the balance must tell a twentieth, ${balanceWords(neededStepG(waterG), format)}. By the Bluetooth standard a scale tells steps of ${step} at best.`}
        </p>
      )}
    </section>
  );
}
