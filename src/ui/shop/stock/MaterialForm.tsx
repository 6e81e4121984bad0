import { shopStream } from "../../../logbook/entries/entry.ts";
import type { Material } from "../../../logbook/shop/shopThings.ts";
import { solShelfMonths } from "../../../trade/binders.ts";
import { flours } from "../../../trade/flours.ts";
import { stuccos } from "../../../trade/stuccos.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { Refused } from "../../base/forms/Refused.tsx";
import { useEntryForm } from "../../base/forms/useEntryForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { NumberField } from "../../base/forms/NumberField.tsx";
import { draftOfMaterial, materialKinds, materialFields, readMaterial } from "./materialForm.ts";
import { NumberOf, PickOf, SelectOf, TextOf } from "../../base/forms/BoundFields.tsx";
import css from "./stock.module.css";

/** One material. Prices and their currency are the shop's own words. */
export function MaterialForm(props: {
  readonly material: Material | null;
  /** The currency told last, to begin with. */
  readonly currency?: string | undefined;
  readonly onSaved: () => void;
}) {
  const { material, currency, onSaved } = props;
  const { log, moment } = useShop();
  const format = useFormat();
  const say = useFleeting((fleeting) => fleeting.say);
  const form = useEntryForm(`material/${material?.id ?? "new"}`, materialFields, {
    start: draftOfMaterial(material, currency),
    check: readMaterial,
  });
  const { draft } = form;
  // A pound costs less than a kilogram: the price is kept by the kilogram.
  const perKg = format.toShown("kg", 1);
  const unit = format.unit("kg");
  const save = (retired: boolean) =>
    form.save(
      (read) => {
        const body = { materialId: material?.id ?? moment().newId(), ...read };
        return log(
          {
            do: "log",
            stream: shopStream,
            type: "material-set",
            body: retired ? { ...body, retired } : body,
          },
          { quiet: true },
        );
      },
      () => {
        say("Material saved.");
        onSaved();
      },
    );
  const isRetired = material?.retired ?? false;
  return (
    <form
      className={css["form"]}
      onSubmit={(event) => {
        event.preventDefault();
        void save(isRetired);
      }}
    >
      <TextOf form={form} at="name" label="Name" />
      <PickOf form={form} at="kind" label="Kind" options={materialKinds} />
      {draft.kind === "flour" && (
        <SelectOf
          form={form}
          at="flourId"
          label="Flour"
          empty="Another flour"
          options={flours.map(({ id, label }) => ({ value: id, label }))}
          hint="Stock is reduced when you add it to a bucket."
        />
      )}
      {draft.kind === "stucco" && (
        <SelectOf
          form={form}
          at="stuccoId"
          label="Grade"
          empty="Another grade"
          options={stuccos.map(({ id, label }) => ({ value: id, label }))}
          hint="Stock is reduced when you use it on coats."
        />
      )}
      <div className={css["two"]}>
        <NumberField
          label={`Price a ${unit}`}
          quantity="plain"
          min={0}
          value={draft.pricePerKg === null ? null : draft.pricePerKg / perKg}
          onChange={(price) => form.set({ pricePerKg: price === null ? null : price * perKg })}
          error={form.errors["pricePerKg"]}
        />
        <TextOf form={form} at="currency" label="Currency" />
        <NumberOf form={form} at="packKg" label="Pack" />
        <NumberOf form={form} at="weeksToCome" label="Delivery time (weeks)" />
        <NumberOf
          form={form}
          at="keepsMonths"
          label="Shelf life (months)"
          hint={
            draft.kind === "sol"
              ? `Starting value ${solShelfMonths.value}, sealed and never frozen: ${solShelfMonths.source}`
              : undefined
          }
        />
      </div>
      <Refused form={form} plain />
      <div className={css["keys"]}>
        <Button onPress={() => save(isRetired)}>Save the material</Button>
        {material !== null && (
          <Button kind="quiet" onPress={() => save(!isRetired)}>
            {isRetired ? "Use it again" : "No longer used"}
          </Button>
        )}
      </div>
    </form>
  );
}
