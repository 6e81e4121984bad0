import fc from "fast-check";
import { expect, test } from "vitest";
import { startingRecipes } from "../../../trade/startingRecipes.ts";
import { makeFormat } from "../../base/format/units.ts";
import { checkFields, withoutEmpty } from "../../base/forms/formFields.ts";
import { coatAdded, coatMoved, coatRemoved, draftOfRecipe, freeName, recipeFields } from "./recipeForm.ts";

const metric = makeFormat("metric", "en-GB");
const [general] = startingRecipes.filter(({ id }) => id === "start-general");
if (general === undefined) throw new Error("the general recipe is gone");
const { id: _, ...body } = general;
const draft = draftOfRecipe(body);
const row = fc.nat(draft.coats.length - 1);

test("a recipe survives the way into the form and back", () => {
  const read = checkFields(recipeFields, draft, metric);
  expect(read.ok && withoutEmpty(read.value)).toEqual(body);
});

test("a recipe without coats is refused with what to do", () => {
  const read = checkFields(recipeFields, { ...draft, coats: [] }, metric);
  expect(!read.ok && read.errors["coats"]).toBe("Found no coats, expected at least one. Add a coat.");
});

test("a dryness out of range is told at its own row", () => {
  const coats = draft.coats.with(2, {
    key: 2,
    kind: "backup",
    stuccoId: "16-30",
    targetDryness: 0.2,
    leastDryH: null,
  });
  const read = checkFields(recipeFields, { ...draft, coats }, metric);
  expect(!read.ok && read.errors["coats.2.targetDryness"]).toMatch(/Found 20% .* expected 50% to 100%/);
});

test("moving a coat there and back, or adding and taking it out, leaves the recipe as it was", () =>
  fc.assert(
    fc.property(row, (at) => {
      const { coats } = draft;
      if (at < coats.length - 1) expect(coatMoved(coatMoved(coats, at, 1), at + 1, -1)).toEqual(coats);
      expect(coatRemoved(coatAdded(coats, at), at + 1)).toEqual(coats);
      const keys = coatAdded(coats, at).map(({ key }) => key);
      expect(new Set(keys).size).toBe(keys.length);
    }),
  ));

test("the first coat can't go further up, nor the last further down", () => {
  expect(coatMoved(draft.coats, 0, -1)).toBe(draft.coats);
  expect(coatMoved(draft.coats, draft.coats.length - 1, 1)).toBe(draft.coats);
});

test("a copy never bears a name that is taken", () => {
  expect(freeName("Small", [])).toBe("Small copy");
  expect(freeName("Small", ["Small copy", "Small copy 2"])).toBe("Small copy 3");
});
