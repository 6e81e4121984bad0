import { z } from "zod";
import { ranges } from "../../logbook/ranges.ts";
import { useFormat } from "../app/useFormat.ts";
import { PickField } from "./PickField.tsx";
import { NumberField } from "../parts/NumberField.tsx";
import { figure, oneOf } from "./gate.ts";
import { LogForm, type LogFormProps } from "./LogForm.tsx";

const methods = [
  { value: "touch", label: "Touch", hint: "Cool to the back of the hand means water is still leaving." },
  { value: "weight", label: "Weight", hint: "Two weighings an hour apart that agree: nothing more leaves." },
  {
    value: "surface",
    label: "Surface temperature",
    hint: "A wet wall is colder than the room, a dry one is not.",
  },
] as const;
const verdicts = [
  { value: "dry", label: "Dry" },
  { value: "damp", label: "Damp" },
  { value: "wet", label: "Wet" },
] as const;

type Draft = {
  readonly method: "touch" | "weight" | "surface";
  readonly verdict: "dry" | "damp" | "wet" | null;
  readonly massG: number | null;
  readonly surfaceC: number | null;
};

/** What hand, scale or thermometer says of the outermost coat; it overrides the reckoning. */
export function DrynessForm({ item }: LogFormProps) {
  const format = useFormat();
  const outer = item.standing.piece.coats.at(-1);
  const coatId = outer?.id ?? "";
  const schema = z.discriminatedUnion("method", [
    z.object({
      method: z.literal("touch"),
      verdict: oneOf(["dry", "damp", "wet"], "how it feels"),
      coatId: z.literal(coatId).default(coatId),
    }),
    z.object({
      method: z.literal("weight"),
      massG: figure(format, {
        what: "weight",
        quantity: "g",
        range: ranges.massG,
        remedy: "Weigh the piece as it hangs, always with the same hook.",
      }),
      coatId: z.literal(coatId).default(coatId),
    }),
    z.object({
      method: z.literal("surface"),
      surfaceC: figure(format, {
        what: "surface temperature",
        quantity: "temp",
        range: ranges.surfaceC,
        remedy: "Aim the thermometer at the dullest, deepest spot you can see.",
      }),
      coatId: z.literal(coatId).default(coatId),
    }),
  ]);
  const initial: Draft = { method: "touch", verdict: null, massG: null, surfaceC: null };
  return (
    <LogForm
      item={item}
      type="dryness-seen"
      title="How dry is it?"
      initial={initial}
      schema={schema}
      about={coatId}
      blocked={outer === undefined ? "There is no coat on this piece yet." : null}
    >
      {({ draft, set, errors }) => (
        <>
          {outer !== undefined && <p>Coat {outer.number}, the outermost.</p>}
          <PickField
            label="How it was tested"
            options={methods}
            value={draft.method}
            onChange={(method) => set({ method })}
          />
          {draft.method === "touch" && (
            <PickField
              label="It feels"
              options={verdicts}
              value={draft.verdict}
              onChange={(verdict) => set({ verdict })}
              error={errors["verdict"]}
            />
          )}
          {draft.method === "weight" && (
            <NumberField
              label="Weight"
              quantity="g"
              min={0}
              value={draft.massG}
              onChange={(massG) => set({ massG })}
              hint="Piece, shell and hook together, the same way each time."
              error={errors["massG"]}
            />
          )}
          {draft.method === "surface" && (
            <NumberField
              label="Surface temperature"
              quantity="temp"
              value={draft.surfaceC}
              onChange={(surfaceC) => set({ surfaceC })}
              hint="In a recess, away from the lamp; log the room's air at the same time."
              error={errors["surfaceC"]}
            />
          )}
        </>
      )}
    </LogForm>
  );
}
