import { z } from "zod";
import type { ShellInside } from "../../../logbook/entries/shellFireBodies.ts";
import { ranges } from "../../../logbook/entries/ranges.ts";
import { firingPractice } from "../../../physics/heat/firingLimits.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { NumberField } from "../../base/forms/NumberField.tsx";
import { TextField } from "../../base/forms/TextField.tsx";
import { insideOptions } from "../../base/format/insideOptions.ts";
import { figure, figureOrNone, wordsOrNone } from "../../base/forms/fieldSchema.ts";
import { LogForm, type LogFormProps } from "./LogForm.tsx";
import { PickField } from "../../base/forms/PickField.tsx";

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
    inside: z
      .enum(["clean", "residue"])
      .nullable()
      .transform((seen) => seen ?? undefined),
  });
  const initial: {
    readonly peakC: number | null;
    readonly holdMin: number | null;
    readonly inside: ShellInside | null;
  } = { peakC: null, holdMin: null, inside: null };
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
            hint="The shell's strength is made here; too cool or too short counts as half the strength."
            error={errors["holdMin"]}
          />
          <PickField
            label="The inside is"
            options={insideOptions}
            value={draft.inside}
            onChange={(inside) => set({ inside })}
            hint="Leave it if nobody has looked yet."
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
    heldMin: figureOrNone(format, {
      what: "time",
      quantity: "min",
      range: ranges.holdMin,
      remedy: "Give the minutes it has stood there, or leave it empty.",
    }).transform((minutes) => minutes ?? undefined),
    note: wordsOrNone,
  });
  const initial: {
    readonly shellC: number | null;
    readonly heldMin: number | null;
    readonly note: string;
  } = { shellC: null, heldMin: null, note: "" };
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
          <NumberField
            label="Has stood there for"
            quantity="min"
            min={0}
            value={draft.heldMin}
            onChange={(heldMin) => set({ heldMin })}
            hint={`A rinsed or long cold shell asks for ${format.show("min", firingPractice.patchedHoldMin)} at ${format.show("temp", firingPractice.steamHoldC)} or more. May stay empty.`}
            error={errors["heldMin"]}
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
