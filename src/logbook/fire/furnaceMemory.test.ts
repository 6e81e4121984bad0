import { describe, expect, test } from "vitest";
import { builtInShop } from "../piece/builtIns.ts";
import type { Melt } from "./fireStates.ts";
import {
  chargedKg,
  furnaceMemory,
  chargeKindOfMelt,
  lossMemory,
  meltSeen,
  plannedChargeKg,
  usefulPower,
} from "./furnaceMemory.ts";
import type { Furnace } from "../shop/shopThings.ts";

const minute = 60_000;
const melt = (of: {
  readonly id: string;
  readonly hot: boolean;
  readonly minutes: number;
  readonly readC?: number;
  readonly furnaceId?: string;
  readonly out?: number;
}): Melt => ({
  id: of.id,
  plan: {
    id: `${of.id}-plan`,
    at: 0,
    furnaceId: of.furnaceId ?? "roarer",
    alloyId: "c90300",
    pieceIds: [],
    items: [{ name: "ingot", massKg: 4, alloyId: "c90300" }],
    pourC: 1150,
  },
  pieceIds: [],
  startedAt: 0,
  hotFurnace: of.hot,
  readings: [{ id: `${of.id}-read`, at: of.minutes * minute, metalC: of.readC ?? 1150 }],
  ended: {
    id: `${of.id}-end`,
    at: of.minutes * minute + 1,
    pouredKg: of.out ?? 3.92,
    piggedKg: 0,
  },
  lastAt: of.minutes * minute + 1,
});
const furnace: Furnace = { id: "roarer", name: "Roarer", heat: "propane", powerKW: 15, retired: false };

describe("what a furnace's own melts teach", () => {
  test("a charge that was weighed speaks before the one that was planned", () => {
    const planned = melt({ id: "a", hot: true, minutes: 30 });
    expect(chargedKg(planned)).toBe(4);
    expect(chargedKg({ ...planned, weighedKg: null })).toBe(4);
    const weighed = { ...planned, weighedKg: 5 };
    expect([chargedKg(weighed), plannedChargeKg(weighed)]).toEqual([5, 4]);
    // Five quarters of the mass, five quarters of the heat.
    const ratio = meltSeen(weighed, builtInShop)!.energyJ / meltSeen(planned, builtInShop)!.energyJ;
    expect(ratio).toBeCloseTo(1.25, 9);
  });
  test("four kilos of C90300 to 1150 °C in half an hour took 1.53 kW, as reckoned by hand", () => {
    const seen = meltSeen(melt({ id: "a", hot: true, minutes: 30 }), builtInShop);
    // 4·[430·980 + 195 000 + 490·150] J over 1800 s.
    expect(seen?.energyJ).toBeCloseTo(2_759_600, -1);
    expect((seen?.energyJ ?? 0) / (seen?.timeS ?? 1) / 1000).toBeCloseTo(1.533, 3);
  });

  test("hot and cold starts are learned apart, each with how many there were", () => {
    const melts = [
      melt({ id: "a", hot: true, minutes: 30 }),
      melt({ id: "b", hot: true, minutes: 32 }),
      melt({ id: "c", hot: false, minutes: 60 }),
    ];
    const memory = furnaceMemory({ furnaceId: "roarer", melts, shop: builtInShop });
    expect([memory.hot?.melts, memory.cold?.melts]).toEqual([2, 1]);
    expect(memory.hot?.medianW).toBeGreaterThan(1.8 * (memory.cold?.medianW ?? 0));
  });

  test("another furnace's melts, and one whose metal was never read molten, teach nothing", () => {
    const melts = [
      melt({ id: "a", hot: true, minutes: 30, furnaceId: "other" }),
      melt({ id: "b", hot: true, minutes: 30, readC: 700 }),
    ];
    expect(furnaceMemory({ furnaceId: "roarer", melts, shop: builtInShop })).toEqual({
      hot: null,
      cold: null,
    });
  });

  test("a cold start nobody has seen is put 50 to 150 % longer than the hot ones", () => {
    const memory = { hot: { medianW: 1500, melts: 4 }, cold: null };
    const known = usefulPower({ furnace, memory, isHotStart: false });
    expect(known.basis).toBe("learned-other");
    expect(known.lowW).toBeCloseTo(600, 6);
    expect(known.highW).toBeCloseTo(1000, 6);
  });

  test("a furnace without a melt takes the starting share of its kind, and its own share where it is set", () => {
    const nothing = { hot: null, cold: null };
    const starting = usefulPower({ furnace, memory: nothing, isHotStart: true });
    expect([starting.basis, starting.lowW, starting.highW]).toEqual(["starting", 2250, 3000]);
    const own = usefulPower({ furnace: { ...furnace, efficiency: 0.1 }, memory: nothing, isHotStart: true });
    expect([own.basis, own.likelyW]).toEqual(["own-share", 1500]);
  });
});

describe("melt loss", () => {
  test("is 1 − out ÷ in over the last six melts of the family", () => {
    const old = melt({ id: "old", hot: true, minutes: 1, out: 2 });
    const six = Array.from({ length: 6 }, (_, i) => melt({ id: `m${i}`, hot: true, minutes: 30 + i }));
    const loss = lossMemory({ family: "bronze", melts: [old, ...six], shop: builtInShop });
    expect(loss.kind === "learned" && [loss.melts, Number(loss.lossShare.toFixed(6))]).toEqual([6, 0.02]);
    expect(lossMemory({ family: "aluminium", melts: six, shop: builtInShop }).kind).toBe("nothing-weighed");
  });
});

test("an older melt that does not say its charge is returns where scrap of unknown make is in it, else clean ingot", () => {
  const item = (alloyId: string | null) => ({ name: "metal", massKg: 3, alloyId });
  expect(chargeKindOfMelt({ items: [item("c90300")] })).toBe("clean-ingot");
  expect(chargeKindOfMelt({ items: [item("c90300"), item(null)] })).toBe("mixed-returns");
  expect(chargeKindOfMelt({ items: [item(null)], chargeKind: "turnings" })).toBe("turnings");
});
