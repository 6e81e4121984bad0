import { millisecondsInHour as hourMs } from "date-fns/constants";
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { factorOf } from "../../physics/evidence/shopLearning.ts";
import { standingOf } from "../piece/buildStanding.ts";
import { builtInShop } from "../piece/builtIns.ts";
import { groupOf } from "./dryingFactor.ts";
import { pairsOf } from "./dryingPairs.ts";
import type { CoatDrying } from "../piece/standing.ts";
import { monday, steadyAir, testLog, testShop, type TestLog } from "../../../tests/logs/testLog.ts";
import { learnFrom } from "../../../tests/logs/learnFrom.ts";

const at = (hours: number): number => monday + hours * hourMs;
const shop = testShop(steadyAir({ from: at(-2), hours: 100 }, { airC: 20, rh: 0.55, air: "still" }));
const outerId = (log: TestLog): string => log.piece().coats.at(-1)?.id ?? "";
const taught = (log: TestLog) =>
  learnFrom(pairsOf(log.piece(), { surroundings: shop, now: at(90) }), builtInShop);

const body = groupOf("backup", "still");
type Taught = Parameters<typeof learnFrom>[0][number];
const anyPair = fc
  .record({
    coatId: fc.constantFrom("a", "b", "c", "d", "e"),
    ln: fc.double({ min: -2, max: 2, noNaN: true }),
    width: fc.double({ min: 0, max: 1, noNaN: true }),
    group: fc.constantFrom(body, "prime/still"),
  })
  .map(({ coatId, ln, width, group }): Taught => {
    const wetAtS = 3600 * Math.exp(ln);
    return { coatId, group, predictedS: 3600, wetAtS, dryAtS: wetAtS * Math.exp(width), weight: 1 };
  });
const anyPairs = fc.uniqueArray(anyPair, { selector: ({ coatId }) => coatId, maxLength: 5 });

describe("a hand", () => {
  test.each([1, 8])("that felt %i primes dry after 44 min leaves the factor at 1", (count) => {
    const log = testLog();
    for (let i = 0; i < count; i += 1) {
      log.coat(at(4 * i), { kind: "prime", step: null });
      log.tell(
        "dryness-seen",
        { method: "touch", verdict: "dry", coatId: outerId(log) },
        at(4 * i + 44 / 60),
      );
    }
    log.coat(at(4 * count));
    expect(log.piece().dryness).toHaveLength(count);
    expect(taught(log).shop.pairs).toBe(0);
    expect(taught(log).shop.factor).toBeCloseTo(1, 9);
  });

  test("that found one still wet long after its time does not slow the shop either", () => {
    const log = testLog();
    log.coat(at(0));
    log.tell("dryness-seen", { method: "touch", verdict: "wet", coatId: outerId(log) }, at(40));
    log.coat(at(60));
    expect(taught(log).shop.pairs).toBe(0);
    expect(taught(log).shop.factor).toBeCloseTo(1, 9);
  });

  test("or an eye, added to whatever was bagged, changes no factor", () =>
    fc.assert(
      fc.property(
        fc.array(fc.record({ bagH: fc.integer({ min: 1, max: 30 }), dry: fc.boolean() }), { maxLength: 3 }),
        fc.record({
          method: fc.constantFrom("touch" as const, "colour" as const),
          verdict: fc.constantFrom("dry" as const, "damp" as const, "wet" as const),
          coat: fc.nat(),
          h: fc.integer({ min: 1, max: 30 }),
        }),
        (coats, hand) => {
          const build = (isFelt: boolean): TestLog => {
            const log = testLog();
            for (const [i, { bagH, dry }] of coats.entries()) {
              log.coat(at(31 * i), { step: null });
              const coatId = outerId(log);
              const seen = [
                () =>
                  log.tell(
                    "dryness-seen",
                    { method: "bag", rh: dry ? 0.55 : 0.98, roomRh: 0.55, minutes: 30, coatId },
                    at(31 * i + bagH),
                  ),
                () => {
                  if (!isFelt || hand.coat % coats.length !== i) return;
                  const { method, verdict } = hand;
                  log.tell("dryness-seen", { method, verdict, coatId }, at(31 * i + hand.h));
                },
              ];
              for (const tell of bagH <= hand.h ? seen : seen.toReversed()) tell();
            }
            log.coat(at(31 * coats.length), { step: null });
            return log;
          };
          const [plain, felt] = [taught(build(false)), taught(build(true))];
          expect(felt.shop).toEqual(plain.shop);
          expect([...felt.groups]).toEqual([...plain.groups]);
        },
      ),
      { numRuns: 25 },
    ));
});

describe("a coat's own evidence", () => {
  test("never comes back to it: its factor is the one the others give", () =>
    fc.assert(
      fc.property(anyPairs, anyPair, (others, pair) => {
        const own = { ...pair, coatId: "own" };
        const [without, all] = [learnFrom(others, builtInShop), learnFrom([...others, own], builtInShop)];
        expect(all.without.get("own")).toEqual({
          factor: factorOf(without, own.group),
          shopPairs: without.shop.pairs,
        });
      }),
      { numRuns: 30 },
    ));

  test("adding its pair changes none of its own times, and does change another coat's", () =>
    fc.assert(
      fc.property(anyPairs, fc.double({ min: -1.5, max: 1.5, noNaN: true }), (others, ln) => {
        const log = testLog();
        log.coat(at(0), { step: null });
        const t = 3600 * Math.exp(ln);
        const own = { coatId: outerId(log), group: body, predictedS: 3600, wetAtS: t, dryAtS: t, weight: 1 };
        const judge = (pairs: readonly Taught[]): CoatDrying | null =>
          standingOf(log.piece(), { ...shop, learned: learnFrom(pairs, builtInShop) }, at(0.5)).outer;
        const [before, after] = [judge(others), judge([...others, own])];
        expect(after?.readyAt).toEqual(before?.readyAt);
        expect(after?.basis.learned).toEqual(before?.basis.learned);
        const other = judge([...others, { ...own, coatId: "another" }]);
        if (Math.abs(ln) > 0.1 && others.length === 0) expect(other?.readyAt).not.toEqual(before?.readyAt);
      }),
      { numRuns: 30 },
    ));

  test("nor by way of a pocket of the same piece", () => {
    const log = testLog({ pockets: ["recess"] });
    log.coat(at(0), { step: null });
    const t = 3600 * 0.3;
    const own = { coatId: outerId(log), group: body, predictedS: 3600, wetAtS: t, dryAtS: t, weight: 1 };
    const factorsBy = (pairs: readonly Taught[]) => {
      const learned = learnFrom(pairs, builtInShop);
      const { finalDry, outer } = standingOf(log.piece(), { ...shop, learned }, at(1));
      expect(finalDry?.places.length).toBeGreaterThan(1);
      return [outer, ...(finalDry?.places ?? []).map(({ drying }) => drying)].map((one) => one?.readyAt);
    };
    expect(factorsBy([own])).toEqual(factorsBy([]));
  });
});

describe("a room nobody read", () => {
  const drying = (
    readings: Parameters<typeof testShop>[0],
    now: number,
    geometry: "open" | "deep",
  ): CoatDrying => {
    const log = testLog({ geometry: geometry === "deep" ? "recess" : "open" });
    log.coat(at(0), { step: null });
    const { outer } = standingOf(log.piece(), testShop(readings), at(now));
    if (outer === null) throw new Error("no coat");
    return outer;
  };
  const hours = (when: number | null): number => ((when ?? NaN) - at(0)) / hourMs;

  test("gives early, likely and late a factor of 2.5 apart; readings that say the same narrow them", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 6, noNaN: true }),
        fc.constantFrom("open" as const, "deep" as const),
        fc.integer({ min: 1, max: 5 }),
        (now, geometry, everyH) => {
          const { readyAt: unread } = drying([], now, geometry);
          expect(hours(unread.likely) / hours(unread.early)).toBeCloseTo(2.5, 3);
          expect(hours(unread.late) / hours(unread.likely)).toBeCloseTo(2.5, 3);
          const same = steadyAir({ from: at(-2), hours: 10, everyH }, { airC: 20, rh: 0.55, air: "still" });
          const { readyAt: read } = drying(same, now, geometry);
          expect(hours(read.likely)).toBeCloseTo(hours(unread.likely), 2);
          expect(hours(read.early)).toBeGreaterThan(hours(unread.early));
          expect(hours(read.late)).toBeLessThan(hours(unread.late));
        },
      ),
      { numRuns: 30 },
    ));
});
