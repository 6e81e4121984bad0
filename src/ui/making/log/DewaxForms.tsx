import { insideOptions } from "../../base/format/insideOptions.ts";
import { usualRoute } from "../../../logbook/fire/dewaxWay.ts";
import { stagedWaxMostKg } from "../../../trade/patternBurnout.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import type { Format } from "../../base/format/units.ts";
import { Cautions } from "../../base/cautions/Cautions.tsx";
import {
  figureOrNone,
  figureOrNull,
  oneOf,
  photoIds,
  ticked,
  wordsOrNone,
} from "../../base/forms/formFields.ts";
import { NumberOf, PhotosOf, PickOf, TextOf, YesNoOf } from "../../base/forms/BoundFields.tsx";
import { LogForm, type LogFormProps } from "./LogForm.tsx";

const waysIn = (format: Format, isWax: boolean) => {
  const kiln = [
    {
      value: "flash",
      label: "Flash fire",
      hint: isWax ? "Hot kiln; wax runs through the floor into a pan outside." : "Straight into a hot kiln.",
    },
    {
      value: "staged",
      label: "Staged",
      hint: isWax
        ? `Melted out in the kiln from cold. Thin wax only, up to about ${format.show("kg", stagedWaxMostKg.value)}.`
        : "In the kiln from cold.",
    },
  ] as const;
  const wet = [
    { value: "steam", label: "Steam", hint: "Autoclave or steamer. The shell comes out wet." },
    { value: "hot-water", label: "Hot water", hint: "Wax floats off. The shell comes out wet." },
  ] as const;
  return isWax ? [kiln[0], ...wet, kiln[1]] : kiln;
};

const dewaxFields = {
  way: oneOf(["flash", "steam", "hot-water", "staged"], "the method"),
  minutes: figureOrNull("dewaxMin", { what: "time", remedy: "Give the minutes until it stopped running." }),
  waxBackG: figureOrNone("waxBackG", {
    what: "wax weighed back",
    remedy: "Weigh what ran out, or leave it empty.",
  }),
  rinsed: ticked,
  note: wordsOrNone,
};

/** Wax out of the shell; in a running burnout the entry belongs to its run. */
export function DewaxedForm({ item }: LogFormProps) {
  const format = useFormat();
  const { piece, runs } = item.standing;
  const { material = null } = piece.plan;
  const isWax = material === null || material === "wax";
  const runId = piece.phase === "burnout" ? (piece.burnouts.at(-1)?.runId ?? null) : null;
  const run = runs.find(({ id }) => id === runId);
  const way = run?.plan.basis?.route ?? usualRoute(isWax ? "wax" : material, { isFilm: false });
  return (
    <LogForm
      item={item}
      type="dewaxed"
      title="Dewaxed"
      fields={dewaxFields}
      start={{ way }}
      filledBy={run === undefined ? "the usual way" : "as planned"}
      body={(read) => (runId === null ? read : { ...read, runId })}
      about={runId ?? ""}
    >
      {(form) => (
        <>
          <PickOf form={form} at="way" label="Method" options={waysIn(format, isWax)} />
          {isWax && <Cautions step={`dewax-${form.draft.way ?? way}`} alloyId={undefined} />}
          <NumberOf form={form} at="minutes" label="Time" hint="Until it stopped running. May stay empty." />
          <NumberOf
            form={form}
            at="waxBackG"
            label="Wax weighed back"
            hint="Compared with the pattern’s weight it shows what stays inside. May stay empty."
          />
          <YesNoOf form={form} at="rinsed" label="Shell rinsed with water" />
          <TextOf
            form={form}
            at="note"
            label="Note"
            multiline
            hint="Where it ran, what stayed, what the shell looks like."
          />
        </>
      )}
    </LogForm>
  );
}

export function RinsedForm({ item }: LogFormProps) {
  return (
    <LogForm
      item={item}
      type="shell-rinsed"
      title="Shell rinsed with water"
      fields={{ note: wordsOrNone }}
      body={(read) => read}
    >
      {(form) => (
        <>
          <p>The shell is wet from now on, until a heat dries it.</p>
          <TextOf form={form} at="note" label="Note" hint="What came out." />
        </>
      )}
    </LogForm>
  );
}

export function InspectedForm({ item }: LogFormProps) {
  const fields = {
    inside: oneOf(["clean", "residue"], "what it looks like"),
    note: wordsOrNone,
    photos: photoIds,
  };
  return (
    <LogForm item={item} type="shell-inspected" title="Looked inside" fields={fields} body={(read) => read}>
      {(form) => (
        <>
          <PickOf
            form={form}
            at="inside"
            label="The inside is"
            options={insideOptions}
            hint="With a lamp, cold, every branch."
          />
          <TextOf form={form} at="note" label="Note" />
          <PhotosOf form={form} at="photos" />
        </>
      )}
    </LogForm>
  );
}
