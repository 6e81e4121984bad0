import { Trash2 } from "lucide-react";
import { useState } from "react";
import { alloyChoices, alloyName } from "../../../logbook/shop/ownAlloy.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { AssayFields } from "./AssayFields.tsx";
import type { SumForm } from "../../base/forms/bound.ts";
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
} from "../../../logbook/casting/meltDraft.ts";
import sheet from "../../base/styles/sheet.module.css";
import { NumberOf, PickOf, SelectOf, TextOf } from "../../base/forms/BoundFields.tsx";
import css from "./metal.module.css";

const kinds: readonly { readonly value: ItemKind; readonly label: string }[] = [
  { value: "alloy", label: "Named alloy: ingot or returns" },
  { value: "pure", label: "A pure metal" },
  { value: "assay", label: "Scrap with an assay" },
  { value: "unknown-copper", label: "Copper-based scrap, unknown" },
  { value: "unknown-aluminium", label: "Aluminium scrap, unknown" },
];

/** What is weighed in, item by item, and what each of it is made of. */
export function MeltItems({
  form: { draft, set },
  shop,
}: {
  readonly form: SumForm<MeltDraft>;
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
      {items.length === 0 && <p>Weigh in ingot, returns and scrap as separate items.</p>}
      <ol className={`${sheet["stack3"]} ${sheet["list"]}`}>
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
                <span className={`${sheet["row03"]} ${css["routeName"]}`}>
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
      <p className={sheet["soft"]}>{berylliumCaution}</p>
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
  const form = { draft: item, set: onChange, limits: itemLimits };
  return (
    <div className={sheet["stack3"]}>
      <div className={css["fields"]}>
        <NumberOf form={form} at="massKg" label="Weight" quantity="kg" />
        <TextOf form={form} at="name" label="Name" hint="Empty: the name below." />
      </div>
      <SelectOf form={form} at="kind" label="Kind" options={kinds} empty={null} />
      {item.kind === "alloy" && (
        <SelectOf
          form={form}
          at="alloyId"
          label="Which alloy"
          options={alloyChoices(shop, item.alloyId).map(({ id, name }) => ({ value: id, label: name }))}
          empty="Choose one"
        />
      )}
      {item.kind === "pure" && (
        <SelectOf
          form={form}
          at="element"
          label="Which metal"
          options={elementChoices.filter(({ value }) => value !== "other" && value !== "be")}
          empty={null}
        />
      )}
      {item.kind === "assay" && <AssayFields item={item} onChange={onChange} />}
      {(item.kind === "unknown-copper" || item.kind === "assay") && (
        <>
          <PickOf
            form={form}
            at="springy"
            label="Spring, contact or non-sparking tool?"
            options={[
              { value: "no", label: "No" },
              { value: "yes", label: "Yes, or not sure" },
            ]}
          />
          {item.springy === "yes" && (
            <p role="alert" className={`${sheet["held"]} ${sheet["firm"]} ${sheet["inset"]}`}>
              It may contain beryllium: take it out of the charge.
            </p>
          )}
        </>
      )}
    </div>
  );
}
