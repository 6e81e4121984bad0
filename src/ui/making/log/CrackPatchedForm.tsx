import { chosen, words } from "../../base/forms/formFields.ts";
import { PickOf, TextOf } from "../../base/forms/BoundFields.tsx";
import { LogForm, type LogFormProps } from "./LogForm.tsx";

export function CrackPatchedForm({ item }: LogFormProps) {
  const open = item.standing.piece.cracks.filter((crack) => crack.patched === null);
  const only = open.length === 1 ? (open[0]?.id ?? null) : null;
  const fields = {
    crackId: chosen(
      "Nothing chosen. Tap the crack you repaired.",
      open.map((crack) => crack.id),
    ),
    how: words("mend", "Enter the repair: slurry and stucco brushed in, patch paste, wire over it."),
  };
  return (
    <LogForm
      item={item}
      type="crack-patched"
      title="Crack repaired"
      fields={fields}
      start={{ crackId: only }}
      body={(read) => read}
      blocked={open.length === 0 ? "No open crack is logged on this piece." : null}
    >
      {(form) => (
        <>
          {open.length > 0 && (
            <PickOf
              form={form}
              at="crackId"
              label="Which crack"
              options={open.map((crack) => ({ value: crack.id, label: crack.where, hint: crack.kind }))}
            />
          )}
          <TextOf
            form={form}
            at="how"
            label="How"
            multiline
            hint="A repair holds water like a coat: let it dry through. After a burnout, wire and more coats keep it shut."
          />
        </>
      )}
    </LogForm>
  );
}
