import { alloys } from "../../../trade/metals/alloys.ts";
import { patternKgM3, patternMaterials, type PatternMaterial } from "../../../trade/patternMaterials.ts";
import { alloyFigures } from "../../base/format/alloyFigures.ts";
import type { Format } from "../../base/format/units.ts";
import { published, type FigureGroup } from "./figure.ts";

export function alloyFigureGroup(format: Format): FigureGroup {
  return {
    title: "Metals",
    about: "The liquid density presses on the wall; it is taken at the upper end of what is known.",
    figures: alloys.flatMap((alloy) =>
      alloyFigures(alloy, alloy, format).map(({ name, value, of, decides }) => ({
        ...published(`${alloy.name}: ${name}`, of, () => value, decides),
      })),
    ),
  };
}

export function patternFigures(format: Format): FigureGroup {
  return {
    title: "Patterns",
    about: "Density turns a pattern's weight into volume; growth is what a prime coat has to bear.",
    figures: Object.entries(patternMaterials).flatMap(([id, { label, densityKgM3, growthPerK }]) => [
      ...(densityKgM3 === null
        ? densityOf(id, label, format)
        : [
            published(
              `${label}: density`,
              densityKgM3,
              (value) => format.show("density", value / 1000),
              "volume and metal from a pattern's weight; its mass in a burnout",
            ),
          ]),
      ...(growthPerK === null
        ? []
        : [
            published(
              `${label}: growth`,
              growthPerK,
              (value) =>
                `${format.number((value * 1e6) / format.toShown("tempDiff", 1), 0)} millionths a ${format.unit("tempDiff")}`,
              "how far the room may move on a prime",
            ),
          ]),
    ]),
  };
}

/** A density that tells a pattern's mass from its volume, and not its volume from its mass. */
function densityOf(id: string, label: string, format: Format): FigureGroup["figures"] {
  const kgM3 = isPattern(id) ? patternKgM3(id) : null;
  if (kgM3 === null) return [];
  return [
    published(
      `${label}: density`,
      kgM3,
      (value) => format.show("density", value / 1000),
      "the mass of a pattern in a burnout",
    ),
  ];
}

const isPattern = (id: string): id is PatternMaterial => Object.hasOwn(patternMaterials, id);
