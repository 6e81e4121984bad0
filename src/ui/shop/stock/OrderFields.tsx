import { NumberField } from "../../base/forms/NumberField.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./stock.module.css";

/** What an order costs and what keeping stock costs: the shop's own, kept on this device. */
export type OrderFigures = {
  readonly perOrder: number | null;
  /** Of its price, a year: money tied up, room, what spoils. */
  readonly keepingShare: number | null;
};
export const noOrderFigures: OrderFigures = { perOrder: null, keepingShare: 0.2 };

export function OrderFields({
  figures,
  onChange,
}: {
  readonly figures: OrderFigures;
  readonly onChange: (figures: OrderFigures) => void;
}) {
  return (
    <details className={`${sheet["panel"]} ${css["fold"]}`}>
      <summary>Cost of ordering</summary>
      <div className={css["two"]}>
        <NumberField
          label="Cost per order"
          quantity="plain"
          min={0}
          value={figures.perOrder}
          onChange={(perOrder) => onChange({ ...figures, perOrder })}
          hint="Freight and your time."
        />
        <NumberField
          label="Storage per year, share of price"
          quantity="percent"
          min={0.01}
          max={2}
          value={figures.keepingShare}
          onChange={(keepingShare) => onChange({ ...figures, keepingShare })}
          hint="Starting value 20%: judgement."
        />
      </div>
    </details>
  );
}
