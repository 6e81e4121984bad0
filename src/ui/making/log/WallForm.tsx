import { z } from "zod";
import { ranges } from "../../../logbook/entries/ranges.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { NumberField } from "../../base/forms/NumberField.tsx";
import { TextField } from "../../base/forms/TextField.tsx";
import { figure, wordsOrNone } from "../../base/forms/fieldSchema.ts";
import { LogForm, type LogFormProps } from "./LogForm.tsx";

export function WallForm({ item }: LogFormProps) {
  const format = useFormat();
  const schema = z.object({
    wallMm: figure(format, {
      what: "wall",
      quantity: "mm",
      range: ranges.wallMm,
      remedy: "Close the caliper on the broken edge, without pattern and without loose grains.",
    }),
    where: wordsOrNone,
  });
  const initial: { readonly wallMm: number | null; readonly where: string } = { wallMm: null, where: "" };
  return (
    <LogForm item={item} type="wall-measured" title="Caliper reading" initial={initial} schema={schema}>
      {({ draft, set, errors }) => (
        <>
          <NumberField
            label="Wall"
            quantity="mm"
            min={0}
            value={draft.wallMm}
            onChange={(wallMm) => set({ wallMm })}
            hint="At the broken edge of the cup, or a test stick dipped along. Your own reading replaces the table's figure."
            error={errors["wallMm"]}
          />
          <TextField
            label="Where"
            value={draft.where}
            onChange={(where) => set({ where })}
            hint="Cup edge, test stick, a corner."
            error={errors["where"]}
          />
        </>
      )}
    </LogForm>
  );
}
