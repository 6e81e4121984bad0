import { lastCame, outcomeStart } from "../../../logbook/piece/pourCame.ts";
import { pouredWords } from "../../base/format/pourCameWords.ts";
import { defects } from "./defects.ts";
import { asGiven, oneOf, photoIds, wordsOrNone } from "../../base/forms/formFields.ts";
import { PhotosOf, PickOf, TextOf, TickOf } from "../../base/forms/BoundFields.tsx";
import { LogForm, type LogFormProps } from "./LogForm.tsx";

const results = [
  { value: "sound", label: "Sound", hint: "Needs no repair." },
  { value: "flawed", label: "Flawed", hint: "Kept, with faults." },
  { value: "lost", label: "Scrap", hint: "Not worth keeping." },
] as const;

const fields = {
  result: oneOf(["sound", "flawed", "lost"], "result"),
  defects: asGiven<readonly string[]>([]),
  note: wordsOrNone,
  photos: photoIds,
};

export function OutcomeForm({ item }: LogFormProps) {
  const { piece } = item.standing;
  const came = lastCame(piece);
  const start = outcomeStart(piece);
  return (
    <LogForm
      item={item}
      type="outcome-told"
      title="Result"
      fields={fields}
      start={start ?? {}}
      filledBy={start === null ? null : "as the pour was logged"}
      // Another pour, or the same one put right, starts the question anew.
      about={start === null ? undefined : `${piece.pours.at(-1)?.id} ${came}`}
      body={(read) => read}
    >
      {(form) => (
        <>
          {start !== null && came !== null && (
            <p>From the pour: {pouredWords[came]}. Change it if the casting differs.</p>
          )}
          <PickOf form={form} at="result" label="The casting is" options={results} />
          {form.draft.result !== null && (
            <TickOf form={form} at="defects" label="Faults seen" options={defects} />
          )}
          <TextOf form={form} at="note" label="Note" multiline />
          <PhotosOf form={form} at="photos" />
        </>
      )}
    </LogForm>
  );
}
