import { millisecondsInHour as hourMs } from "date-fns/constants";
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { GeometryClass } from "../../trade/geometryClasses.ts";
import { standingOf } from "../piece/buildStanding.ts";
import { builtInRecipe } from "../piece/builtIns.ts";
import type { AirReading } from "../piece/piece.ts";
import type { PiecePlan } from "../entries/pieceBodies.ts";
import type { FinalDry } from "../piece/standing.ts";
import type { TestLog } from "../../../tests/logs/testLog.ts";
import { monday, steadyAir, testLog, testShop } from "../../../tests/logs/testLog.ts";

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

const [dryShellG, wetShellG] = [2040, 2065];

/** A shell with a recess, weighed before its seal coat and just after: 2000 g, then 2065 g of which about 25 is water. */
function weighedShell(): TestLog {
  const log = shellOf({ geometry: "open", pockets: ["recess"], areaM2: 0.2 }, coats.length - 1);
  log.tell("piece-weighed", { massG: 2000 }, at(lastAt - 0.1));
  const { kind, stuccoId } = coats.at(-1) ?? { kind: "seal", stuccoId: null };
  log.coat(at(lastAt), { kind, stuccoId });
  weigh(log, 0.05, wetShellG, "drained");
  return log;
}
function weigh(log: TestLog, hours: number, massG: number, moment?: "drained"): void {
  const coatId = log.piece().coats.at(-1)?.id ?? "";
  const body = { method: "weight", massG, coatId, ...(moment ? { moment } : {}) } as const;
  log.tell("dryness-seen", body, at(lastAt + hours));
}
type Times = FinalDry["places"][number]["drying"]["readyAt"];
const timesOf = ({ places }: FinalDry): Partial<Record<GeometryClass, Times>> =>
  Object.fromEntries(places.map(({ geometry, drying }) => [geometry, drying.readyAt]));

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

  test("a blind core among the open work makes it blind, and the sum waits for the core", () => {
    const { least, practice, places, sumAt } = whole(
      shellOf({ geometry: "open", pockets: ["corner", "blind"] }),
      lastAt + 1,
    );
    expect(places.map(({ geometry }) => geometry)).toEqual(["blind", "corner", "open"]);
    expect(places.at(-1)?.isNamed).toBe(true);
    expect(practice).toMatchObject({ why: "blind", leastH: 48, mostH: 72 });
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

  test("a room nobody read gives the late end of an ordinary room's time, or what is usual", () => {
    const unread = whole(shellOf(), lastAt + 2, testShop([]));
    expect(unread.places[0]?.drying.basis.assumed).toBe(true);
    expect(unread.least.at).toBe(Math.max(unread.sumAt ?? NaN, unread.practice.until));
  });

  test("a hand on the face says nothing of the core", () => {
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

  test("a whole shell down at its dry mass, and dry air in its bag, make no recess quicker", () => {
    const log = weighedShell();
    const before = timesOf(whole(log, lastAt + 5));
    for (const [hours, massG] of [2, 3, 4, 5].map((h) => [h, dryShellG] as const)) weigh(log, hours, massG);
    const coatId = log.piece().coats.at(-1)?.id ?? "";
    const bag = { method: "bag", rh: 0.5, roomRh: 0.5, minutes: 30, coatId } as const;
    log.tell("dryness-seen", bag, at(lastAt + 5));
    const dry = whole(log, lastAt + 5);
    const after = timesOf(dry);
    expect(after.open?.late).toBeLessThan(before.open?.late ?? NaN);
    expect(after.recess).toEqual(before.recess);
    expect(dry.places[0]?.drying.verdict).not.toBe("dry");
  });

  test("a whole shell that stays heavy keeps its recess waiting at least as long", () => {
    const log = weighedShell();
    const before = timesOf(whole(log, lastAt + 8));
    for (const hours of [2, 4, 6, 8]) weigh(log, hours, wetShellG - 2);
    const { open, recess } = timesOf(whole(log, lastAt + 8));
    expect(recess?.late).toBeGreaterThan(before.recess?.late ?? NaN);
    expect(recess?.late).toBeGreaterThanOrEqual(open?.late ?? NaN);
  });

  test("a meter on the face that still finds it wet holds the corner back with the face", () => {
    const log = shellOf({ geometry: "open", pockets: ["corner"] });
    const coatId = log.piece().coats.at(-1)?.id ?? "";
    const own = timesOf(whole(log, lastAt + 8)).corner;
    const ohms = (hours: number, reference?: true) =>
      log.tell(
        "dryness-seen",
        { method: "resistance", ohm: 1000, coatId, ...(reference && { reference }) },
        at(lastAt + hours),
      );
    ohms(0.2, true);
    for (const hours of [4, 8]) ohms(hours);
    const { open, corner } = timesOf(whole(log, lastAt + 8));
    expect(open?.late).toBeGreaterThan(own?.late ?? NaN);
    // Read on the face, it speaks for the corner as well, which dries more slowly from there.
    expect(corner?.late).toBeGreaterThanOrEqual(open?.late ?? NaN);
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

test("whatever is seen of the whole, no pocket is through before its own sum or before the open face", () => {
  const seen = fc.record({
    hours: fc.double({ min: 0.5, max: 9, noNaN: true }),
    says: fc.oneof(
      fc
        .integer({ min: dryShellG - 10, max: wetShellG })
        .map((massG) => ({ method: "weight", massG }) as const),
      fc
        .double({ min: 0.4, max: 0.95, noNaN: true })
        .map((rh) => ({ method: "bag", rh, roomRh: 0.5, minutes: 30 }) as const),
      fc.constantFrom("dry", "damp", "wet").map((verdict) => ({ method: "touch", verdict }) as const),
    ),
  });
  fc.assert(
    fc.property(fc.array(seen, { minLength: 1, maxLength: 4 }), (all) => {
      const log = weighedShell();
      const coatId = log.piece().coats.at(-1)?.id ?? "";
      const sum = timesOf(whole(shellOf({ geometry: "open", pockets: ["recess"] }), lastAt + 9)).recess;
      for (const { hours, says } of all.toSorted((a, b) => a.hours - b.hours))
        log.tell("dryness-seen", { ...says, coatId }, at(lastAt + hours));
      const { open, recess } = timesOf(whole(log, lastAt + 9));
      for (const guess of ["early", "likely", "late"] as const) {
        const least = Math.max(sum?.[guess] ?? Infinity, open?.[guess] ?? Infinity);
        expect(recess?.[guess] ?? Infinity).toBeGreaterThanOrEqual(least);
      }
    }),
    { numRuns: 40 },
  );
});
