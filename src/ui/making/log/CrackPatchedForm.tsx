import { z } from "zod";
import { PickField } from "../../base/forms/PickField.tsx";
import { TextField } from "../../base/forms/TextField.tsx";
import { words } from "../../base/forms/fieldSchema.ts";
import { LogForm, type LogFormProps } from "./LogForm.tsx";

export function CrackPatchedForm({ item }: LogFormProps) {
  const open = item.standing.piece.cracks.filter((crack) => crack.patched === null);
  const only = open.length === 1 ? (open[0]?.id ?? null) : null;
  const schema = z.object({
    crackId: z.enum(
      open.map((crack) => crack.id),
      { error: "Nothing chosen. Tap the crack that was mended." },
    ),
    how: words("mend", "Say what went in: slurry and stucco brushed in, patch paste, wire over it."),
  });
  const initial: { readonly crackId: string | null; readonly how: string } = { crackId: only, how: "" };
  return (
    <LogForm
      item={item}
      type="crack-patched"
      title="Crack patched"
      initial={initial}
      schema={schema}
      blocked={open.length === 0 ? "No open crack is logged on this piece." : null}
    >
      {({ draft, set, errors }) => (
        <>
          {open.length > 0 && (
            <PickField
              label="Which crack"
              options={open.map((crack) => ({ value: crack.id, label: crack.where, hint: crack.kind }))}
              value={draft.crackId}
              onChange={(crackId) => set({ crackId })}
              error={errors["crackId"]}
            />
          )}
          <TextField
            label="How"
            multiline
            value={draft.how}
            onChange={(how) => set({ how })}
            hint="A patch holds water like a coat: let it dry through. After a burnout, wire and more coats over it keep it shut."
            error={errors["how"]}
          />
        </>
      )}
    </LogForm>
  );
}
