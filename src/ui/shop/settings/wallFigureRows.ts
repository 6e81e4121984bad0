import type { Recipe, Shop } from "../../../logbook/piece/piece.ts";
import { leastSandShare } from "../../../physics/shell/wallSupport.ts";
import { coreFigures } from "../../../trade/coreFigures.ts";
import { sandCoverMm, usualFactor, wallFigures, wallLimits } from "../../../trade/wallFigures.ts";
import type { Format } from "../../base/format/units.ts";
import { published, type FigureGroup, type ShownFigure } from "./figure.ts";

/** What a core's lift is set against. */
export function coreFigureRows(format: Format): FigureGroup {
  return {
    title: "Cores",
    about:
      "Metal lifts a core by the difference of their densities. Pins hold by their shear when hot or by what the core bears under them, a neck by its pull or bending. What holds must reach the index at which a shell carries.",
    figures: [
      published(
        "Density of a core",
        coreFigures.coreKgM3,
        (value) => format.show("kgM3", value),
        "whether the core is held, or must be held better",
      ),
      published(
        "Fired bend strength of a core",
        coreFigures.coreMPa,
        (value) => format.show("MPa", value),
        "whether the core is held, or must be held better",
      ),
      published(
        "How deep a pin stands in the core",
        coreFigures.pinSeatMm,
        (value) => format.show("mm", value),
        "whether the core is held, or must be held better",
      ),
      published(
        "How well what holds is known",
        coreFigures.holdSpread,
        (value) => `× or ÷ ${format.number(value, 1)}`,
        "whether the core is held, or must be held better",
      ),
      {
        name: "Strength of a steel pin",
        value: `${format.show("MPa", 235)} cold, 23% of it at ${format.show("temp", 700)}, 4% at ${format.show("temp", 1000)}`,
        basis: "published",
        decides: "whether the core is held, or must be held better",
        source: "EN 1993-1-2, table 3.1 (from memory); at the liquidus of the alloy: judgement",
      },
    ],
  };
}

/** What a shell's verdict against its pour is worked out with. */
export function wallFigureRows(
  format: Format,
  { shop, recipes }: { readonly shop: Shop; readonly recipes: readonly Recipe[] },
): FigureGroup {
  const own = shop.morMPa === null ? undefined : format.show("MPa", shop.morMPa);
  const within = (factor: number): string => `× or ÷ ${format.number(factor, 2)}`;
  const index = (value: number): string => `index ${format.number(value, 1)} and up`;
  return {
    title: "Strength of the shell",
    about:
      "Metal pressure is density times head. Strength over load, with the doubt in strength, thickness and head, gives the reliability index: how many standard deviations lie between the likely case and the one that breaks. A spread holds the middle nine in ten of all cases. No safety factor comes on top: the size of a piece and the shock of a pour are not in the calculation, the limits answer for them.",
    figures: [
      ...recipes.map(({ name, morMPa, safetyFactor, floorMm, starting }): ShownFigure => ({
        name: `Recipe ${name}`,
        value: `${format.show("MPa", morMPa)}, margin ${format.show("plain", safetyFactor)}, least shell ${format.show("mm", floorMm)}`,
        basis: starting ? "judgement" : "own",
        decides: "whether the shell carries the metal, and the coats to add",
        source: starting
          ? `strength: ${wallFigures.strengthMPa.source}; margin: judgement; least shell: common practice, no source`
          : "written in your recipe",
        own,
      })),
      {
        name: "Stress in a flat",
        value: "0.31 (square) to 0.75 (long) of pressure × width² / thickness²",
        basis: "published",
        decides: "shell thickness that a flat needs",
        source:
          "Roark's Formulas for Stress and Strain, 7th ed., table 11.4 cases 1a and 8a; the greater of free and clamped edges",
      },
      {
        name: "Tension a round bears",
        value: "half the bend strength",
        basis: "published",
        decides: "shell thickness that a round needs",
        source: "from memory of Davidge, Mechanical Behaviour of Ceramics",
      },
      published(
        "Strength of a shell that was never measured",
        wallFigures.strengthMPa,
        (value) => format.show("MPa", value),
        "whether the shell carries the metal, and the coats to add",
      ),
      published(
        "How well a strength is known that was never measured",
        wallFigures.strengthSpread,
        within,
        "whether the shell carries the metal, and the coats to add",
      ),
      published(
        "The same by your own test bars",
        wallFigures.barsSpread,
        within,
        "whether the shell carries the metal, and the coats to add",
      ),
      published(
        "How well a thickness is known by the table of stuccos",
        wallFigures.tableSpread,
        within,
        "whether the shell carries the metal, and the coats to add",
      ),
      published(
        "The same by caliper",
        wallFigures.caliperSpread,
        within,
        "whether the shell carries the metal, and the coats to add",
      ),
      published(
        "How well a head is known",
        wallFigures.headSpread,
        within,
        "whether the shell carries the metal, and the coats to add",
      ),
      published("Carries the pour", wallLimits.carries, index, "the word of a shell"),
      published("Borderline", wallLimits.marginal, index, "the word of a shell"),
      published(
        "Too thin; below that it is expected to break",
        wallLimits.thin,
        index,
        "the word of a shell",
      ),
      {
        name: "Loose sand around a shell",
        value: "no credit",
        basis: "judgement",
        decides: "what sand takes off a flat",
        source: "judgement: it gives way before the shell does; it holds a leak and heat",
      },
      published(
        "Sand all round a shell to count as boxed",
        sandCoverMm,
        (value) => format.show("mm", value),
        "what sand takes off a flat",
      ),
      {
        name: "Sand vibrated in a box",
        value: `the load × ${format.number(leastSandShare, 1)} at the least; nothing to speak of below ${format.show("mm", 150)} of span`,
        basis: "judgement",
        decides: "what sand takes off a flat",
        source:
          "a bed of springs under a clamped plate, 64 MN/m³ (Bowles, Foundation Analysis and Design, from memory); the end at 0.6: judgement",
      },
      {
        name: "Ribs across a flat",
        value: "divide its span; the ribs themselves are not checked",
        basis: "judgement",
        decides: "what ribs take off a flat",
        source: "judgement",
      },
      {
        name: "A crowned flat",
        value: "the better of plate and tube of its radius",
        basis: "judgement",
        decides: "what a crown takes off a flat",
        source: "judgement",
      },
      {
        name: "A flat whose edges the other face holds",
        value: "0.31 (square) to 0.5 (long) of pressure × width² / thickness²",
        basis: "published",
        decides: "what a held edge takes off a flat",
        source:
          "Roark's Formulas for Stress and Strain, 7th ed., table 11.4 case 8a (from memory); when it counts: judgement",
      },
      {
        name: "An open rim",
        value: "twice the stress of a flat",
        basis: "judgement",
        decides: "shell thickness that a rim needs",
        source: "judgement; plate theory has 1.3 to 2.4 times for one free edge",
      },
      published(
        "Usual margin of a recipe",
        usualFactor,
        (value) => format.show("plain", value),
        "what a recipe of an old log asks of a shell",
      ),
    ],
  };
}
