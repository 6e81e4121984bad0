import { expect, test } from "vitest";
import { hazardsOf } from "../../trade/metals/hazards.ts";
import { builtInShop } from "../piece/builtIns.ts";
import type { Melt } from "../fire/fireStates.ts";
import { alloyContents, mayHoldOf, meltContents, meltOfPiece } from "./meltContents.ts";

const plan: Melt["plan"] = {
  id: "plan",
  at: 0,
  furnaceId: null,
  alloyId: "c87300",
  pieceIds: [],
  items: [{ name: "old fittings", massKg: 4, alloyId: null }],
  pourC: 1100,
};
const scrap = { cu: { low: 0.5, high: 1 }, zn: { low: 0, high: 0.42 }, pb: { low: 0, high: 0.15 } };

test("a melt of scrap is what its mix may hold, not the alloy it was meant to be", () => {
  const mixed = meltContents({ plan: { ...plan, mayHold: mayHoldOf(scrap) } }, builtInShop);
  expect(mixed).toEqual(scrap);
  expect(hazardsOf(mixed ?? {})).toEqual(["lead", "zinc-fume", "copper-fume"]);
});

test("an older melt, and one whose shares make no sense, is the alloy it names", () => {
  const named = alloyContents("c87300", builtInShop);
  expect(meltContents({ plan }, builtInShop)).toEqual(named);
  const odd = [
    { element: "zn", low: 0, high: 7 },
    { element: "unobtainium", low: 0, high: 0.5 },
  ];
  expect(meltContents({ plan: { ...plan, mayHold: odd } }, builtInShop)).toEqual(named);
  expect(meltContents({ plan: { ...plan, alloyId: "unobtainium" } }, builtInShop)).toBeNull();
});

test("an own copy has the hazards of the row it stands on", () => {
  const own = { id: "own", copiedFrom: "c83600", name: "Own red brass", retired: false } as const;
  const copy = { ...own, densityKgM3: 8800, liquidDensityKgM3: 7900, shrink: 0.016 };
  const shop = { ...builtInShop, alloys: [copy] };
  expect(alloyContents("own", shop)).toEqual(alloyContents("c83600", builtInShop));
  expect(alloyContents(undefined, shop)).toBeNull();
});

test("a trace below half a hundredth of a percent is not kept", () => {
  expect(mayHoldOf({ zn: { low: 0, high: 0.00004 } })).toEqual([]);
  expect(mayHoldOf({ zn: { low: 0, high: 0.00005 } })).toHaveLength(1);
});

test("a piece's melt is the last that names it, and no plan that was put away", () => {
  const melt = (id: string, at: number, dropped: boolean): Melt => ({
    id,
    plan: { ...plan, at },
    pieceIds: ["gate finial"],
    startedAt: null,
    hotFurnace: null,
    readings: [],
    lastAt: at,
    ended: dropped ? { id: "end", at, pouredKg: 0, piggedKg: 0, dropped: true } : null,
  });
  const melts = [melt("late", 20, false), melt("early", 10, false), melt("dropped", 30, true)];
  expect(meltOfPiece(melts, "gate finial")?.id).toBe("late");
  expect(meltOfPiece(melts, "lantern")).toBeNull();
});
