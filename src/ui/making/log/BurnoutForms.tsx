import { figure, oneOf, wordsOrNone } from "../../base/forms/formFields.ts";
import { insideOptions } from "../../base/format/insideOptions.ts";
import { NumberOf, PickOf, TextOf } from "../../base/forms/BoundFields.tsx";
import { LogForm, type LogFormProps } from "./LogForm.tsx";

const results = [
  ...insideOptions,
  { value: "stopped", label: "Stopped", hint: "Stopped before the end: a crack, a power cut." },
] as const;

export function BurnoutStartedForm({ item }: LogFormProps) {
  return (
    <LogForm
      item={item}
      type="burnout-started"
      title="Burnout begins"
      fields={{ note: wordsOrNone }}
      body={(read) => read}
    >
      {(form) => (
        <TextOf
          form={form}
          at="note"
          label="Note"
          multiline
          hint="Position in the kiln, drains, heating rate."
        />
      )}
    </LogForm>
  );
}

export function BurnoutReadForm({ item }: LogFormProps) {
  const fields = {
    kilnC: figure("kilnC", { what: "kiln temperature", remedy: "Read the kiln's own thermocouple." }),
    note: wordsOrNone,
  };
  return (
    <LogForm item={item} type="burnout-read" title="Kiln reading" fields={fields} body={(read) => read}>
      {(form) => (
        <>
          <NumberOf form={form} at="kilnC" label="Kiln" />
          <TextOf form={form} at="note" label="Note" hint="Pattern runs out, smoke, flame, smell." />
        </>
      )}
    </LogForm>
  );
}

export function BurnoutEndedForm({ item }: LogFormProps) {
  const fields = {
    result: oneOf(["clean", "residue", "stopped"], "how it ended"),
    note: wordsOrNone,
  };
  return (
    <LogForm item={item} type="burnout-ended" title="Burnout ends" fields={fields} body={(read) => read}>
      {(form) => (
        <>
          <PickOf form={form} at="result" label="The inside is" options={results} />
          <TextOf form={form} at="note" label="Note" multiline />
          <p>Log a crack you see now on its own, as found in burnout.</p>
        </>
      )}
    </LogForm>
  );
}
