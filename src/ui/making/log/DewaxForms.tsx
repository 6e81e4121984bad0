import { insideOptions } from "../../base/format/insideOptions.ts";
import { z } from "zod";
import { usualRoute } from "../../../logbook/fire/dewaxWay.ts";
import type { DewaxWay, ShellInside } from "../../../logbook/entries/shellFireBodies.ts";
import { ranges } from "../../../logbook/entries/ranges.ts";
import { stagedWaxMostKg } from "../../../trade/patternBurnout.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import type { Format } from "../../base/format/units.ts";
import { Choice } from "../../base/forms/Choice.tsx";
import { NumberField } from "../../base/forms/NumberField.tsx";
import { PhotoPicker } from "../../base/parts/PhotoPicker.tsx";
import { TextField } from "../../base/forms/TextField.tsx";
import { Cautions } from "../../base/cautions/Cautions.tsx";
import { figureOrNone, oneOf, photoIds, wordsOrNone } from "../../base/forms/fieldSchema.ts";
import { LogForm, type LogFormProps } from "./LogForm.tsx";
import { PickField } from "../../base/forms/PickField.tsx";

const waysIn = (format: Format, isWax: boolean) => {
  const kiln = [
    {
      value: "flash",
      label: "Flash fire",
      hint: isWax ? "Hot kiln; wax runs through the floor into a pan outside." : "Put into a hot kiln.",
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
const yesNo = [
  { value: "no", label: "No" },
  { value: "yes", label: "Yes" },
] as const;

type DewaxDraft = {
  readonly way: DewaxWay;
  readonly minutes: number | null;
  readonly waxBackG: number | null;
  readonly rinsed: boolean;
  readonly note: string;
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
  const schema = z
    .object({
      way: oneOf(["flash", "steam", "hot-water", "staged"], "the method"),
      minutes: figureOrNone(format, {
        what: "time",
        quantity: "min",
        range: ranges.dewaxMin,
        remedy: "Give the minutes until it stopped running.",
      }),
      waxBackG: figureOrNone(format, {
        what: "wax weighed back",
        quantity: "g",
        range: ranges.massG,
        remedy: "Weigh what ran out, or leave it empty.",
      }),
      rinsed: z.boolean(),
      note: wordsOrNone,
    })
    .transform(({ waxBackG, rinsed, ...body }) => ({
      ...body,
      ...(waxBackG === null ? {} : { waxBackG }),
      ...(rinsed ? { rinsed } : {}),
      ...(runId === null ? {} : { runId }),
    }));
  const initial: DewaxDraft = { way, minutes: null, waxBackG: null, rinsed: false, note: "" };
  return (
    <LogForm item={item} type="dewaxed" title="Dewaxed" initial={initial} schema={schema} about={runId ?? ""}>
      {({ draft, set, errors }) => (
        <>
          <PickField
            label="Method"
            options={waysIn(format, isWax)}
            value={draft.way}
            onChange={(next) => set({ way: next })}
            error={errors["way"]}
          />
          {isWax && <Cautions step={`dewax-${draft.way}`} alloyId={undefined} />}
          <NumberField
            label="Time"
            quantity="min"
            min={0}
            value={draft.minutes}
            onChange={(minutes) => set({ minutes })}
            hint="Until it stopped running. May stay empty."
            error={errors["minutes"]}
          />
          <NumberField
            label="Wax weighed back"
            quantity="g"
            min={0}
            value={draft.waxBackG}
            onChange={(waxBackG) => set({ waxBackG })}
            hint="Against the pattern's own weight it shows what stays inside. May stay empty."
            error={errors["waxBackG"]}
          />
          <Choice
            label="Shell rinsed with water"
            options={yesNo}
            value={draft.rinsed ? "yes" : "no"}
            onChange={(answer) => set({ rinsed: answer === "yes" })}
          />
          <TextField
            label="Note"
            multiline
            value={draft.note}
            onChange={(note) => set({ note })}
            hint="Where it ran, what stayed, what the shell looks like."
            error={errors["note"]}
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
      initial={{ note: "" }}
      schema={z.object({ note: wordsOrNone })}
    >
      {({ draft, set, errors }) => (
        <>
          <p>The shell is wet from now on, until a heat in the log has dried it.</p>
          <TextField
            label="Note"
            value={draft.note}
            onChange={(note) => set({ note })}
            hint="What came out."
            error={errors["note"]}
          />
        </>
      )}
    </LogForm>
  );
}

type InsideDraft = {
  readonly inside: ShellInside | null;
  readonly note: string;
  readonly photos: readonly string[];
};

export function InspectedForm({ item }: LogFormProps) {
  const schema = z.object({
    inside: oneOf(["clean", "residue"], "what it looks like"),
    note: wordsOrNone,
    photos: photoIds,
  });
  const initial: InsideDraft = { inside: null, note: "", photos: [] };
  return (
    <LogForm item={item} type="shell-inspected" title="Looked inside" initial={initial} schema={schema}>
      {({ draft, set, errors }) => (
        <>
          <PickField
            label="The inside is"
            options={insideOptions}
            value={draft.inside}
            onChange={(inside) => set({ inside })}
            hint="With a lamp, cold, every branch of it."
            error={errors["inside"]}
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
