import { shownEfficiency } from "../../../physics/metal/melt.ts";
import type { Melt } from "../../../logbook/fire/fireStates.ts";
import { chargedKg, meltSeen } from "../../../logbook/fire/furnaceMemory.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import type { Furnace } from "../../../logbook/shop/shopThings.ts";
import { fuels } from "../../../trade/furnaces.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { duration } from "../../base/format/time.ts";
import { Card } from "../../base/parts/Card.tsx";
import { Reckoned, Rows, type Given } from "../../base/parts/Reckoned.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./metal.module.css";

/** What a melt that is through has shown: loss, useful power, and what of the energy reached the metal. */
export function MeltLearned({
  melt,
  furnace,
  shop,
}: {
  readonly melt: Melt;
  readonly furnace: Furnace | null;
  readonly shop: Shop;
}) {
  const format = useFormat();
  const { ended, startedAt } = melt;
  if (ended === null) return null;
  const inKg = chargedKg(melt);
  const outKg = ended.pouredKg + ended.piggedKg;
  const seen = meltSeen(melt, shop);
  const spentJ = spentJoules(melt, furnace);
  const share = seen === null || spentJ === null ? null : shownEfficiency({ energyJ: seen.energyJ, spentJ });
  return (
    <Card title="Results">
      <Rows
        rows={[
          ["Poured", format.show("kg", ended.pouredKg)],
          ["Left over", format.show("kg", ended.piggedKg)],
          ...(inKg > 0 && outKg > 0 && outKg <= inKg
            ? [
                [
                  "Loss",
                  `${format.show("kg", inKg - outKg)}, ${format.show("share", 1 - outKg / inKg)}`,
                ] as Given,
              ]
            : []),
          ...(startedAt === null ? [] : [["Time on heat", duration(ended.at - startedAt)] as Given]),
          ...(seen === null
            ? []
            : [
                [
                  `Into the metal, ${seen.isHotStart ? "hot" : "cold"} lining`,
                  format.show("kW", seen.energyJ / seen.timeS / 1000),
                ] as Given,
              ]),
          ...(share === null || share > 1
            ? []
            : [["Share of energy in the metal", format.show("percent", share)] as Given]),
        ]}
      />
      {outKg > inKg && (
        <p role="alert" className={css["warn"]}>
          More came out than went in: check scale and log. No loss is learned from this.
        </p>
      )}
      {seen === null && (
        <p className={sheet["soft"]}>
          No reading above the liquidus, so no power is learned. Measure the metal next time.
        </p>
      )}
      <Reckoned
        formula="useful power = heat into the metal ÷ time from the start to the first reading at pouring heat; loss = 1 − out ÷ in"
        source="derived here from the log"
      />
    </Card>
  );
}

function spentJoules({ ended }: Melt, furnace: Furnace | null): number | null {
  if (ended?.energyKWh !== undefined && ended.energyKWh > 0) return ended.energyKWh * 3.6e6;
  const fuel =
    furnace?.heat === "propane" || furnace?.heat === "natural-gas" ? fuels[furnace.heat].value : null;
  return fuel !== null && ended?.fuelKg !== undefined && ended.fuelKg > 0 ? ended.fuelKg * fuel : null;
}
