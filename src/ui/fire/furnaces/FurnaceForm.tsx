import { v7 as uuidv7 } from "uuid";
import { shopStream } from "../../../logbook/entries/entry.ts";
import type { Furnace } from "../../../logbook/shop/shopThings.ts";
import { useShop } from "../../base/state/shop.tsx";
import { NumberOf, PickOf } from "../../base/forms/BoundFields.tsx";
import { asGiven, figure, figureOrNone, withoutEmpty } from "../../base/forms/formFields.ts";
import { useEntryForm } from "../../base/forms/useEntryForm.ts";
import { furnaceHeats } from "./furnaceWords.ts";
import { HeaterCard, heaterFields } from "./HeaterCard.tsx";

const remedy = "Leave it empty if you don't know it.";
const fields = {
  ...heaterFields("furnace", remedy),
  heat: asGiven<Furnace["heat"]>("propane"),
  powerKW: figure("powerKW", {
    what: "power",
    remedy: "It is on the rating plate. A propane burner gives about 12.9 kW per kg an hour.",
  }),
  efficiency: figureOrNone("efficiency", { what: "share of heat into the metal", remedy }),
  crucibleL: figureOrNone("crucibleL", { what: "crucible", remedy }),
};

const startOf = ({ name, heat, powerKW, ...may }: Furnace) => ({
  name,
  heat,
  powerKW,
  efficiency: may.efficiency ?? null,
  crucibleL: may.crucibleL ?? null,
  pricePerKWh: may.pricePerKWh ?? null,
  currency: may.currency ?? "",
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
  const form = useEntryForm(`furnace/${furnace?.id ?? "new"}`, fields, {
    start: furnace === null ? {} : startOf(furnace),
  });
  const save = (retired: boolean): Promise<void> =>
    form.save(({ currency, ...given }) => {
      const body = withoutEmpty({
        ...given,
        furnaceId: furnace?.id ?? uuidv7(),
        currency: currency === "" ? undefined : currency,
        retired: retired || undefined,
      });
      return log({ do: "log", stream: shopStream, type: "furnace-set", body });
    }, onDone);
  return (
    <HeaterCard what="furnace" heater={furnace} form={form} onSave={save} onDone={onDone}>
      <PickOf form={form} at="heat" label="Heated by" options={furnaceHeats} />
      <NumberOf form={form} at="powerKW" label="Power" hint="Of the burner or element, not of the metal." />
      <NumberOf
        form={form}
        at="efficiency"
        label="Share of heat into the metal"
        hint="Empty: a starting value, until its own melts give one."
      />
      <NumberOf
        form={form}
        at="crucibleL"
        label="Crucible, to the brim"
        hint="Measured with dry sand, never with water."
      />
    </HeaterCard>
  );
}
