import { useState } from "react";
import { Link } from "wouter";
import { shopStream } from "../../../logbook/entries/entry.ts";
import { useFigures } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { check } from "../../base/forms/fieldSchema.ts";
import { useForm } from "../../base/forms/useForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { ownFiguresSchema, type OwnFigures } from "./ownFigures.ts";
import { NumberOf } from "../../base/forms/BoundFields.tsx";
import css from "./SettingsPage.module.css";

export function OwnFiguresCard() {
  const figures = useFigures();
  const own = figures && { dryingFactor: figures.dryingFactor, morMPa: figures.morMPa };
  return (
    <Card title="The shop's own figures">
      <p>Where your shop has measured better than the starting values, its own figures take their place.</p>
      {own !== undefined && <OwnFiguresForm key={JSON.stringify(own)} figures={own} />}
      <p>
        <Link href={paths.learned} className={css["link"]}>
          What the shop has learned of its drying
        </Link>
      </p>
      <p>
        <Link href={paths.figures} className={css["link"]}>
          Every figure used, with its source
        </Link>
      </p>
    </Card>
  );
}

function OwnFiguresForm({ figures }: { readonly figures: OwnFigures }) {
  const shop = useShop();
  const format = useFormat();
  const { draft, drop, tell } = useForm<OwnFigures>("own-figures", figures);
  const [refused, setRefused] = useState<string | null>(null);
  const same = draft.dryingFactor === figures.dryingFactor && draft.morMPa === figures.morMPa;

  const save = async () => {
    const read = check(ownFiguresSchema(format), draft);
    tell(read.ok ? {} : read.errors);
    if (!read.ok) return;
    const done = await shop.log(
      { do: "log", stream: shopStream, type: "shop-figures-set", body: read.value },
      { quiet: true },
    );
    setRefused(done.ok ? null : done.text);
    if (done.ok) await drop();
  };

  return (
    <form
      className={css["form"]}
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <NumberOf
        form={form}
        at="dryingFactor"
        label="Drying factor"
        quantity="plain"
        min={0}
        hint="Hours your coats really took, divided by the hours given here. Above 1: yours are slower. Empty: what the shop has learned from its own coats; before that 1."
      />
      <NumberOf
        form={form}
        at="morMPa"
        label="Fired bend strength"
        quantity="MPa"
        min={0}
        hint="From your own fired test bars, the mean of five. It takes the place of every recipe's. Empty: the recipe's."
      />
      {refused !== null && (
        <p role="alert" className={css["refused"]}>
          {refused}
        </p>
      )}
      <Button disabledReason={same ? "Nothing is changed." : null} onPress={save}>
        Use these
      </Button>
    </form>
  );
}
