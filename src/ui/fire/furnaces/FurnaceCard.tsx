import { useState } from "react";
import type { UsefulPower } from "../../../physics/heat/furnace.ts";
import type { Melt } from "../../../logbook/fire/fireStates.ts";
import { furnaceMemory, lossMemory, usefulPower } from "../../../logbook/fire/furnaceMemory.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import type { Furnace } from "../../../logbook/shop/shopThings.ts";
import type { AlloyFamily } from "../../../trade/metals/alloy.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { powerWords, priceWords } from "../../base/format/moneyWords.ts";
import type { Format } from "../../base/format/units.ts";
import { powerBasis } from "../metal/heatWords.ts";
import { Reckoned, Rows, type Given } from "../../base/parts/Reckoned.tsx";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { FurnaceForm } from "./FurnaceForm.tsx";
import { familyWords, furnaceHeats } from "./furnaceWords.ts";

const families: readonly AlloyFamily[] = ["bronze", "brass", "aluminium", "other"];

/** A furnace with what its own melts have shown: useful power hot and cold apart, and the loss by family of metal. */
export function FurnaceCard({
  furnace,
  melts,
  shop,
}: {
  readonly furnace: Furnace;
  readonly melts: readonly Melt[];
  readonly shop: Shop;
}) {
  const format = useFormat();
  const [open, setOpen] = useState(false);
  if (open) return <FurnaceForm furnace={furnace} onDone={() => setOpen(false)} />;
  const memory = furnaceMemory({ furnaceId: furnace.id, melts, shop });
  const own = melts.filter(({ plan }) => plan.furnaceId === furnace.id);
  const price = priceWords(furnace.pricePerKWh, furnace.currency, { each: "a kWh", format });
  const heat = furnaceHeats.find(({ value }) => value === furnace.heat)?.label ?? furnace.heat;
  return (
    <Card title={furnace.retired ? `${furnace.name} (retired)` : furnace.name}>
      <Rows
        rows={[
          [heat, powerWords(furnace.powerKW, format)],
          ...(furnace.crucibleL === undefined
            ? []
            : [["Crucible to the brim", format.show("litre", furnace.crucibleL)] as Given]),
          ["Into the metal, hot lining", learnedWords(memory.hot, furnace, format)],
          ["Into the metal, cold lining", learnedWords(memory.cold, furnace, format)],
          ...families.flatMap((family) => lossRow({ family, melts: own, shop, format })),
          ...(price === null ? [] : [["Price", price] as Given]),
        ]}
      />
      {memory.hot === null && memory.cold === null && (
        <p>{powerBasis(usefulPower({ furnace, memory, isHotStart: true }), format)}</p>
      )}
      <Reckoned
        title="How this is learned"
        formula="useful power = heat that went into the metal ÷ time from the start to pouring heat; the median of its melts, cold and hot starts apart. Loss = 1 − Σ out ÷ Σ in, of its last six melts of a family."
        given={[["Melts so far", format.number(own.length, 0)]]}
        source="derived here from the log; heat of the alloy as on its page"
      />
      <Button label={`Change ${furnace.name}`} onPress={() => setOpen(true)}>
        Change
      </Button>
    </Card>
  );
}

function learnedWords(seen: UsefulPower | null, furnace: Furnace, format: Format): string {
  if (seen === null) return "no melt yet";
  const share = seen.medianW / (furnace.powerKW * 1000);
  const count = seen.melts === 1 ? "1 melt" : `median of ${seen.melts} melts`;
  return `${format.show("kW", seen.medianW / 1000)}, ${format.show("percent", share)} (${count})`;
}

function lossRow({
  family,
  melts,
  shop,
  format,
}: {
  readonly family: AlloyFamily;
  readonly melts: readonly Melt[];
  readonly shop: Shop;
  readonly format: Format;
}): readonly Given[] {
  const loss = lossMemory({ family, melts, shop });
  const name = `Loss, ${familyWords[family]}`;
  switch (loss.kind) {
    case "nothing-weighed":
      return [];
    case "learned":
      return [
        [
          name,
          `${format.show("share", loss.lossShare)} (${loss.melts === 1 ? "1 melt" : `${loss.melts} melts`})`,
        ],
      ];
    case "more-out-than-in":
      return [
        [
          name,
          `not known: ${format.show("kg", loss.outKg)} out of ${format.show("kg", loss.inKg)} in; the scale or the log is wrong`,
        ],
      ];
  }
}
