import { describe, expect, test } from "vitest";
import { alloyOf, alloys } from "../../trade/metals/alloys.ts";
import { builtInShop } from "../piece/builtIns.ts";
import { alloyChoices, alloyName, findAlloys, ownAlloy, ownMeltFigures, ownMeltHeat } from "./ownAlloy.ts";
import type { OwnAlloy } from "./shopThings.ts";

const shopWith = (...own: readonly OwnAlloy[]) => ({ ...builtInShop, alloys: own });
const copy: OwnAlloy = {
  id: "own studio bronze",
  copiedFrom: "c87300",
  name: "Studio bronze",
  densityKgM3: 8500,
  liquidDensityKgM3: 7600,
  pourLowC: 1080,
  pourHighC: 1140,
  shrink: 0.019,
  retired: false,
};

describe("a shop's own copy of an alloy", () => {
  test("a metal nobody has copied is the table's row", () => {
    expect(ownAlloy("c90300", builtInShop)).toEqual(alloyOf("c90300"));
    expect(ownAlloy("unobtainium", builtInShop)).toBeNull();
  });

  test("a copy takes the shop's figures and keeps the row's for what it doesn't tell", () => {
    const alloy = ownAlloy("own studio bronze", shopWith(copy));
    expect(alloy).toMatchObject({ id: "c87300", name: "Studio bronze" });
    expect(alloy?.solidKgM3).toEqual({
      value: 8500,
      basis: "own",
      source: "the shop's own copy",
    });
    expect(alloy?.liquidusC).toEqual(alloyOf("c87300")?.liquidusC);
    expect(alloy?.pourLowC.value).toBe(1080);
    const figures = ownMeltFigures("own studio bronze", shopWith(copy));
    expect([figures?.shrinkLow.value, figures?.shrinkHigh.value]).toEqual([0.019, 0.019]);
    expect(figures?.crucibleKgM3.value).toBe(7600);
  });

  test("its own heats go into the sum for a melt, and what it doesn't tell stays the table's", () => {
    const table = ownMeltHeat("c87300", builtInShop);
    const warm = shopWith({ ...copy, latentJKg: 250_000, solidJKgK: 455 });
    expect(ownMeltHeat(copy.id, warm)).toEqual({ ...table, latentJKg: 250_000, solidJKgK: 455 });
  });

  test("a copy under the row's own id stands in for every piece in that metal, until it is taken back", () => {
    const stands = { ...copy, id: "c87300" };
    expect(ownAlloy("c87300", shopWith(stands))?.solidKgM3.value).toBe(8500);
    expect(ownAlloy("c87300", shopWith({ ...stands, retired: true }))).toEqual(alloyOf("c87300"));
  });

  test("a copy that is out of use is no longer offered, but a piece planned in it keeps its metal", () => {
    const retired = shopWith({ ...copy, retired: true });
    expect(alloyChoices(retired).map(({ id }) => id)).not.toContain(copy.id);
    expect(alloyChoices(retired, copy.id).map(({ id }) => id)).toContain(copy.id);
    expect(ownAlloy(copy.id, retired)?.name).toBe("Studio bronze");
  });

  test("own copies stand first in the list, and each row of the table once", () => {
    const choices = alloyChoices(shopWith(copy));
    expect(choices[0]).toMatchObject({ id: copy.id, name: "Studio bronze", isOwn: true });
    expect(choices).toHaveLength(alloys.length + 1);
    expect(alloyName("c90300", builtInShop)).toBe("C90300 tin bronze");
  });

  // EN 1982, EN 1706, BS 1400, BS 1490, SAE J461, and old trade names, from memory.
  test.each([
    ["CuSn12", "c90700"],
    ["cc483k", "c90700"],
    ["PB1", "c90700"],
    ["Gunmetal", "c90500"],
    ["gun metal", "c83600"],
    ["LG2", "c83600"],
    ["85-5-5-5", "c83600"],
    ["manganese bronze", "c86500"],
    ["AB2", "c95500"],
    ["bell", "bell-metal"],
    ["CuSn20", "bell-metal"],
    ["white bronze", "c99700"],
    ["LM25", "a356"],
    ["EN AC-42000", "a356"],
    ["AlSi12", "a413"],
    ["LM5", "a514"],
  ])("%s finds %s", (word, id) => {
    expect(findAlloys(alloyChoices(builtInShop), word).map((found) => found.id)).toContain(id);
  });

  test("what is found by another name says by which; its own name says nothing more", () => {
    const found = (word: string) => findAlloys(alloyChoices(builtInShop), word);
    expect(found("CuSn12")).toMatchObject([{ id: "c90700", foundBy: ["CuSn12-C"] }]);
    expect(found("c90700")).toMatchObject([{ id: "c90700", foundBy: [] }]);
    expect(found("unobtainium")).toEqual([]);
    expect(found(" ")).toHaveLength(alloys.length);
  });

  test("an own copy is found by its own name, and as the row it was copied from", () => {
    const found = (word: string) => findAlloys(alloyChoices(shopWith(copy)), word).map(({ id }) => id);
    expect(found("studio")).toEqual([copy.id]);
    expect(found("art bronze")).toEqual([copy.id, "c87300"]);
  });

  test("a pair two devices have set across each other falls back to the table's", () => {
    const crossed = shopWith({ ...copy, solidusC: 990, liquidusC: 950 });
    expect(ownAlloy(copy.id, crossed)?.solidusC.value).toBe(alloyOf("c87300")?.solidusC.value);
    expect(ownAlloy(copy.id, crossed)?.liquidusC.value).toBe(alloyOf("c87300")?.liquidusC.value);
  });

  test("a copy of nothing the table knows is not known", () => {
    expect(ownAlloy("own x", shopWith({ ...copy, id: "own x", copiedFrom: null }))).toBeNull();
    expect(ownMeltHeat("own x", shopWith({ ...copy, id: "own x", copiedFrom: null }))).toBeNull();
  });

  test("its own liquidus is in the heat of a melt", () => {
    const own = shopWith({ ...copy, solidusC: 850, liquidusC: 960 });
    expect(ownMeltHeat(copy.id, own)?.liquidusC).toBe(960);
  });
});
