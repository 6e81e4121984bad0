import { expect, test } from "vitest";
import truth from "../../../tests/truth/alloys.json" with { type: "json" };
import { headPressurePa } from "../../physics/shell/wall.ts";
import type { Alloy } from "./alloy.ts";
import type { Published } from "../published.ts";
import { alloyOf, alloys } from "./alloys.ts";

test.each(truth.rows)("$id melts where its sheet says, within a degree", ({ id, solidusF, liquidusF }) => {
  const alloy = alloyOf(id);
  expect(Math.abs((alloy?.solidusC.value ?? 0) - ((solidusF - 32) * 5) / 9)).toBeLessThan(1);
  expect(Math.abs((alloy?.liquidusC.value ?? 0) - ((liquidusF - 32) * 5) / 9)).toBeLessThan(1);
});

test.each(truth.rows)("$id weighs what its sheet says, within half a percent", ({ id, lbIn3 }) => {
  expect(Math.abs((alloyOf(id)?.solidKgM3.value ?? 0) / (lbIn3 * 27_679.9) - 1)).toBeLessThan(0.005);
});

test("the table has twenty-three metals, each with a name of its own", () => {
  expect(alloys).toHaveLength(23);
  expect(new Set(alloys.map(({ id }) => id)).size).toBe(23);
  expect(new Set(alloys.map(({ name }) => name)).size).toBe(23);
});

test("no name leads to two rows", () => {
  const names = alloys.flatMap(({ name, otherNames }) => [name, ...otherNames.value]);
  expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
});

/** What stands in every row, with or without a figure. */
const always = ["id", "name", "family", "stream", "preheat", "loss", "fill", "composition", "unprinted"];
const melting = "solidusC liquidusC pourLowC pourHighC heavyLowC heavyHighC latentJKg";
const bulk = "liquidKgM3 solidKgM3 crucibleKgM3 conductivityWMK roomHeatJKgK solidHeatJKgK liquidHeatJKgK";
const freezing = "shrinkLow shrinkHigh freezeLow freezeHigh behaviour knockout otherNames";
const figures = `${melting} ${bulk} ${freezing}`.split(" ");

/** What a row lacks, by name: a key, a figure, its source, what it may hold, or a name of another standard. */
function lacks(row: Readonly<Record<string, unknown>>): readonly string[] {
  const missing = [...always, ...figures].filter((key) => row[key] === undefined);
  const figured = figures.filter((key) => !missing.includes(key));
  const sourceless = figured.filter((key) => !((row[key] as Partial<Published>).source ?? "").trim());
  const empty = figured.filter((key) => {
    const { value } = row[key] as Partial<Published<unknown>>;
    return typeof value === "number"
      ? !Number.isFinite(value)
      : !Array.isArray(value)
        ? !value
        : !value.length;
  });
  const { composition, unprinted } = row as Partial<Alloy>;
  return [
    ...missing,
    ...sourceless.map((key) => `source of ${key}`),
    ...empty.map((key) => `value of ${key}`),
    ...((composition ?? null) === null && (unprinted ?? null) === null ? ["what it may hold"] : []),
    ...(composition && (composition.source.length < 10 || composition.edition.length < 4)
      ? ["source of composition"]
      : []),
  ];
}

test("no row lacks anything", () => {
  expect(alloys.flatMap((row) => lacks(row).map((what) => `${row.id} lacks ${what}`))).toEqual([]);
});

test("what a row lacks is named", () => {
  const [row] = alloys;
  const { latentJKg: _, ...rest } = row!;
  expect(lacks(rest)).toEqual(["latentJKg"]);
  expect(lacks({ ...row!, solidusC: { value: 821, source: " " } })).toEqual(["source of solidusC"]);
  expect(lacks({ ...row!, solidusC: { value: NaN, source: "a sheet" } })).toEqual(["value of solidusC"]);
  expect(lacks({ ...row!, otherNames: { value: [], source: "a sheet" } })).toEqual(["value of otherNames"]);
  expect(lacks({ ...row!, composition: null })).toEqual(["what it may hold"]);
});

// Data sheet for UNS C91300: 1632 °F; materials pages for UNS C90700 and C99700: 0.317 and 0.296 lb/in³;
// materials database for AA 514.0: 1120 and 1180 °F.
test("bell metal, phosphor and white bronze and aluminium-magnesium stand by their sheets", () => {
  const c = (f: number): number => ((f - 32) * 5) / 9;
  expect(Math.abs((alloyOf("bell-metal")?.liquidusC.value ?? 0) - c(1632))).toBeLessThan(1);
  expect(Math.abs((alloyOf("c90700")?.solidKgM3.value ?? 0) / (0.317 * 27_679.9) - 1)).toBeLessThan(0.005);
  expect(Math.abs((alloyOf("c99700")?.solidKgM3.value ?? 0) / (0.296 * 27_679.9) - 1)).toBeLessThan(0.005);
  // The database rounds to ten degrees.
  expect(Math.abs((alloyOf("a514")?.solidusC.value ?? 0) - c(1120))).toBeLessThanOrEqual(6);
  expect(Math.abs((alloyOf("a514")?.liquidusC.value ?? 0) - c(1180))).toBeLessThanOrEqual(6);
});

test("bell metal holds 20 to 22 % of tin", () => {
  const tin = alloyOf("bell-metal")?.composition?.limits.find(({ of }) => of.join() === "sn");
  expect(tin).toMatchObject({ min: 0.2, max: 0.22 });
});

// Pure liquids at their melting points, kg/m³: Cu 8020, Sn 6980, Zn 6580, Mn 5950, Ni 7850, Al 2375, Mg 1590
// (from memory of Iida & Guthrie, 1988). Mixed by mass, a crucible's figure is within a hundredth of theirs.
test.each([
  ["c90700", { 8020: 0.89, 6980: 0.11 }],
  ["bell-metal", { 8020: 0.79, 6980: 0.21 }],
  ["c99700", { 8020: 0.59, 6580: 0.22, 5950: 0.13, 7850: 0.05, 2375: 0.01 }],
  ["a514", { 2375: 0.96, 1590: 0.04 }],
])("%s in the crucible weighs what its elements mix to", (id, shares) => {
  const mixed = 1 / Object.entries(shares).reduce((sum, [kgM3, share]) => sum + share / Number(kgM3), 0);
  expect(Math.abs((alloyOf(id)?.crucibleKgM3.value ?? 0) / mixed - 1)).toBeLessThan(0.01);
});

test.each(alloys)("$name freezes before it melts and is poured above its liquidus", (alloy) => {
  expect(alloy.solidusC.value).toBeLessThanOrEqual(alloy.liquidusC.value);
  expect(alloy.pourLowC.value).toBeGreaterThan(alloy.liquidusC.value);
  expect(alloy.pourHighC.value).toBeGreaterThan(alloy.pourLowC.value);
});

test.each(alloys)(
  "$name is lighter molten than solid, by no more than a sixth",
  ({ liquidKgM3, solidKgM3 }) => {
    expect(liquidKgM3.value).toBeLessThan(solidKgM3.value);
    expect(liquidKgM3.value).toBeGreaterThan(0.83 * solidKgM3.value);
  },
);

test("a tenth of a metre of silicon bronze presses with 7.65 kPa, of aluminium with 2.35", () => {
  const kPa = (id: string): number =>
    headPressurePa({ densityKgM3: alloyOf(id)?.liquidKgM3.value ?? NaN, headM: 0.1 }) / 1000;
  expect(kPa("c87300")).toBeCloseTo(7.65, 2);
  expect(kPa("a356")).toBeCloseTo(2.35, 2);
});

test("an alloy nobody knows is no alloy", () => {
  expect(alloyOf("unobtainium")).toBeNull();
});
