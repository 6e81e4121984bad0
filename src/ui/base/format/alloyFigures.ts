import type { Alloy, MeltFigures } from "../../../trade/metals/alloy.ts";
import type { Published } from "../../../trade/published.ts";
import type { Format } from "./units.ts";

export type AlloyFigure = {
  readonly name: string;
  readonly value: string;
  /** What it is, with its basis and source. */
  readonly of: Published;
  readonly decides: string;
};

/** Every figure of one metal with who says so. */
export function alloyFigures(
  alloy: Alloy,
  figures: MeltFigures | null,
  format: Format,
): readonly AlloyFigure[] {
  const temp = (c: number): string => format.show("temp", c);
  const density = (kgM3: number): string => format.show("density", kgM3 / 1000);
  const heat = (j: number): string => format.show("jKgK", j);
  const share = (value: number): string => format.show("share", value);
  const row = (
    name: string,
    of: Published,
    show: (value: number) => string,
    decides: string,
  ): AlloyFigure => ({ name, value: show(of.value), of, decides });
  return [
    row("Density, solid", alloy.solidKgM3, density, "mass of the casting and of the charge"),
    row("Density, liquid, on a wall", alloy.liquidKgM3, density, "pressure on the shell"),
    row("Begins to melt (solidus)", alloy.solidusC, temp, "how hot the shell may be, and when it is frozen"),
    row("All melted (liquidus)", alloy.liquidusC, temp, "least heat of the metal at the pour"),
    row("Light work poured from", alloy.pourLowC, temp, "where a plan starts in light work"),
    row(
      "Light work poured up to",
      alloy.pourHighC,
      temp,
      "from where the pour sheet says too hot in light work",
    ),
    ...(figures === null
      ? []
      : [
          row("Heavy work poured from", figures.heavyLowC, temp, "where a plan starts in heavy work"),
          row(
            "Heavy work poured up to",
            figures.heavyHighC,
            temp,
            "from where the pour sheet says too hot in heavy work",
          ),
          row("Shrink by the rule, least", figures.shrinkLow, share, "scale of the pattern"),
          row("Shrink by the rule, most", figures.shrinkHigh, share, "scale of the pattern"),
          row("Shrink on freezing, by volume, least", figures.freezeLow, share, "volume of a riser"),
          row("Shrink on freezing, by volume, most", figures.freezeHigh, share, "volume of a riser"),
          row(
            "Density, liquid, in a crucible",
            figures.crucibleKgM3,
            density,
            "size of the crucible, flow and fill",
          ),
          row(
            "Conductivity",
            figures.conductivityWMK,
            (k) => format.show("wMK", k),
            "shown to compare metals; no sum reads it",
          ),
          row(
            "Heat of the solid, in the room",
            figures.roomHeatJKgK,
            heat,
            "shown to compare metals; no sum reads it",
          ),
          row(
            "Heat of the solid, mean to liquidus",
            figures.solidHeatJKgK,
            heat,
            "time and fuel of a melt, knock-out",
          ),
          row(
            "Heat of the liquid",
            figures.liquidHeatJKgK,
            heat,
            "time of a melt, freezing, whether it runs full",
          ),
          row("Knock out below", alloy.knockout, temp, "when a casting may be knocked out"),
          row(
            "Speed through a gate, at most",
            alloy.stream.gateSpeedMS,
            (v) => format.show("speed", v),
            "gates, and the front of the metal",
          ),
          row(
            "Surface tension",
            alloy.stream.tensionNM,
            (v) => `${format.number(v, 2)} N/m`,
            "head that a thin slot asks",
          ),
          row(
            "Viscosity",
            alloy.stream.viscosityPaS,
            (v) => `${format.number(v * 1000, 1)} mPa·s`,
            "Reynolds number in the sprue",
          ),
          row(
            "Latent heat",
            figures.latentJKg,
            (j) => format.show("jKg", j),
            "time of a melt, freezing, whether it runs full",
          ),
        ]),
  ];
}
