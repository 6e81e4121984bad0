import { millisecondsInHour as hourMs } from "date-fns/constants";
import { describe, expect, test } from "vitest";
import { standingOf } from "../piece/buildStanding.ts";
import { builtInShop } from "../piece/builtIns.ts";
import { pairsOf, type ShopPair } from "./dryingPairs.ts";
import { learnGains, wallReads, weighedCoats } from "./learnedGains.ts";
import type { AirReading } from "../piece/piece.ts";
import type { TestLog } from "../../../tests/logs/testLog.ts";
import { monday, steadyAir, testLog, testShop } from "../../../tests/logs/testLog.ts";
import { learnFrom } from "../../../tests/logs/learnFrom.ts";

const at = (hours: number): number => monday + hours * hourMs;
const air = (over: Partial<AirReading> = {}): readonly AirReading[] =>
  steadyAir({ from: at(-2), hours: 62 }, over);
const shop = testShop(air());
const outerId = (log: TestLog): string => log.piece().coats.at(-1)?.id ?? "";
const feel = (log: TestLog, hours: number, verdict: "dry" | "damp" | "wet"): string =>
  log.tell("dryness-seen", { method: "touch", verdict, coatId: outerId(log) }, at(hours));
/** A bag about the shell: as damp as it can be, or no damper than the room. */
const bag = (log: TestLog, hours: number, says: "dry" | "wet"): string =>
  log.tell(
    "dryness-seen",
    { method: "bag", rh: says === "dry" ? 0.5 : 0.98, roomRh: 0.5, minutes: 30, coatId: outerId(log) },
    at(hours),
  );
const pairs = (log: TestLog, surroundings = shop): readonly ShopPair[] =>
  pairsOf(log.piece(), { surroundings, now: at(60) });

describe("pairs", () => {
  test("found dry in the morning is dry by then, never a drying time", () => {
    const log = testLog();
    log.coat(at(0));
    bag(log, 14, "dry");
    log.coat(at(15));
    expect(pairs(log)).toMatchObject([
      { wetAtS: null, dryAtS: 14 * 3600, weight: 0.7, method: "bag", group: "body/rack-fan", coatNumber: 1 },
    ]);
  });

  test("still wet and later dry bound the time from both sides; the last wet counts", () => {
    const log = testLog();
    log.coat(at(0));
    bag(log, 1, "wet");
    bag(log, 2, "dry");
    bag(log, 2.5, "wet");
    bag(log, 3, "dry");
    log.coat(at(4));
    expect(pairs(log)).toMatchObject([{ wetAtS: 2.5 * 3600, dryAtS: 3 * 3600 }]);
  });

  test("a hand and a colour tell of the outer film: they teach nothing, alone or beside others", () => {
    const log = testLog();
    log.coat(at(0));
    feel(log, 0.5, "wet");
    feel(log, 0.8, "dry");
    log.tell("dryness-seen", { method: "colour", verdict: "dry", coatId: outerId(log) }, at(0.9));
    log.coat(at(4));
    expect(pairs(log)).toEqual([]);
    bag(log, 6, "wet");
    const before = log.piece();
    feel(log, 7, "dry");
    const [alone, beside] = [before, log.piece()].map((piece) =>
      pairsOf(
        { ...piece, coats: [...piece.coats, { ...piece.coats[1]!, id: "over", dippedAt: at(9) }] },
        { surroundings: shop, now: at(60) },
      ),
    );
    expect(alone).toMatchObject([{ coatNumber: 2, wetAtS: 2 * 3600, dryAtS: null }]);
    expect(beside).toEqual(alone);
  });

  test("an open coat teaches nothing until it is covered or fired", () => {
    const log = testLog();
    log.coat(at(0));
    bag(log, 3, "dry");
    expect(pairs(log)).toEqual([]);
    log.tell("burnout-started", {}, at(5));
    log.tell("burnout-ended", { result: "clean" }, at(9));
    expect(pairs(log)).toMatchObject([{ dryAtS: 3 * 3600 }]);
  });

  test("is predicted by the sum without a factor, whatever the shop has learned or set", () => {
    const log = testLog();
    for (const hours of [0, 6, 12, 18, 24]) log.coat(at(hours));
    bag(log, 29, "dry");
    log.coat(at(30));
    const plain = pairs(log)[0]?.predictedS ?? NaN;
    expect(plain / 3600).toBeGreaterThan(2.2);
    expect(plain / 3600).toBeLessThan(2.5);
    const own = {
      ...shop,
      shop: { ...builtInShop, dryingFactor: 2 },
      learned: learnFrom(pairs(log), builtInShop),
    };
    expect(pairs(log, own)[0]?.predictedS).toBeCloseTo(plain, 6);
  });

  test("nor does water carried up from a damp coat beneath depend on what was learned", () => {
    const log = testLog();
    log.coat(at(0));
    log.coat(at(0.6));
    bag(log, 9, "dry");
    log.coat(at(10));
    expect(pairs(log)).toHaveLength(1);
    const own = { ...shop, shop: { ...builtInShop, dryingFactor: 2 } };
    expect(pairs(log, own)[0]?.predictedS).toBeCloseTo(pairs(log)[0]?.predictedS ?? NaN, 6);
  });

  test("a coat dipped twice, or hung in air nobody read, teaches nothing", () => {
    const log = testLog();
    log.coat(at(0));
    log.tell("coat-redipped", { coatId: outerId(log) }, at(0.5));
    bag(log, 6, "dry");
    log.coat(at(7));
    expect(pairs(log)).toEqual([]);
    const unread = testLog();
    unread.coat(at(0));
    bag(unread, 6, "dry");
    unread.coat(at(7));
    expect(pairs(unread)).toHaveLength(1);
    expect(pairs(unread, testShop([]))).toEqual([]);
  });

  test("a steady weight closes a pair with full weight, a falling one opens it", () => {
    const log = testLog({ areaM2: 0.4 });
    log.coat(at(0));
    const weigh = (hours: number, massG: number) =>
      log.tell("dryness-seen", { method: "weight", massG, coatId: outerId(log) }, at(hours));
    weigh(1, 4000);
    weigh(2, 3970);
    weigh(3, 3962);
    weigh(4, 3961);
    log.coat(at(5));
    expect(pairs(log)).toMatchObject([{ wetAtS: 2 * 3600, dryAtS: 4 * 3600, weight: 1, method: "weighing" }]);
  });
});

describe("what was learned", () => {
  /** Twelve coats, each still damp at 1.9 and dry at 2.1 times what the sum says. */
  const slow = (): TestLog => {
    const log = testLog();
    for (let i = 0; i < 12; i++) {
      log.coat(at(i * 12), { step: null });
      const likely = standingOf(log.piece(), testShop(air()), at(i * 12)).outer?.readyAt.likely ?? NaN;
      const hours = (likely - at(i * 12)) / hourMs;
      bag(log, i * 12 + 1.9 * hours, "wet");
      bag(log, i * 12 + 2.1 * hours, "dry");
    }
    log.coat(at(12 * 12), { step: null });
    return log;
  };
  const readings = steadyAir({ from: at(-2), hours: 200 });
  const learned = learnFrom(
    pairsOf(slow().piece(), { surroundings: testShop(readings), now: at(160) }),
    builtInShop,
  );

  test("a shop that dries half as fast is found out, with its interval", () => {
    expect(learned.shop.pairs).toBe(12);
    expect(learned.groups.get("body/rack-fan")?.factor ?? 0).toBeGreaterThan(1.6);
    expect(learned.groups.get("body/rack-fan")?.high ?? 0).toBeGreaterThan(2);
  });

  test("it moves the next coat's time, and a factor set by hand stands before it", () => {
    const log = testLog();
    log.coat(at(0));
    const likely = (over: object): number => {
      const standing = standingOf(log.piece(), { ...testShop(readings), ...over }, at(0.1));
      return ((standing.outer?.readyAt.likely ?? NaN) - at(0)) / hourMs;
    };
    const plain = likely({});
    const factor = learned.groups.get("body/rack-fan")?.factor ?? NaN;
    // The log of this piece counts its ids as the one that taught: none of its coats is one of those.
    const elsewhere = { ...learned, without: new Map() };
    expect(likely({ learned: elsewhere }) / plain).toBeCloseTo(factor, 2);
    const own = { learned: elsewhere, shop: { ...builtInShop, dryingFactor: 1.1 } };
    expect(likely(own) / plain).toBeCloseTo(1.1, 2);
    const { basis } =
      standingOf(log.piece(), { ...testShop(readings), learned: elsewhere }, at(0.1)).outer ?? {};
    expect(basis).toMatchObject({ ownFactor: null, learned: { pairs: 12, shopPairs: 12 } });
  });

  test("a pair left out teaches nothing, and teaches again when it is taken in", () => {
    const all = pairsOf(slow().piece(), { surroundings: testShop(readings), now: at(160) });
    const out = { id: "x", at: 0, coatId: all[0]?.coatId ?? "", reason: "the door stood open" };
    expect(learnFrom(all, { pairsLeftOut: [out] }).shop.pairs).toBe(11);
    expect(learnFrom(all, { pairsLeftOut: [] }).shop.pairs).toBe(12);
  });
});

describe("coat water and build", () => {
  const weighed = (): TestLog => {
    const log = testLog({ areaM2: 0.1 });
    log.tell("piece-weighed", { massG: 1180 }, at(0));
    log.coat(at(0.1));
    const weigh = (hours: number, massG: number, moment: "drained" | "stuccoed") =>
      log.tell("dryness-seen", { method: "weight", massG, moment, coatId: outerId(log) }, at(hours));
    weigh(0.12, 1240, "drained");
    weigh(0.15, 1350, "stuccoed");
    log.tell("wall-measured", { wallMm: 1.8 }, at(5));
    return log;
  };

  test("gains are learned from weighings, build from calipers beside the table", () => {
    const piece = weighed().piece();
    const gains = learnGains(weighedCoats(piece, { surroundings: shop, now: at(6) }), wallReads(piece));
    const backup = gains.coats.get("backup");
    expect(backup?.weighings).toBe(1);
    expect(backup?.slurry.kgM2).toBeCloseTo(0.6, 9);
    expect(backup?.stucco.kgM2).toBeCloseTo(1.1, 9);
    // A caliper at 1.8 against a table's 1.23: the reading's own error leaves it in between.
    expect(gains.startMm["backup"]?.mm).toBeCloseTo(1.229, 3);
    expect(gains.mm["backup"]?.mm).toBeGreaterThan(1.3);
    expect(gains.mm["backup"]?.mm).toBeLessThan(1.8);
  });

  test("own figures, once accepted, are the water and the wall of a coat", () => {
    const piece = weighed().piece();
    const own = { ...builtInShop, slurryKgM2: { backup: 0.6 }, buildMm: { backup: 1.6 } };
    const before = standingOf(piece, shop, at(0.2));
    const after = standingOf(piece, { ...shop, shop: own }, at(0.2));
    expect(after.outer?.startKgM2).toBeCloseTo((0.6 * 0.2) / 0.75, 9);
    expect(after.outer?.depthM).toBeCloseTo(0.0016, 9);
    expect(before.outer?.startKgM2).toBeCloseTo(0.2, 9);
  });
});
