import { alloys } from "../../../trade/metals/alloys.ts";
import { patternMaterials } from "../../../trade/patternMaterials.ts";
import type { Format } from "../../base/format/units.ts";
import { published, type FigureGroup } from "./figure.ts";

export function alloyFigureGroup(format: Format): FigureGroup {
  const density = (kgM3: number) => format.show("density", kgM3 / 1000);
  const temp = (tempC: number) => format.show("temp", tempC);
  return {
    title: "Metals",
    about: "The liquid density presses on the wall; it is taken at the upper end of what is known.",
    figures: alloys.flatMap(({ name, liquidKgM3, solidKgM3, solidusC, liquidusC, pourLowC, pourHighC }) => [
      published(`${name}: liquid`, liquidKgM3, density),
      published(`${name}: solid`, solidKgM3, density),
      published(`${name}: begins to melt`, solidusC, temp),
      published(`${name}: all melted`, liquidusC, temp),
      published(`${name}: poured from`, pourLowC, temp),
      published(`${name}: poured up to`, pourHighC, temp),
    ]),
  };
}

export function patternFigures(format: Format): FigureGroup {
  return {
    title: "Patterns",
    about: "Density turns a pattern's weight into volume; growth is what a prime coat has to bear.",
    figures: Object.values(patternMaterials).flatMap(({ label, densityKgM3, growthPerK }) => [
      ...(densityKgM3 === null
        ? []
        : [published(`${label}: density`, densityKgM3, (value) => format.show("density", value / 1000))]),
      ...(growthPerK === null
        ? []
        : [
            published(
              `${label}: growth`,
              growthPerK,
              (value) => `${format.number(value * 1e6, 0)} millionths a °C`,
            ),
          ]),
    ]),
  };
}
