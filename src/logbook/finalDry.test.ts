import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { GeometryClass } from "../trade/geometryClasses.ts";
import { standingOf } from "./buildStanding.ts";
import { builtInRecipe } from "./builtIns.ts";
import type { AirReading } from "./piece.ts";
import type { PiecePlan } from "./pieceBodies.ts";
import type { FinalDry } from "./standing.ts";
import type { TestLog } from "./testLog.ts";
import { hourMs, monday, steadyAir, testLog, testShop } from "./testLog.ts";

const at = (hours: number): number => monday + hours * hourMs;
const coats = builtInRecipe("start-general")?.coats ?? [];
const lastAt = 12 * (coats.length - 1);
const steady = (hours: number, air: Partial<AirReading> = {}) =>
  testShop(steadyAir({ from: monday, hours }, air));

/** A shell of the general recipe, a coat every half day; the last one at hour `lastAt`. */
function shellOf(plan: Partial<PiecePlan> = {}, count = coats.length): TestLog {
  const log = testLog({ recipeId: "start-general", ...plan });
  for (const [i, { kind, stuccoId }] of coats.slice(0, count).entries())
    log.coat(at(12 * i), { kind, stuccoId });
  return log;
}

function whole(log: TestLog, hours: number, shop = steady(300)): FinalDry {
  const { finalDry } = standingOf(log.piece(), shop, at(hours));
  if (finalDry === null) throw new Error("no final dry");
  return finalDry;
}

describe("the least wait before fire", () => {
  test("an open shell hangs twelve hours though its last coat is dry within four", () => {
    const { least, sumAt, practice, places } = whole(shellOf(), lastAt + 1);
    expect(places).toHaveLength(1);
    expect(sumAt).toBeLessThan(at(lastAt + 8));
    expect(practice).toMatchObject({ hours: 12, why: "open", leastH: 12, mostH: 24 });
    expect(least).toEqual({ at: at(lastAt + 12), reason: "practice" });
  });

  test("in air over 50 % the longer of the usual waits counts", () => {
    const { least, practice } = whole(shellOf(), lastAt + 1, steady(300, { rh: 0.62 }));
    expect(practice.meanRh).toBeCloseTo(0.62, 6);
    expect(practice.hours).toBe(24);
    expect(least).toEqual({ at: at(lastAt + 24), reason: "practice" });
  });

  test("a blind core among the open work makes it deep, and the sum waits for the core", () => {
    const { least, practice, places, sumAt } = whole(
      shellOf({ geometry: "open", pockets: ["corner", "blind"] }),
      lastAt + 1,
    );
    expect(places.map(({ geometry }) => geometry)).toEqual(["blind", "corner", "open"]);
    expect(places.at(-1)?.isNamed).toBe(true);
    expect(practice).toMatchObject({ why: "deep", leastH: 24, mostH: 72 });
    expect(sumAt).toBeGreaterThan(at(lastAt + 24));
    expect(least).toEqual({ at: sumAt, reason: "sum" });
  });

  test("a thick wall counts as deep without a pocket", () => {
    const log = shellOf();
    log.tell("wall-measured", { wallMm: 12.5 }, at(lastAt + 0.5));
    expect(whole(log, lastAt + 1).practice).toMatchObject({ why: "thick", hours: 24 });
  });

  test("in air over 80 % there is no time, and between 70 and 80 % it waits for drier air", () => {
    const never = whole(shellOf(), lastAt + 2, steady(300, { rh: 0.86 }));
    expect(never.least).toEqual({ at: null, reason: "air-too-damp" });
    const damp = whole(shellOf(), lastAt + 2, steady(300, { rh: 0.75 }));
    expect(damp.sumAt).not.toBeNull();
    expect(damp.least).toEqual({ at: null, reason: "damp-air" });
    const dry = steadyAir({ from: at(lastAt + 60), hours: 100 });
    const clears = testShop([...steadyAir({ from: monday, hours: lastAt + 58 }, { rh: 0.75 }), ...dry]);
    const { least } = whole(shellOf(), lastAt + 100, clears);
    expect(least.reason).toBe("damp-air");
    expect(least.at).toBeGreaterThan(at(lastAt + 58));
    expect(least.at).toBeLessThanOrEqual(at(lastAt + 60));
  });

  test("a room nobody read gives no time", () => {
    expect(whole(shellOf(), lastAt + 2, testShop([])).least).toEqual({ at: null, reason: "no-readings" });
  });

  test("a hand on the face says nothing of the core; the balance does", () => {
    const log = shellOf({ pockets: ["recess"] });
    const coatId = log.piece().coats.at(-1)?.id ?? "";
    const before = whole(log, lastAt + 3);
    log.tell("dryness-seen", { method: "touch", verdict: "dry", coatId }, at(lastAt + 2.5));
    const after = whole(log, lastAt + 3);
    const late = (dry: FinalDry, geometry: GeometryClass) =>
      dry.places.find((place) => place.geometry === geometry)?.drying.readyAt.late;
    expect(late(after, "recess")).toBe(late(before, "recess"));
    expect(after.places[0]?.geometry).toBe("recess");
    expect(after.places[0]?.drying.evidence).toBeNull();
  });

  test("a face that is still wet is a wet pocket: it never dries before the face does", () => {
    const log = shellOf({ geometry: "open", pockets: ["recess"] });
    const coatId = log.piece().coats.at(-1)?.id ?? "";
    const wait = (): number => whole(log, lastAt + 9).sumAt ?? Infinity;
    const before = wait();
    for (const hours of [6, 8, 9])
      log.tell(
        "dryness-seen",
        { method: "surface", surfaceC: 17, dryShellC: 22, coatId },
        at(lastAt + hours),
      );
    const { places } = whole(log, lastAt + 9);
    const [face, recess] = (["open", "recess"] as const).map(
      (wanted) => places.find(({ geometry }) => geometry === wanted)?.drying.readyAt.late ?? Infinity,
    );
    expect(recess).toBeGreaterThanOrEqual(face ?? NaN);
    expect(wait()).toBeGreaterThan(before);
  });

  test("there is none while a coat is to come, nor once the fire has begun", () => {
    const shop = steady(300);
    expect(standingOf(shellOf({}, 8).piece(), shop, at(lastAt)).finalDry).toBeNull();
    const log = shellOf();
    log.tell("burnout-started", {}, at(lastAt + 30));
    expect(standingOf(log.piece(), shop, at(lastAt + 31)).finalDry).toBeNull();
  });

  test("the rack asks for the review no sooner than the slowest place is through", () => {
    const log = shellOf({ pockets: ["blind"] });
    const shop = steady(700);
    const { sumAt } = whole(log, lastAt + 1, shop);
    const hours = ((sumAt ?? NaN) - monday) / hourMs;
    const action = (h: number) => standingOf(log.piece(), shop, at(h)).action;
    expect(action(hours - 1)).toEqual({ kind: "final-dry", at: expect.closeTo(sumAt ?? NaN, -3) });
    expect(action(hours + 1)).toEqual({ kind: "review" });
  });
});

describe("the water of the whole shell", () => {
  test("what went on is the sum of its coats: 80 + 100 + 150 + five of 200 and a seal of 120 g/m²", () => {
    const { water } = whole(shellOf({ areaM2: 0.1 }), lastAt + 0.01);
    expect(water.putOnKgM2).toBeCloseTo(0.08 + 0.1 + 0.15 + 5 * 0.2 + 0.12, 6);
    expect(water.leftKgM2).toBeGreaterThan(0.11);
    expect(water.leftG).toBeCloseTo((water.leftKgM2 ?? NaN) * 100, 6);
    expect(whole(shellOf(), lastAt + 1).water.leftG).toBeNull();
  });

  test("water of a coat covered too soon is in the last one, and counted once", () => {
    const log = testLog({ recipeId: "start-general" });
    for (const [i, { kind, stuccoId }] of coats.entries())
      log.coat(at(i < coats.length - 1 ? 12 * i : lastAt - 11), { kind, stuccoId });
    const { water, places } = whole(log, lastAt - 11 + 0.01);
    const carried = places[0]?.drying.carriedKgM2 ?? 0;
    expect(carried).toBeGreaterThan(0.05);
    expect(water.putOnKgM2).toBeCloseTo(1.45, 6);
    expect(water.leftKgM2).toBeCloseTo(0.12 + carried, 2);
    expect(water.beneathKgM2).toBeLessThan(0.06);
  });
});

const kinds = ["open", "corner", "recess", "blind"] as const;

test("one place more never ends the wait sooner, and the order they are told in changes nothing", () => {
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.constantFrom(...kinds), { minLength: 1 }),
      fc.constantFrom(...kinds),
      fc.double({ min: 0.3, max: 0.69, noNaN: true }),
      (pockets, more, rh) => {
        const shop = steady(300, { rh });
        const waitOf = (list: readonly GeometryClass[]) =>
          whole(shellOf({ pockets: list }), lastAt + 1, shop).least.at ?? Infinity;
        const base = waitOf(pockets);
        expect(waitOf([...pockets, more])).toBeGreaterThanOrEqual(base);
        expect(waitOf(pockets.toReversed())).toBe(base);
      },
    ),
    { numRuns: 20 },
  );
});
