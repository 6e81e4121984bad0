import { describe, expect, test } from "vitest";
import { fillsAboveK, heavyFromMm, pouredAboveK, startAboveK } from "../../../logbook/pour/pourHeat.ts";
import { builtInRecipe, builtInShop } from "../../../logbook/piece/builtIns.ts";
import { fillFactorOfWall } from "../../../trade/gatingFigures.ts";
import type { Basis } from "../../../trade/published.ts";
import { startingRecipes } from "../../../trade/startingRecipes.ts";
import { basisAndSource, figureBasisWords } from "../../base/format/figureBasis.ts";
import { makeFormat } from "../../base/format/units.ts";
import type { ShownFigure } from "./figure.ts";
import { figureGroups } from "./figureGroups.ts";

const modules: Readonly<Record<string, object>> = import.meta.glob(
  ["../../../trade/*.ts", "../../../trade/metals/*.ts", "!../../../trade/**/*.test.ts"],
  { eager: true },
);
const recipes = startingRecipes.flatMap(({ id }) => builtInRecipe(id) ?? []);
const groups = figureGroups(makeFormat("metric", "en-GB"), { shop: builtInShop, recipes });
const figures = groups.flatMap((group) => group.figures);
const bases = Object.keys(figureBasisWords) as readonly Basis[];

type Row = { readonly basis: Basis; readonly source: string };

/** Every figure of the trade's tables, by the address it stands at. */
function rowsIn(value: unknown, at: string, seen: Map<object, string>): void {
  if (typeof value !== "object" || value === null || seen.has(value)) return;
  if ("basis" in value && "source" in value) {
    seen.set(value, at);
    return;
  }
  for (const [key, part] of Object.entries(value)) rowsIn(part, `${at}.${key}`, seen);
}

const inTables = new Map<object, string>();
for (const [path, module] of Object.entries(modules)) rowsIn(module, path, inTables);

/** What no sum reads, or what one row of many stands for. */
const notShown = (at: string): boolean =>
  // Names by other standards are words, shown with the metal; what behaviour a sheet prints is too.
  at.endsWith(".otherNames") ||
  at.endsWith(".behaviour") ||
  // Rows of `alloys` again, under the name of their own file.
  /metals\/\w+\.ts\.(\w+)\.\d+\./.test(at.replace("alloys.ts.alloys", ""));

describe("the figures page", () => {
  test("holds every starting value of the trade's tables", () => {
    const shown = new Set(figures.map(({ of }) => of));
    expect(inTables.size).toBeGreaterThan(500);
    const missing = [...inTables].filter(([row, at]) => !shown.has(row) && !notShown(at)).map(([, at]) => at);
    expect(missing).toEqual([]);
    for (const row of [heavyFromMm, startAboveK, fillsAboveK, pouredAboveK])
      expect(shown.has(row)).toBe(true);
  });

  test("says of each what it rests on and what it decides", () => {
    expect(figures.length).toBeGreaterThan(500);
    for (const { name, value, basis, source, decides } of figures) {
      expect([name, bases.includes(basis)]).toEqual([name, true]);
      expect([name, decides.length > 5]).toEqual([name, true]);
      expect([name, value]).not.toEqual([name, ""]);
      // A published or measured figure has a work; practice and judgement may stand alone.
      if (basis === "published" || basis === "measured")
        expect([name, source.length > 3]).toEqual([name, true]);
      expect(value).not.toMatch(/NaN|undefined|null|\[object/);
    }
  });

  test("each name stands once", () => {
    const names = figures.map(({ name }) => name);
    expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
  });
});

describe("what a figure rests on", () => {
  const all: readonly Row[] = [...([...inTables.keys()] as Row[]), ...(figures as readonly ShownFigure[])];

  test("agrees with the words of its source", () => {
    for (const { basis, source } of all) {
      if (source.startsWith("common practice")) expect([source, basis]).toEqual([source, "practice"]);
      if (/^(judgement|estimate|starting value)/.test(source))
        expect([source, basis]).toEqual([source, "judgement"]);
      if (source.startsWith("measured")) expect([source, basis]).toEqual([source, "measured"]);
      if (basis === "published") expect(source).not.toMatch(/no source/);
    }
  });

  test("is said once, before the source", () => {
    expect(basisAndSource("practice", "common practice, no source; 1.5–4 h")).toBe(
      "Common practice: 1.5–4 h",
    );
    expect(basisAndSource("practice", "common practice, no source")).toBe("Common practice");
    expect(basisAndSource("judgement", "judgement: half of it")).toBe("Judgement: half of it");
    expect(basisAndSource("published", "ASTM D4212")).toBe("Published: ASTM D4212");
    expect(basisAndSource("measured", "measured on twelve colours")).toBe("Measured: on twelve colours");
  });

  test("a wall's own fill factor is a published one", () => {
    expect(fillFactorOfWall(5)?.basis).toBe("published");
  });
});

describe("in US units", () => {
  const us = figureGroups(makeFormat("us", "en-US"), { shop: builtInShop, recipes });
  // Slurry is weighed in g/cm³ and cups are calibrated in mm²/s everywhere, and an ISO cup is named by its hole.
  const metricUnit =
    /\d[\s\u00a0](°C|K|mm|cm|cm²|mm²|m²|kg|g|L|kPa|MPa|GPa|m\/s|kg\/s|kg\/m³|g\/m²|W\/m·K|J\/kg·K)(?![\w/²³·])/;

  test("no figure shows a metric unit", () => {
    const left = us.flatMap(({ figures: shown }) =>
      shown.flatMap(({ name, value }) =>
        [name, value].filter((text) => !text.startsWith("ISO ") && metricUnit.test(text)),
      ),
    );
    expect(left).toEqual([]);
  });

  test("and a metric shop does", () => {
    expect(figures.some(({ value }) => metricUnit.test(value))).toBe(true);
  });
});
