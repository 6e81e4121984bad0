import { expect, test } from "vitest";
import { demoLinesOf } from "./demoShopLines.ts";

const line = (id: string, body: object) => ({ id, body });
const gone = (
  lines: readonly { readonly id: string; readonly body?: unknown }[],
  own: readonly string[] = [],
) => [...demoLinesOf(lines, new Set(own))].toSorted();

test("lines that name a thing of the demo go, the shop's own stay", () => {
  expect(
    gone([
      line("a", { kilnId: "demo-kiln", name: "Demo: kiln" }),
      line("b", { kilnId: "019a", name: "Kiln" }),
      line("c", { materialId: "019b", how: "lost", bucketId: "demo-prime" }),
      line("d", { alloyId: "own bronze", copiedFrom: "demo-studio-bronze" }),
      line("e", { dryingFactor: 1.2 }),
      line("f", { materialId: "demolition-sand" }),
    ]),
  ).toEqual(["a", "c", "d"]);
});

test("a pair of one of the demo's coats goes, a pair of a real coat stays", () => {
  expect(gone([line("a", { coatId: "x" }), line("b", { coatId: "y" })], ["x"])).toEqual(["a"]);
});

test("a strike goes with what it strikes, and the strike of a strike too, in whatever order they are read", () => {
  const lines = [
    line("c", { struckId: "b", reason: "after all" }),
    line("b", { struckId: "a", reason: "wrong" }),
    line("a", { furnaceId: "demo-furnace" }),
    line("z", { struckId: "real", reason: "wrong" }),
  ];
  expect(gone(lines)).toEqual(["a", "b", "c"]);
});

test("lines nobody can read are left alone", () => {
  expect(gone([{ id: "a" }, { id: "b", body: null }, { id: "c", body: { kilnId: 7 } }])).toEqual([]);
});
