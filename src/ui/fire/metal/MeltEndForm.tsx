import { useState } from "react";
import { z } from "zod";
import { streamOf } from "../../../logbook/entries/entry.ts";
import type { Melt } from "../../../logbook/fire/fireStates.ts";
import { chargedKg } from "../../../logbook/fire/furnaceMemory.ts";
import { ranges } from "../../../logbook/entries/ranges.ts";
import type { Furnace } from "../../../logbook/shop/shopThings.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import type { Format } from "../../base/format/units.ts";
import { check, figure, figureOrNone, withoutEmpty, wordsOrNone } from "../../base/forms/fieldSchema.ts";
import { useForm } from "../../base/forms/useForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { NumberField } from "../../base/forms/NumberField.tsx";
import { TextField } from "../../base/forms/TextField.tsx";
import { WhenField } from "../../base/forms/WhenField.tsx";
import css from "./metal.module.css";

type Draft = {
  readonly pouredKg: number | null;
  readonly piggedKg: number | null;
  readonly energyKWh: number | null;
  readonly fuelKg: number | null;
  readonly note: string;
  readonly at: number | null;
};
const empty: Draft = { pouredKg: null, piggedKg: null, energyKWh: null, fuelKg: null, note: "", at: null };

const schemaOf = (format: Format) =>
  z.object({
    pouredKg: figure(format, {
      what: "metal poured",
      quantity: "kg",
      range: ranges.chargeKg,
      remedy: "Weigh the castings with their gating, or tell what went in.",
    }),
    piggedKg: figureOrNone(format, {
      what: "metal pigged",
      quantity: "kg",
      range: ranges.chargeKg,
      remedy: "Nothing if none was left.",
    }),
    energyKWh: figureOrNone(format, {
      what: "energy",
      quantity: "kWh",
      range: ranges.energyKWh,
      remedy: "Read the meter, or leave it empty.",
    }),
    fuelKg: figureOrNone(format, {
      what: "fuel",
      quantity: "kg",
      range: ranges.fuelKg,
      remedy: "Weigh the bottle, or leave it empty.",
    }),
    note: wordsOrNone,
    at: z.number().nullable(),
  });

/** What came out of the crucible: it ends the melt, and the furnace and the loss learn from it. */
export function MeltEndForm({ melt, furnace }: { readonly melt: Melt; readonly furnace: Furnace | null }) {
  const { log } = useShop();
  const format = useFormat();
  const [open, setOpen] = useState(false);
  const form = useForm<Draft>(`melt-end/${melt.id}`, empty);
  const { draft, set, errors } = form;
  const isGas = furnace?.heat === "propane" || furnace?.heat === "natural-gas";
  const outKg = (draft.pouredKg ?? 0) + (draft.piggedKg ?? 0);
  const inKg = chargedKg(melt);
  const end = async (): Promise<void> => {
    const read = check(schemaOf(format), draft);
    form.tell(read.ok ? {} : read.errors);
    if (!read.ok) return;
    const { at, piggedKg, energyKWh, fuelKg, ...given } = read.value;
    const result = await log({
      do: "log",
      stream: streamOf("melt", melt.id),
      type: "melt-ended",
      body: withoutEmpty({
        ...given,
        piggedKg: piggedKg ?? 0,
        energyKWh: energyKWh ?? undefined,
        fuelKg: fuelKg ?? undefined,
      }),
      ...(at === null ? {} : { at }),
    });
    if (result.ok) await form.drop();
  };
  if (!open)
    return (
      <div className={css["keys"]}>
        <Button size="big" onPress={() => setOpen(true)}>
          It is poured: end the melt
        </Button>
      </div>
    );
  return (
    <Card title="End the melt">
      <p>What is left goes into dry, preheated ingot moulds before it freezes in the crucible.</p>
      <div className={css["fields"]}>
        <NumberField
          label="Poured into shells"
          quantity="kg"
          min={0}
          value={draft.pouredKg}
          onChange={(pouredKg) => set({ pouredKg })}
          error={errors["pouredKg"]}
        />
        <NumberField
          label="Pigged, or left as heel"
          quantity="kg"
          min={0}
          value={draft.piggedKg}
          onChange={(piggedKg) => set({ piggedKg })}
          hint="Ingots, spills that were weighed, and what stays in the crucible."
          error={errors["piggedKg"]}
        />
        {!isGas && (
          <NumberField
            label="Energy"
            quantity="kWh"
            min={0}
            value={draft.energyKWh}
            onChange={(energyKWh) => set({ energyKWh })}
            hint="By the meter."
            error={errors["energyKWh"]}
          />
        )}
        {(isGas || furnace === null) && (
          <NumberField
            label="Fuel"
            quantity="kg"
            min={0}
            value={draft.fuelKg}
            onChange={(fuelKg) => set({ fuelKg })}
            hint="Bottle before less after."
            error={errors["fuelKg"]}
          />
        )}
      </div>
      {draft.pouredKg !== null && outKg > inKg * 1.001 && (
        <p role="alert" className={css["warn"]}>
          {format.show("kg", outKg)} out of {format.show("kg", inKg)} in: metal doesn't grow. Look at the
          scale.
        </p>
      )}
      <TextField
        label="Note"
        multiline
        value={draft.note}
        onChange={(note) => set({ note })}
        error={errors["note"]}
      />
      <WhenField label="When" at={draft.at} onChange={(at) => set({ at })} />
      <div className={css["keys"]}>
        <Button onPress={end}>End the melt</Button>
        <Button kind="quiet" onPress={() => setOpen(false)}>
          Not yet
        </Button>
      </div>
    </Card>
  );
}
