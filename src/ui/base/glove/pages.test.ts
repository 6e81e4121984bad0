import fc from "fast-check";
import { expect, test } from "vitest";
import { pagesOf } from "./pages.ts";

const sizes = { alone: 3, paged: 2 };

test("three pieces fit on one screen; a fourth makes it two screens of two", () => {
  expect(pagesOf(["a", "b", "c"], sizes).at(0)).toEqual(["a", "b", "c"]);
  const four = pagesOf(["a", "b", "c", "d"], sizes);
  expect([four.count, four.at(0), four.at(1), four.at(2)]).toEqual([2, ["a", "b"], ["c", "d"], ["a", "b"]]);
});

test("every piece is on exactly one screen, in order, where it is looked for", () =>
  fc.assert(
    fc.property(fc.uniqueArray(fc.nat(), { maxLength: 40 }), (all) => {
      const pages = pagesOf(all, sizes);
      expect(Array.from({ length: pages.count }, (_, page) => pages.at(page)).flat()).toEqual(all);
      for (const [index, piece] of all.entries()) expect(pages.at(pages.pageOf(index))).toContain(piece);
    }),
  ));
