import { words, wordsOrNone } from "../../base/forms/formFields.ts";
import { coatWords } from "../../base/format/coatWords.ts";
import { TextOf } from "../../base/forms/BoundFields.tsx";
import { LogForm, type LogFormProps } from "./LogForm.tsx";

export function CoatSkippedForm({ item }: LogFormProps) {
  const { next } = item.standing;
  const fields = {
    reason: words("reason", "Enter why this coat is left out."),
  };
  return (
    <LogForm
      item={item}
      type="coat-skipped"
      title="Skip a coat"
      save="Skip this coat"
      about={String(next?.step ?? "")}
      fields={fields}
      body={(read) => ({ ...read, step: next?.step ?? -1 })}
      blocked={next === null ? "The recipe has no coat left to skip, or the piece has no recipe." : null}
    >
      {(form) => (
        <>
          {next !== null && (
            <p>
              Next in the recipe: coat {next.step + 1}, {coatWords(next)}.
            </p>
          )}
          <TextOf
            form={form}
            at="reason"
            label="Why"
            hint="The recipe then goes on with the coat after it."
          />
        </>
      )}
    </LogForm>
  );
}

export function CoatRedippedForm({ item }: LogFormProps) {
  const outer = item.standing.piece.coats.at(-1);
  const coatId = outer?.id ?? "";
  const fields = { note: wordsOrNone };
  return (
    <LogForm
      item={item}
      type="coat-redipped"
      title="Dip the same coat again"
      about={coatId}
      fields={fields}
      body={(read) => ({ ...read, coatId })}
      blocked={outer === undefined ? "There is no coat on this piece yet." : null}
    >
      {(form) => (
        <>
          {outer !== undefined && (
            <p>
              Coat {outer.number}, {coatWords(outer)}: it takes up water again and its drying restarts, but it
              stays one coat.
            </p>
          )}
          <TextOf form={form} at="note" label="Note" hint="Why: a bare spot, a run, bubbles in a corner." />
        </>
      )}
    </LogForm>
  );
}
