import { Trash2 } from "lucide-react";
import { useState } from "react";
import type { Element } from "../../../physics/metal/scrap.ts";
import { alloyChoices, alloyName } from "../../../logbook/shop/ownAlloy.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { SelectField } from "../../base/forms/SelectField.tsx";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Choice } from "../../base/forms/Choice.tsx";
import { TextField } from "../../base/forms/TextField.tsx";
import { AssayFields } from "./AssayFields.tsx";
import { DraftNumber, type DraftForm } from "../../base/forms/DraftNumber.tsx";
import { berylliumCaution } from "../../base/cautions/hazardWords.ts";
import {
  elementChoices,
  itemLimits,
  mayHoldBeryllium,
  nameOfItem,
  newItem,
  type ItemDraft,
  type ItemKind,
  type MeltDraft,
} from "./meltDraft.ts";
import { NumberOf } from "../../base/forms/BoundFields.tsx";
import css from "./metal.module.css";

const kinds: readonly { readonly value: ItemKind; readonly label: string }[] = [
  { value: "alloy", label: "A named alloy, ingot or own returns" },
  { value: "pure", label: "A pure metal" },
  { value: "assay", label: "Scrap with an assay" },
  { value: "unknown-copper", label: "Copper, bronze or brass scrap, not known" },
  { value: "unknown-aluminium", label: "Aluminium scrap, not known" },
];

/** What is weighed in, item by item, and what each of it is made of. */
export function MeltItems({
  form: { draft, set },
  shop,
}: {
  readonly form: DraftForm<MeltDraft>;
  readonly shop: Shop;
}) {
  const format = useFormat();
  const { items } = draft;
  const [open, setOpen] = useState<number | null>(null);
  const put = (next: readonly ItemDraft[]): void => set({ items: next });
  const named = (id: string): string => alloyName(id, shop);
  const add = (kind: ItemKind): void => {
    const key = Math.max(0, ...items.map((item) => item.key)) + 1;
    put([...items, { ...newItem(key, draft.alloyId, ""), kind }]);
    setOpen(key);
  };
  return (
    <Card title="The charge">
      {items.length === 0 && <p>Weigh in ingot, returns and scrap, each as an item of its own.</p>}
      <ol className={css["list"]}>
        {items.map((item, at) => (
          <li key={item.key}>
            <details
              className={css["route"]}
              open={open === item.key}
              onToggle={(event) => {
                const isOpen = event.currentTarget.open;
                setOpen((now) => (isOpen ? item.key : now === item.key ? null : now));
              }}
            >
              <summary>
                <span className={css["routeName"]}>
                  {nameOfItem(item, named)}{" "}
                  <small>
                    {item.massKg === null ? "no weight yet" : format.show("kg", item.massKg)}
                    {mayHoldBeryllium(item) && (item.springy === null ? ", one question open" : ", refused")}
                  </small>
                </span>
              </summary>
              {open === item.key && (
                <ItemFields
                  item={item}
                  shop={shop}
                  onChange={(changes) => put(items.with(at, { ...item, ...changes }))}
                />
              )}
              <Button
                label={`Take out ${nameOfItem(item, named)}`}
                onPress={() => put(items.filter(({ key }) => key !== item.key))}
              >
                <Trash2 aria-hidden="true" /> Take out
              </Button>
            </details>
          </li>
        ))}
      </ol>
      <div className={css["keys"]}>
        <Button onPress={() => add("alloy")}>Add ingot or returns</Button>
        <Button onPress={() => add("unknown-copper")}>Add scrap</Button>
        <Button onPress={() => add("pure")}>Add a pure metal</Button>
      </div>
      <p className={css["soft"]}>{berylliumCaution}</p>
    </Card>
  );
}

function ItemFields({
  item,
  shop,
  onChange,
}: {
  readonly item: ItemDraft;
  readonly shop: Shop;
  readonly onChange: (changes: Partial<ItemDraft>) => void;
}) {
  return (
    <div className={css["stack"]}>
      <div className={css["fields"]}>
        <NumberOf form={{ draft: item, set: onChange }} at="massKg" label="Weight" quantity="kg" />
        <TextField
          label="Name"
          value={item.name}
          onChange={(name) => onChange({ name })}
          hint="Empty: as it is called below."
        />
      </div>
      <SelectField
        label="It is"
        options={kinds}
        value={item.kind}
        onChange={(kind) => onChange({ kind: (kind ?? "alloy") as ItemKind })}
        empty={null}
      />
      {item.kind === "alloy" && (
        <SelectField
          label="Which alloy"
          options={alloyChoices(shop, item.alloyId).map(({ id, name }) => ({ value: id, label: name }))}
          value={item.alloyId}
          onChange={(alloyId) => onChange({ alloyId })}
          empty="Choose one"
        />
      )}
      {item.kind === "pure" && (
        <SelectField
          label="Which metal"
          options={elementChoices.filter(({ value }) => value !== "other" && value !== "be")}
          value={item.element}
          onChange={(element) => onChange({ element: (element ?? "cu") as Element })}
          empty={null}
        />
      )}
      {item.kind === "assay" && <AssayFields item={item} onChange={onChange} />}
      {(item.kind === "unknown-copper" || item.kind === "assay") && (
        <>
          <Choice
            label="Springy, a contact, or a non-sparking tool?"
            options={[
              { value: "no", label: "No, none of it" },
              { value: "yes", label: "Yes, or can't tell" },
            ]}
            value={item.springy}
            onChange={(springy) => onChange({ springy })}
          />
          {item.springy === "yes" && (
            <p role="alert" className={css["stop"]}>
              It may hold beryllium: take it out of the charge.
            </p>
          )}
        </>
      )}
    </div>
  );
}
