import { shopStream } from "../../../logbook/entries/entry.ts";
import { ranges } from "../../../logbook/entries/ranges.ts";
import type { Material, StockMove } from "../../../logbook/shop/shopThings.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { withoutEmpty } from "../../base/forms/formFields.ts";
import { useForm } from "../../base/forms/useForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { NumberOf, SelectOf, TextOf } from "../../base/forms/BoundFields.tsx";
import css from "./stock.module.css";

type MoveDraft = { readonly how: StockMove["how"]; readonly massKg: number | null; readonly note: string };

const ways: readonly { readonly value: StockMove["how"]; readonly label: string }[] = [
  { value: "received", label: "Received" },
  { value: "counted", label: "Counted" },
  { value: "made-up", label: "Used for something else" },
  { value: "lost", label: "Lost" },
  { value: "thrown-away", label: "Thrown away" },
];

/** A delivery, a count, or what went another way than into a bucket or onto a piece. */
export function StockMoveForm({ material }: { readonly material: Material }) {
  const { log } = useShop();
  const format = useFormat();
  const say = useFleeting((fleeting) => fleeting.say);
  const form = useForm<MoveDraft>(`stock/${material.id}`, {
    how: "received",
    massKg: null,
    note: "",
  });
  const bound = { ...form, errors: { massKg: form.refused ?? undefined } };
  const save = async (): Promise<void> => {
    const { how, massKg, note } = form.draft;
    if (massKg === null) return form.refuse("Enter a weight, or the number of packs.");
    const said = note.trim() === "" ? undefined : note.trim();
    const body = withoutEmpty({ materialId: material.id, how, massKg, note: said });
    await form.send(
      () => log({ do: "log", stream: shopStream, type: "stock-moved", body }, { quiet: true }),
      { restart: () => say("In the log.") },
    );
  };
  return (
    <details>
      <summary>Received, counted, lost</summary>
      <div className={css["form"]}>
        <div className={css["two"]}>
          <SelectOf form={form} at="how" label="What" empty={null} options={ways} />
          <NumberOf form={bound} at="massKg" label="Weight" quantity="kg" min={0} max={ranges.stockKg.high} />
        </div>
        {material.packKg !== undefined && form.draft.massKg === null && (
          <div>
            <Button onPress={() => form.set({ massKg: material.packKg ?? null })}>
              One pack: {format.show("kg", material.packKg)}
            </Button>
          </div>
        )}
        <TextOf form={form} at="note" label="Note" hint="Lot, delivery, supplier, as you like." />
        <Button onPress={save}>Log it</Button>
      </div>
    </details>
  );
}
