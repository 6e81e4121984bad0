import {
  brimByNumberMl,
  brimBySandMl,
  brimNeededMl,
  brimShare,
  crucibleFill,
} from "../../../physics/metal/crucible.ts";
import type { Furnace } from "../../../logbook/shop/shopThings.ts";
import type { MeltFigures } from "../../../trade/metals/alloy.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Card } from "../../base/parts/Card.tsx";
import { CruciblePicture } from "./CruciblePicture.tsx";
import type { SumForm } from "../../base/forms/bound.ts";
import { kept } from "../../../logbook/casting/limits.ts";
import { massLimits, type MassDraft } from "../../../logbook/casting/massDraft.ts";
import { Reckoned } from "../../base/parts/Reckoned.tsx";
import sheet from "../../base/styles/sheet.module.css";
import { NumberOf, PickOf } from "../../base/forms/BoundFields.tsx";
import css from "./metal.module.css";

const ways = [
  { value: "furnace", label: "The furnace’s" },
  { value: "sand", label: "Filled with sand" },
  { value: "number", label: "By its number" },
] as const;

/** Whether the crucible takes the melt, and what it takes at most. */
export function CrucibleCard({
  form,
  meltKg,
  figures,
  furnace,
}: {
  readonly form: SumForm<MassDraft>;
  readonly meltKg: number | null;
  readonly figures: MeltFigures;
  readonly furnace: Furnace | null;
}) {
  const format = useFormat();
  const { draft } = form;
  const brimMl = brimOf(draft, furnace);
  const fillShare = brimShare[draft.lift];
  const liquidKgM3 = figures.crucibleKgM3.value;
  const fill =
    meltKg === null || brimMl === null ? null : crucibleFill({ meltKg, liquidKgM3, brimMl, fillShare });
  const needed = meltKg === null ? null : brimNeededMl({ meltKg, liquidKgM3, fillShare });
  return (
    <Card title="The crucible">
      <PickOf form={form} at="brimBy" label="Which crucible" options={ways} />
      {draft.brimBy === "furnace" && furnace?.crucibleL === undefined && (
        <p>
          {furnace === null
            ? "Choose a furnace under “Heat”, or measure the crucible."
            : `${furnace.name} has no crucible volume yet. Fill it with dry sand, or use its number.`}
        </p>
      )}
      {draft.brimBy === "sand" && (
        <div className={css["fields"]}>
          <NumberOf
            form={form}
            at="sandG"
            label="Dry sand to the brim"
            quantity="g"
            hint="Never with water: a wet crucible makes the metal explode."
          />
          <NumberOf
            form={form}
            at="sandGCm3"
            label="Density of the sand"
            quantity="density"
            hint="Poured loosely into a measure."
          />
        </div>
      )}
      {draft.brimBy === "number" && (
        <NumberOf
          form={form}
          at="crucibleNumber"
          label="Number on the crucible"
          quantity="plain"
          hint="About its pounds of aluminium, brim-full. Makers differ: check it with sand."
        />
      )}
      <PickOf
        form={form}
        at="lift"
        label="Lifted with"
        options={[
          { value: "tongs", label: `Tongs, ${format.show("percent", brimShare.tongs)}` },
          { value: "shank", label: `Shank, ${format.show("percent", brimShare.shank)}` },
        ]}
      />
      {needed !== null && (
        <p>The melt needs a crucible of {format.show("litre", needed / 1000)} to the brim.</p>
      )}
      {fill !== null && (
        <>
          <CruciblePicture share={fill.share} limit={fillShare} />
          <p
            className={fill.fits ? sheet["soft"] : `${sheet["held"]} ${sheet["firm"]} ${sheet["inset"]}`}
            role={fill.fits ? undefined : "alert"}
          >
            {fill.fits
              ? `It fits: ${format.show("litre", fill.meltMl / 1000)} in ${format.show("litre", (brimMl ?? 0) / 1000)}. `
              : `Too much for it: ${format.show("percent", fill.share)} of the brim. `}
            It takes {format.show("kg", fill.mostKg)} at most.
          </p>
        </>
      )}
      <Reckoned
        formula="melt volume = melt ÷ liquid density; fill = melt volume ÷ brim volume"
        given={[["Liquid density, low end", format.show("density", liquidKgM3 / 1000)]]}
        source={`${figures.crucibleKgM3.source}; fill: common practice, no source`}
      />
      <p className={sheet["soft"]}>
        A cold charge is bulky and does not fit all at once. Add only preheated, dry metal.
      </p>
    </Card>
  );
}

function brimOf(draft: MassDraft, furnace: Furnace | null): number | null {
  const { brimBy, sandG, sandGCm3, crucibleNumber } = kept(draft, massLimits);
  switch (brimBy) {
    case "furnace":
      return furnace?.crucibleL === undefined ? null : furnace.crucibleL * 1000;
    case "sand":
      return sandG === null || sandGCm3 === null ? null : brimBySandMl({ sandG, bulkKgM3: sandGCm3 * 1000 });
    case "number":
      return crucibleNumber === null ? null : brimByNumberMl(crucibleNumber);
  }
}
