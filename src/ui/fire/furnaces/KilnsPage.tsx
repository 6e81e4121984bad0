import { useState } from "react";
import { useFigures, useMelts } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { powerWords, priceWords } from "../../base/format/moneyWords.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { Rows, type Given } from "../../base/parts/Reckoned.tsx";
import type { Kiln } from "../../../logbook/shop/shopThings.ts";
import { FurnaceCard } from "./FurnaceCard.tsx";
import { FurnaceForm } from "./FurnaceForm.tsx";
import { KilnForm } from "./KilnForm.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./fire.module.css";

/** Kilns and furnaces of the shop, with what its own melts have taught of them. */
export function KilnsPage() {
  const shop = useFigures();
  const melts = useMelts("ended");
  const [adding, setAdding] = useState<"kiln" | "furnace" | null>(null);
  if (shop === undefined || melts === undefined) return <Page title="Kilns and furnaces">{null}</Page>;
  const inUse = <T extends { readonly retired: boolean }>(things: readonly T[]): readonly T[] =>
    things.toSorted((a, b) => Number(a.retired) - Number(b.retired));
  const close = (): void => setAdding(null);
  return (
    <Page title="Kilns and furnaces" back={paths.fire}>
      <p className={sheet["pale"]}>
        Dipbook only calculates with these figures. Kiln and furnace need their own controllers.
      </p>
      <div className={css["sections"]} data-two>
        <section className={sheet["stack3"]} aria-label="Kilns">
          <div className={`${sheet["row24"]} ${sheet["middle"]} ${sheet["between"]} ${css["head"]}`}>
            <h2>Kilns</h2>
            <Button onPress={() => setAdding(adding === "kiln" ? null : "kiln")}>
              {adding === "kiln" ? "Not now" : "Add a kiln"}
            </Button>
          </div>
          {adding === "kiln" && <KilnForm kiln={null} onDone={close} />}
          {shop.kilns.length === 0 && adding !== "kiln" && (
            <p>None yet. Enter power and size to see how fast it heats.</p>
          )}
          {inUse(shop.kilns).map((kiln) => (
            <KilnCard key={kiln.id} kiln={kiln} />
          ))}
        </section>
        <section className={sheet["stack3"]} aria-label="Furnaces">
          <div className={`${sheet["row24"]} ${sheet["middle"]} ${sheet["between"]} ${css["head"]}`}>
            <h2>Furnaces</h2>
            <Button onPress={() => setAdding(adding === "furnace" ? null : "furnace")}>
              {adding === "furnace" ? "Not now" : "Add a furnace"}
            </Button>
          </div>
          {adding === "furnace" && <FurnaceForm furnace={null} onDone={close} />}
          {shop.furnaces.length === 0 && adding !== "furnace" && (
            <p>None yet. Enter its power. Your melts then show how much heat gets into the metal.</p>
          )}
          {inUse(shop.furnaces).map((furnace) => (
            <FurnaceCard key={furnace.id} furnace={furnace} melts={melts} shop={shop} />
          ))}
        </section>
      </div>
    </Page>
  );
}

function KilnCard({ kiln }: { readonly kiln: Kiln }) {
  const format = useFormat();
  const [open, setOpen] = useState(false);
  if (open) return <KilnForm kiln={kiln} onDone={() => setOpen(false)} />;
  const price = priceWords(kiln.pricePerKWh, kiln.currency, { each: "a kWh", format });
  return (
    <Card title={kiln.retired ? `${kiln.name} (retired)` : kiln.name}>
      <Rows
        rows={[
          [kiln.heat === "gas" ? "Gas" : "Electric", powerWords(kiln.powerKW, format)],
          ["Inside", format.show("kilnL", kiln.volumeL)],
          ["Highest", format.show("temp", kiln.maxC)],
          ...(kiln.maxRampKPerH === undefined
            ? []
            : [["Fastest rate", `${format.show("tempDiff", kiln.maxRampKPerH)}/h`] as Given]),
          ...(price === null ? [] : [["Price", price] as Given]),
        ]}
      />
      <Button label={`Change ${kiln.name}`} onPress={() => setOpen(true)}>
        Change
      </Button>
    </Card>
  );
}
