import { describe, expect, test } from "vitest";
import { builtInShop } from "../piece/builtIns.ts";
import { alloyName, ownMeltHeat } from "../shop/ownAlloy.ts";
import { meltCourse, meltExpected, metalAfter } from "./meltCourse.ts";
import { newItem, type ItemDraft } from "./meltDraft.ts";
import { mixSum } from "./meltSum.ts";

const ingot = (key: number, alloyId: string, massKg: number): ItemDraft => ({
  ...newItem(key, alloyId, ""),
  massKg,
});
const sumOf = (items: readonly ItemDraft[], tableId = "c87300") =>
  mixSum({ items, tableId, shop: builtInShop, alloyNamed: (id) => alloyName(id, builtInShop) });
const verdictOf = (items: readonly ItemDraft[], tableId?: string) => {
  const { judged } = sumOf(items, tableId);
  return judged?.ok === true ? judged.verdict : judged?.code;
};

describe("a charge against its alloy's limits", () => {
  const thinned = [ingot(1, "c87300", 6), ingot(2, "copper", 4)];

  test("6 kg of silicon bronze thinned with 4 kg of copper has too little silicon", () => {
    expect(verdictOf(thinned)).toBe("fail");
    const { mix } = sumOf(thinned);
    expect(mix?.shares.si?.likely).toBeCloseTo(0.024, 2);
  });

  test("what is said to add puts it exactly where it is said to", () => {
    const { fix } = sumOf(thinned);
    if (fix?.raise?.kind !== "add") throw new Error("no addition");
    const more = fix.raise.additions.map(({ name, addKg }, at): ItemDraft => ({
      ...newItem(10 + at, null, ""),
      kind: "pure",
      element: name === "Si" ? "si" : "mn",
      massKg: addKg,
    }));
    const { mix } = sumOf([...thinned, ...more]);
    for (const { element, share } of fix.targets) expect(mix?.shares[element]?.likely).toBeCloseTo(share, 9);
  });

  test("scrap of unknown make wants an assay, not a guess", () => {
    const scrap: ItemDraft = { ...newItem(1, null, ""), massKg: 1, springy: "no" };
    expect(verdictOf([ingot(2, "c87300", 9), scrap])).toBe("assay");
    const sum = sumOf([scrap], "c90300");
    expect(sum.guessed).toHaveLength(1);
    expect(sum.fix).toBeNull();
  });

  test("ingot of the alloy's own name is told apart from a mixture", () => {
    expect(sumOf([ingot(1, "c87300", 4)]).isAllNamed).toBe(true);
    expect(sumOf(thinned).isAllNamed).toBe(false);
    expect(sumOf([]).isAllNamed).toBe(false);
  });

  test("2 kg of leaded brass in 8 kg of lead-free tin bronze is over on lead, and 23 kg would thin it", () => {
    const free: ItemDraft = {
      ...newItem(1, null, "lead-free"),
      kind: "assay",
      massKg: 8,
      springy: "no",
      assay: [
        { element: "sn", low: 0.08, high: null },
        { element: "zn", low: 0.04, high: null },
      ],
    };
    const { fix } = sumOf([free, ingot(2, "c83600", 2)], "c90300");
    const lead = fix?.dilutions.find(({ element }) => element === "pb");
    expect(lead?.addition.kind === "add" && lead.addition.addKg).toBeGreaterThan(22);
    expect(lead?.addition.kind === "add" && lead.addition.addKg).toBeLessThan(24.5);
  });

  test("what may hold beryllium is refused, and is not reckoned before the question is answered", () => {
    const scrap: ItemDraft = { ...newItem(1, null, "springs"), massKg: 0.1 };
    expect(verdictOf([ingot(2, "c87300", 9), { ...scrap, springy: "yes" }])).toBe("beryllium-suspect");
    expect(sumOf([ingot(2, "c87300", 9), scrap]).unsaid).toEqual(["springs"]);
  });

  test("a metal without limits has a mixture and no verdict", () => {
    const sum = sumOf([ingot(1, "iron", 5)], "iron");
    expect([sum.judged, sum.mix?.inKg]).toEqual([null, 5]);
  });
});

describe("a melt against the clock", () => {
  const heat = ownMeltHeat("c90300", builtInShop);
  if (heat === null) throw new Error("not in the table");
  const power = {
    lowW: 1300,
    likelyW: 1533,
    highW: 1800,
    basis: "learned",
    melts: 3,
    source: "",
  } as const;

  test("4 kg at 1.53 kW are at 1150 °C after half an hour", () => {
    expect(metalAfter({ afterS: 1800, powerW: 1533, massKg: 4, heat })).toBeCloseTo(1150, 0);
    expect(meltCourse({ powerW: 1533, massKg: 4, heat, pourC: 1150 }).at(-1)?.afterS).toBeCloseTo(1800, 0);
  });

  test("it stands at the liquidus while it melts", () => {
    const corners = meltCourse({ powerW: 1533, massKg: 4, heat, pourC: 1150 });
    const middle = ((corners[1]?.afterS ?? 0) + (corners[2]?.afterS ?? 0)) / 2;
    expect(metalAfter({ afterS: middle, powerW: 1533, massKg: 4, heat })).toBe(heat.liquidusC);
  });

  test("a reading moves the time of pouring heat, and a cold one says it is behind", () => {
    const from = { startedAt: 0, power, massKg: 4, heat, pourC: 1150 };
    const unread = meltExpected({ ...from, readings: [] });
    expect(unread.likelyAt / 60_000).toBeCloseTo(30, 0);
    const behind = meltExpected({ ...from, readings: [{ at: 20 * 60_000, metalC: 400 }] });
    expect(behind.standing).toBe("behind");
    expect(behind.likelyAt).toBeGreaterThan(unread.likelyAt);
    const ahead = meltExpected({ ...from, readings: [{ at: 5 * 60_000, metalC: 600 }] });
    expect(ahead.standing).toBe("ahead");
    expect(ahead.earlyAt).toBeLessThan(ahead.lateAt);
  });
});
