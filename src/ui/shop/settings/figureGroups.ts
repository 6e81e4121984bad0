import type { Recipe, Shop } from "../../../logbook/piece/piece.ts";
import type { Format } from "../../base/format/units.ts";
import type { ShownFigure, FigureGroup } from "./figure.ts";
import { hazardFigures, pourFigures } from "./fireFigures.ts";
import { chargeFigures, flowFigures } from "./castFigures.ts";
import { burnoutFigures, fireShellFigures } from "./kilnFigures.ts";
import { alloyFigureGroup, patternFigures } from "./materialFigures.ts";
import { dayFigures, slurryFigures } from "./slurryFigures.ts";
import { airFigures, dryingFigures, limitFigures, stuccoFigures } from "./shellFigures.ts";

/** Every figure the sums and rules rest on, in the person's own units. */
export function figureGroups(
  format: Format,
  { shop, recipes }: { readonly shop: Shop; readonly recipes: readonly Recipe[] },
): readonly FigureGroup[] {
  return [
    wallFigures(format, { shop, recipes }),
    stuccoFigures(format),
    dryingFigures(format, shop),
    airFigures(format),
    limitFigures(format, shop),
    slurryFigures(format),
    fireShellFigures(format),
    burnoutFigures(format),
    pourFigures(format),
    flowFigures(format),
    chargeFigures(format),
    dayFigures(format),
    hazardFigures(format),
    alloyFigureGroup(format),
    patternFigures(format),
  ];
}

function wallFigures(
  format: Format,
  { shop, recipes }: { readonly shop: Shop; readonly recipes: readonly Recipe[] },
): FigureGroup {
  const own = shop.morMPa === null ? undefined : format.show("MPa", shop.morMPa);
  return {
    title: "Strength of the wall",
    about:
      "Metal pressure is density times head; the wall it needs follows from the broadest flat or widest round, the strength and the safety factor.",
    figures: [
      ...recipes.map(({ name, morMPa, safetyFactor, floorMm, starting }): ShownFigure => ({
        name: `Recipe ${name}`,
        value: `${format.show("MPa", morMPa)}, safety factor ${format.show("plain", safetyFactor)}, least wall ${format.show("mm", floorMm)}`,
        basis: starting ? "judgement" : "own",
        decides: "whether the shell holds the metal, and the coats to add",
        source: starting
          ? "strength from memory of Jones & Yuan 2003 and Beeley & Smart, Investment Casting (1995); factor: judgement; least wall: common practice, no source"
          : "written in your recipe",
        own,
      })),
      {
        name: "Stress in a flat",
        value: "0.31 (square) to 0.75 (long) of pressure × width² / wall²",
        basis: "published",
        decides: "shell thickness that a flat panel needs",
        source:
          "Roark's Formulas for Stress and Strain, 7th ed., table 11.4 cases 1a and 8a; the greater of free and clamped edges",
      },
      {
        name: "Tension a round bears",
        value: "half the bend strength",
        basis: "published",
        decides: "shell thickness that a tube needs",
        source: "from memory of Davidge, Mechanical Behaviour of Ceramics",
      },
      {
        name: "How well a strength is known that was never measured",
        value: "× or ÷ 1.7",
        basis: "judgement",
        decides: "the range of the shell thickness needed",
        source: "judgement",
      },
      {
        name: "Bands of the safety factor",
        value: "3 and up carries, 2 marginal, 1.2 thin, below fails",
        basis: "judgement",
        decides: "the verdict on the shell",
        source: "built as the factor of 3 is: spread of strength and wall, size, way of pouring",
      },
    ],
  };
}
