import { v7 as uuidv7 } from "uuid";
import { shopStream } from "../../../logbook/entries/entry.ts";
import type { Kiln } from "../../../logbook/shop/shopThings.ts";
import { useShop } from "../../base/state/shop.tsx";
import { NumberOf, PickOf } from "../../base/forms/BoundFields.tsx";
import { asGiven, figure, figureOrNone, withoutEmpty } from "../../base/forms/formFields.ts";
import { useEntryForm } from "../../base/forms/useEntryForm.ts";
import { HeaterCard, heaterFields } from "./HeaterCard.tsx";

const fields = {
  ...heaterFields("kiln", "Leave it empty if it doesn't matter."),
  heat: asGiven<Kiln["heat"]>("electric"),
  powerKW: figure("powerKW", { what: "power", remedy: "It is on the rating plate." }),
  volumeL: figure("volumeL", { what: "size", remedy: "Measure it inside." }),
  maxC: figure("maxC", { what: "highest temperature", remedy: "It is on the rating plate." }),
  maxRampKPerH: figureOrNone("maxRampKPerH", {
    what: "fastest rate",
    remedy: "Leave it empty if you don't know it.",
  }),
};

const startOf = ({ name, heat, powerKW, volumeL, maxC, ...may }: Kiln) => ({
  name,
  heat,
  powerKW,
  volumeL,
  maxC,
  maxRampKPerH: may.maxRampKPerH ?? null,
  pricePerKWh: may.pricePerKWh ?? null,
  currency: may.currency ?? "",
});

/** One kiln: a new one, or one that is there. */
export function KilnForm({ kiln, onDone }: { readonly kiln: Kiln | null; readonly onDone: () => void }) {
  const { log } = useShop();
  const form = useEntryForm(`kiln/${kiln?.id ?? "new"}`, fields, {
    start: kiln === null ? {} : startOf(kiln),
  });
  const save = (retired: boolean): Promise<void> =>
    form.save(({ currency, ...given }) => {
      const body = withoutEmpty({
        ...given,
        kilnId: kiln?.id ?? uuidv7(),
        currency: currency === "" ? undefined : currency,
        retired: retired || undefined,
      });
      return log({ do: "log", stream: shopStream, type: "kiln-set", body });
    }, onDone);
  return (
    <HeaterCard what="kiln" heater={kiln} form={form} onSave={save} onDone={onDone}>
      <PickOf
        form={form}
        at="heat"
        label="Heated by"
        options={[
          { value: "electric", label: "Electricity" },
          { value: "gas", label: "Gas" },
        ]}
      />
      <NumberOf form={form} at="powerKW" label="Power" />
      <NumberOf form={form} at="volumeL" label="Volume inside" />
      <NumberOf form={form} at="maxC" label="Highest temperature" />
      <NumberOf form={form} at="maxRampKPerH" label="Fastest rate" hint="As measured. Empty if not known." />
    </HeaterCard>
  );
}
