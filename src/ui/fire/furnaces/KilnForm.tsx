import { v7 as uuidv7 } from "uuid";
import { z } from "zod";
import { shopStream } from "../../../logbook/entries/entry.ts";
import { ranges } from "../../../logbook/entries/ranges.ts";
import type { Kiln } from "../../../logbook/shop/shopThings.ts";
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
import { PriceFields } from "./PriceFields.tsx";
import css from "./fire.module.css";

const draftOf = (kiln: Kiln | null) => ({
  name: kiln?.name ?? "",
  heat: kiln?.heat ?? ("electric" as const),
  powerKW: kiln?.powerKW ?? null,
  volumeL: kiln?.volumeL ?? null,
  maxC: kiln?.maxC ?? null,
  maxRampKPerH: kiln?.maxRampKPerH ?? null,
  pricePerKWh: kiln?.pricePerKWh ?? null,
  currency: kiln?.currency ?? "",
});

const schemaOf = (format: Format) =>
  z.object({
    name: words("name", "Give the kiln a name you would call across the shop.", 80),
    heat: z.enum(["electric", "gas"]),
    powerKW: figure(format, {
      what: "power",
      quantity: "kW",
      range: ranges.powerKW,
      remedy: "It is on its plate.",
    }),
    volumeL: figure(format, {
      what: "size",
      quantity: "litre",
      range: ranges.kilnL,
      remedy: "Measure it inside.",
    }),
    maxC: figure(format, {
      what: "highest heat",
      quantity: "temp",
      range: ranges.kilnMaxC,
      remedy: "It is on its plate.",
    }),
    maxRampKPerH: figureOrNone(format, {
      what: "fastest climb",
      quantity: "tempDiff",
      range: ranges.rateKPerH,
      remedy: "Leave it empty if you don't know it.",
    }),
    pricePerKWh: figureOrNone(format, {
      what: "price",
      quantity: "plain",
      range: ranges.price,
      remedy: "Leave it empty if it doesn't matter.",
    }),
    currency: z.string().trim().max(12),
  });

/** One kiln: a new one, or one that is there. */
export function KilnForm({ kiln, onDone }: { readonly kiln: Kiln | null; readonly onDone: () => void }) {
  const { log } = useShop();
  const format = useFormat();
  const form = useForm(`kiln/${kiln?.id ?? "new"}`, draftOf(kiln));
  const { draft, set, errors } = form;
  const save = async (retired: boolean): Promise<void> => {
    const read = check(schemaOf(format), draft);
    form.tell(read.ok ? {} : read.errors);
    if (!read.ok) return;
    const { maxRampKPerH, pricePerKWh, currency, ...given } = read.value;
    const body = withoutEmpty({
      ...given,
      kilnId: kiln?.id ?? uuidv7(),
      maxRampKPerH: maxRampKPerH ?? undefined,
      pricePerKWh: pricePerKWh ?? undefined,
      currency: currency === "" ? undefined : currency,
      retired: retired || undefined,
    });
    const result = await log({ do: "log", stream: shopStream, type: "kiln-set", body });
    if (!result.ok) return;
    await form.drop();
    onDone();
  };
  return (
    <Card title={kiln === null ? "A new kiln" : kiln.name}>
      <TextField label="Name" value={draft.name} onChange={(name) => set({ name })} error={errors["name"]} />
      <PickField
        label="Heated by"
        options={[
          { value: "electric", label: "Electricity" },
          { value: "gas", label: "Gas" },
        ]}
        value={draft.heat}
        onChange={(heat) => set({ heat })}
      />
      <NumberField
        label="Power"
        quantity="kW"
        min={0}
        value={draft.powerKW}
        onChange={(powerKW) => set({ powerKW })}
        error={errors["powerKW"]}
      />
      <NumberField
        label="Volume inside"
        quantity="litre"
        min={0}
        value={draft.volumeL}
        onChange={(volumeL) => set({ volumeL })}
        error={errors["volumeL"]}
      />
      <NumberField
        label="Highest temperature"
        quantity="temp"
        value={draft.maxC}
        onChange={(maxC) => set({ maxC })}
        error={errors["maxC"]}
      />
      <NumberField
        label="Fastest climb in an hour"
        quantity="tempDiff"
        min={0}
        value={draft.maxRampKPerH}
        onChange={(maxRampKPerH) => set({ maxRampKPerH })}
        hint="As you have seen it; empty if not known."
        error={errors["maxRampKPerH"]}
      />
      <PriceFields draft={draft} set={set} errors={errors} />
      <div className={css["keys"]}>
        <Button kind="primary" onPress={() => save(kiln?.retired ?? false)}>
          Save the kiln
        </Button>
        <Button onPress={onDone}>Not now</Button>
        {kiln !== null && (
          <Button kind="quiet" onPress={() => save(!kiln.retired)}>
            {kiln.retired ? "Take it into use again" : "Take it out of use"}
          </Button>
        )}
      </div>
    </Card>
  );
}
