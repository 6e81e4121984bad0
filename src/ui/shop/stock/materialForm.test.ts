import { describe, expect, test } from "vitest";
import { makeFormat } from "../../base/format/units.ts";
import { draftOfMaterial, readMaterial } from "./materialForm.ts";

const metric = makeFormat("metric", "en-GB");
const flour = { ...draftOfMaterial(null), name: "Fine flour", kind: "flour" } as const;

describe("the form of a material", () => {
  test("a name and a kind are enough", () => {
    const read = readMaterial(flour, metric);
    expect(read.ok && read.value).toEqual({ name: "Fine flour", kind: "flour" });
    const none = readMaterial(draftOfMaterial(null), metric);
    expect(!none.ok && Object.keys(none.errors)).toEqual(["name", "kind"]);
  });

  test("a price wants its currency, any word of one's own", () => {
    const bare = readMaterial({ ...flour, pricePerKg: 2 }, metric);
    expect(!bare.ok && bare.errors["currency"]).toMatch(/Enter the currency/);
    const told = readMaterial({ ...flour, pricePerKg: 2, currency: "kr" }, metric);
    expect(told.ok && told.value).toMatchObject({ pricePerKg: 2, currency: "kr" });
  });

  test("a stucco's cut does not stay behind when it becomes a flour", () => {
    const read = readMaterial({ ...flour, stuccoId: "16-30", flourId: "zircon" }, metric);
    expect(read.ok && read.value).toEqual({ name: "Fine flour", kind: "flour", flourId: "zircon" });
  });
});
