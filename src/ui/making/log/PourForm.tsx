import type { PourCame } from "../../../logbook/entries/shellFireBodies.ts";
import { cameKeys, cameToDo } from "../../base/format/pourCameWords.ts";
import { figureOrNull, givenOrNone, wordsOrNone } from "../../base/forms/formFields.ts";
import { NumberOf, PickOf, TextOf } from "../../base/forms/BoundFields.tsx";
import { LogForm, type LogFormProps } from "./LogForm.tsx";

const remedy = "Correct it, or leave it empty if it was not measured.";

const ways = (["full", "short", "leaked", "frozen", "stopped"] as const).map((value) => ({
  value,
  label: cameKeys[value],
}));

export function PourForm({ item }: LogFormProps) {
  const fields = {
    came: givenOrNone<PourCame>(),
    metalC: figureOrNull("metalC", { what: "metal temperature", remedy }),
    shellC: figureOrNull("shellC", { what: "shell temperature", remedy }),
    massKg: figureOrNull("shellTookKg", { what: "metal poured", remedy }),
    outOfKilnMin: figureOrNull("outOfKilnMin", { what: "time out of the kiln", remedy }),
    note: wordsOrNone,
  };
  return (
    <LogForm item={item} type="metal-poured" title="Metal poured" fields={fields} body={(read) => read}>
      {(form) => (
        <>
          <PickOf form={form} at="came" label="How it went" options={ways} />
          {form.draft.came !== null && form.draft.came !== "full" && <p>{cameToDo[form.draft.came]}</p>}
          <NumberOf
            form={form}
            at="metalC"
            label="Metal"
            hint="By thermocouple in the crucible, just before it moved."
          />
          <NumberOf form={form} at="shellC" label="Shell" hint="As it came out of the kiln." />
          <NumberOf form={form} at="outOfKilnMin" label="From kiln to metal" />
          <NumberOf form={form} at="massKg" label="Metal poured" />
          <TextOf form={form} at="note" label="Note" multiline hint="Boiled? Risers up? Where it stopped?" />
        </>
      )}
    </LogForm>
  );
}
