import { useState } from "react";
import { streamOf } from "../../../logbook/entries/entry.ts";
import type { Melt } from "../../../logbook/fire/fireStates.ts";
import { chargedKg } from "../../../logbook/fire/furnaceMemory.ts";
import type { Furnace } from "../../../logbook/shop/shopThings.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { asGiven, figure, figureOrNone, withoutEmpty, wordsOrNone } from "../../base/forms/formFields.ts";
import { useEntryForm } from "../../base/forms/useEntryForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { NumberOf, TextOf, WhenOf } from "../../base/forms/BoundFields.tsx";
import css from "./metal.module.css";

const fields = {
  pouredKg: figure("pouredKg", {
    what: "metal poured",
    remedy: "Weigh the castings with their gating, or enter what went in.",
  }),
  piggedKg: figure("piggedKg", { what: "metal left over", remedy: "Weigh it, or tap Nothing left." }),
  energyKWh: figureOrNone("energyKWh", { what: "energy", remedy: "Read the meter, or leave it empty." }),
  fuelKg: figureOrNone("fuelKg", { what: "fuel", remedy: "Weigh the bottle, or leave it empty." }),
  note: wordsOrNone,
  at: asGiven<number | null>(null),
};

/** What came out of the crucible: it ends the melt, and the furnace and the loss learn from it. */
export function MeltEndForm({ melt, furnace }: { readonly melt: Melt; readonly furnace: Furnace | null }) {
  const { log } = useShop();
  const format = useFormat();
  const [open, setOpen] = useState(false);
  const form = useEntryForm(`melt-end/${melt.id}`, fields);
  const { draft } = form;
  const isGas = furnace?.heat === "propane" || furnace?.heat === "natural-gas";
  const outKg = (draft.pouredKg ?? 0) + (draft.piggedKg ?? 0);
  const inKg = chargedKg(melt);
  const end = (): Promise<void> =>
    form.save(({ at, ...given }) =>
      log({
        do: "log",
        stream: streamOf("melt", melt.id),
        type: "melt-ended",
        body: withoutEmpty(given),
        ...(at === null ? {} : { at }),
      }),
    );
  if (!open)
    return (
      <div className={css["keys"]}>
        <Button size="big" onPress={() => setOpen(true)}>
          Poured: end the melt
        </Button>
      </div>
    );
  return (
    <Card title="End the melt">
      <p>Pour what is left into dry, preheated ingot moulds before it freezes in the crucible.</p>
      <div className={css["fields"]}>
        <NumberOf form={form} at="pouredKg" label="Poured into shells" />
        <NumberOf
          form={form}
          at="piggedKg"
          label="Left over: ingots and heel"
          hint="Ingots, weighed spills, and what stays in the crucible."
        />
        {draft.piggedKg === null && (
          <div>
            <Button onPress={() => form.set({ piggedKg: 0 })}>Nothing left</Button>
          </div>
        )}
        {!isGas && <NumberOf form={form} at="energyKWh" label="Energy" hint="From the meter." />}
        {(isGas || furnace === null) && (
          <NumberOf form={form} at="fuelKg" label="Fuel" hint="Bottle weight before minus after." />
        )}
      </div>
      {draft.pouredKg !== null && outKg > inKg * 1.001 && (
        <p role="alert" className={css["warn"]}>
          {format.show("kg", outKg)} out of {format.show("kg", inKg)} in. More out than in: check the scale.
        </p>
      )}
      <TextOf form={form} at="note" label="Note" multiline />
      <WhenOf form={form} at="at" label="When" />
      <div className={css["keys"]}>
        <Button onPress={end}>End the melt</Button>
        <Button kind="quiet" onPress={() => setOpen(false)}>
          Not yet
        </Button>
      </div>
    </Card>
  );
}
