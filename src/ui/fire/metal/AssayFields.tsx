import { Trash2 } from "lucide-react";
import sheet from "../../base/styles/sheet.module.css";
import css from "./metal.module.css";
import type { Element } from "../../../physics/metal/scrap.ts";
import { SelectField } from "../../base/forms/SelectField.tsx";
import { Button } from "../../base/parts/Button.tsx";
import { NumberField } from "../../base/forms/NumberField.tsx";
import { symbolOf } from "../../../trade/elementSymbols.ts";
import { elementChoices, type AssayLine, type ItemDraft } from "../../../logbook/casting/meltDraft.ts";

/** What a sheet or an assay says of an item, element by element; what is left is its base metal. */
export function AssayFields({
  item: { assay, rest },
  onChange,
}: {
  readonly item: ItemDraft;
  readonly onChange: (changes: Partial<ItemDraft>) => void;
}) {
  const put = (at: number, changes: Partial<AssayLine>): void => {
    const line = assay[at];
    if (line !== undefined) onChange({ assay: assay.with(at, { ...line, ...changes }) });
  };
  const unused = elementChoices.find(
    ({ value }) =>
      value !== rest && !assay.some(({ element }) => element === value) && common.includes(value),
  );
  return (
    <div className={sheet["stack3"]}>
      <SelectField
        label="The rest is"
        options={elementChoices.filter(({ value }) => value !== "be")}
        value={rest}
        onChange={(element) => onChange({ rest: element ?? "cu" })}
        empty={null}
      />
      {assay.map(({ element, low, high }, at) => (
        <div key={`${at} ${element}`} className={css["fields"]}>
          <SelectField
            label="Element"
            options={elementChoices}
            value={element}
            onChange={(next) => put(at, { element: next ?? element })}
            empty={null}
          />
          <NumberField
            label={`${symbolOf(element)} from`}
            quantity="share"
            min={0}
            max={1}
            value={low}
            onChange={(next) => put(at, { low: next })}
          />
          <NumberField
            label={`${symbolOf(element)} to`}
            quantity="share"
            min={0}
            max={1}
            value={high}
            onChange={(next) => put(at, { high: next })}
            hint="Empty: exactly this."
          />
          <Button
            label={`Take out ${symbolOf(element)}`}
            onPress={() => onChange({ assay: assay.filter((_, other) => other !== at) })}
          >
            <Trash2 aria-hidden="true" />
          </Button>
        </div>
      ))}
      <Button
        disabledReason={unused === undefined ? "All common elements are listed." : null}
        onPress={() => {
          if (unused !== undefined)
            onChange({ assay: [...assay, { element: unused.value, low: null, high: null }] });
        }}
      >
        Add an element
      </Button>
    </div>
  );
}

const common: readonly Element[] = [
  "sn",
  "zn",
  "pb",
  "si",
  "al",
  "mn",
  "ni",
  "fe",
  "cu",
  "mg",
  "sb",
  "p",
  "s",
  "bi",
  "as",
];
