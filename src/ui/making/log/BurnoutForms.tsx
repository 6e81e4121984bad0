import { z } from "zod";
import { ranges } from "../../../logbook/entries/ranges.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { PickField } from "../../base/forms/PickField.tsx";
import { NumberField } from "../../base/forms/NumberField.tsx";
import { TextField } from "../../base/forms/TextField.tsx";
import { figure, oneOf, wordsOrNone } from "../../base/forms/fieldSchema.ts";
import { insideOptions } from "../../base/format/insideOptions.ts";
import { LogForm, type LogFormProps } from "./LogForm.tsx";

const results = [
  ...insideOptions,
  { value: "stopped", label: "Stopped", hint: "Broken off before the end: a crack, a power cut." },
] as const;

export function BurnoutStartedForm({ item }: LogFormProps) {
  return (
    <LogForm
      item={item}
      type="burnout-started"
      title="Burnout begins"
      initial={{ note: "" }}
      schema={z.object({ note: wordsOrNone })}
    >
      {({ draft, set, errors }) => (
        <TextField
          label="Note"
          multiline
          value={draft.note}
          onChange={(note) => set({ note })}
          hint="How it stands in the kiln, drains, how fast it goes up."
          error={errors["note"]}
        />
      )}
    </LogForm>
  );
}

export function BurnoutReadForm({ item }: LogFormProps) {
  const format = useFormat();
  const schema = z.object({
    kilnC: figure(format, {
      what: "kiln temperature",
      quantity: "temp",
      range: ranges.kilnC,
      remedy: "Read the kiln's own thermocouple.",
    }),
    note: wordsOrNone,
  });
  const initial: { readonly kilnC: number | null; readonly note: string } = { kilnC: null, note: "" };
  return (
    <LogForm item={item} type="burnout-read" title="Kiln reading" initial={initial} schema={schema}>
      {({ draft, set, errors }) => (
        <>
          <NumberField
            label="Kiln"
            quantity="temp"
            value={draft.kilnC}
            onChange={(kilnC) => set({ kilnC })}
            error={errors["kilnC"]}
          />
          <TextField
            label="Note"
            value={draft.note}
            onChange={(note) => set({ note })}
            hint="Pattern runs out, smoke, flame, smell."
            error={errors["note"]}
          />
        </>
      )}
    </LogForm>
  );
}

export function BurnoutEndedForm({ item }: LogFormProps) {
  const schema = z.object({
    result: oneOf(["clean", "residue", "stopped"], "how it ended"),
    note: wordsOrNone,
  });
  const initial: { readonly result: "clean" | "residue" | "stopped" | null; readonly note: string } = {
    result: null,
    note: "",
  };
  return (
    <LogForm item={item} type="burnout-ended" title="Burnout ends" initial={initial} schema={schema}>
      {({ draft, set, errors }) => (
        <>
          <PickField
            label="The inside is"
            options={results}
            value={draft.result}
            onChange={(result) => set({ result })}
            error={errors["result"]}
          />
          <TextField
            label="Note"
            multiline
            value={draft.note}
            onChange={(note) => set({ note })}
            error={errors["note"]}
          />
          <p>A crack that shows now is logged on its own, as a crack found in burnout.</p>
        </>
      )}
    </LogForm>
  );
}
