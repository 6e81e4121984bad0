import { useFormat } from "../../base/state/useFormat.ts";
import { balanceWords } from "../../base/format/saidWords.ts";
import { Choice } from "../../base/forms/Choice.tsx";
import type { WeighUnit } from "./weighDraft.ts";

const stepsG = [0.1, 1, 5, 10] as const;

/** The scale: in which unit it is read and how finely; asked once and kept for the next weighing. */
export function ScaleStep(props: {
  readonly setG: number | null;
  readonly unit: WeighUnit;
  readonly onStep: (scaleG: number) => void;
  readonly onUnit: (unit: WeighUnit) => void;
}) {
  const { setG, unit, onStep, onUnit } = props;
  const format = useFormat();
  const words = (scaleG: number): string => balanceWords(scaleG, format);
  return (
    <details open={setG === null}>
      <summary>{setG === null ? "What step does the scale show?" : `Scale step: ${words(setG)}`}</summary>
      <Choice
        label="Scale reads to"
        options={stepsG.map((scaleG) => ({ value: String(scaleG), label: words(scaleG) }))}
        value={setG === null ? null : String(setG)}
        onChange={(value) => onStep(Number(value))}
      />
      <Choice
        label="Unit"
        options={(["g", "kg"] as const).map((value) => ({ value, label: format.unit(value) }))}
        value={unit}
        onChange={onUnit}
      />
    </details>
  );
}
