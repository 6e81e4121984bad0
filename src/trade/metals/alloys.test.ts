import { expect, test } from "vitest";
import truth from "../../../tests/truth/alloys.json" with { type: "json" };
import { headPressurePa } from "../../physics/shell/wall.ts";
import type { Alloy } from "./alloy.ts";
import { alloyOf, alloys } from "./alloys.ts";

const published = ({ liquidKgM3, solidKgM3, solidusC, liquidusC, pourLowC, pourHighC }: Alloy) => [
  liquidKgM3,
  solidKgM3,
  solidusC,
  liquidusC,
  pourLowC,
  pourHighC,
];

test.each(truth.rows)("$id melts where its sheet says, within a degree", ({ id, solidusF, liquidusF }) => {
  const alloy = alloyOf(id);
  expect(Math.abs((alloy?.solidusC.value ?? 0) - ((solidusF - 32) * 5) / 9)).toBeLessThan(1);
  expect(Math.abs((alloy?.liquidusC.value ?? 0) - ((liquidusF - 32) * 5) / 9)).toBeLessThan(1);
});

test.each(truth.rows)("$id weighs what its sheet says, within half a percent", ({ id, lbIn3 }) => {
  expect(Math.abs((alloyOf(id)?.solidKgM3.value ?? 0) / (lbIn3 * 27_679.9) - 1)).toBeLessThan(0.005);
});

test("the table has nineteen metals, each with a name of its own", () => {
  expect(alloys).toHaveLength(19);
  expect(new Set(alloys.map(({ id }) => id)).size).toBe(19);
  expect(new Set(alloys.map(({ name }) => name)).size).toBe(19);
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

test.each(alloys)("every figure of $name says where it comes from", (alloy) => {
  for (const { source } of published(alloy)) expect(source.length).toBeGreaterThan(10);
});

test("a tenth of a metre of silicon bronze presses with 7.65 kPa, of aluminium with 2.35", () => {
  const kPa = (id: string): number =>
    headPressurePa({ densityKgM3: alloyOf(id)?.liquidKgM3.value ?? NaN, headM: 0.1 }) / 1000;
  expect(kPa("c87300")).toBeCloseTo(7.65, 2);
  expect(kPa("a356")).toBeCloseTo(2.35, 2);
});

test("an alloy nobody knows is no alloy", () => {
  expect(alloyOf("unobtainium")).toBeNull();
});
