import { defects } from "./defects.ts";
import { asGiven, oneOf, photoIds, wordsOrNone } from "../../base/forms/formFields.ts";
import { PhotosOf, PickOf, TextOf, TickOf } from "../../base/forms/BoundFields.tsx";
import { LogForm, type LogFormProps } from "./LogForm.tsx";

const results = [
  { value: "sound", label: "Sound", hint: "Nothing that has to be mended." },
  { value: "flawed", label: "Flawed", hint: "Kept, with faults." },
  { value: "lost", label: "Lost", hint: "Not worth keeping." },
] as const;

const fields = {
  result: oneOf(["sound", "flawed", "lost"], "how it came out"),
  defects: asGiven<readonly string[]>([]),
  note: wordsOrNone,
  photos: photoIds,
};

export function OutcomeForm({ item }: LogFormProps) {
  return (
    <LogForm item={item} type="outcome-told" title="How it came out" fields={fields} body={(read) => read}>
      {(form) => (
        <>
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
