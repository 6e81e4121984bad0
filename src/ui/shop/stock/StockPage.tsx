import { useMemo } from "react";
import { stockView } from "../../../logbook/shop/stockView.ts";
import { useDraft } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useNow } from "../../base/state/useNow.ts";
import { Empty } from "../../base/parts/Empty.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { BucketsLeftCard } from "./BucketsLeftCard.tsx";
import { CostsCard } from "./CostsCard.tsx";
import { OrderFields, noOrderFigures, type OrderFigures } from "./OrderFields.tsx";
import { StockCard } from "./StockCard.tsx";
import { useTaken } from "./useTaken.ts";
import css from "./stock.module.css";

/** What is on the shelf, how fast it goes, when to order, and what a piece costs. */
export function StockPage() {
  const { clock } = useShop();
  const tick = useNow();
  const data = useTaken();
  const [order, setOrder] = useDraft<OrderFigures>("order-figures", noOrderFigures);
  const now = Math.max(tick, clock());
  const stock = useMemo(
    () =>
      data === undefined
        ? undefined
        : stockView({ shop: data.shop, buckets: [...data.buckets.values()], taken: data.taken, now }),
    [data, now],
  );
  if (data === undefined || stock === undefined) return <Page title="Stock">{null}</Page>;
  const short = stock.filter(({ isShort }) => isShort);
  return (
    <Page title="Stock" back={paths.shop} actions={<LinkButton href={paths.materials}>Materials</LinkButton>}>
      {stock.length === 0 ? (
        <Empty title="No material yet">
          <p>Add your materials. Stock is reduced as you mix and dip.</p>
          <LinkButton kind="primary" href={paths.materials}>
            Add a material
          </LinkButton>
        </Empty>
      ) : (
        <>
          {short.length > 0 && (
            <p className={css["short"]} role="status">
              <strong>Order now:</strong> {short.map(({ material }) => material.name).join(", ")}.
            </p>
          )}
          <ul className={css["cards"]}>
            {stock.map((one) => (
              <li key={one.material.id}>
                <StockCard
                  stock={one}
                  materials={stock.map(({ material }) => material)}
                  order={order}
                  buckets={data.buckets}
                  now={now}
                />
              </li>
            ))}
          </ul>
          <OrderFields figures={order} onChange={setOrder} />
        </>
      )}
      <BucketsLeftCard data={data} now={now} />
      {stock.length > 0 && <CostsCard data={data} />}
    </Page>
  );
}
