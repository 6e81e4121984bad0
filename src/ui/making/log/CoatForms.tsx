import { z } from "zod";
import { TextField } from "../../base/forms/TextField.tsx";
import { words, wordsOrNone } from "../../base/forms/fieldSchema.ts";
import { coatWords } from "../../base/format/coatWords.ts";
import { LogForm, type LogFormProps } from "./LogForm.tsx";

export function CoatSkippedForm({ item }: LogFormProps) {
  const { next } = item.standing;
  const schema = z.object({
    step: z.literal(next?.step ?? -1).default(next?.step ?? -1),
    reason: words("reason", "Say why this coat is left out."),
  });
  return (
    <LogForm
      item={item}
      type="coat-skipped"
      title="Skip a coat"
      save="Skip this coat"
      about={String(next?.step ?? "")}
      initial={{ reason: "" }}
      schema={schema}
      blocked={next === null ? "The recipe has no coat left to skip, or the piece has no recipe." : null}
    >
      {({ draft, set, errors }) => (
        <>
          {next !== null && (
            <p>
              Next in the recipe: coat {next.step + 1}, {coatWords(next)}.
            </p>
          )}
          <TextField
            label="Why"
            value={draft.reason}
            onChange={(reason) => set({ reason })}
            hint="The recipe then goes on with the coat after it."
            error={errors["reason"]}
          />
        </>
      )}
    </LogForm>
  );
}

export function CoatRedippedForm({ item }: LogFormProps) {
  const outer = item.standing.piece.coats.at(-1);
  const coatId = outer?.id ?? "";
  const schema = z.object({ coatId: z.literal(coatId).default(coatId), note: wordsOrNone });
  return (
    <LogForm
      item={item}
      type="coat-redipped"
      title="Dip the same coat again"
      about={coatId}
      initial={{ note: "" }}
      schema={schema}
      blocked={outer === undefined ? "There is no coat on this piece yet." : null}
    >
      {({ draft, set, errors }) => (
        <>
          {outer !== undefined && (
            <p>
              Coat {outer.number}, {coatWords(outer)}: it takes up water again and its drying starts anew, but
              it stays one coat.
            </p>
          )}
          <TextField
            label="Note"
            value={draft.note}
            onChange={(note) => set({ note })}
            hint="Why: a bare spot, a run, bubbles in a corner."
            error={errors["note"]}
          />
        </>
      )}
    </LogForm>
  );
}
