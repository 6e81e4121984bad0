import sheet from "../../base/styles/sheet.module.css";
import css from "./SettingsPage.module.css";
import { shopStream } from "../../../logbook/entries/entry.ts";
import { finalDryH } from "../../../trade/dryMinimums.ts";
import { practice } from "../../../trade/practice.ts";
import { useFigures } from "../../base/state/live.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { Refused } from "../../base/forms/Refused.tsx";
import { useEntryForm } from "../../base/forms/useEntryForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import {
  coatRows,
  draftOfMinimums,
  finalRows,
  type MinimumsDraft,
  minimumsBody,
  minimumsFields,
} from "./minimums.ts";
import { NumberOf } from "../../base/forms/BoundFields.tsx";

/** The shop's minimum hours, between coats and before fire. */
export function MinimumsCard() {
  const shop = useFigures();
  const own = shop && draftOfMinimums(shop);
  return (
    <Card title="Minimum drying times">
      <p>
        No coat counts as dry before its minimum, unless a measurement shows it dry. A recipe’s or bucket’s
        own minimum goes first.
      </p>
      {own !== undefined && <MinimumsForm key={JSON.stringify(own)} own={own} />}
    </Card>
  );
}

function MinimumsForm({ own }: { readonly own: MinimumsDraft }) {
  const shop = useShop();
  const format = useFormat();
  const form = useEntryForm("minimums", minimumsFields, { start: own });
  const { draft } = form;
  const rows = [...coatRows, ...finalRows];
  const same = rows.every(({ key }) => draft[key] === own[key]);

  const save = () =>
    form.save((read) =>
      shop.log(
        { do: "log", stream: shopStream, type: "shop-figures-set", body: minimumsBody(read) },
        { quiet: true },
      ),
    );
  const fields = (list: typeof rows) =>
    list.map(({ key, label, startH }) => (
      <NumberOf key={key} form={form} at={key} label={label} hint={`Empty: ${format.show("h", startH)}`} />
    ));

  return (
    <form
      className={sheet["stack3"]}
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <fieldset className={css["hours"]}>
        <legend>Before the next coat</legend>
        {fields([...coatRows])}
      </fieldset>
      <fieldset className={css["hours"]}>
        <legend>Final dry before fire</legend>
        <p className={sheet["soft"]}>
          In air up to {format.show("percent", practice.finalDryRh.value)}. In damper air{" "}
          {format.show("h", finalDryH.open.dampAirH.value)} for an open shell and{" "}
          {format.show("h", finalDryH.deep.dampAirH.value)} for the others count, unless yours are longer.
        </p>
        {fields([...finalRows])}
      </fieldset>
      <Refused form={form} plain />
      <Button disabledReason={same ? "Nothing is changed." : null} onPress={save}>
        Save the minimums
      </Button>
    </form>
  );
}
