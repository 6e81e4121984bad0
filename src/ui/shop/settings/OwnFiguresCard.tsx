import { Link } from "wouter";
import sheet from "../../base/styles/sheet.module.css";
import { shopStream } from "../../../logbook/entries/entry.ts";
import { useFigures } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { Refused } from "../../base/forms/Refused.tsx";
import { useEntryForm } from "../../base/forms/useEntryForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { HowToLink } from "../../base/parts/HowToLink.tsx";
import { type OwnFigures, ownFigureFields } from "./ownFigures.ts";
import { NumberOf } from "../../base/forms/BoundFields.tsx";

export function OwnFiguresCard() {
  const figures = useFigures();
  const own = figures && { dryingFactor: figures.dryingFactor, morMPa: figures.morMPa };
  return (
    <Card title="The shop's own figures">
      <p>Your own measured figures replace the starting values.</p>
      {own !== undefined && <OwnFiguresForm key={JSON.stringify(own)} figures={own} />}
      <p>
        <Link href={paths.learned} className={sheet["link"]}>
          Learned from your own coats
        </Link>
      </p>
    </Card>
  );
}

function OwnFiguresForm({ figures }: { readonly figures: OwnFigures }) {
  const shop = useShop();
  const form = useEntryForm("own-figures", ownFigureFields, { start: figures });
  const { draft } = form;
  const same = draft.dryingFactor === figures.dryingFactor && draft.morMPa === figures.morMPa;

  const save = () =>
    form.save((body) =>
      shop.log({ do: "log", stream: shopStream, type: "shop-figures-set", body }, { quiet: true }),
    );

  return (
    <form
      className={sheet["stack3"]}
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <NumberOf
        form={form}
        at="dryingFactor"
        label="Drying factor"
        hint="Real drying hours divided by calculated hours. Above 1: yours are slower. Empty: the learned value, or 1."
      />
      <NumberOf
        form={form}
        at="morMPa"
        label="Fired bend strength"
        hint="Mean of five of your own fired test bars. It replaces every recipe’s value. Empty: the recipe’s."
      />
      <HowToLink to="bars" />
      <Refused form={form} plain />
      <Button disabledReason={same ? "Nothing is changed." : null} onPress={save}>
        Use these
      </Button>
    </form>
  );
}
