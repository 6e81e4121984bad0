import { crucibleLiftKg } from "../../../logbook/bucket/liftWeights.ts";
import { crucibleLift } from "../../../trade/lifting.ts";
import { pourHeatOf } from "../../../logbook/pour/pourHeat.ts";
import { pourHeatReason } from "./pourHeatWords.ts";
import { brimNeededMl, brimShare } from "../../../physics/metal/crucible.ts";
import type { MeltHeat } from "../../../physics/metal/melt.ts";
import type { PowerKnown } from "../../../logbook/fire/furnaceMemory.ts";
import type { Furnace } from "../../../logbook/shop/shopThings.ts";
import type { Alloy, MeltFigures } from "../../../trade/metals/alloy.ts";
import { bottleDrawKgH } from "../../../trade/furnaces.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { paths } from "../../base/state/paths.ts";
import { SelectField } from "../../base/forms/SelectField.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import type { SumForm } from "../../base/forms/bound.ts";
import { heatSum } from "../../../logbook/casting/heatSum.ts";
import { powerBasis, rangeMinutes } from "./heatWords.ts";
import { type MeltDraft } from "../../../logbook/casting/meltDraft.ts";
import { Reckoned, Rows, type Given } from "../../base/parts/Reckoned.tsx";
import sheet from "../../base/styles/sheet.module.css";
import { NumberOf, PickOf } from "../../base/forms/BoundFields.tsx";
import css from "./metal.module.css";

const liftNames = {
  tongs: "Crucible, lifted by tongs",
  shank: "Crucible, lifted in a shank",
  hoist: "Crucible, on a hoist",
} as const;

/** Furnace, pouring heat, time and fuel for the charge that is weighed in. */
export function MeltHeatCard({
  form,
  alloy,
  heat,
  figures,
  massKg,
  pourC,
  thinnestMm,
  furnaces,
  furnace,
  power,
}: {
  readonly form: SumForm<MeltDraft>;
  readonly alloy: Alloy;
  readonly heat: MeltHeat;
  readonly figures: MeltFigures;
  readonly massKg: number;
  readonly pourC: number;
  /** Thinnest section of the pieces, mm; null where no mesh has one. */
  readonly thinnestMm: number | null;
  readonly furnaces: readonly Furnace[];
  readonly furnace: Furnace | null;
  readonly power: PowerKnown | null;
}) {
  const format = useFormat();
  const { set } = form;
  const temp = (c: number): string => format.show("temp", c);
  const usual = pourHeatOf({ alloy, figures, thinnestMm });
  const sum = heatSum({ massKg, heat, pourC, furnace, power });
  const lift = crucibleLift(crucibleLiftKg({ metalKg: massKg, figures, furnace }) ?? 0);
  const neededMl =
    massKg > 0
      ? brimNeededMl({
          meltKg: massKg,
          liquidKgM3: figures.crucibleKgM3.value,
          fillShare: brimShare[lift === "tongs" ? "tongs" : "shank"],
        })
      : null;
  const isOver = neededMl !== null && furnace?.crucibleL !== undefined && neededMl > furnace.crucibleL * 1000;
  return (
    <Card title="Heat">
      <NumberOf
        form={form}
        at="pourC"
        label="Poured at"
        quantity="temp"
        hint={`Light work ${temp(alloy.pourLowC.value)} to ${temp(alloy.pourHighC.value)}, heavy ${temp(figures.heavyLowC.value)} to ${temp(figures.heavyHighC.value)}. Empty: ${temp(usual.startC)}, ${pourHeatReason(usual, format)}.`}
      />
      {pourC < alloy.liquidusC.value && (
        <p role="alert" className={`${sheet["held"]} ${sheet["firm"]} ${sheet["inset"]}`}>
          At {temp(pourC)} it is not fully melted; that takes {temp(alloy.liquidusC.value)} on.
        </p>
      )}
      {furnaces.length === 0 ? (
        <p>
          No furnace yet, so no melting time. <LinkButton href={paths.kilns}>Add yours</LinkButton>
        </p>
      ) : (
        <SelectField
          label="Furnace"
          options={furnaces.map(({ id, name }) => ({ value: id, label: name }))}
          value={furnace?.id ?? null}
          onChange={(furnaceId) => set({ furnaceId })}
          empty="None"
        />
      )}
      <PickOf
        form={form}
        at="start"
        label="Lining at the start"
        options={[
          { value: "cold", label: "Cold" },
          { value: "hot", label: "Still hot" },
        ]}
      />
      {sum !== null && (
        <Rows
          rows={[
            ["Heat into the metal", format.show("kWh", sum.energyJ / 3.6e6)],
            ...(sum.times === null ? [] : [["Time, with 7 min to skim", rangeMinutes(sum.times)] as Given]),
            ...(sum.fuel === null
              ? sum.spentKWh === null
                ? []
                : [["From the mains", format.show("kWh", sum.spentKWh)] as Given]
              : [["Fuel", format.show("kg", sum.fuel.kg)] as Given]),
            ...(neededMl === null
              ? []
              : [[liftNames[lift], `${format.show("litre", neededMl / 1000)} or more`] as Given]),
          ]}
        />
      )}
      {isOver && (
        <p role="alert" className={`${sheet["held"]} ${sheet["firm"]} ${sheet["inset"]}`}>
          Too much for {furnace.name}: its crucible holds {format.show("litre", furnace.crucibleL ?? 0)} to
          the brim.
        </p>
      )}
      {sum?.fuel?.isBeyondBottle === true && (
        <p className={css["warn"]}>
          At full power it uses {format.show("kg", sum.fuel.drawKgH)} an hour; a small bottle gives{" "}
          {format.show("kg", bottleDrawKgH.value.low)} to {format.show("kg", bottleDrawKgH.value.high)} on its
          own.
        </p>
      )}
      {power !== null && <p className={sheet["soft"]}>{powerBasis(power, format)}</p>}
      <Reckoned
        formula="heat = mass × [solid heat × (liquidus − room) + latent heat + liquid heat × (pour − liquidus)]; time = heat ÷ useful power + 7 min"
        source={`Groover, Fundamentals of Modern Manufacturing, ch. 10 (from memory); figures: ${figures.latentJKg.source}`}
      />
    </Card>
  );
}
