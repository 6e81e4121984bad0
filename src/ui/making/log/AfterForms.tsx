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
          hint="How long it cooled, how the shell came off, what you saw first."
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
      fields={{ note: words("note", "Enter what was done: cut off, chased, coloured.") }}
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
        note: words("note", "Enter which wire and where: soft iron, six turns below the cup."),
      }}
      body={(read) => read}
    >
      {(form) => (
        <TextOf
          form={form}
          at="note"
          label="Wire and where"
          multiline
          hint="Wire holds a cracked shell together. It adds no strength, and no calculation counts it."
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
      title="Scrap the piece"
      save="Scrap it"
      fields={{ reason: words("reason", "Enter why: the next shell learns from it.") }}
      body={(read) => read}
    >
      {(form) => (
        <TextOf form={form} at="reason" label="Why" multiline hint="The log stays in the archive." />
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
      fields={{ text: words("note", "Write a note, or go back."), photos: photoIds }}
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
