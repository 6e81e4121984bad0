import { z } from "zod";
import { ranges } from "../../logbook/ranges.ts";
import { useFormat } from "../app/useFormat.ts";
import { NumberField } from "../parts/NumberField.tsx";
import { TextField } from "../parts/TextField.tsx";
import { figure, wordsOrNone } from "./gate.ts";
import { LogForm, type LogFormProps } from "./LogForm.tsx";

export function FiredForm({ item }: LogFormProps) {
  const format = useFormat();
  const schema = z.object({
    peakC: figure(format, {
      what: "top temperature",
      quantity: "temp",
      range: ranges.peakC,
      remedy: "Give the highest the kiln showed.",
    }),
    holdMin: figure(format, {
      what: "time at top",
      quantity: "min",
      range: ranges.holdMin,
      remedy: "Give the minutes it stood at the top, not the climb.",
    }),
  });
  const initial: { readonly peakC: number | null; readonly holdMin: number | null } = {
    peakC: null,
    holdMin: null,
  };
  return (
    <LogForm item={item} type="shell-fired" title="Shell fired" initial={initial} schema={schema}>
      {({ draft, set, errors }) => (
        <>
          <NumberField
            label="Top temperature"
            quantity="temp"
            value={draft.peakC}
            onChange={(peakC) => set({ peakC })}
            error={errors["peakC"]}
          />
          <NumberField
            label="Held for"
            quantity="min"
            min={0}
            value={draft.holdMin}
            onChange={(holdMin) => set({ holdMin })}
            hint="The shell's strength is made here; too cool or too short and the wall is reckoned at half."
            error={errors["holdMin"]}
          />
        </>
      )}
    </LogForm>
  );
}

export function PreheatedForm({ item }: LogFormProps) {
  const format = useFormat();
  const schema = z.object({
    shellC: figure(format, {
      what: "shell temperature",
      quantity: "temp",
      range: ranges.shellC,
      remedy: "Give the kiln's reading once it has stood there long enough to soak through.",
    }),
    note: wordsOrNone,
  });
  const initial: { readonly shellC: number | null; readonly note: string } = { shellC: null, note: "" };
  return (
    <LogForm item={item} type="shell-preheated" title="Shell preheated" initial={initial} schema={schema}>
      {({ draft, set, errors }) => (
        <>
          <NumberField
            label="Shell"
            quantity="temp"
            value={draft.shellC}
            onChange={(shellC) => set({ shellC })}
            error={errors["shellC"]}
          />
          <TextField
            label="Note"
            value={draft.note}
            onChange={(note) => set({ note })}
            hint="Sand it stands in and how warm that is."
            error={errors["note"]}
          />
        </>
      )}
    </LogForm>
  );
}
