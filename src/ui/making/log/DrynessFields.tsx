import { waitAfterChangeS } from "../../../physics/evidence/surfaceEvidence.ts";
import type { Standing } from "../../../logbook/piece/standing.ts";
import type { PiecePlan } from "../../../logbook/entries/pieceBodies.ts";
import { readingPlaces } from "../../../logbook/drying/slowPlace.ts";
import { airClasses } from "../../../trade/airClasses.ts";
import { geometryClasses } from "../../../trade/geometryClasses.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { duration } from "../../base/format/time.ts";
import type { drynessFields } from "./drynessFields.ts";
import { NumberOf, PickOf } from "../../base/forms/BoundFields.tsx";
import type { EntryForm } from "../../base/forms/useEntryForm.ts";

type Fields = { readonly form: EntryForm<typeof drynessFields, unknown> };

const moments = [
  { value: "drying", label: "While it dries" },
  { value: "stuccoed", label: "Just stuccoed" },
  { value: "drained", label: "Just drained" },
] as const;

export function DryWeightFields({ form }: Fields) {
  return (
    <>
      <NumberOf
        form={form}
        at="massG"
        label="Weight"
        hint="Piece, shell and hook together, the same way each time."
      />
      <PickOf form={form} at="moment" label="When" options={moments} />
    </>
  );
}

/** Where it was read, asked only of a piece with more than one place. */
function PlaceField({ form, plan }: Fields & { readonly plan: PiecePlan }) {
  const places = readingPlaces(plan);
  if (places.length < 2) return null;
  return (
    <PickOf
      form={form}
      at="place"
      label="Where was it measured?"
      options={places.map((value) => ({
        value,
        label: value === "open" ? "Outer face" : geometryClasses[value].label,
      }))}
      unset="open"
      hint="It counts for that place. Only the slowest place can show the whole shell dry."
    />
  );
}

/** Above this a wet face is hardly colder than the room. */
const uselessRh = 0.8;
/** Half the thickness of a pattern of which neither volume nor area is known, m. */
const usualHalfM = 0.005;

export function SurfaceFields({ form, standing }: Fields & { readonly standing: Standing }) {
  const format = useFormat();
  const reading = standing.readings.at(-1) ?? null;
  const { metalLitre, areaM2 } = standing.piece.plan;
  const known = metalLitre !== undefined && areaM2 !== undefined && areaM2 > 0;
  const halfM = Math.min(0.1, known ? metalLitre / 1000 / areaM2 : usualHalfM);
  const filmWM2K = airClasses[reading?.air ?? "still"].filmWM2K;
  return (
    <>
      <PlaceField form={form} plan={standing.piece.plan} />
      <NumberOf
        form={form}
        at="surfaceC"
        label="Surface temperature"
        hint="The place that dries last, if you can reach it. Away from sun and lamps; no hand or metal frame in the spot."
      />
      <NumberOf
        form={form}
        at="dryShellC"
        label="A dry shell beside it"
        hint="The same thermometer on a dry shell in the same air. The difference is much more accurate than one reading."
      />
      {reading !== null && reading.rh > uselessRh && (
        <p role="note">
          <strong>No use today:</strong> at {format.show("percent", reading.rh)} humidity a wet wall is hardly
          colder than a dry one.
        </p>
      )}
      <details>
        <summary>How to read it well</summary>
        <ul>
          <li>
            An infrared thermometer reads only the face it sees. For a recess use a thermocouple, the bag or a
            weighing.
          </li>
          <li>Above 80% humidity it shows nothing.</li>
          <li>
            After the air has changed (a fan, a door, another room) wait about{" "}
            {duration(waitAfterChangeS({ halfM, filmWM2K }) * 1000)}: the wax beneath has to catch up.
          </li>
          <li>Log the room's air at the same time.</li>
        </ul>
      </details>
    </>
  );
}

export function BagFields({ form }: Fields) {
  return (
    <>
      <NumberOf
        form={form}
        at="rh"
        label="Humidity in the bag"
        max={1}
        hint="A hygrometer in the bag with the shell, or taped into its cup."
      />
      <NumberOf
        form={form}
        at="roomRh"
        label="Humidity of the room"
        max={1}
        hint="The same hygrometer, in the room. Above 75% the test shows nothing."
      />
      <NumberOf form={form} at="minutes" label="Time in the bag" hint="Twenty to thirty minutes." />
    </>
  );
}

const references = [
  { value: "first", label: "Just set", hint: "The reading to compare with" },
  { value: "later", label: "Later", hint: "Same place, same force" },
] as const;

export function ResistanceFields({
  form,
  hasFirst,
  plan,
}: Fields & { readonly hasFirst: boolean; readonly plan: PiecePlan }) {
  const format = useFormat();
  return (
    <>
      <PlaceField form={form} plan={plan} />
      <PickOf
        form={form}
        at="reference"
        label="Which reading"
        options={references}
        hint={
          hasFirst || form.draft.reference === "first"
            ? undefined
            : "No “just set” reading of this coat to compare with."
        }
      />
      <NumberOf
        form={form}
        at="kOhm"
        label="Resistance, kΩ"
        hint={`Two pins or foil contacts ${format.show("mm", 10)} to ${format.show("mm", 20)} apart, by alternating current or a short touch. Dry is often a hundred times the first reading. Prove it in your shop.`}
      />
      <NumberOf
        form={form}
        at="shellC"
        label="Shell temperature"
        hint="If you have it. Empty: the room’s air is used."
      />
    </>
  );
}
