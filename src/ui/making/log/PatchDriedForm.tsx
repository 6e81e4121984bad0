import { wetPatches } from "../../../logbook/piece/crackStates.ts";
import { chosen, wordsOrNone } from "../../base/forms/formFields.ts";
import { PickOf, TextOf } from "../../base/forms/BoundFields.tsx";
import { LogForm, type LogFormProps } from "./LogForm.tsx";

/** A patch found dry by itself, also at an earlier time; the piece's page has the key for now. */
export function PatchDriedForm({ item }: LogFormProps) {
  const wet = wetPatches(item.standing.cracks).map(({ crack }) => crack);
  const fields = {
    crackId: chosen(
      "Nothing chosen. Tap the repair that is dry.",
      wet.map(({ id }) => id),
    ),
    note: wordsOrNone,
  };
  return (
    <LogForm
      item={item}
      type="patch-dried"
      title="Repair is dry"
      fields={fields}
      start={{ crackId: wet.length === 1 ? (wet[0]?.id ?? null) : null }}
      body={(read) => read}
      blocked={wet.length === 0 ? "No repair on this piece is drying." : null}
    >
      {(form) => (
        <>
          {wet.length > 0 && (
            <PickOf
              form={form}
              at="crackId"
              label="Which repair"
              options={wet.map(({ id, where, kind }) => ({ value: id, label: where, hint: kind }))}
            />
          )}
          <TextOf form={form} at="note" label="Note" />
        </>
      )}
    </LogForm>
  );
}
