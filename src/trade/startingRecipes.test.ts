import { expect, test } from "vitest";
import { practice } from "./practice.ts";
import { startingRecipeOf, startingRecipes } from "./startingRecipes.ts";
import { sealMm, stuccoOf } from "./stuccos.ts";

const stuccoed = (id: string) => startingRecipeOf(id)?.coats.filter(({ kind }) => kind !== "seal") ?? [];

test("the general recipe has eight stuccoed coats and one seal dip, two of them prime", () => {
  expect(stuccoed("start-general")).toHaveLength(8);
  expect(stuccoed("start-general").filter(({ kind }) => kind === "prime")).toHaveLength(2);
  expect(startingRecipeOf("start-general")?.coats.at(-1)).toMatchObject({ kind: "seal", stuccoId: null });
});

test.each(startingRecipes)("$name names only stuccos of the table and ends in a seal", ({ coats }) => {
  for (const { kind, stuccoId } of coats) {
    if (kind === "seal") expect(stuccoId).toBeNull();
    else expect(stuccoOf(stuccoId ?? "")).not.toBeNull();
  }
  expect(coats.map(({ kind }) => kind).indexOf("seal")).toBe(coats.length - 1);
});

test.each(startingRecipes)("$name reaches its own least wall", ({ coats, floorMm }) => {
  const mm = coats.reduce(
    (sum, { stuccoId }) => sum + (stuccoOf(stuccoId ?? "")?.mmPerCoat.value ?? sealMm.value),
    0,
  );
  expect(mm).toBeGreaterThan(floorMm);
  expect(mm).toBeLessThan(floorMm * 1.5);
});

test.each(startingRecipes)("$name goes from fine to coarse and skips no grade", ({ coats }) => {
  const grains = coats.flatMap(({ stuccoId }) => {
    const stucco = stuccoOf(stuccoId ?? "");
    return stucco === null ? [] : [(stucco.fineMm + stucco.coarseMm) / 2];
  });
  for (const [i, grain] of grains.entries()) {
    const under = grains[i - 1];
    if (under === undefined) continue;
    expect(grain).toBeGreaterThanOrEqual(under);
    expect(grain / under).toBeLessThan(practice.gradeRatio.value);
  }
});

test("bigger work gets a thicker wall", () => {
  expect(startingRecipes.map(({ floorMm }) => floorMm)).toEqual([4.5, 6.5, 10]);
});
