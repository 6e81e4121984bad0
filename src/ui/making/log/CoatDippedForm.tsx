import { stuccos } from "../../../trade/stuccos.ts";
import { useBuckets } from "../../base/state/live.ts";
import { coatWords } from "../../base/format/coatWords.ts";
import { coatKinds } from "../../base/format/coatKinds.ts";
import { coatDippedBody, coatDippedFields, dampUnder } from "./coatDipped.ts";
import { NumberOf, PhotosOf, PickOf, TextOf } from "../../base/forms/BoundFields.tsx";
import { LogForm, type LogFormProps } from "./LogForm.tsx";

const none = "none";
const ofRecipe = { value: "next", label: "Next in the recipe" } as const;
const beside = {
  value: "beside",
  label: "Extra coat",
  hint: "Not in the recipe, such as over a repair.",
} as const;

/** A coat with all its particulars; the quick way is the dip screen. */
export function CoatDippedForm({ item }: LogFormProps) {
  const buckets = (useBuckets() ?? []).filter(({ retired }) => !retired);
  const { next, piece } = item.standing;
  const damp = dampUnder(item.standing);
  const last = piece.coats.at(-1);
  return (
    <LogForm
      item={item}
      type="coat-dipped"
      title={`Coat ${item.standing.piece.coats.length + 1}`}
      save="Coat done"
      filledBy={next === null ? "same as the last" : "as the recipe says"}
      about={String(piece.coats.length + 1)}
      fields={coatDippedFields}
      start={{
        place: next === null ? "beside" : "next",
        kind: next?.kind ?? last?.kind ?? null,
        stuccoId: next === null ? (last?.stuccoId ?? null) : (next.stuccoId ?? none),
      }}
      body={(read, at) => coatDippedBody(read, item.standing, at)}
    >
      {(form) => (
        <>
          {damp !== null && (
            <p role="status">
              Coat {damp.number} is {damp.words}. Logging this coat keeps that as a warning.
            </p>
          )}
          <PickOf
            form={form}
            at="place"
            label="Which coat"
            options={next === null ? [beside] : [{ ...ofRecipe, hint: coatWords(next) }, beside]}
          />
          <PickOf
            form={form}
            at="kind"
            label="Kind"
            options={coatKinds}
            also={(kind) => (kind === "seal" ? { stuccoId: none } : {})}
          />
          <PickOf
            form={form}
            at="stuccoId"
            label="Stucco"
            options={[
              ...stuccos.map(({ id, label }) => ({ value: id, label })),
              { value: none, label: "None" },
            ]}
          />
          {buckets.length > 0 && (
            <PickOf
              form={form}
              at="bucketId"
              label="Bucket"
              options={buckets.map(({ id, name }) => ({ value: id, label: name }))}
              empty="Not noted"
            />
          )}
          <PickOf
            form={form}
            at="prewet"
            label="Prewet"
            options={[
              { value: "no", label: "No" },
              { value: "yes", label: "Yes" },
            ]}
          />
          <NumberOf form={form} at="drainS" label="Drained for" />
          <TextOf form={form} at="note" label="Note" />
          <PhotosOf form={form} at="photos" />
        </>
      )}
    </LogForm>
  );
}
