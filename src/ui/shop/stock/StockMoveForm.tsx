import { useState } from "react";
import { shopStream } from "../../../logbook/entries/entry.ts";
import { ranges } from "../../../logbook/entries/ranges.ts";
import type { Material, StockMove } from "../../../logbook/shop/shopThings.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useShop } from "../../base/state/shop.tsx";
import { withoutEmpty } from "../../base/forms/fieldSchema.ts";
import { SelectField } from "../../base/forms/SelectField.tsx";
import { useForm } from "../../base/forms/useForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { NumberField } from "../../base/forms/NumberField.tsx";
import { TextOf } from "../../base/forms/BoundFields.tsx";
import css from "./stock.module.css";

type MoveDraft = { readonly how: StockMove["how"]; readonly massKg: number | null; readonly note: string };

const ways: readonly { readonly value: StockMove["how"]; readonly label: string }[] = [
  { value: "received", label: "Received" },
  { value: "counted", label: "Counted: what is there" },
  { value: "made-up", label: "Used for something else" },
  { value: "lost", label: "Lost" },
  { value: "thrown-away", label: "Thrown away" },
];

/** A delivery, a count, or what went another way than into a bucket or onto a piece. */
export function StockMoveForm({ material }: { readonly material: Material }) {
  const { log } = useShop();
  const say = useFleeting((fleeting) => fleeting.say);
  const form = useForm<MoveDraft>(`stock/${material.id}`, {
    how: "received",
    massKg: material.packKg ?? null,
    note: "",
  });
  const { draft, set } = form;
  const [refused, setRefused] = useState<string | null>(null);
  const save = async (): Promise<void> => {
    const { how, massKg, note } = draft;
    if (massKg === null) return setRefused("Found no weight. Weigh it, or tell the packs.");
    const done = await log(
      {
        do: "log",
        stream: shopStream,
        type: "stock-moved",
        body: withoutEmpty({
          materialId: material.id,
          how,
          massKg,
          note: note.trim() === "" ? undefined : note.trim(),
        }),
      },
      { quiet: true },
    );
    if (!done.ok) return setRefused(done.text);
    await form.restart();
    say("In the log.");
  };
  return (
    <details>
      <summary>Received, counted, lost</summary>
      <div className={css["form"]}>
        <div className={css["two"]}>
          <SelectField
            label="What"
            empty={null}
            options={ways}
            value={draft.how}
            onChange={(how) => {
              const way = ways.find(({ value }) => value === how);
              if (way !== undefined) set({ how: way.value });
            }}
          />
          <NumberField
            label="Weight"
            quantity="kg"
            min={0}
            max={ranges.stockKg.high}
            value={draft.massKg}
            onChange={(massKg) => {
              setRefused(null);
              set({ massKg });
            }}
            error={refused}
          />
        </div>
        <TextOf form={form} at="note" label="Note" hint="Lot, delivery, supplier, as you like." />
        <Button onPress={save}>Log it</Button>
      </div>
    </details>
  );
}
