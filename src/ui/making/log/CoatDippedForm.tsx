import type { CoatKind } from "../../../trade/coats.ts";
import { stuccos } from "../../../trade/stuccos.ts";
import { useBuckets } from "../../base/state/live.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { PickField } from "../../base/forms/PickField.tsx";
import { NumberField } from "../../base/forms/NumberField.tsx";
import { PhotoPicker } from "../../base/parts/PhotoPicker.tsx";
import { TextField } from "../../base/forms/TextField.tsx";
import { coatWords } from "../../base/format/coatWords.ts";
import { coatKinds } from "../../base/format/coatKinds.ts";
import { coatDippedSchema, dampUnder, type CoatDippedDraft } from "./coatDipped.ts";
import { LogForm, type LogFormProps } from "./LogForm.tsx";

const none = "none";
const places = (next: string | null) => [
  ...(next === null ? [] : [{ value: "next", label: "The next of the recipe", hint: next }]),
  { value: "beside", label: "Beside the recipe", hint: "An extra coat, or one over a mend." },
];

/** A coat with all its particulars; the quick way is the dip screen. */
export function CoatDippedForm({ item }: LogFormProps) {
  const format = useFormat();
  const buckets = (useBuckets() ?? []).filter(({ retired }) => !retired);
  const { next, piece } = item.standing;
  const damp = dampUnder(item.standing);
  const last = piece.coats.at(-1);
  const initial: CoatDippedDraft = {
    place: next === null ? "beside" : "next",
    kind: next?.kind ?? last?.kind ?? null,
    stuccoId: next === null ? (last?.stuccoId ?? null) : (next.stuccoId ?? none),
    bucketId: null,
    prewet: "no",
    drainS: null,
    note: "",
    photos: [],
  };
  return (
    <LogForm
      item={item}
      type="coat-dipped"
      title={`Coat ${item.standing.piece.coats.length + 1}`}
      save="Coat done"
      about={String(piece.coats.length + 1)}
      initial={initial}
      schema={coatDippedSchema(format, item.standing)}
    >
      {({ draft, set, errors }) => (
        <>
          {damp !== null && (
            <p role="status">
              Coat {damp.number} is {damp.words}. Logging this coat keeps that as a finding.
            </p>
          )}
          <PickField
            label="Which coat"
            options={places(next === null ? null : coatWords(next))}
            value={draft.place}
            onChange={(place) => set({ place: place === "next" ? "next" : "beside" })}
          />
          <PickField
            label="Kind"
            options={coatKinds}
            value={draft.kind}
            onChange={(kind: CoatKind) => set(kind === "seal" ? { kind, stuccoId: none } : { kind })}
            error={errors["kind"]}
          />
          <PickField
            label="Stucco"
            options={[
              ...stuccos.map(({ id, label }) => ({ value: id, label })),
              { value: none, label: "None" },
            ]}
            value={draft.stuccoId}
            onChange={(stuccoId) => set({ stuccoId })}
            error={errors["stuccoId"]}
          />
          {buckets.length > 0 && (
            <PickField
              label="Bucket"
              options={[
                ...buckets.map(({ id, name }) => ({ value: id, label: name })),
                { value: none, label: "Not noted" },
              ]}
              value={draft.bucketId ?? none}
              onChange={(bucketId) => set({ bucketId: bucketId === none ? null : bucketId })}
            />
          )}
          <PickField
            label="Prewet"
            options={[
              { value: "no", label: "No" },
              { value: "yes", label: "Yes" },
            ]}
            value={draft.prewet}
            onChange={(prewet) => set({ prewet: prewet === "yes" ? "yes" : "no" })}
          />
          <NumberField
            label="Drained for"
            quantity="s"
            min={0}
            value={draft.drainS}
            onChange={(drainS) => set({ drainS })}
            error={errors["drainS"]}
          />
          <TextField
            label="Note"
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
