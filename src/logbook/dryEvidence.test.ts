import { describe, expect, test } from "vitest";
import { standingOf } from "./buildStanding.ts";
import type { AirReading } from "./piece.ts";
import type { CoatDrying } from "./standing.ts";
import type { TestLog } from "./testLog.ts";
import { hourMs, monday, steadyAir, testLog, testShop } from "./testLog.ts";

const at = (hours: number): number => monday + hours * hourMs;
const steady = (hours: number, air: Partial<AirReading> = {}): readonly AirReading[] =>
  steadyAir({ from: monday - 2 * hourMs, hours: hours + 2 }, air);

/** A shell of four dry backups and a fifth dipped at hour 30: the handiest case to reckon by hand. */
function fiveBackups(plan: Parameters<typeof testLog>[0] = {}): TestLog {
  const log = testLog(plan);
  for (const hours of [0, 7, 14, 22, 30]) log.coat(at(hours), { step: null });
  return log;
}
function outerOf(log: TestLog, readings: readonly AirReading[], now: number): CoatDrying {
  const { outer } = standingOf(log.piece(), testShop(readings), now);
  if (outer === null) throw new Error("no coat");
  return outer;
}

describe("evidence has the last word", () => {
  const see = (log: TestLog, verdict: "dry" | "damp" | "wet", hours: number): void => {
    const coatId = log.piece().coats.at(-1)?.id ?? "";
    log.tell("dryness-seen", { method: "touch", verdict, coatId }, at(hours));
  };

  test("felt dry is dry, whatever the sum says, and the next coat finds no water", () => {
    const log = fiveBackups();
    see(log, "dry", 30.8);
    expect(outerOf(log, steady(31), at(31))).toMatchObject({
      verdict: "dry",
      evidence: { says: "dry" },
      readyAt: { early: at(30.8), likely: at(30.8), late: at(30.8) },
    });
    log.coat(at(31), { step: null });
    expect(outerOf(log, steady(31), at(31)).carriedKgM2).toBe(0);
  });

  test("felt wet puts ready off, however long it has hung", () => {
    const log = fiveBackups();
    expect(outerOf(log, steady(40), at(40)).verdict).toBe("dry");
    see(log, "damp", 40);
    const damp = outerOf(log, steady(40), at(40));
    expect(damp).toMatchObject({ verdict: "wet", evidence: { says: "wet" } });
    expect(damp.readyAt.early ?? 0).toBeGreaterThan(at(40));
    const other = fiveBackups();
    see(other, "wet", 40);
    expect(outerOf(other, steady(40), at(40)).readyAt.likely ?? 0).toBeGreaterThan(damp.readyAt.likely ?? 0);
  });

  test("the newest observation counts, in both directions", () => {
    const log = fiveBackups();
    see(log, "wet", 33);
    see(log, "dry", 34);
    expect(outerOf(log, steady(35), at(34)).verdict).toBe("dry");
    see(log, "damp", 34.5);
    expect(outerOf(log, steady(35), at(34.5)).verdict).toBe("wet");
  });

  test("felt wet in a room nobody reads is wet, felt dry is dry", () => {
    const log = fiveBackups();
    see(log, "wet", 33);
    expect(outerOf(log, [], at(34)).verdict).toBe("wet");
    see(log, "dry", 35);
    expect(outerOf(log, [], at(36)).verdict).toBe("dry");
  });

  test("what was felt before a second dip says nothing after it", () => {
    const log = fiveBackups();
    see(log, "dry", 31);
    log.tell("coat-redipped", { coatId: log.piece().coats.at(-1)?.id ?? "" }, at(31.5));
    expect(outerOf(log, steady(32), at(32))).toMatchObject({ verdict: "wet", evidence: null });
  });

  test("a surface as warm as the air is dry; one at the wet surface's 15.7 °C is dripping", () => {
    const surface = (surfaceC: number): CoatDrying => {
      const log = fiveBackups();
      const coatId = log.piece().coats.at(-1)?.id ?? "";
      log.tell("dryness-seen", { method: "surface", surfaceC, coatId }, at(31));
      return outerOf(log, steady(31), at(31));
    };
    expect(surface(21.9)).toMatchObject({ verdict: "dry", evidence: { says: "dry" } });
    expect(surface(15.8)).toMatchObject({ verdict: "wet", evidence: { says: "wet" } });
    expect(surface(15.8).waterKgM2).toBeGreaterThanOrEqual(0.119);
    // Past the depth of the layer but not as warm as the room: it does not decide.
    expect(surface(21.3)).toMatchObject({ evidence: null });
  });

  test.each([
    ["two hours apart without an area", {}, 2, 4000, 3997, "dry"],
    ["two hours apart, four grams lighter", {}, 2, 4000, 3995, "wet"],
    ["forty minutes apart without an area", {}, 0.67, 4000, 3999, null],
    ["forty minutes apart, the area known", { areaM2: 0.4 }, 0.67, 4000, 3999, "dry"],
    ["the area known, two grams lighter", { areaM2: 0.4 }, 0.67, 4000, 3998, "wet"],
    ["twenty minutes apart", { areaM2: 0.4 }, 0.33, 4000, 4000, null],
    ["heavier than before", {}, 2, 4000, 4100, null],
  ])("weighed %s", (_, plan, apartH, first, second, says) => {
    const log = fiveBackups(plan);
    const coatId = log.piece().coats.at(-1)?.id ?? "";
    log.tell("dryness-seen", { method: "weight", massG: first, coatId }, at(31));
    log.tell("dryness-seen", { method: "weight", massG: second, coatId }, at(31 + apartH));
    expect(outerOf(log, steady(33), at(33)).evidence?.says ?? null).toBe(says);
  });

  test("a steady weight in saturated air is no proof of dryness", () => {
    const log = fiveBackups();
    const coatId = log.piece().coats.at(-1)?.id ?? "";
    for (const hours of [31, 33])
      log.tell("dryness-seen", { method: "weight", massG: 4000, coatId }, at(hours));
    expect(outerOf(log, steady(33, { rh: 0.9 }), at(33)).evidence).toBeNull();
  });
});

describe("fire", () => {
  test("dries what hung in it, and the coat after it finds no water", () => {
    const log = fiveBackups();
    log.tell("burnout-started", {}, at(30.1));
    log.tell("burnout-read", { kilnC: 240 }, at(30.5));
    expect(outerOf(log, steady(31), at(31))).toMatchObject({ verdict: "dry", leftShare: 0 });
    log.tell("crack-found", { kind: "open", stage: "burnout", where: "wing" }, at(32));
    log.coat(at(34), { step: null });
    const { drying } = standingOf(log.piece(), testShop(steady(35)), at(35));
    expect(drying[4]).toMatchObject({ verdict: "dry", waterKgM2: 0 });
    expect(drying[5]).toMatchObject({ carriedKgM2: 0, verdict: "wet" });
  });

  test("a kiln that was stopped while lukewarm dried nothing", () => {
    const log = fiveBackups();
    log.tell("burnout-started", {}, at(30.1));
    log.tell("burnout-read", { kilnC: 60 }, at(30.5));
    log.tell("burnout-ended", { result: "stopped" }, at(30.6));
    expect(outerOf(log, steady(31), at(31)).verdict).toBe("wet");
  });
});
