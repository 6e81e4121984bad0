import type { ShellInside } from "../../../logbook/entries/shellFireBodies.ts";
import { firingPractice } from "../../../physics/heat/firingLimits.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { insideOptions } from "../../base/format/insideOptions.ts";
import { figure, figureOrNone, givenOrNone, wordsOrNone } from "../../base/forms/formFields.ts";
import { NumberOf, PickOf, TextOf } from "../../base/forms/BoundFields.tsx";
import { LogForm, type LogFormProps } from "./LogForm.tsx";

export function FiredForm({ item }: LogFormProps) {
  const fields = {
    peakC: figure("peakC", { what: "top temperature", remedy: "Enter the highest kiln reading." }),
    holdMin: figure("holdMin", {
      what: "time at top",
      remedy: "Enter the minutes at the top, without the climb.",
    }),
    inside: givenOrNone<ShellInside>(),
  };
  return (
    <LogForm item={item} type="shell-fired" title="Shell fired" fields={fields} body={(read) => read}>
      {(form) => (
        <>
          <NumberOf form={form} at="peakC" label="Top temperature" />
          <NumberOf
            form={form}
            at="holdMin"
            label="Held for"
            hint="Firing makes the shell’s strength. Too cool or too short counts as half."
          />
          <PickOf
            form={form}
            at="inside"
            label="The inside is"
            options={insideOptions}
            hint="Leave it empty until you have looked."
          />
        </>
      )}
    </LogForm>
  );
}

export function PreheatedForm({ item }: LogFormProps) {
  const format = useFormat();
  const fields = {
    shellC: figure("shellC", {
      what: "shell temperature",
      remedy: "Enter the kiln’s reading once the shell has soaked through.",
    }),
    heldMin: figureOrNone("heldMin", {
      what: "time",
      remedy: "Enter the soak minutes, or leave it empty.",
    }),
    note: wordsOrNone,
  };
  return (
    <LogForm item={item} type="shell-preheated" title="Shell preheated" fields={fields} body={(read) => read}>
      {(form) => (
        <>
          <NumberOf form={form} at="shellC" label="Shell" />
          <NumberOf
            form={form}
            at="heldMin"
            label="Soaked for"
            hint={`A rinsed or long cold shell needs ${format.show("min", firingPractice.patchedHoldMin)} at ${format.show("temp", firingPractice.steamHoldC)} or more. May stay empty.`}
          />
          <TextOf form={form} at="note" label="Note" hint="Sand around it and its temperature." />
        </>
      )}
    </LogForm>
  );
}
