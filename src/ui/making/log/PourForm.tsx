import { z } from "zod";
import { ranges } from "../../../logbook/entries/ranges.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { NumberField } from "../../base/forms/NumberField.tsx";
import { TextField } from "../../base/forms/TextField.tsx";
import { figureOrNone, wordsOrNone } from "../../base/forms/fieldSchema.ts";
import { LogForm, type LogFormProps } from "./LogForm.tsx";

type Draft = {
  readonly metalC: number | null;
  readonly shellC: number | null;
  readonly massKg: number | null;
  readonly outOfKilnMin: number | null;
  readonly note: string;
};
const remedy = "Correct it, or leave it empty if it was not measured.";

export function PourForm({ item }: LogFormProps) {
  const format = useFormat();
  const schema = z.object({
    metalC: figureOrNone(format, {
      what: "metal temperature",
      quantity: "temp",
      range: ranges.metalC,
      remedy,
    }),
    shellC: figureOrNone(format, {
      what: "shell temperature",
      quantity: "temp",
      range: ranges.shellC,
      remedy,
    }),
    massKg: figureOrNone(format, { what: "metal poured", quantity: "kg", range: ranges.metalKg, remedy }),
    outOfKilnMin: figureOrNone(format, {
      what: "time out of the kiln",
      quantity: "min",
      range: ranges.outOfKilnMin,
      remedy,
    }),
    note: wordsOrNone,
  });
  const initial: Draft = { metalC: null, shellC: null, massKg: null, outOfKilnMin: null, note: "" };
  return (
    <LogForm item={item} type="metal-poured" title="Metal poured" initial={initial} schema={schema}>
      {({ draft, set, errors }) => (
        <>
          <NumberField
            label="Metal"
            quantity="temp"
            value={draft.metalC}
            onChange={(metalC) => set({ metalC })}
            hint="By thermocouple in the crucible, just before it moved."
            error={errors["metalC"]}
          />
          <NumberField
            label="Shell"
            quantity="temp"
            value={draft.shellC}
            onChange={(shellC) => set({ shellC })}
            hint="As it came out of the kiln."
            error={errors["shellC"]}
          />
          <NumberField
            label="From kiln to metal"
            quantity="min"
            min={0}
            value={draft.outOfKilnMin}
            onChange={(outOfKilnMin) => set({ outOfKilnMin })}
            error={errors["outOfKilnMin"]}
          />
          <NumberField
            label="Metal poured"
            quantity="kg"
            min={0}
            value={draft.massKg}
            onChange={(massKg) => set({ massKg })}
            error={errors["massKg"]}
          />
          <TextField
            label="Note"
            multiline
            value={draft.note}
            onChange={(note) => set({ note })}
            hint="Filled? Leaked? Boiled? Risers up?"
            error={errors["note"]}
          />
        </>
      )}
    </LogForm>
  );
}
