import { guessUnit } from "../../../geometry/scaleMesh.ts";
import type { LengthUnit } from "../../../geometry/mesh.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { PickField } from "../../base/forms/PickField.tsx";
import { unitWords } from "./fileWords.ts";

/** How long the pattern would be in each unit, likeliest first; its maker knows which it is. */
export function UnitQuestion({
  longest,
  value,
  onChange,
}: {
  /** Longest side of the box, in the file's unit. */
  readonly longest: number;
  readonly value: LengthUnit | null;
  readonly onChange: (unit: LengthUnit) => void;
}) {
  const format = useFormat();
  const { all, clear } = guessUnit(longest);
  const shown = (mm: number): string =>
    mm >= 10_000
      ? format.show("m", mm / 1000)
      : mm < 0.1
        ? `below ${format.show("mm", 0.1)}`
        : format.show("mm", mm);
  return (
    <PickField
      label="The file is in"
      options={all.map(({ unit, longestMm }, place) => ({
        value: unit,
        label: unitWords[unit],
        hint: `longest side ${shown(longestMm)}${place === 0 ? (clear ? ", most likely" : ", perhaps") : ""}`,
      }))}
      value={value}
      onChange={onChange}
      hint="The file does not say. Choose the unit that gives the right length."
    />
  );
}
