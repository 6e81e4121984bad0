import { useLocation } from "wouter";
import { shopStream } from "../../../logbook/entries/entry.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import type { OwnAlloy } from "../../../logbook/shop/shopThings.ts";
import { alloyOf } from "../../../trade/metals/alloys.ts";
import type { Alloy, MeltFigures } from "../../../trade/metals/alloy.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { check, withoutEmpty } from "../../base/forms/fieldSchema.ts";
import { useForm } from "../../base/forms/useForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Choice } from "../../base/forms/Choice.tsx";
import { NumberField } from "../../base/forms/NumberField.tsx";
import { TextField } from "../../base/forms/TextField.tsx";
import { copyId, ownBody, ownDraftOf, ownFields, ownSchema, type OwnDraft } from "./ownAlloyForm.ts";
import css from "./metal.module.css";

/** The shop's own figures for a metal: in place of the table's row, or a copy beside it. */
export function OwnAlloyCard({
  id,
  own,
  alloy,
  figures,
  shop,
}: {
  readonly id: string;
  readonly own: OwnAlloy | null;
  readonly alloy: Alloy;
  readonly figures: MeltFigures | null;
  readonly shop: Shop;
}) {
  const { log } = useShop();
  const format = useFormat();
  const say = useFleeting((fleeting) => fleeting.say);
  const [, goTo] = useLocation();
  const isTableRow = alloyOf(id) !== null;
  const form = useForm<OwnDraft>(`alloy/${id}`, ownDraftOf(own, alloy, isTableRow));
  const { draft, set, errors } = form;
  const save = async (retired: boolean): Promise<void> => {
    const read = check(ownSchema(format), draft);
    form.tell(read.ok ? {} : read.errors);
    if (!read.ok) return;
    const alloyId = isTableRow && draft.as === "copy" ? copyId(read.value.name, shop) : id;
    const body = withoutEmpty(ownBody({ read: read.value, alloyId, alloy, retired }));
    const result = await log({ do: "log", stream: shopStream, type: "alloy-set", body });
    if (!result.ok) return;
    await form.drop();
    say(retired ? `${read.value.name} is out of use` : `${read.value.name} is set`);
    if (alloyId !== id) goTo(paths.alloy(alloyId));
  };
  const isOut = own?.retired ?? false;
  return (
    <Card title={own === null || isOut ? "Your own figures" : "Your own figures, in use"}>
      <p>What you give stands in everywhere a sum asks; what you leave empty stays the table's.</p>
      <TextField label="Name" value={draft.name} onChange={(name) => set({ name })} error={errors["name"]} />
      {isTableRow && (
        <Choice
          label="They stand"
          options={[
            { value: "copy", label: "As a copy of its own", hint: "beside the table's, in every list" },
            { value: "instead", label: "In place of the table's", hint: "for every piece in this metal" },
          ]}
          value={draft.as}
          onChange={(as) => set({ as })}
        />
      )}
      <div className={css["fields"]}>
        {ownFields(alloy, figures, format).map(({ name, label, quantity, now }) => (
          <NumberField
            key={name}
            label={label}
            quantity={quantity}
            value={draft[name]}
            onChange={(value) => set({ [name]: value })}
            hint={`Now ${now}.`}
            error={errors[name]}
          />
        ))}
      </div>
      <TextField
        label="Note"
        value={draft.note}
        onChange={(note) => set({ note })}
        hint="Whose sheet, which lot, what you measured."
        multiline
        error={errors["note"]}
      />
      <div className={css["keys"]}>
        <Button kind="primary" onPress={() => save(false)}>
          Save your figures
        </Button>
        {own !== null && !isOut && (
          <Button kind="quiet" onPress={() => save(true)}>
            {isTableRow ? "Go back to the table's" : "Take it out of use"}
          </Button>
        )}
      </div>
    </Card>
  );
}
