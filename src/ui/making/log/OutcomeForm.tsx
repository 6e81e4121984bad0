import { z } from "zod";
import { PickField } from "../../base/forms/PickField.tsx";
import { PhotoPicker } from "../../base/parts/PhotoPicker.tsx";
import { TextField } from "../../base/forms/TextField.tsx";
import { defects } from "./defects.ts";
import { oneOf, photoIds, wordsOrNone } from "../../base/forms/fieldSchema.ts";
import { LogForm, type LogFormProps } from "./LogForm.tsx";
import { TickList } from "../../base/forms/TickList.tsx";

const results = [
  { value: "sound", label: "Sound", hint: "Nothing that has to be mended." },
  { value: "flawed", label: "Flawed", hint: "Kept, with faults." },
  { value: "lost", label: "Lost", hint: "Not worth keeping." },
] as const;

const schema = z.object({
  result: oneOf(["sound", "flawed", "lost"], "how it came out"),
  defects: z.array(z.string()),
  note: wordsOrNone,
  photos: photoIds,
});

type Draft = {
  readonly result: "sound" | "flawed" | "lost" | null;
  readonly defects: readonly string[];
  readonly note: string;
  readonly photos: readonly string[];
};

export function OutcomeForm({ item }: LogFormProps) {
  const initial: Draft = { result: null, defects: [], note: "", photos: [] };
  return (
    <LogForm item={item} type="outcome-told" title="How it came out" initial={initial} schema={schema}>
      {({ draft, set, errors }) => (
        <>
          <PickField
            label="The casting is"
            options={results}
            value={draft.result}
            onChange={(result) => set({ result })}
            error={errors["result"]}
          />
          {draft.result !== null && (
            <TickList
              label="Faults seen"
              options={defects}
              ticked={draft.defects}
              onChange={(ticked) => set({ defects: ticked })}
            />
          )}
          <TextField
            label="Note"
            multiline
            value={draft.note}
            onChange={(note) => set({ note })}
            error={errors["note"]}
          />
          <PhotoPicker photos={draft.photos} onChange={(photos) => set({ photos })} />
        </>
      )}
    </LogForm>
  );
}
