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
import { withoutEmpty } from "../../base/forms/formFields.ts";
import { useEntryForm } from "../../base/forms/useEntryForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { copyId, ownBody, ownDraftOf, ownFields, ownRows, readOwn } from "./ownAlloyForm.ts";
import { NumberOf, PickOf, TextOf } from "../../base/forms/BoundFields.tsx";
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
  const idOf = (name: string): string => (isTableRow && form.draft.as === "copy" ? copyId(name, shop) : id);
  const form = useEntryForm(`alloy/${id}`, ownFields, {
    start: ownDraftOf(own, alloy, isTableRow),
    check: readOwn,
  });
  const save = (retired: boolean): Promise<void> =>
    form.save(
      (read) => {
        const body = withoutEmpty(ownBody({ read, alloyId: idOf(read.name), alloy, retired }));
        return log({ do: "log", stream: shopStream, type: "alloy-set", body });
      },
      () => {
        const name = form.draft.name.trim();
        say(retired ? `${name} retired` : `${name} saved`);
        if (isTableRow && form.draft.as === "copy") goTo(paths.alloy(idOf(name)));
      },
    );
  const isOut = own?.retired ?? false;
  return (
    <Card title={own === null || isOut ? "Your own figures" : "Your own figures, in use"}>
      <p>Your figures are used in all calculations. Empty fields keep the table’s figure.</p>
      <TextOf form={form} at="name" label="Name" />
      {isTableRow && (
        <PickOf
          form={form}
          at="as"
          label="Use"
          options={[
            { value: "copy", label: "As a separate alloy", hint: "listed beside the table’s" },
            { value: "instead", label: "Instead of the table’s", hint: "for every piece in this metal" },
          ]}
        />
      )}
      <div className={css["fields"]}>
        {ownRows(alloy, figures, format).map(({ name, label, now }) => (
          <NumberOf key={name} form={form} at={name} label={label} hint={`Now ${now}.`} />
        ))}
      </div>
      <TextOf form={form} at="note" label="Note" hint="Data sheet, lot, what you measured." multiline />
      <div className={css["keys"]}>
        <Button kind="primary" onPress={() => save(false)}>
          Save your figures
        </Button>
        {own !== null && !isOut && (
          <Button kind="quiet" onPress={() => save(true)}>
            {isTableRow ? "Use the table’s again" : "Retire it"}
          </Button>
        )}
      </div>
    </Card>
  );
}
