import { useState } from "react";
import type { MeltHeat } from "../../../physics/metal/melt.ts";
import { streamOf } from "../../../logbook/entries/entry.ts";
import type { Melt } from "../../../logbook/fire/fireStates.ts";
import { chargedKg, plannedChargeKg, type PowerKnown } from "../../../logbook/fire/furnaceMemory.ts";
import type { Furnace } from "../../../logbook/shop/shopThings.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Choice } from "../../base/forms/Choice.tsx";
import { NumberField } from "../../base/forms/NumberField.tsx";
import { WhenField } from "../../base/forms/WhenField.tsx";
import { heatSum } from "../../../logbook/casting/heatSum.ts";
import { powerBasis, rangeMinutes } from "./heatWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./metal.module.css";

/** Lights the fire: the lining hot or cold decides how long it takes. */
export function MeltStart({
  melt,
  heat,
  furnace,
  powerFor,
}: {
  readonly melt: Melt;
  readonly heat: MeltHeat | null;
  readonly furnace: Furnace | null;
  readonly powerFor: (isHotStart: boolean) => PowerKnown | null;
}) {
  const { log } = useShop();
  const format = useFormat();
  const say = useFleeting((fleeting) => fleeting.say);
  const [lining, setLining] = useState<"hot" | "cold">("cold");
  const [at, setAt] = useState<number | null>(null);
  const [weighedKg, setWeighedKg] = useState<number | null>(null);
  const power = powerFor(lining === "hot");
  const sum =
    heat === null
      ? null
      : heatSum({ massKg: weighedKg ?? chargedKg(melt), heat, pourC: melt.plan.pourC, furnace, power });
  const start = () =>
    log({
      do: "log",
      stream: streamOf("melt", melt.id),
      type: "melt-started",
      body: {
        hotFurnace: lining === "hot",
        ...(weighedKg === null || !(weighedKg > 0) ? {} : { weighedKg }),
      },
      ...(at === null ? {} : { at }),
    });
  const putAway = async (): Promise<void> => {
    const body = { pouredKg: 0, piggedKg: 0, dropped: true };
    const done = await log({ do: "log", stream: streamOf("melt", melt.id), type: "melt-ended", body });
    if (done.ok) say("Plan cancelled.");
  };
  return (
    <Card title="Start it">
      <Choice
        label="Lining of the furnace"
        options={[
          { value: "cold", label: "Cold" },
          { value: "hot", label: "Still hot from the last melt" },
        ]}
        value={lining}
        onChange={setLining}
      />
      <NumberField
        label="Charge on the scale"
        quantity="kg"
        min={0}
        value={weighedKg}
        onChange={setWeighedKg}
        hint={`Planned: ${format.show("kg", plannedChargeKg(melt))}. The pour sheet counts only what was weighed.`}
      />
      {sum?.times != null && <p className={css["big"]}>{rangeMinutes(sum.times)}</p>}
      {power !== null && <p className={sheet["soft"]}>{powerBasis(power, format)}</p>}
      {furnace === null && <p>No furnace chosen, so no melting time.</p>}
      <details>
        <summary>Started earlier</summary>
        <WhenField label="Started" at={at} onChange={setAt} />
      </details>
      <Button kind="primary" size="big" onPress={start}>
        Furnace lit
      </Button>
      <Button kind="quiet" onPress={putAway} debounceMs={700}>
        Cancel plan
      </Button>
    </Card>
  );
}
