import { pourHeatOf } from "../../../logbook/pour/pourHeat.ts";
import { pourHeatReason } from "./pourHeatWords.ts";
import { usefulPower, type FurnaceMemory } from "../../../logbook/fire/furnaceMemory.ts";
import type { Furnace } from "../../../logbook/shop/shopThings.ts";
import type { Alloy, MeltFigures } from "../../../trade/metals/alloy.ts";
import { bottleDrawKgH } from "../../../trade/furnaces.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { paths } from "../../base/state/paths.ts";
import { SelectField } from "../../base/forms/SelectField.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import type { SumForm } from "../../base/forms/bound.ts";
import { heatSum, type HeatSum } from "../../../logbook/casting/heatSum.ts";
import { powerBasis, rangeMinutes } from "./heatWords.ts";
import { kept } from "../../../logbook/casting/limits.ts";
import { massLimits, type MassDraft } from "../../../logbook/casting/massDraft.ts";
import { Reckoned, Rows, type Given } from "../../base/parts/Reckoned.tsx";
import sheet from "../../base/styles/sheet.module.css";
import { NumberOf, PickOf } from "../../base/forms/BoundFields.tsx";
import css from "./metal.module.css";

/** Heat, time and fuel of this piece's charge in one of the shop's furnaces, and how hot to pour it. */
export function HeatCard({
  form,
  alloy,
  figures,
  thinnestMm,
  chargeKg,
  furnaces,
  furnace,
  memory,
}: {
  readonly form: SumForm<MassDraft>;
  readonly alloy: Alloy;
  readonly figures: MeltFigures;
  /** Thinnest section of the mesh, mm. */
  readonly thinnestMm: number | null;
  readonly chargeKg: number | null;
  readonly furnaces: readonly Furnace[];
  readonly furnace: Furnace | null;
  readonly memory: FurnaceMemory;
}) {
  const format = useFormat();
  const { draft, set } = form;
  const temp = (c: number): string => format.show("temp", c);
  const usual = pourHeatOf({ alloy, figures, thinnestMm });
  const pourC = kept(draft, massLimits).pourC ?? usual.startC;
  const heat = {
    liquidusC: alloy.liquidusC.value,
    solidJKgK: figures.solidHeatJKgK.value,
    latentJKg: figures.latentJKg.value,
    liquidJKgK: figures.liquidHeatJKgK.value,
  };
  const power = furnace === null ? null : usefulPower({ furnace, memory, isHotStart: draft.start === "hot" });
  const sum = chargeKg === null ? null : heatSum({ massKg: chargeKg, heat, pourC, furnace, power });
  return (
    <Card title="Heat">
      <Rows
        rows={[
          ["Light, thin work", `${temp(alloy.pourLowC.value)} to ${temp(alloy.pourHighC.value)}`],
          ["Heavy work", `${temp(figures.heavyLowC.value)} to ${temp(figures.heavyHighC.value)}`],
          ["All melted at", temp(alloy.liquidusC.value)],
        ]}
      />
      <NumberOf
        form={form}
        at="pourC"
        label="Poured at"
        quantity="temp"
        hint={`Empty: ${temp(usual.startC)}, ${pourHeatReason(usual, format)}. For a thin section heat the shell first, the metal second.`}
      />
      {pourC < alloy.liquidusC.value && (
        <p role="alert" className={`${sheet["held"]} ${sheet["firm"]} ${sheet["inset"]}`}>
          At {temp(pourC)} it is not fully melted; {alloy.name} is liquid from {temp(alloy.liquidusC.value)}.
        </p>
      )}
      {furnaces.length === 0 ? (
        <p>
          No furnace yet. <LinkButton href={paths.kilns}>Add yours</LinkButton>
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
      {sum !== null && <HeatRows sum={sum} />}
      {power !== null && <p className={sheet["soft"]}>{powerBasis(power, format)}</p>}
      {sum?.fuel?.isBeyondBottle === true && (
        <p className={css["warn"]}>
          At full power it uses {format.show("kg", sum.fuel.drawKgH)} an hour. A small bottle gives about{" "}
          {format.show("kg", bottleDrawKgH.value.low)} to {format.show("kg", bottleDrawKgH.value.high)} an
          hour on its own, less in the cold. Use a larger one or two together.
        </p>
      )}
      <Reckoned
        formula="heat = mass × [solid heat × (liquidus − room) + latent heat + liquid heat × (pour − liquidus)]; time = heat ÷ useful power + 7 min to skim, stir and measure"
        given={[
          ["Solid, mean", `${format.number(heat.solidJKgK, 0)} J/kg·K`],
          ["Latent", `${format.number(heat.latentJKg / 1000, 0)} kJ/kg`],
          ["Liquid", `${format.number(heat.liquidJKgK, 0)} J/kg·K`],
          ...(power === null ? [] : [["Useful power", power.source] as Given]),
        ]}
        source={`Groover, Fundamentals of Modern Manufacturing, ch. 10 (from memory); figures: ${figures.latentJKg.source}`}
      />
    </Card>
  );
}

function HeatRows({ sum }: { readonly sum: HeatSum }) {
  const format = useFormat();
  const { energyJ, times, powerW, fuel, spentKWh } = sum;
  return (
    <Rows
      rows={[
        ["Heat into the metal", format.show("kWh", energyJ / 3.6e6)],
        ...(times === null ? [] : [["Time to melt, with 7 min to skim", rangeMinutes(times)] as Given]),
        ...(powerW === null
          ? []
          : [["Heat into the metal, mean", format.show("kW", powerW / 1000)] as Given]),
        ...(fuel === null
          ? spentKWh === null
            ? []
            : [["From the mains", format.show("kWh", spentKWh)] as Given]
          : [["Fuel", format.show("kg", fuel.kg)] as Given]),
      ]}
    />
  );
}
