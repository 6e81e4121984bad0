import type { ShellInside } from "../../../logbook/entries/shellFireBodies.ts";
import { firingPractice } from "../../../physics/heat/firingLimits.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { insideOptions } from "../../base/format/insideOptions.ts";
import { figure, figureOrNone, givenOrNone, wordsOrNone } from "../../base/forms/formFields.ts";
import { NumberOf, PickOf, TextOf } from "../../base/forms/BoundFields.tsx";
import { LogForm, type LogFormProps } from "./LogForm.tsx";

export function FiredForm({ item }: LogFormProps) {
  const fields = {
    peakC: figure("peakC", { what: "top temperature", remedy: "Give the highest the kiln showed." }),
    holdMin: figure("holdMin", {
      what: "time at top",
      remedy: "Give the minutes it stood at the top, not the climb.",
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
            hint="The shell's strength is made here; too cool or too short counts as half the strength."
          />
          <PickOf
            form={form}
            at="inside"
            label="The inside is"
            options={insideOptions}
            hint="Leave it if nobody has looked yet."
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
      remedy: "Give the kiln's reading once it has stood there long enough to soak through.",
    }),
    heldMin: figureOrNone("heldMin", {
      what: "time",
      remedy: "Give the minutes it has stood there, or leave it empty.",
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
            label="Has stood there for"
            hint={`A rinsed or long cold shell asks for ${format.show("min", firingPractice.patchedHoldMin)} at ${format.show("temp", firingPractice.steamHoldC)} or more. May stay empty.`}
          />
          <TextOf form={form} at="note" label="Note" hint="Sand it stands in and how warm that is." />
        </>
      )}
    </LogForm>
  );
}
