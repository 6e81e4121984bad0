import { mixesAcidAndSulphide } from "../../../trade/patina.ts";
import css from "./LogForm.module.css";
import { photoIds, words, wordsOrNone } from "../../base/forms/formFields.ts";
import { PhotosOf, TextOf } from "../../base/forms/BoundFields.tsx";
import { LogForm, type LogFormProps } from "./LogForm.tsx";

export function KnockedOutForm({ item }: LogFormProps) {
  return (
    <LogForm
      item={item}
      type="shell-knocked-out"
      title="Shell knocked out"
      fields={{ note: wordsOrNone }}
      body={(read) => read}
    >
      {(form) => (
        <TextOf
          form={form}
          at="note"
          label="Note"
          multiline
          hint="How long it stood, how the shell came off, what showed first."
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
      fields={{ note: words("note", "Say in a word what was done: cut off, chased, coloured.") }}
      body={(read) => read}
    >
      {(form) => (
        <>
          <TextOf
            form={form}
            at="note"
            label="What was done"
            multiline
            hint="Cutting off, welding, chasing, colour."
          />
          {mixesAcidAndSulphide(form.draft.note) && (
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
      fields={{
        note: words("note", "Say which wire and where: soft iron, six turns below the cup."),
      }}
      body={(read) => read}
    >
      {(form) => (
        <TextOf
          form={form}
          at="note"
          label="Wire and where"
          multiline
          hint="Wire holds a cracked wall together. It does not make the wall stronger, and no sum counts it."
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
      fields={{ reason: words("reason", "Say why: it is what the next shell learns from.") }}
      body={(read) => read}
    >
      {(form) => (
        <TextOf
          form={form}
          at="reason"
          label="Why"
          multiline
          hint="The log stays and can be read in the archive."
        />
      )}
    </LogForm>
  );
}

export function NoteForm({ item }: LogFormProps) {
  return (
    <LogForm
      item={item}
      type="note-written"
      title="Note"
      fields={{ text: words("note", "Write it, or go back."), photos: photoIds }}
      body={(read) => read}
    >
      {(form) => (
        <>
          <TextOf form={form} at="text" label="Note" multiline />
          <PhotosOf form={form} at="photos" />
        </>
      )}
    </LogForm>
  );
}
