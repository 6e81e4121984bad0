import { v7 as uuidv7 } from "uuid";
import { z } from "zod";
import { shopStream } from "../../../logbook/entries/entry.ts";
import { ranges } from "../../../logbook/entries/ranges.ts";
import type { Furnace } from "../../../logbook/shop/shopThings.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import type { Format } from "../../base/format/units.ts";
import { check, figure, figureOrNone, withoutEmpty, words } from "../../base/forms/fieldSchema.ts";
import { PickField } from "../../base/forms/PickField.tsx";
import { useForm } from "../../base/forms/useForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { NumberField } from "../../base/forms/NumberField.tsx";
import { TextField } from "../../base/forms/TextField.tsx";
import { furnaceHeats } from "./furnaceWords.ts";
import { PriceFields } from "./PriceFields.tsx";
import css from "./fire.module.css";

const draftOf = (furnace: Furnace | null) => ({
  name: furnace?.name ?? "",
  heat: furnace?.heat ?? ("propane" as const),
  powerKW: furnace?.powerKW ?? null,
  efficiency: furnace?.efficiency ?? null,
  crucibleL: furnace?.crucibleL ?? null,
  pricePerKWh: furnace?.pricePerKWh ?? null,
  currency: furnace?.currency ?? "",
});

const orEmpty = "Leave it empty if you don't know it.";
const schemaOf = (format: Format) =>
  z.object({
    name: words("name", "Give the furnace a name you would call across the shop.", 80),
    heat: z.enum(["propane", "natural-gas", "electric", "induction"]),
    powerKW: figure(format, {
      what: "power",
      quantity: "kW",
      range: ranges.powerKW,
      remedy: "It is on its plate; a burner gives about 12.9 kW for each kg of propane an hour.",
    }),
    efficiency: figureOrNone(format, {
      what: "share that ends in the metal",
      quantity: "percent",
      range: ranges.efficiency,
      remedy: orEmpty,
    }),
    crucibleL: figureOrNone(format, {
      what: "crucible",
      quantity: "litre",
      range: ranges.crucibleL,
      remedy: orEmpty,
    }),
    pricePerKWh: figureOrNone(format, {
      what: "price",
      quantity: "plain",
      range: ranges.price,
      remedy: orEmpty,
    }),
    currency: z.string().trim().max(12),
  });

/** One furnace: a new one, or one that is there. */
export function FurnaceForm({
  furnace,
  onDone,
}: {
  readonly furnace: Furnace | null;
  readonly onDone: () => void;
}) {
  const { log } = useShop();
  const format = useFormat();
  const form = useForm(`furnace/${furnace?.id ?? "new"}`, draftOf(furnace));
  const { draft, set, errors } = form;
  const save = async (retired: boolean): Promise<void> => {
    const read = check(schemaOf(format), draft);
    form.tell(read.ok ? {} : read.errors);
    if (!read.ok) return;
    const { efficiency, crucibleL, pricePerKWh, currency, ...given } = read.value;
    const body = withoutEmpty({
      ...given,
      furnaceId: furnace?.id ?? uuidv7(),
      efficiency: efficiency ?? undefined,
      crucibleL: crucibleL ?? undefined,
      pricePerKWh: pricePerKWh ?? undefined,
      currency: currency === "" ? undefined : currency,
      retired: retired || undefined,
    });
    const result = await log({ do: "log", stream: shopStream, type: "furnace-set", body });
    if (!result.ok) return;
    await form.drop();
    onDone();
  };
  return (
    <Card title={furnace === null ? "A new furnace" : furnace.name}>
      <TextField label="Name" value={draft.name} onChange={(name) => set({ name })} error={errors["name"]} />
      <PickField
        label="Heated by"
        options={furnaceHeats}
        value={draft.heat}
        onChange={(heat) => set({ heat })}
      />
      <NumberField
        label="Power"
        quantity="kW"
        min={0}
        value={draft.powerKW}
        onChange={(powerKW) => set({ powerKW })}
        hint="Of the burner or the element, not what reaches the metal."
        error={errors["powerKW"]}
      />
      <NumberField
        label="Of it ends in the metal"
        quantity="percent"
        min={0}
        value={draft.efficiency}
        onChange={(efficiency) => set({ efficiency })}
        hint="Empty: a starting value for its kind, until its own melts tell."
        error={errors["efficiency"]}
      />
      <NumberField
        label="Crucible, to the brim"
        quantity="litre"
        min={0}
        value={draft.crucibleL}
        onChange={(crucibleL) => set({ crucibleL })}
        hint="Measured with dry sand, never with water."
        error={errors["crucibleL"]}
      />
      <PriceFields draft={draft} set={set} errors={errors} />
      <div className={css["keys"]}>
        <Button kind="primary" onPress={() => save(furnace?.retired ?? false)}>
          Save the furnace
        </Button>
        <Button onPress={onDone}>Not now</Button>
        {furnace !== null && (
          <Button kind="quiet" onPress={() => save(!furnace.retired)}>
            {furnace.retired ? "Take it into use again" : "Take it out of use"}
          </Button>
        )}
      </div>
    </Card>
  );
}
