import { millisecondsInHour as hourMs } from "date-fns/constants";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { standingOf } from "../piece/buildStanding.ts";
import { builtInBucket, builtInRecipe, builtInShop } from "../piece/builtIns.ts";
import type { AirReading, Bucket, Recipe } from "../piece/piece.ts";
import type { PiecePlan } from "../entries/pieceBodies.ts";
import type { CoverAnswer, Standing } from "../piece/standing.ts";
import type { Surroundings } from "../piece/surroundings.ts";
import { monday, steadyAir, testLog, testShop, type TestLog } from "../../../tests/logs/testLog.ts";

const at = (hours: number): number => monday + hours * hourMs;
const minute = 1 / 60;
/** Air that dries any open coat long before its minimum, and air that takes longer than it. */
const quick = steadyAir({ from: monday, hours: 200 }, { airC: 30, rh: 0.2, air: "tunnel" });
const slow = steadyAir({ from: monday, hours: 400 }, { airC: 16, rh: 0.7, air: "still" });
const room = (readings: readonly AirReading[], more: Partial<Surroundings> = {}): Surroundings => ({
  ...testShop(readings),
  ...more,
});

/** One coat of the kind at hour 1. */
function oneCoat(body: Parameters<TestLog["coat"]>[1] = {}, plan: Partial<PiecePlan> = {}): TestLog {
  const log = testLog(plan);
  log.coat(at(1), { step: null, ...body });
  return log;
}
const standing = (log: TestLog, hours: number, shop: Surroundings): Standing =>
  standingOf(log.piece(), shop, at(hours));
function cover(log: TestLog, hours: number, shop: Surroundings): CoverAnswer {
  const answer = standing(log, hours, shop).cover;
  if (answer === null) throw new Error("no coat");
  return answer;
}
const feel = (log: TestLog, hours: number, verdict: "dry" | "damp" | "wet" = "dry"): void => {
  log.tell(
    "dryness-seen",
    { method: "touch", verdict, coatId: log.piece().coats.at(-1)?.id ?? "" },
    at(hours),
  );
};
const weigh = (log: TestLog, hours: number, massG: number): void => {
  log.tell(
    "dryness-seen",
    { method: "weight", massG, coatId: log.piece().coats.at(-1)?.id ?? "" },
    at(hours),
  );
};

describe("the starting minimums: prime 2 h, intermediate 3 h, backup 4 h, seal like a backup", () => {
  test.each([
    ["prime", 2],
    ["intermediate", 3],
    ["backup", 4],
    ["seal", 4],
  ] as const)("%s is drying until the last minute of its %d h and dry with the next", (kind, hours) => {
    const log = oneCoat({ kind });
    const before = cover(log, 1 + hours - minute, room(quick));
    expect(before).toMatchObject({
      state: "drying",
      by: "minimum",
      dryAt: at(1 + hours),
      checkAt: at(1 + hours),
    });
    expect(before.minimum).toEqual({ hours, until: at(1 + hours), from: "starting" });
    expect(before.airAt).toBeLessThan(at(1 + hours));
    expect(cover(log, 1 + hours, room(quick))).toMatchObject({ state: "dry", by: "minimum" });
  });

  test("a further dip of the coat begins it anew", () => {
    const log = oneCoat();
    log.tell("coat-redipped", { coatId: log.piece().coats[0]?.id ?? "" }, at(3));
    expect(cover(log, 6.9, room(quick)).state).toBe("drying");
    expect(cover(log, 7, room(quick))).toMatchObject({ state: "dry", dryAt: at(7) });
  });
});

describe("the most specific minimum counts", () => {
  const recipe = (leastDryH?: number): Recipe => {
    const base = builtInRecipe("start-general");
    if (base === null) throw new Error("no starting recipe");
    const [first, ...rest] = base.coats;
    if (first === undefined) throw new Error("no coat in it");
    return {
      ...base,
      id: "own",
      coats: [{ ...first, ...(leastDryH === undefined ? {} : { leastDryH }) }, ...rest],
    };
  };
  const bucket = (leastDryH?: number): Bucket => {
    const base = builtInBucket("first-backup");
    if (base === null) throw new Error("no bucket");
    return { ...base, targets: { ...base.targets, ...(leastDryH === undefined ? {} : { leastDryH }) } };
  };
  const minimumOf = (of: { recipe?: number; bucket?: number; shop?: number }) => {
    const log = oneCoat({ kind: "prime", step: 0 }, { recipeId: "own" });
    const shop = of.shop === undefined ? builtInShop : { ...builtInShop, leastDryH: { prime: of.shop } };
    const around = room(quick, {
      shop,
      recipes: new Map([["own", recipe(of.recipe)]]),
      buckets: new Map([["first-backup", bucket(of.bucket)]]),
    });
    const { minimum } = cover(log, 2, around);
    return [minimum.from, minimum.hours];
  };
  test("recipe step, then bucket, then shop, then starting value; the shortest does not win", () => {
    expect(minimumOf({})).toEqual(["starting", 2]);
    expect(minimumOf({ shop: 5 })).toEqual(["shop", 5]);
    expect(minimumOf({ shop: 5, bucket: 7 })).toEqual(["bucket", 7]);
    expect(minimumOf({ shop: 5, bucket: 7, recipe: 0.5 })).toEqual(["recipe", 0.5]);
    expect(minimumOf({ shop: 1, recipe: 9 })).toEqual(["recipe", 9]);
  });

  test("one that no shop could have is passed over", () => {
    expect(minimumOf({ shop: 5, bucket: NaN, recipe: 5000 })).toEqual(["shop", 5]);
  });
});

test("past the minimum it is to check from the likely time and dry from the cautious end, each to the minute", () => {
  const log = oneCoat();
  const { readyAt } = standing(log, 2, room(slow)).outer ?? { readyAt: { likely: null, late: null } };
  const hourOf = (time: number | null): number => ((time ?? NaN) - monday) / hourMs;
  const [likelyH, lateH] = [hourOf(readyAt.likely), hourOf(readyAt.late)];
  expect(likelyH).toBeGreaterThan(5);
  expect(cover(log, likelyH - minute, room(slow)).state).toBe("drying");
  expect(cover(log, likelyH + minute, room(slow))).toMatchObject({ state: "check", checkAt: readyAt.likely });
  expect(cover(log, lateH - minute, room(slow)).state).toBe("check");
  expect(cover(log, lateH + minute, room(slow))).toMatchObject({
    state: "dry",
    by: "air",
    dryAt: readyAt.late,
  });
});

describe("a touch that says dry", () => {
  test("before likely time and minimum changes no time, and says from when one counts", () => {
    const log = oneCoat();
    const before = cover(log, 3, room(slow));
    feel(log, 2);
    const after = cover(log, 3, room(slow));
    expect([after.state, after.checkAt, after.dryAt]).toEqual([before.state, before.checkAt, before.dryAt]);
    expect(after.touch).toEqual({ at: at(2), countsFrom: before.checkAt });
  });

  test("after both lets an open or cornered coat be covered, a further one makes it no later", () => {
    for (const geometry of ["open", "corner"] as const) {
      const log = oneCoat({}, { geometry });
      const countsH = ((cover(log, 2, room(slow)).checkAt ?? NaN) - monday) / hourMs;
      feel(log, countsH + minute);
      feel(log, countsH + 0.2);
      const answer = cover(log, countsH + 0.3, room(slow));
      expect(answer).toMatchObject({ state: "dry", by: "touch", touch: null });
      expect(Math.abs((answer.dryAt ?? NaN) - at(countsH + minute))).toBeLessThan(1);
    }
  });

  test("never counts in a recess or a blind core, named or among the further places", () => {
    for (const plan of [
      { geometry: "recess" },
      { geometry: "blind" },
      { pockets: ["recess"] },
      { pockets: ["blind"] },
    ] as const) {
      const log = oneCoat({}, plan);
      const checkH = ((cover(log, 2, room(slow)).checkAt ?? NaN) - monday) / hourMs;
      feel(log, checkH + 0.1);
      expect(cover(log, checkH + 0.2, room(slow))).toMatchObject({
        state: "check",
        touch: { countsFrom: null },
      });
    }
  });

  test("in a room nobody read it counts from the minimum on, and no sooner", () => {
    const log = oneCoat();
    feel(log, 2);
    const { state, touch, checkAt } = cover(log, 3, room([]));
    expect([state, touch?.countsFrom]).toEqual(["drying", checkAt]);
    // No sooner than the minimum of 4 h after a dip at 1 h, and the likely time of an ordinary room.
    expect(checkAt).toBeGreaterThanOrEqual(at(5));
    expect(cover(log, 5.5, room([])).state).toBe("check");
    feel(log, 6);
    expect(cover(log, 6.1, room([]))).toMatchObject({ state: "dry", by: "touch", dryAt: at(6) });
  });

  test("is undone by one that says wet", () => {
    const log = oneCoat();
    feel(log, 6);
    feel(log, 6.5, "wet");
    expect(cover(log, 6.6, room([])).state).toBe("drying");
  });
});

test("found wet it follows the new forecast and no hour is made up", () => {
  const log = oneCoat();
  feel(log, 20, "wet");
  const { cover: answer, outer } = standing(log, 20.1, room(slow));
  expect(answer).toMatchObject({
    state: "drying",
    checkAt: outer?.readyAt.likely,
    dryAt: outer?.readyAt.late,
  });
});

test("two weights that stand still lift it before the minimum; a third and a touch leave its time alone", () => {
  const log = oneCoat();
  weigh(log, 2, 2410);
  weigh(log, 3.1, 2409.9);
  const first = cover(log, 3.2, room(quick));
  expect(first).toMatchObject({ state: "dry", by: "steady", dryAt: at(3.1) });
  weigh(log, 4.2, 2409.9);
  feel(log, 4.3);
  expect(cover(log, 4.5, room(quick))).toMatchObject({ state: "dry", by: "steady", dryAt: at(3.1) });
});

test("fire since the last wetting has dried it; found wet after the fire it has not", () => {
  const log = oneCoat();
  log.tell("burnout-started", {}, at(2));
  log.tell("burnout-ended", { result: "clean" }, at(2.5));
  expect(cover(log, 2.6, room(slow))).toMatchObject({ state: "dry", by: "fire", dryAt: at(2.5) });
  feel(log, 2.7, "wet");
  expect(cover(log, 2.8, room(slow)).state).toBe("drying");
});

describe("what is next", () => {
  test("seconds after the first coat without a reading it dries; it is not to be felt and dipped", () => {
    const { action } = standing(oneCoat(), 1.01, room([]));
    expect(action).toMatchObject({ kind: "dip", readiness: "drying" });
    const { checkAt } = cover(oneCoat(), 1.01, room([]));
    expect(checkAt).toBeGreaterThanOrEqual(at(5));
    expect(standing(oneCoat(), 6, room([])).action).toMatchObject({ readiness: "maybe", at: checkAt });
  });

  test("is a check from the check time only, and a dip once it is dry", () => {
    const log = oneCoat();
    const { checkAt, dryAt } = cover(log, 2, room(slow));
    const hourOf = (time: number | null): number => ((time ?? NaN) - monday) / hourMs;
    const action = (hours: number) => standing(log, hours, room(slow)).action;
    expect(action(hourOf(checkAt) - minute)).toEqual({ kind: "dip", readiness: "drying", at: checkAt });
    expect(action(hourOf(checkAt) + minute)).toEqual({ kind: "dip", readiness: "maybe", at: checkAt });
    expect(action(hourOf(dryAt) + minute)).toEqual({ kind: "dip", readiness: "ready", at: dryAt });
  });
});

const anyTold = fc.record({
  hours: fc.double({ min: 1.1, max: 9, noNaN: true }),
  says: fc.oneof(
    fc.constantFrom("dry", "damp", "wet").map((verdict) => ({ method: "touch", verdict }) as const),
    fc.integer({ min: 2400, max: 2420 }).map((massG) => ({ method: "weight", massG }) as const),
    fc.constant("redip" as const),
  ),
});

test("with nothing new logged, the times stay where they are however late one looks", () => {
  fc.assert(
    fc.property(
      fc.array(anyTold, { maxLength: 4 }),
      fc.array(fc.double({ min: 0, max: 9, noNaN: true }), { maxLength: 4 }),
      fc.double({ min: 0.25, max: 0.69, noNaN: true }),
      fc.constantFrom("prime", "backup", "seal"),
      fc.constantFrom("open", "recess"),
      fc.array(fc.double({ min: 9, max: 80, noNaN: true }), { minLength: 2, maxLength: 3 }),
      (told, readAt, rh, kind, geometry, looks) => {
        const log = oneCoat({ kind }, { geometry });
        for (const { hours, says } of told.toSorted((a, b) => a.hours - b.hours)) {
          const coatId = log.piece().coats[0]?.id ?? "";
          if (says === "redip") log.tell("coat-redipped", { coatId }, at(hours));
          else log.tell("dryness-seen", { ...says, coatId }, at(hours));
        }
        const readings = readAt
          .toSorted((a, b) => a - b)
          .map((hours, i): AirReading => ({ id: `r${i}`, at: at(hours), airC: 20 + i, rh, air: "draught" }));
        const seen = looks.map((hours) => {
          const { cover: answer, forFire } = standing(log, hours, room(readings));
          return [answer?.checkAt, answer?.dryAt, answer?.by, forFire?.dryAt, forFire?.by];
        });
        for (const one of seen.slice(1)) expect(one).toEqual(seen[0]);
      },
    ),
    { numRuns: 60 },
  );
});

test("whatever is told, no coat is dry by air, touch or minimum before its minimum, nor to check sooner", () => {
  fc.assert(
    fc.property(fc.array(anyTold, { maxLength: 5 }), fc.boolean(), (told, isRead) => {
      const log = oneCoat();
      for (const { hours, says } of told.toSorted((a, b) => a.hours - b.hours)) {
        const coatId = log.piece().coats[0]?.id ?? "";
        if (says === "redip") log.tell("coat-redipped", { coatId }, at(hours));
        else log.tell("dryness-seen", { ...says, coatId }, at(hours));
      }
      const { checkAt, dryAt, by, minimum } = cover(log, 12, room(isRead ? quick : []));
      if (checkAt !== null) expect(checkAt).toBeGreaterThanOrEqual(minimum.until);
      if (by === "air" || by === "touch" || by === "minimum")
        expect(dryAt).toBeGreaterThanOrEqual(minimum.until);
    }),
    { numRuns: 60 },
  );
});
