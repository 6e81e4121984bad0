import { describe, expect, test } from "vitest";
import { standingOf } from "./buildStanding.ts";
import { builtInShop } from "./builtIns.ts";
import { coatAdvice, placesOfPiece } from "./coatAdvice.ts";
import { pairsOf } from "./dryingPairs.ts";
import { makeDryingMemory } from "./dryingMemory.ts";
import type { EntryBodies } from "./entry.ts";
import { foldPiece } from "./fold.ts";
import type { Standing } from "./standing.ts";
import { hourMs, monday, steadyAir, testLog, testShop, type TestLog } from "./testLog.ts";

const at = (hours: number): number => monday + hours * hourMs;
const readings = steadyAir({ from: at(-2), hours: 60 });
const shop = testShop(readings);
type Seen = EntryBodies["dryness-seen"];
type SeenOf<T = Seen> = T extends Seen ? Omit<T, "coatId"> : never;
const see = (log: TestLog, hours: number, seen: SeenOf): string =>
  log.tell("dryness-seen", { ...seen, coatId: log.piece().coats.at(-1)?.id ?? "" }, at(hours));
const weigh = (log: TestLog, hours: number, massG: number, moment?: "drained" | "stuccoed"): string =>
  see(log, hours, { method: "weight", massG, ...(moment ? { moment } : {}) });
const standing = (log: TestLog, hours: number): Standing => standingOf(log.piece(), shop, at(hours));

/** One backup coat on a piece of 0.06 m²: 12 g of water. */
function small(): TestLog {
  const log = testLog({ areaM2: 0.06 });
  log.coat(at(0), { step: null });
  return log;
}

describe("a weight with a slipped digit", () => {
  test("that lost more than the coat's water says why it is not heard, and moves nothing", () => {
    const log = small();
    weigh(log, 0.5, 12_380);
    const before = standing(log, 1).outer?.waterKgM2;
    weigh(log, 1, 1238);
    const { outer } = standing(log, 1);
    expect(outer?.waterKgM2).toBeCloseTo(before ?? NaN, 9);
    expect(outer?.belief?.heard ?? []).toEqual([]);
    see(log, 1, { method: "touch", verdict: "damp" });
    expect(standing(log, 1).outer?.belief?.unheard.map(({ why }) => why)).toContainEqual({
      code: "more-than-its-water",
      lossG: 11_142,
      waterG: 12,
    });
  });

  test("that gained as much neither, though a gram more is the balance's unrest", () => {
    const log = small();
    weigh(log, 0.5, 1238);
    weigh(log, 1, 12_380);
    see(log, 1, { method: "touch", verdict: "damp" });
    const unheard = standing(log, 1).outer?.belief?.unheard ?? [];
    expect(unheard.map(({ why }) => why.code)).toEqual(["nothing-before", "gaining"]);
    const other = small();
    weigh(other, 0.5, 1238);
    weigh(other, 1, 1239);
    expect(standing(other, 1).outer?.belief?.heard).toMatchObject([{ said: { by: "weight-loss" } }]);
  });
});

describe("a face that drying can't have made", () => {
  test("warmer than the air or colder than dripping says so, and is not heard", () => {
    for (const [surfaceC, dryShellC, isWarmer] of [
      [26, 22, true],
      [80, -30, true],
      [-30, 80, false],
      [10, 22, false],
      [60, undefined, true],
    ] as const) {
      const log = small();
      see(log, 1, { method: "surface", surfaceC, dryShellC });
      see(log, 1.1, { method: "touch", verdict: "damp" });
      const { belief } = standing(log, 1.2).outer ?? {};
      expect(belief?.heard).toHaveLength(1);
      expect(belief?.unheard.map(({ why }) => why)).toEqual([{ code: "beyond-air", isWarmer }]);
    }
  });

  test("as warm as the dry shell beside it is heard", () => {
    const log = small();
    see(log, 3, { method: "surface", surfaceC: 22.1, dryShellC: 22 });
    expect(standing(log, 3).outer?.belief?.heard).toMatchObject([{ said: { by: "surface", says: "dry" } }]);
  });
});

test("advice is given even for a coat whose checks are at odds with everything else", () => {
  const log = small();
  for (const hours of [45, 46, 47, 48, 49, 50])
    see(log, hours, { method: "bag", rh: 1, roomRh: 0.5, minutes: 30 });
  const holed = readings.filter((one) => one.at < at(1) || one.at > at(39));
  const slow = { ...builtInShop, dryingFactor: 3 };
  const later = standingOf(log.piece(), testShop(holed, { shop: slow }), at(50));
  expect(later.outer?.belief?.factor.likely).toBeGreaterThan(20);
  for (const place of placesOfPiece(later)) expect(coatAdvice(later, place).kind).toBe("advice");
});

describe("checks that leave no belief", () => {
  test("still say why they say nothing", () => {
    const log = testLog({});
    log.coat(at(0), { step: null });
    weigh(log, 0.5, 1238);
    const { outer } = standing(log, 1);
    expect(outer?.belief).toBeNull();
    expect(outer?.saidAlone).toMatchObject({ heard: [], unheard: [{ why: { code: "nothing-before" } }] });
  });

  test("are put to an ordinary room's sum where no air was read, and what a hand felt is told plainly", () => {
    const log = testLog({});
    log.tell("piece-weighed", { massG: 1180.2 }, at(0));
    log.coat(at(0.1), { step: null });
    weigh(log, 0.15, 1238.1, "drained");
    weigh(log, 0.2, 1301.5, "stuccoed");
    weigh(log, 1, 1294);
    see(log, 1, { method: "touch", verdict: "damp" });
    const { outer } = standingOf(log.piece(), testShop([]), at(1.1));
    expect(outer?.saidAlone).toBeNull();
    expect(outer?.belief?.heard).toMatchObject([{ said: { by: "target-mass" } }, { said: { by: "touch" } }]);
    expect(outer?.evidence).toMatchObject({ says: "wet" });
  });

  test("are not told twice where there is a belief", () => {
    const log = small();
    see(log, 1, { method: "bag", rh: 0.9, roomRh: 0.5, minutes: 30 });
    expect(standing(log, 1).outer).toMatchObject({ saidAlone: null, belief: { heard: [{}] } });
  });
});

test("after a further dip of which nothing was seen, a memory tells nothing of before it either", () => {
  const log = small();
  see(log, 1, { method: "touch", verdict: "damp" });
  log.tell("coat-redipped", { coatId: log.piece().coats[0]?.id ?? "" }, at(3));
  const memory = makeDryingMemory();
  for (const hours of [4.5, 6.5]) {
    const now = at(hours);
    expect(standingOf(log.piece(), shop, now).outer?.belief).toBeNull();
    expect(standingOf(log.piece(), shop, now, memory).outer?.belief).toBeNull();
  }
});

describe("the dry mass of a piece before a dip", () => {
  function nextCoatWeighed(beneathAtH: number): TestLog {
    const log = small();
    weigh(log, beneathAtH, 1190.3);
    log.coat(at(14), { step: null });
    weigh(log, 14.02, 1240.1, "drained");
    weigh(log, 14.1, 1300.2, "stuccoed");
    weigh(log, 14.5, 1296.4);
    return log;
  }
  const saidBy = (log: TestLog): readonly string[] =>
    standing(log, 14.6).outer?.belief?.heard.map(({ said }) => said.by) ?? [];

  test("is the last weight of the coat beneath once that was dry", () => {
    expect(saidBy(nextCoatWeighed(13))).toEqual(["target-mass"]);
    expect(saidBy(nextCoatWeighed(8))).toEqual(["target-mass"]);
  });

  test("is not a weight from when the coat beneath was still wet", () => {
    expect(saidBy(nextCoatWeighed(0.7))).toEqual(["weight-loss"]);
  });
});

test("a coat weighed every ten minutes teaches when it stood still, as one weighed every half hour does", () => {
  const log = testLog({ areaM2: 1 });
  log.coat(at(0), { step: null });
  for (let i = 1; i <= 24; i += 1) {
    const hours = i / 6;
    weigh(log, hours, Math.round(5000 - 200 * (1 - Math.exp(-hours / 0.6))));
  }
  log.coat(at(4.5), { step: null });
  const [pair] = pairsOf(log.piece(), { surroundings: shop, now: at(5) });
  expect(pair?.method).toBe("weighing");
  expect((pair?.dryAtS ?? NaN) / 3600).toBeGreaterThan(1);
  expect((pair?.wetAtS ?? NaN) / 3600).toBeGreaterThan(1);
});

test("a piece said to weigh nothing is one not weighed: its coats are worked out as if the line were not there", () => {
  const log = testLog();
  log.tell("piece-weighed", { massG: 1180 }, at(0));
  log.coat(at(0), { step: null });
  const outerBy = (massG: number) => {
    const entries = log
      .entries()
      .map((entry) => (entry.type === "piece-weighed" ? { ...entry, body: { massG } } : entry));
    const piece = foldPiece("heron", entries);
    return piece && standingOf(piece, shop, at(1)).outer;
  };
  expect(outerBy(1180)?.toTell).toMatchObject({ missing: null });
  expect(outerBy(0)?.toTell).toEqual({ missing: "area" });
});
