import { z } from "zod";
import { PhotoPicker } from "../../base/parts/PhotoPicker.tsx";
import { TextField } from "../../base/forms/TextField.tsx";
import { mixesAcidAndSulphide } from "../../../trade/patina.ts";
import css from "./LogForm.module.css";
import { photoIds, words, wordsOrNone } from "../../base/forms/fieldSchema.ts";
import { LogForm, type LogFormProps } from "./LogForm.tsx";

export function KnockedOutForm({ item }: LogFormProps) {
  return (
    <LogForm
      item={item}
      type="shell-knocked-out"
      title="Shell knocked out"
      initial={{ note: "" }}
      schema={z.object({ note: wordsOrNone })}
    >
      {({ draft, set, errors }) => (
        <TextField
          label="Note"
          multiline
          value={draft.note}
          onChange={(note) => set({ note })}
          hint="How long it stood, how the shell came off, what showed first."
          error={errors["note"]}
        />
      )}
    </LogForm>
  );
}

export function FinishedForm({ item }: LogFormProps) {
  return (
    <LogForm
      item={item}
      type="piece-finished"
      title="Piece finished"
      initial={{ note: "" }}
      schema={z.object({ note: words("note", "Say in a word what was done: cut off, chased, coloured.") })}
    >
      {({ draft, set, errors }) => (
        <>
          <TextField
            label="What was done"
            multiline
            value={draft.note}
            onChange={(note) => set({ note })}
            hint="Cutting off, welding, chasing, colour."
            error={errors["note"]}
          />
          {mixesAcidAndSulphide(draft.note) && (
            <p role="alert" className={css["refused"]}>
              Acid and sulphide in one step? Together they give off hydrogen sulphide, which kills. Keep them
              apart and rinse well between.
            </p>
          )}
        </>
      )}
    </LogForm>
  );
}

export function WireForm({ item }: LogFormProps) {
  return (
    <LogForm
      item={item}
      type="wire-wrapped"
      title="Wire wrapped"
      initial={{ note: "" }}
      schema={z.object({
        note: words("note", "Say which wire and where: soft iron, six turns below the cup."),
      })}
    >
      {({ draft, set, errors }) => (
        <TextField
          label="Wire and where"
          multiline
          value={draft.note}
          onChange={(note) => set({ note })}
          hint="Wire holds a cracked wall together. It does not make the wall stronger, and no sum counts it."
          error={errors["note"]}
        />
      )}
    </LogForm>
  );
}

export function ScrapForm({ item }: LogFormProps) {
  return (
    <LogForm
      item={item}
      type="piece-scrapped"
      title="Give the piece up"
      save="Give it up"
      initial={{ reason: "" }}
      schema={z.object({ reason: words("reason", "Say why: it is what the next shell learns from.") })}
    >
      {({ draft, set, errors }) => (
        <TextField
          label="Why"
          multiline
          value={draft.reason}
          onChange={(reason) => set({ reason })}
          hint="The log stays and can be read in the archive."
          error={errors["reason"]}
        />
      )}
    </LogForm>
  );
}

export function NoteForm({ item }: LogFormProps) {
  const initial: { readonly text: string; readonly photos: readonly string[] } = { text: "", photos: [] };
  return (
    <LogForm
      item={item}
      type="note-written"
      title="Note"
      initial={initial}
      schema={z.object({ text: words("note", "Write it, or go back."), photos: photoIds })}
    >
      {({ draft, set, errors }) => (
        <>
          <TextField
            label="Note"
            multiline
            value={draft.text}
            onChange={(text) => set({ text })}
            error={errors["text"]}
          />
          <PhotoPicker photos={draft.photos} onChange={(photos) => set({ photos })} />
        </>
      )}
    </LogForm>
  );
}
