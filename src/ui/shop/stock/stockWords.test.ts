import { expect, test } from "vitest";
import type { Material } from "../../../logbook/shop/shopThings.ts";
import { sharedText } from "./stockWords.ts";

const zircon = (id: string, more: Partial<Material> = {}): Material => ({
  id,
  name: `Zircon ${id}`,
  kind: "flour",
  flourId: "zircon",
  retired: false,
  ...more,
});
const [old, fresh] = [zircon("old"), zircon("fresh")];

test("of two sacks of one flour the first is said to give all, and the second which one it is", () => {
  expect(sharedText(old, [old, fresh])).toMatch(
    /^2 materials are of this flour: .* off this one, the first\.$/,
  );
  expect(sharedText(fresh, [old, fresh])).toMatch(/off the first, Zircon old\. Count both/);
});

test("two binders share, as any sol is the sol; two cuts of sand do not", () => {
  const [drum, can] = [zircon("drum", { kind: "sol" }), zircon("can", { kind: "sol" })];
  expect(sharedText(can, [drum, can])).toMatch(/^2 materials are binders/);
  const [fine, coarse] = ["80-120", "16-30"].map((stuccoId) =>
    zircon(stuccoId, { kind: "stucco", stuccoId }),
  );
  expect(fine && coarse && sharedText(coarse, [fine, coarse])).toBeNull();
});

test("alone, put away, or of a flour not told, nothing is said", () => {
  expect(sharedText(old, [old])).toBeNull();
  expect(sharedText(fresh, [{ ...old, retired: true }, fresh])).toBeNull();
  const [one, other] = [zircon("a", { flourId: undefined }), zircon("b", { flourId: undefined })];
  expect(sharedText(other, [one, other])).toBeNull();
});
