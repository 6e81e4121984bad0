import { millisecondsInHour as hourMs } from "date-fns/constants";
import { describe, expect, test } from "vitest";
import { standingOf } from "../piece/buildStanding.ts";
import { builtInRecipe, builtInShop } from "../piece/builtIns.ts";
import { fireAnswer } from "./fireAnswer.ts";
import { fireFacts } from "../fire/fireFacts.ts";
import type { AirReading } from "../piece/piece.ts";
import type { PiecePlan } from "../entries/pieceBodies.ts";
import type { FireAnswer } from "../piece/standing.ts";
import type { Surroundings } from "../piece/surroundings.ts";
import type { TestLog } from "../../../tests/logs/testLog.ts";
import { monday, steadyAir, testLog, testShop } from "../../../tests/logs/testLog.ts";

const at = (hours: number): number => monday + hours * hourMs;
const minute = 1 / 60;
const coats = builtInRecipe("start-general")?.coats ?? [];
const lastAt = 12 * (coats.length - 1);
/** Air in which even a blind core is dry by the model before its hours are over. */
const air = (rh: number): Partial<AirReading> => ({ airC: 30, rh, air: "tunnel" });
const roomOf = (rh: number): Surroundings => testShop(steadyAir({ from: monday, hours: 400 }, air(rh)));

/** All nine coats on, the seal at hour `lastAt`. */
function shellOf(plan: Partial<PiecePlan> = {}): TestLog {
  const log = testLog({ recipeId: "start-general", ...plan });
  for (const [i, { kind, stuccoId }] of coats.entries()) log.coat(at(12 * i), { kind, stuccoId });
  return log;
}
const standing = (log: TestLog, hours: number, shop: Surroundings) =>
  standingOf(log.piece(), shop, at(lastAt + hours));
function answer(log: TestLog, hours: number, shop: Surroundings): FireAnswer {
  const { forFire } = standing(log, hours, shop);
  if (forFire === null) throw new Error("no coat");
  return forFire;
}
const lastId = (log: TestLog): string => log.piece().coats.at(-1)?.id ?? "";
const feel = (log: TestLog, hours: number, verdict: "dry" | "wet"): void => {
  log.tell("dryness-seen", { method: "touch", verdict, coatId: lastId(log) }, at(lastAt + hours));
};
const weigh = (log: TestLog, hours: number, massG: number): void => {
  log.tell("dryness-seen", { method: "weight", massG, coatId: lastId(log) }, at(lastAt + hours));
};

/** Common practice, no source: 12 h open, 24 h deep or thick, 48 h blind; in air over 50 %, 24 h and 72 h. */
describe("the hours of the last drying", () => {
  test.each([
    ["open", 0.3, 12],
    ["corner", 0.3, 12],
    ["recess", 0.3, 24],
    ["blind", 0.05, 48],
    ["open", 0.5, 12],
    ["open", 0.52, 24],
    ["corner", 0.52, 24],
  ] as const)("%s in air of %d: held to the last minute of %d h", (geometry, rh, hours) => {
    const log = shellOf({ geometry });
    const shop = roomOf(rh);
    expect(answer(log, hours - minute, shop)).toMatchObject({
      state: "drying",
      by: "hours",
      dryAt: at(lastAt + hours),
    });
    expect(answer(log, hours, shop)).toMatchObject({ state: "dry", by: "hours" });
  });

  test.each(["recess", "blind"] as const)("%s in air over 50 %% is held for 72 h", (geometry) => {
    const { hours, dryAt } = answer(shellOf({ geometry }), 1, roomOf(0.52));
    expect(hours?.hours).toBe(72);
    expect(dryAt).toBeGreaterThanOrEqual(at(lastAt + 72));
  });

  test("a wall over 10 mm counts as deep: 24 h, and 72 h in damper air", () => {
    const log = shellOf();
    log.tell("wall-measured", { wallMm: 10 }, at(lastAt + 0.1));
    expect(answer(log, 1, roomOf(0.3)).hours?.hours).toBe(12);
    log.tell("wall-measured", { wallMm: 10.1 }, at(lastAt + 0.2));
    expect(answer(log, 1, roomOf(0.3)).hours).toMatchObject({ why: "thick", hours: 24 });
    expect(answer(log, 1, roomOf(0.52)).hours?.hours).toBe(72);
  });

  test("the shop's own stands in dry air; damper air makes no shop's hours shorter than its figure", () => {
    const own = (open: number, rh: number): number | undefined =>
      answer(shellOf(), 1, { ...roomOf(rh), shop: { ...builtInShop, finalDryH: { open } } }).hours?.hours;
    expect([own(6, 0.3), own(30, 0.3)]).toEqual([6, 30]);
    expect([own(6, 0.6), own(30, 0.6)]).toEqual([24, 30]);
  });

  test("in air over 70 % no last drying ends, nor is a weight that stands still there one", () => {
    const log = shellOf();
    expect(answer(log, 40, roomOf(0.72))).toMatchObject({ state: "drying", dryAt: null, reason: "damp-air" });
    weigh(log, 41, 2410);
    weigh(log, 42.1, 2409.9);
    expect(standing(log, 42.2, roomOf(0.72)).cover?.by).not.toBeNull();
    expect(answer(log, 42.2, roomOf(0.72)).state).toBe("drying");
  });

  test("a further dip of the last coat begins them anew", () => {
    const log = shellOf();
    log.tell("coat-redipped", { coatId: lastId(log) }, at(lastAt + 5));
    expect(answer(log, 17 - minute, roomOf(0.3)).state).toBe("drying");
    expect(answer(log, 17, roomOf(0.3)).state).toBe("dry");
  });
});

describe("what was seen of it", () => {
  test("a touch never lets it go in, whenever it is tapped; it is kept to be told", () => {
    for (const hours of [0.5, 1, 4, 11.9]) {
      const log = shellOf();
      const before = answer(log, 11.95, roomOf(0.3));
      feel(log, hours, "dry");
      const { touchedAt, ...after } = answer(log, 11.95, roomOf(0.3));
      expect({ ...after, touchedAt: null }).toEqual(before);
      expect(touchedAt).toBe(at(lastAt + hours));
    }
  });

  test("two weights that stand still let it go in before the hours are over", () => {
    const log = shellOf();
    weigh(log, 5, 2410);
    weigh(log, 6.1, 2409.9);
    expect(answer(log, 6.2, roomOf(0.3))).toMatchObject({
      state: "dry",
      by: "steady",
      dryAt: at(lastAt + 6.1),
    });
  });

  test("a measurement that doesn't speak for the whole shell covers a coat and lights no kiln", () => {
    const log = shellOf();
    weigh(log, 5, 2410);
    weigh(log, 6.1, 2409.9);
    const { outer, cover } = standing(log, 6.2, roomOf(0.3));
    if (outer?.evidence?.says !== "dry") throw new Error("not measured dry");
    expect(cover?.state).toBe("dry");
    const part = { ...outer, evidence: { ...outer.evidence, whole: false } };
    const whole = standing(log, 6.2, roomOf(0.3)).finalDry;
    const said = fireAnswer(log.piece(), { outer: part, whole, stays: [], now: at(lastAt + 6.2) });
    expect(said).toMatchObject({ state: "drying", by: "hours" });
  });

  test("found wet after its hours it waits for the new forecast", () => {
    const log = shellOf();
    feel(log, 13, "wet");
    const { forFire, outer } = standing(log, 13.01, roomOf(0.3));
    expect(forFire).toMatchObject({ state: "drying", by: "air", dryAt: outer?.readyAt.late });
  });

  test("with no room reading it is not known, and a touch does not change that", () => {
    const log = shellOf();
    expect(answer(log, 100, testShop([]))).toMatchObject({ state: "unknown", reason: "no-readings" });
    feel(log, 100, "dry");
    expect(answer(log, 101, testShop([])).state).toBe("unknown");
  });
});

test("fire has dried it, but a patch after the fire is damp in the kiln plan all the same", () => {
  const log = shellOf();
  log.tell("burnout-started", {}, at(lastAt + 13));
  log.tell("burnout-ended", { result: "clean" }, at(lastAt + 16));
  const damp = (hours: number) => fireFacts(standing(log, hours, roomOf(0.3)), "fused-silica").damp;
  expect(answer(log, 16.1, roomOf(0.3)).state).toBe("dry");
  expect(damp(16.1).state).toBe("dry");
  const crackId = log.tell("crack-found", { kind: "open", stage: "burnout", where: "rim" }, at(lastAt + 17));
  log.tell("crack-patched", { crackId, how: "slurry and stucco" }, at(lastAt + 18));
  expect(damp(19)).toEqual({ state: "patched-wet", source: "patched" });
});
