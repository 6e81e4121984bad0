import { millisecondsInHour as hourMs } from "date-fns/constants";
import { describe, expect, test } from "vitest";
import { standingOf } from "../piece/buildStanding.ts";
import type { AirReading } from "../piece/piece.ts";
import type { CoatDrying } from "../piece/standing.ts";
import type { TestLog } from "../../../tests/logs/testLog.ts";
import { monday, steadyAir, testLog, testShop } from "../../../tests/logs/testLog.ts";

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

describe("what is seen counts", () => {
  const see = (log: TestLog, verdict: "dry" | "damp" | "wet", hours: number): void => {
    const coatId = log.piece().coats.at(-1)?.id ?? "";
    log.tell("dryness-seen", { method: "touch", verdict, coatId }, at(hours));
  };

  test("felt dry well before the sum's time is perhaps dry: a hand reads the outer face", () => {
    const log = fiveBackups();
    const sum = outerOf(log, steady(31), at(31));
    see(log, "dry", 30.8);
    const felt = outerOf(log, steady(31), at(31));
    expect(felt).toMatchObject({ verdict: "maybe", evidence: { says: "dry", by: "felt" } });
    // The belief moves by three tenths of an observation: drier, and ready sooner, but not at the touch.
    expect(felt.waterKgM2 ?? 1).toBeLessThan(sum.waterKgM2 ?? 0);
    expect(felt.readyAt.likely ?? 0).toBeLessThan(sum.readyAt.likely ?? 0);
    expect(felt.readyAt.likely ?? 0).toBeGreaterThan(at(31));
    log.coat(at(31), { step: null });
    expect(outerOf(log, steady(31), at(31)).carriedKgM2).toBeCloseTo(felt.waterKgM2 ?? NaN, 12);
  });

  test("felt dry is perhaps and no more, also once the likely time has passed", () => {
    const log = fiveBackups();
    const { readyAt } = outerOf(log, steady(31), at(31));
    const hours = ((readyAt.likely ?? NaN) - at(0)) / hourMs + 0.1;
    expect(outerOf(log, steady(36), at(hours)).verdict).toBe("maybe");
    see(log, "dry", hours);
    expect(outerOf(log, steady(36), at(hours)).verdict).toBe("maybe");
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
    expect(outerOf(log, steady(35), at(33)).verdict).toBe("wet");
    see(log, "dry", 34);
    expect(outerOf(log, steady(35), at(34))).toMatchObject({ verdict: "maybe", evidence: { says: "dry" } });
    see(log, "damp", 34.5);
    expect(outerOf(log, steady(35), at(34.5)).verdict).toBe("wet");
  });

  test("felt wet in a room nobody reads is wet, felt dry is perhaps", () => {
    const log = fiveBackups();
    see(log, "wet", 33);
    expect(outerOf(log, [], at(34)).verdict).toBe("wet");
    see(log, "dry", 35);
    expect(outerOf(log, [], at(36)).verdict).toBe("maybe");
  });

  test("what was felt before a second dip says nothing after it", () => {
    const log = fiveBackups();
    see(log, "dry", 31);
    log.tell("coat-redipped", { coatId: log.piece().coats.at(-1)?.id ?? "" }, at(31.5));
    expect(outerOf(log, steady(32), at(32))).toMatchObject({ verdict: "wet", evidence: null });
  });

  const surface = (surfaceC: number, dryShellC?: number): CoatDrying => {
    const log = fiveBackups();
    const coatId = log.piece().coats.at(-1)?.id ?? "";
    const body = {
      method: "surface",
      surfaceC,
      coatId,
      ...(dryShellC === undefined ? {} : { dryShellC }),
    } as const;
    log.tell("dryness-seen", body, at(32));
    return outerOf(log, steady(32), at(32));
  };
  const bandOf = ({ belief }: CoatDrying): number => (belief?.high ?? NaN) - (belief?.low ?? NaN);

  test("a surface as warm as a dry shell beside it is dry; one at the wet surface's 15.7 °C is dripping", () => {
    const alone = outerOf(fiveBackups(), steady(32), at(32));
    const warm = surface(21.6, 21.6);
    expect(warm.belief?.dryChance).toBeGreaterThan(0.85);
    expect(warm.belief?.heard).toMatchObject([{ said: { by: "surface", says: "dry" } }]);
    const dripping = surface(15.4, 21.6);
    expect(dripping).toMatchObject({ verdict: "wet", evidence: null });
    expect(dripping.waterKgM2 ?? 0).toBeGreaterThan(2 * (alone.waterKgM2 ?? 1));
    expect(dripping.belief?.dryChance).toBeLessThan(0.01);
  });

  test("a thermometer alone says less than the difference to a dry shell", () => {
    expect(bandOf(surface(18))).toBeGreaterThan(bandOf(surface(18, 22)));
  });

  test.each([
    // A ball of 4 kg has 0.066 m²; still wet it loses 1.3 g an hour there, so 3 g take 2.3 h.
    ["two and a half hours apart without an area", {}, 2.5, 4000, 3999, "dry"],
    ["two hours apart without an area", {}, 2, 4000, 3999, null],
    ["two grams lighter: too much to be the same", {}, 2.5, 4000, 3998, null],
    ["five grams lighter: it was not dry then, and may be now", {}, 2, 4000, 3995, null],
    ["forty minutes apart without an area", {}, 0.67, 4000, 3999, null],
    ["forty minutes apart, the area known", { areaM2: 0.4 }, 0.67, 4000, 3999, "dry"],
    ["the area known, two grams lighter", { areaM2: 0.4 }, 0.67, 4000, 3998, null],
    ["twenty minutes apart", { areaM2: 0.4 }, 0.33, 4000, 4000, null],
    ["heavier than before", {}, 2, 4000, 4100, null],
  ])("weighed %s", (_, plan, apartH, first, second, says) => {
    const log = fiveBackups(plan);
    const coatId = log.piece().coats.at(-1)?.id ?? "";
    log.tell("dryness-seen", { method: "weight", massG: first, coatId }, at(31));
    log.tell("dryness-seen", { method: "weight", massG: second, coatId }, at(31 + apartH));
    expect(outerOf(log, steady(34), at(34)).evidence?.says ?? null).toBe(says);
  });

  test("a weight that goes on falling takes back what a steady one said", () => {
    const log = fiveBackups({ areaM2: 0.4 });
    const coatId = log.piece().coats.at(-1)?.id ?? "";
    const weigh = (hours: number, massG: number) =>
      log.tell("dryness-seen", { method: "weight", massG, coatId }, at(hours));
    weigh(30.7, 4000);
    weigh(31.4, 3999);
    expect(outerOf(log, steady(33), at(31.5))).toMatchObject({ verdict: "dry", evidence: { by: "steady" } });
    weigh(32.1, 3980);
    expect(outerOf(log, steady(33), at(32.2))).toMatchObject({ verdict: "wet", evidence: null });
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
