import type { Bucket } from "../../../logbook/piece/piece.ts";
import type { Material } from "../../../logbook/shop/shopThings.ts";
import type { MaterialStock } from "../../../logbook/shop/stockView.ts";
import { orderKg } from "../../../physics/slurry/stockLedger.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { duration } from "../../base/format/time.ts";
import type { Format } from "../../base/format/units.ts";
import { Reckoned } from "../../base/parts/Reckoned.tsx";
import { Card } from "../../base/parts/Card.tsx";
import type { OrderFigures } from "./OrderFields.tsx";
import { StockLedger } from "./StockLedger.tsx";
import { StockMoveForm } from "./StockMoveForm.tsx";
import { priceText, sharedText } from "./stockWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./stock.module.css";

const weeksAYear = 365.25 / 7;

/** One material: what is there, how fast it goes, when and how much to order. */
export function StockCard(props: {
  readonly stock: MaterialStock;
  /** All that are in use, in their order. */
  readonly materials: readonly Material[];
  readonly order: OrderFigures;
  readonly buckets: ReadonlyMap<string, Bucket>;
  readonly now: number;
}) {
  const { stock, materials, order, buckets, now } = props;
  const { material, balance, weekly, reorder, isShort, isOverAge, oldestAt, keepsMonths } = stock;
  const format = useFormat();
  const price = priceText(material, format);
  const shared = sharedText(material, materials);
  return (
    <Card title={material.name} tone={isShort || isOverAge ? "watch" : "plain"}>
      <p className={`${sheet["row03"]} ${css["balance"]}`}>
        {balance === null ? "Not counted yet" : format.show("kg", balance.kg)}
        {price !== null && <small>{price}</small>}
      </p>
      {balance === null && <p className={sheet["soft"]}>Count it, or log a delivery.</p>}
      {balance !== null && (balance.wentBelowZero || balance.kg < 0) && (
        <p>More went out than came in: a delivery is missing. Count it.</p>
      )}
      {shared !== null && <p>{shared}</p>}
      {isShort && (
        <p>
          <strong>Time to reorder.</strong>
        </p>
      )}
      {isOverAge && oldestAt !== null && keepsMonths !== null && (
        <p>
          <strong>Past its shelf life.</strong> The oldest came {duration(now - oldestAt)} ago; it keeps{" "}
          {format.number(keepsMonths, 0)} months. {material.kind === "sol" && "Do a gel test before use."}
        </p>
      )}
      <p>{weekly === null ? "Use: known after a week." : weeklyText(weekly, format)}</p>
      {reorder !== null && weekly !== null && (
        <>
          <p>
            Order at <strong>{format.show("kg", reorder.kg)}</strong>
            {orderText(stock, order, format)}
          </p>
          <Reckoned
            formula="u · L + z · σ · √L; order: √(2 · D · K ÷ h)"
            given={[
              ["Use a week u", format.show("kg", weekly.meanKg)],
              [
                "Scatter of weeks σ",
                weekly.sigmaKg === null
                  ? "not known below three weeks: 0"
                  : format.show("kg", weekly.sigmaKg),
              ],
              ["Weeks until it comes L", format.number(reorder.leadWeeks, 1)],
              ["z", `${reorder.z}: runs out in 1 of 20 deliveries`],
              ["Use a year D", format.show("kg", weekly.meanKg * weeksAYear)],
            ]}
            source="any inventory text, from memory of Silver, Pyke and Thomas; order size: Harris 1913"
          />
        </>
      )}
      {reorder === null && (
        <p className={sheet["soft"]}>
          {material.weeksToCome === undefined
            ? "No reorder point: enter the delivery time."
            : "No reorder point until a week of use is known."}
        </p>
      )}
      <StockMoveForm material={material} />
      <StockLedger stock={stock} buckets={buckets} now={now} />
    </Card>
  );
}

function weeklyText({ meanKg, weeks }: NonNullable<MaterialStock["weekly"]>, format: Format): string {
  return `${format.show("kg", meanKg)} a week, over ${weeks === 1 ? "the last week" : `the last ${weeks} weeks`}.`;
}

/** ", 150 kg at a time": what costs least, in whole packs, no more than is used up while it keeps. */
function orderText(
  { material, weekly, keepsMonths }: MaterialStock,
  { perOrder, keepingShare }: OrderFigures,
  format: Format,
): string {
  const { pricePerKg, packKg } = material;
  if (weekly === null || weekly.meanKg <= 0) return ".";
  if (perOrder === null || keepingShare === null || keepingShare <= 0 || !(pricePerKg ?? 0))
    return ". For the amount enter the cost of ordering and the price.";
  const best = orderKg({
    yearlyKg: weekly.meanKg * weeksAYear,
    perOrder,
    keepingPerKgYear: keepingShare * (pricePerKg ?? 0),
    shelfMonths: keepsMonths === null || keepsMonths <= 0 ? undefined : keepsMonths,
  });
  const packs = packKg !== undefined && packKg > 0 ? Math.max(1, Math.round(best.kg / packKg)) : null;
  const kg = packs === null || packKg === undefined ? best.kg : packs * packKg;
  const how = packs === null ? "" : ` (${packs} ${packs === 1 ? "pack" : "packs"})`;
  return `, ${format.show("kg", kg)}${how} at a time${best.cappedByShelfLife ? ": more would expire before use" : ""}.`;
}
