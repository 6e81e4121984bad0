import { expect, test } from "vitest";
import { makeFormat } from "../../base/format/units.ts";
import { changesBetween, draftOfPlan, readPlan } from "./planForm.ts";

const metric = makeFormat("metric", "en-GB");
const bare = draftOfPlan({ name: "Heron" }, "room/first");

test("a name alone is a plan, and nothing else is claimed to be known", () => {
  const read = readPlan(bare, metric);
  expect(read.ok && changesBetween({ name: "Heron" }, read.value.plan)).toEqual({});
});

test("a head typed in metres where millimetres are asked is told with what was found and what to do", () => {
  const read = readPlan({ ...bare, headMm: 0.4 }, metric);
  expect(read.ok).toBe(false);
  if (!read.ok)
    expect(read.errors["headMm"]).toMatch(
      /Found 0\.4\smm for the head, expected 10\smm to 10,000\smm\. Measure/,
    );
});

test("half a flat is asked for its other side, by that side's field", () => {
  const read = readPlan({ ...bare, part: "flat", widthMm: 120 }, metric);
  expect(!read.ok && read.errors).toEqual({
    lengthMm: "Enter both sides of the flat. Give the length, or clear the other.",
  });
});

test("clearing what was known writes null, which the log reads as not known", () => {
  const plan = { name: "Heron", headM: 0.4, part: { kind: "round", diameterMm: 90 } } as const;
  const read = readPlan({ ...draftOfPlan(plan, null), headMm: null }, metric);
  expect(read.ok && changesBetween(plan, read.value.plan)).toEqual({ headM: null });
});

test("a plan survives the way into the form and back", () => {
  const plan = {
    name: "Heron",
    material: "pla",
    alloyId: "c87300",
    metalLitre: 0.5,
    headM: 0.4,
    part: { kind: "flat", widthMm: 120, lengthMm: 180 },
    areaM2: 0.12,
    recipeId: "start-general",
    geometry: "corner",
    note: "cup down",
  } as const;
  const read = readPlan(draftOfPlan(plan, null), metric);
  expect(read.ok && changesBetween(plan, read.value.plan)).toEqual({});
});

test("ribs, crown, sand and held edges survive the way into the form and back, and go with the flat they were for", () => {
  const plan = {
    name: "Heron",
    part: { kind: "flat", widthMm: 300, lengthMm: 400 },
    support: { ribEveryMm: 150, crownMm: 4, sand: "vibrated", edges: "held" },
  } as const;
  const draft = draftOfPlan(plan, null);
  const read = readPlan(draft, metric);
  expect(read.ok && changesBetween(plan, read.value.plan)).toEqual({});
  const asRim = readPlan({ ...draft, part: "rim" }, metric);
  expect(asRim.ok && asRim.value.plan).toMatchObject({
    part: { kind: "rim", widthMm: 300, lengthMm: 400 },
    support: { ribEveryMm: 150, sand: "vibrated" },
  });
  const asTube = readPlan({ ...draft, part: "round", diameterMm: 90 }, metric);
  expect(asTube.ok && changesBetween(plan, asTube.value.plan)).toEqual({
    part: { kind: "round", diameterMm: 90 },
    support: null,
  });
});

test("metal is kept by mass or by volume, not both", () => {
  const read = readPlan({ ...bare, metalBy: "volume", metalKg: 4, metalLitre: 0.5 }, metric);
  expect(read.ok && read.value.plan).toMatchObject({ metalKg: null, metalLitre: 0.5 });
});
