import type { ReactNode } from "react";
import type { Bound } from "../../base/forms/bound.ts";
import { NumberOf, TextOf } from "../../base/forms/BoundFields.tsx";
import { figureOrNone, shortWords, words } from "../../base/forms/formFields.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import css from "./fire.module.css";

/** What a kiln and a furnace have in common: a name, and what its kilowatt hour costs in the shop's own money. */
export const heaterFields = (what: "kiln" | "furnace", noPrice: string) => ({
  name: words("name", `Give the ${what} a name.`, 80),
  pricePerKWh: figureOrNone("pricePerKWh", { what: "price", remedy: noPrice }),
  currency: shortWords(12, "Enter a currency code, such as EUR or USD."),
});

type Heater = { readonly name: string; readonly retired: boolean };
type HeaterDraft = {
  readonly name: string;
  readonly pricePerKWh: number | null;
  readonly currency: string;
};

/** A kiln or a furnace: a new one, or one that is there; saved, or taken out of use and back. */
export function HeaterCard({
  what,
  heater,
  form,
  onSave,
  onDone,
  children,
}: {
  readonly what: "kiln" | "furnace";
  readonly heater: Heater | null;
  readonly form: Bound<HeaterDraft, keyof HeaterDraft>;
  readonly onSave: (retired: boolean) => Promise<void>;
  readonly onDone: () => void;
  readonly children: ReactNode;
}) {
  return (
    <Card title={heater === null ? `A new ${what}` : heater.name}>
      <TextOf form={form} at="name" label="Name" />
      {children}
      <details>
        <summary>Energy price</summary>
        <NumberOf form={form} at="pricePerKWh" label="Price per kWh" />
        <TextOf form={form} at="currency" label="Currency" hint="EUR, USD, …" />
      </details>
      <div className={css["keys"]}>
        <Button kind="primary" onPress={() => onSave(heater?.retired ?? false)}>
          Save the {what}
        </Button>
        <Button onPress={onDone}>Not now</Button>
        {heater !== null && (
          <Button kind="quiet" onPress={() => onSave(!heater.retired)}>
            {heater.retired ? "Use it again" : "Retire it"}
          </Button>
        )}
      </div>
    </Card>
  );
}
