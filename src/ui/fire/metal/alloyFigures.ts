import type { Alloy, MeltFigures } from "../../../trade/metals/alloy.ts";
import type { Published } from "../../../trade/published.ts";
import type { Format } from "../../base/format/units.ts";

export type AlloyFigure = {
  readonly name: string;
  readonly value: string;
  readonly source: string;
  readonly note?: string | undefined;
  /** Said aloud beside the figure: neither is as good as a sheet in the hand. */
  readonly kind: "own" | "from memory" | "estimate" | "no source" | "sourced";
};

/** Every figure of one metal with who says so. */
export function alloyFigures(
  alloy: Alloy,
  figures: MeltFigures | null,
  format: Format,
): readonly AlloyFigure[] {
  const temp = (c: number): string => format.show("temp", c);
  const density = (kgM3: number): string => format.show("density", kgM3 / 1000);
  const heat = (j: number): string => `${format.number(j, 0)} J/kg·K`;
  const share = (value: number): string => format.show("share", value);
  const row = (
    name: string,
    { value, source, note }: Published,
    show: (value: number) => string,
  ): AlloyFigure => ({
    name,
    value: show(value),
    source,
    note,
    kind: kindOf(source),
  });
  return [
    row("Density, solid", alloy.solidKgM3, density),
    row("Density, liquid, on a wall", alloy.liquidKgM3, density),
    row("Begins to melt (solidus)", alloy.solidusC, temp),
    row("All melted (liquidus)", alloy.liquidusC, temp),
    row("Light work poured from", alloy.pourLowC, temp),
    row("Light work poured up to", alloy.pourHighC, temp),
    ...(figures === null
      ? []
      : [
          row("Heavy work poured from", figures.heavyLowC, temp),
          row("Heavy work poured up to", figures.heavyHighC, temp),
          row("Shrink by the rule, least", figures.shrinkLow, share),
          row("Shrink by the rule, most", figures.shrinkHigh, share),
          row("Shrink on freezing, by volume, least", figures.freezeLow, share),
          row("Shrink on freezing, by volume, most", figures.freezeHigh, share),
          row("Density, liquid, in a crucible", figures.crucibleKgM3, density),
          row("Conductivity", figures.conductivityWMK, (k) => `${format.number(k, 1)} W/m·K`),
          row("Heat of the solid, in the room", figures.roomHeatJKgK, heat),
          row("Heat of the solid, mean to liquidus", figures.solidHeatJKgK, heat),
          row("Heat of the liquid", figures.liquidHeatJKgK, heat),
          row("Latent heat", figures.latentJKg, (j) => `${format.number(j / 1000, 0)} kJ/kg`),
        ]),
  ];
}

function kindOf(source: string): AlloyFigure["kind"] {
  if (source.startsWith("the shop's own")) return "own";
  if (source.startsWith("estimate") || source.startsWith("derived")) return "estimate";
  if (source.includes("from memory")) return "from memory";
  if (source.includes("no source") || source.includes("judgement")) return "no source";
  return "sourced";
}
