import type { PourCame } from "../../../logbook/entries/shellFireBodies.ts";
import { isPutAway } from "../../../logbook/fire/fireStates.ts";
import { meltFor } from "../../../logbook/pour/meltTie.ts";
import { useMelts, usePours } from "../../base/state/live.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { meltTitle } from "../../fire/metal/meltWords.ts";
import { cameKeys, cameToDo } from "../../base/format/pourCameWords.ts";
import { figureOrNull, givenOrNone, oneOf, wordsOrNone } from "../../base/forms/formFields.ts";
import { NumberOf, PickOf, SelectOf, TextOf } from "../../base/forms/BoundFields.tsx";
import { LogForm, type LogFormProps } from "./LogForm.tsx";

const remedy = "Correct it, or leave it empty if it was not measured.";

const cameWays = ["full", "short", "leaked", "frozen", "stopped"] as const;
const ways = cameWays.map((value) => ({
  value,
  label: cameKeys[value],
}));

export function PourForm({ item }: LogFormProps) {
  const format = useFormat();
  const melts = useMelts();
  const pours = usePours();
  const { piece, shop } = item.standing;
  if (melts === undefined || pours === undefined) return null;
  const tied = meltFor(piece, { melts, pours });
  const fields = {
    meltId: givenOrNone<string>(),
    // Asked for: a log that does not say counts as full.
    came: oneOf<PourCame>(cameWays, "how it went"),
    metalC: figureOrNull("metalC", { what: "metal temperature", remedy }),
    shellC: figureOrNull("shellC", { what: "shell temperature", remedy }),
    massKg: figureOrNull("shellTookKg", { what: "metal poured", remedy }),
    outOfKilnMin: figureOrNull("outOfKilnMin", { what: "time out of the kiln", remedy }),
    note: wordsOrNone,
  };
  return (
    <LogForm
      item={item}
      type="metal-poured"
      title="Metal poured"
      fields={fields}
      start={{ meltId: tied?.id ?? null }}
      body={(read) => read}
    >
      {(form) => (
        <>
          <PickOf form={form} at="came" label="How it went" options={ways} />
          {form.draft.came !== null && form.draft.came !== "full" && <p>{cameToDo[form.draft.came]}</p>}
          <NumberOf
            form={form}
            at="metalC"
            label="Metal"
            hint="By thermocouple in the crucible, just before the pour."
          />
          <NumberOf form={form} at="shellC" label="Shell" hint="As it came out of the kiln." />
          <NumberOf form={form} at="outOfKilnMin" label="From kiln to metal" />
          <NumberOf form={form} at="massKg" label="Metal poured" />
          {melts.length > 0 && (
            <SelectOf
              form={form}
              at="meltId"
              label="Melt"
              options={melts
                .filter((melt) => !isPutAway(melt))
                .map((melt) => ({ value: melt.id, label: meltTitle(melt, { shop, format }) }))}
              empty="None"
            />
          )}
          <TextOf
            form={form}
            at="note"
            label="Note"
            multiline
            hint="Boiling? Risers full? Where it stopped?"
          />
        </>
      )}
    </LogForm>
  );
}
