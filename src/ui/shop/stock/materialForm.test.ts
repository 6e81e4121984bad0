import { describe, expect, test } from "vitest";
import { makeFormat } from "../../base/format/units.ts";
import { check } from "../../base/forms/fieldSchema.ts";
import { draftOfMaterial, materialSchema } from "./materialForm.ts";

const metric = materialSchema(makeFormat("metric", "en-GB"));
const flour = { ...draftOfMaterial(null), name: "Fine flour", kind: "flour" } as const;

describe("the form of a material", () => {
  test("a name and a kind are enough", () => {
    const read = check(metric, flour);
    expect(read.ok && read.value).toEqual({ name: "Fine flour", kind: "flour" });
    const none = check(metric, draftOfMaterial(null));
    expect(!none.ok && Object.keys(none.errors)).toEqual(["name", "kind"]);
  });

  test("a price wants its currency, any word of one's own", () => {
    const bare = check(metric, { ...flour, pricePerKg: 2 });
    expect(!bare.ok && bare.errors["currency"]).toMatch(/expected its currency/);
    const told = check(metric, { ...flour, pricePerKg: 2, currency: "kr" });
    expect(told.ok && told.value).toMatchObject({ pricePerKg: 2, currency: "kr" });
  });

  test("a stucco's cut does not stay behind when it becomes a flour", () => {
    const read = check(metric, { ...flour, stuccoId: "16-30", flourId: "zircon" });
    expect(read.ok && read.value).toEqual({ name: "Fine flour", kind: "flour", flourId: "zircon" });
  });
});
