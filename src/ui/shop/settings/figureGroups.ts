import type { Recipe, Shop } from "../../../logbook/piece/piece.ts";
import type { Format } from "../../base/format/units.ts";
import type { FigureGroup } from "./figure.ts";
import { hazardFigures, pourFigures } from "./fireFigures.ts";
import { chargeFigures, flowFigures } from "./castFigures.ts";
import { burnoutFigures, fireShellFigures } from "./kilnFigures.ts";
import { alloyFigureGroup, patternFigures } from "./materialFigures.ts";
import { dayFigures, slurryFigures } from "./slurryFigures.ts";
import { airFigures, dryingFigures, limitFigures, stuccoFigures } from "./shellFigures.ts";
import { coreFigureRows, wallFigureRows } from "./wallFigureRows.ts";

/** Every figure the sums and rules rest on, in the person's own units. */
export function figureGroups(
  format: Format,
  { shop, recipes }: { readonly shop: Shop; readonly recipes: readonly Recipe[] },
): readonly FigureGroup[] {
  return [
    wallFigureRows(format, { shop, recipes }),
    coreFigureRows(format),
    stuccoFigures(format),
    dryingFigures(format, shop),
    airFigures(format),
    limitFigures(format, shop),
    slurryFigures(format, shop),
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
