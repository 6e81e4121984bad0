import { waitAfterChangeS } from "../../../physics/evidence/surfaceEvidence.ts";
import type { Standing } from "../../../logbook/piece/standing.ts";
import type { PiecePlan } from "../../../logbook/entries/pieceBodies.ts";
import { readingPlaces } from "../../../logbook/drying/slowPlace.ts";
import { airClasses } from "../../../trade/airClasses.ts";
import { geometryClasses } from "../../../trade/geometryClasses.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { duration } from "../../base/format/time.ts";
import { NumberField } from "../../base/forms/NumberField.tsx";
import type { DrynessDraft } from "./drynessSchema.ts";
import { PickField } from "../../base/forms/PickField.tsx";
import type { Form } from "../../base/forms/useForm.ts";

type Fields = { readonly form: Pick<Form<DrynessDraft>, "draft" | "errors"> & Setting };
type Setting = { readonly set: (changes: Partial<DrynessDraft>) => void };

const moments = [
  { value: "drying", label: "While it dries" },
  { value: "stuccoed", label: "Just stuccoed" },
  { value: "drained", label: "Just drained" },
] as const;

export function WeightFields({ form: { draft, set, errors } }: Fields) {
  return (
    <>
      <NumberField
        label="Weight"
        quantity="g"
        min={0}
        value={draft.massG}
        onChange={(massG) => set({ massG })}
        hint="Piece, shell and hook together, the same way each time."
        error={errors["massG"]}
      />
      <PickField label="When" options={moments} value={draft.moment} onChange={(moment) => set({ moment })} />
    </>
  );
}

/** Where it was read, asked only of a piece with more than one place. */
function PlaceField({
  form: { draft, set },
  plan,
}: {
  readonly form: Fields["form"];
  readonly plan: PiecePlan;
}) {
  const places = readingPlaces(plan);
  if (places.length < 2) return null;
  return (
    <PickField
      label="Where was it read?"
      options={places.map((value) => ({
        value,
        label: value === "open" ? "Outer face" : geometryClasses[value].label,
      }))}
      value={draft.place ?? "open"}
      onChange={(place) => set({ place })}
      hint="It speaks for that place. Only the slowest place can show the whole shell dry."
    />
  );
}

/** Above this a wet face is hardly colder than the room. */
const uselessRh = 0.8;
/** Half the thickness of a pattern of which neither volume nor area is known, m. */
const usualHalfM = 0.005;

export function SurfaceFields({ form, standing }: Fields & { readonly standing: Standing }) {
  const { draft, set, errors } = form;
  const format = useFormat();
  const reading = standing.readings.at(-1) ?? null;
  const { metalLitre, areaM2 } = standing.piece.plan;
  const known = metalLitre !== undefined && areaM2 !== undefined && areaM2 > 0;
  const halfM = Math.min(0.1, known ? metalLitre / 1000 / areaM2 : usualHalfM);
  const filmWM2K = airClasses[reading?.air ?? "still"].filmWM2K;
  return (
    <>
      <PlaceField form={form} plan={standing.piece.plan} />
      <NumberField
        label="Surface temperature"
        quantity="temp"
        value={draft.surfaceC}
        onChange={(surfaceC) => set({ surfaceC })}
        hint="The place that dries last, if you can reach it. Not in the sun, not by a lamp, no hand or metal frame in the spot."
        error={errors["surfaceC"]}
      />
      <NumberField
        label="A dry shell beside it"
        quantity="temp"
        value={draft.dryShellC}
        onChange={(dryShellC) => set({ dryShellC })}
        hint="The same thermometer on a shell known to be dry, hanging in the same air. The difference counts: it is several times finer than a reading alone."
        error={errors["dryShellC"]}
      />
      {reading !== null && reading.rh > uselessRh && (
        <p role="note">
          <strong>Useless today:</strong> at {format.show("percent", reading.rh)} humidity a wet wall is
          hardly colder than a dry one.
        </p>
      )}
      <details>
        <summary>How to read it well</summary>
        <ul>
          <li>
            An infrared thermometer reads only the face it sees. Probe a recess with a thermocouple, or use
            the bag or a weighing there.
          </li>
          <li>Above 80% humidity it says nothing: there is no drop left to read.</li>
          <li>
            After the air has changed (a fan, a door, another room) wait about{" "}
            {duration(waitAfterChangeS({ halfM, filmWM2K }) * 1000)}: the wax beneath has to follow.
          </li>
          <li>Log the room's air at the same time.</li>
        </ul>
      </details>
    </>
  );
}

export function BagFields({ form: { draft, set, errors } }: Fields) {
  return (
    <>
      <NumberField
        label="Humidity in the bag"
        quantity="percent"
        min={0}
        max={1}
        value={draft.rh}
        onChange={(rh) => set({ rh })}
        hint="A hygrometer bagged with the shell, or taped into its cup."
        error={errors["rh"]}
      />
      <NumberField
        label="Humidity of the room"
        quantity="percent"
        min={0}
        max={1}
        value={draft.roomRh}
        onChange={(roomRh) => set({ roomRh })}
        hint="The same hygrometer, in the room. Over 75% the two run together and the test says nothing."
        error={errors["roomRh"]}
      />
      <NumberField
        label="Time in the bag"
        quantity="min"
        min={0}
        value={draft.minutes}
        onChange={(minutes) => set({ minutes })}
        hint="Twenty to thirty minutes."
        error={errors["minutes"]}
      />
    </>
  );
}

const references = [
  { value: "first", label: "Just set", hint: "The reading others are held against" },
  { value: "later", label: "Later", hint: "Same place, same force" },
] as const;

export function ResistanceFields({
  form,
  hasFirst,
  plan,
}: Fields & { readonly hasFirst: boolean; readonly plan: PiecePlan }) {
  const { draft, set, errors } = form;
  return (
    <>
      <PlaceField form={form} plan={plan} />
      <PickField
        label="Which reading"
        options={references}
        value={draft.reference}
        onChange={(reference) => set({ reference })}
        hint={
          hasFirst || draft.reference === "first"
            ? undefined
            : "There is no reading of this coat just set: without it a later one says nothing."
        }
      />
      <NumberField
        label="Resistance, kΩ"
        quantity="plain"
        min={0}
        value={draft.kOhm}
        onChange={(kOhm) => set({ kOhm })}
        hint="Two pins or foil contacts 10–20 mm apart, by alternating current or a short touch. A hundred times the first is what a shop may call dry, once it has proved it."
        error={errors["kOhm"]}
      />
      <NumberField
        label="Shell temperature"
        quantity="temp"
        value={draft.shellC}
        onChange={(shellC) => set({ shellC })}
        hint="If you have it; else the room's air stands in."
        error={errors["shellC"]}
      />
    </>
  );
}
