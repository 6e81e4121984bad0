import { Link } from "wouter";
import type { GeometryClass } from "../../../trade/geometryClasses.ts";
import { paths } from "../../base/state/paths.ts";
import { BagFields, ResistanceFields, SurfaceFields, DryWeightFields } from "./DrynessFields.tsx";
import { drynessFields, readDryness } from "./drynessFields.ts";
import { PickOf } from "../../base/forms/BoundFields.tsx";
import { LogForm, type LogFormProps } from "./LogForm.tsx";

const methods = [
  { value: "touch", label: "Touch", hint: "Cool to the cheek means water still leaves. Outer face only." },
  { value: "colour", label: "Colour", hint: "Lighter, or a dye that has changed. Outer film only." },
  {
    value: "weight",
    label: "Weight",
    hint: "The most accurate, with weights before the dip, drained and stuccoed.",
  },
  { value: "surface", label: "Surface temperature", hint: "A wet wall is colder than a dry one beside it." },
  {
    value: "bag",
    label: "Bag test",
    hint: "A hygrometer sealed in with the shell. It detects damp pockets too.",
  },
  {
    value: "resistance",
    label: "Resistance",
    hint: "Between two fixed contacts, against the coat just set.",
  },
] as const;
const verdicts = [
  { value: "dry", label: "Dry" },
  { value: "damp", label: "Damp" },
  { value: "wet", label: "Wet" },
] as const;

/** What hand, scale, thermometer, hygrometer or meter says of the outermost coat. */
export function DrynessForm({ item }: LogFormProps) {
  const { piece, outer } = item.standing;
  const coat = piece.coats.at(-1);
  const coatId = coat?.id ?? "";
  return (
    <LogForm
      item={item}
      type="dryness-seen"
      title="How dry is it?"
      fields={drynessFields}
      check={(draft, format) => readDryness(draft, format, coatId)}
      body={(seen) => seen}
      about={coatId}
      blocked={coat === undefined ? "There is no coat on this piece yet." : null}
    >
      {(form) => {
        const { draft } = form;
        return (
          <>
            {coat !== undefined && (
              <p>
                Coat {coat.number}, the outermost.{" "}
                {draft.method !== "weight" && <Link href={paths.weigh(piece.id)}>Weigh it instead</Link>}
              </p>
            )}
            <PickOf form={form} at="method" label="How it was tested" options={methods} />
            {(draft.method === "touch" || draft.method === "colour") && (
              <PickOf
                form={form}
                at="verdict"
                label={draft.method === "touch" ? "It feels" : "It looks"}
                options={verdicts}
              />
            )}
            {draft.method === "weight" && <DryWeightFields form={form} />}
            {draft.method === "surface" && <SurfaceFields form={form} standing={item.standing} />}
            {draft.method === "bag" && <BagFields form={form} />}
            {draft.method === "resistance" && (
              <ResistanceFields
                form={form}
                hasFirst={hasFirst(piece.dryness, { coatId: outer?.coat.id, place: draft.place ?? "open" })}
                plan={piece.plan}
              />
            )}
          </>
        );
      }}
    </LogForm>
  );
}

const hasFirst = (
  dryness: LogFormProps["item"]["standing"]["piece"]["dryness"],
  { coatId, place }: { readonly coatId: string | undefined; readonly place: GeometryClass },
): boolean =>
  dryness.some(
    (seen) =>
      seen.method === "resistance" &&
      seen.coatId === coatId &&
      seen.reference === true &&
      (seen.place ?? "open") === place,
  );
