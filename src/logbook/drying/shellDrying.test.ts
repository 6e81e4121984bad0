import { millisecondsInHour as hourMs } from "date-fns/constants";
import { describe, expect, test } from "vitest";
import { coatDepthM } from "../../physics/drying/coat.ts";
import { dryThrough } from "../../../tests/dryThrough.ts";
import { dryingHours } from "../../physics/drying/drying.ts";
import { intervalsFromReadings } from "../../../tests/sums/intervalsFromReadings.ts";
import { standingOf } from "../piece/buildStanding.ts";
import { builtInShop } from "../piece/builtIns.ts";
import type { AirReading } from "../piece/piece.ts";
import type { CoatDrying } from "../piece/standing.ts";
import {
  type TestLog,
  monday,
  steadyAir,
  testLog,
  testShop,
  testStream,
} from "../../../tests/logs/testLog.ts";

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

describe("a coat in steady air", () => {
  test("is ready when the closed form says, from its own dip", () => {
    const outer = outerOf(fiveBackups(), steady(31), at(31));
    const hours = dryingHours({
      waterKgM2: 0.2,
      criticalKgM2: 0.12,
      depthM: coatDepthM({ coatMm: 1.229, beneathMm: 5 }),
      filmWM2K: 15,
      pocketSM: 0,
      dryFraction: 0.95,
      tempC: 22,
      rh: 0.5,
      pressurePa: 101_325,
    });
    expect(outer.depthM).toBeCloseTo(0.00373, 5);
    expect(((outer.readyAt.likely ?? 0) - at(30)) / hourMs).toBeCloseTo(hours ?? NaN, 3);
    // 2.27 h is the worked figure for a front 3.5 mm deep in this air; ours has 3.73 mm to go.
    expect(hours).toBeGreaterThan(2.27);
    expect(hours).toBeLessThan(2.45);
  });

  test("early, likely and late stand apart as the spread of the figures", () => {
    const { readyAt } = outerOf(fiveBackups(), steady(31), at(31));
    const hours = (ms: number | null): number => ((ms ?? NaN) - at(30)) / hourMs;
    // exp(1.2816 · √0.2225): one in ten is done earlier, one in ten later.
    expect(hours(readyAt.late) / hours(readyAt.likely)).toBeCloseTo(Math.exp(1.2816 * 0.4717), 2);
    expect(hours(readyAt.likely) / hours(readyAt.early)).toBeCloseTo(Math.exp(1.2816 * 0.4717), 2);
  });

  test("goes from wet over maybe to dry, and its water only falls", () => {
    const log = fiveBackups();
    const verdicts = [30, 31, 32, 34, 36].map((h) => outerOf(log, steady(40), at(h)).verdict);
    expect(verdicts).toEqual(["wet", "wet", "maybe", "maybe", "dry"]);
    const { curve } = outerOf(log, steady(31), at(31));
    expect(curve[0]?.waterKgM2).toBeCloseTo(0.2, 12);
    expect(curve.at(-1)?.waterKgM2).toBeCloseTo(0.006, 6);
    for (const [i, point] of curve.entries()) {
      expect(point.waterKgM2).toBeLessThanOrEqual(curve[i - 1]?.waterKgM2 ?? Infinity);
      expect(point.at).toBeGreaterThanOrEqual(curve[i - 1]?.at ?? 0);
    }
  });

  test("is all to go at the dip and nothing once dry", () => {
    expect(outerOf(fiveBackups(), steady(40), at(30)).leftShare).toBe(1);
    expect(outerOf(fiveBackups(), steady(40), at(40)).leftShare).toBe(0);
  });

  test("has had its dose when it is ready", () => {
    const ready = outerOf(fiveBackups(), steady(40), at(39));
    expect(ready.doseSuppliedGHM3).toBeCloseTo(ready.doseNeededGHM3 ?? NaN, 6);
    const half = outerOf(fiveBackups(), steady(31), at(31));
    // One hour of a deficit of 9.71 g/m³.
    expect(half.doseSuppliedGHM3).toBeCloseTo(9.71, 1);
    expect(half.doseNeededGHM3).toBeCloseTo(ready.doseNeededGHM3 ?? NaN, 1);
  });

  test("dries later in a recess, at an own factor of 2 twice as late", () => {
    const likely = (log: TestLog, factor: number | null = null): number => {
      const shop = testShop(steady(31), { shop: { ...builtInShop, dryingFactor: factor } });
      return ((standingOf(log.piece(), shop, at(31)).outer?.readyAt.likely ?? NaN) - at(30)) / hourMs;
    };
    const open = likely(fiveBackups());
    expect(likely(fiveBackups({ geometry: "recess" })) / open).toBeGreaterThan(4);
    // What the coat beneath carries over is nothing in both: they had seven hours, and need under five.
    expect(likely(fiveBackups(), 2) / open).toBeCloseTo(2, 3);
  });
});

describe("a coat in changing air", () => {
  const changing: readonly AirReading[] = [
    [-3, 24, 0.4],
    [29, 23, 0.45],
    [31, 17, 0.7],
    [33, 14, 0.75],
    [38, 20, 0.55],
    [44, 22, 0.5],
  ].map(([h = 0, airC = 0, rh = 0], i) => ({ id: `c${i}`, at: at(h), airC, rh, air: "draught" }));

  test("is ready when the walk through the whole history says, cut where it may", () => {
    const outer = outerOf(fiveBackups(), changing, at(44));
    const history = intervalsFromReadings({
      readings: changing.map(({ at: atMs, airC: tempC, rh }) => ({ atMs, tempC, rh, filmWM2K: 7 })),
      fromMs: at(30),
      toMs: at(44),
      pressurePa: 101_325,
    });
    const whole = dryThrough({
      coat: { waterKgM2: 0.2, criticalKgM2: 0.12, depthM: outer.depthM, dryFraction: 0.95 },
      filmWM2K: 7,
      pocketSM: 0,
      intervals: history.intervals,
    });
    expect(whole.readyAfterS).not.toBeNull();
    // The stretches are cut at other moments, so the middle airs differ by a hair.
    const likelyS = ((outer.readyAt.likely ?? NaN) - at(30)) / 1000;
    expect(likelyS / (whole.readyAfterS ?? NaN)).toBeCloseTo(1, 2);
  });

  test("tells how it knows: readings, the longest hole, the age of the last, what comes next", () => {
    const outer = outerOf(fiveBackups(), changing, at(46));
    expect(outer.basis).toMatchObject({
      readings: 5,
      longestGapMs: 6 * hourMs,
      lastReadingAgeMs: 2 * hourMs,
      air: "draught",
      ownFactor: null,
    });
    expect(outerOf(fiveBackups(), steady(31), at(31)).basis.forecast).toBe("repeat-yesterday");
    expect(outerOf(fiveBackups(), steady(31).slice(-3), at(31)).basis.forecast).toBe("hold-last");
  });

  test("a ready time stands still while the clock goes on and nothing new is read", () => {
    const readings = steady(30, { air: "still" });
    const [soon, later] = [30.5, 31.9].map((h) => outerOf(fiveBackups(), readings, at(h)).readyAt.likely);
    expect(later).toBeCloseTo(soon ?? NaN, 0);
  });

  test("a hole in the readings puts early and late further apart", () => {
    const many = steady(42);
    const few = many.filter((reading) => reading.at <= at(30) || reading.at >= at(42));
    const lateOf = (readings: typeof many) => outerOf(fiveBackups(), readings, at(42)).readyAt.late ?? 0;
    expect(lateOf(few)).toBeGreaterThan(lateOf(many) + hourMs);
  });

  test("with nothing read since, the clock alone moves neither of them", () => {
    const readings = steady(30);
    const seen = [30.5, 33, 42, 60].map((hour) => outerOf(fiveBackups(), readings, at(hour)).readyAt);
    for (const one of seen) expect(one).toEqual(seen[0]);
  });
});

describe("air that nobody read", () => {
  test("is taken as an ordinary room's: 20 °C, 55 %, still, and the times are the likely one ÷ and × 2.5", () => {
    const outer = outerOf(fiveBackups(), [], at(31));
    expect(outer).toMatchObject({
      verdict: "wet",
      reason: null,
      basis: { readings: 0, assumed: true, air: null },
    });
    const ordinary = outerOf(fiveBackups(), steady(31, { airC: 20, rh: 0.55, air: "still" }), at(31));
    expect(outer.readyAt.likely).toBeCloseTo(ordinary.readyAt.likely ?? NaN, -3);
    const hours = (when: number | null): number => ((when ?? NaN) - at(30)) / hourMs;
    const { early, likely, late } = outer.readyAt;
    expect(hours(likely) / hours(early)).toBeCloseTo(2.5, 3);
    expect(hours(late) / hours(likely)).toBeCloseTo(2.5, 3);
  });

  test("says wet before the early time, perhaps between the two, and dry after the late one", () => {
    const { early, late } = outerOf(fiveBackups(), [], at(31)).readyAt;
    const verdictAt = (when: number): string => outerOf(fiveBackups(), [], when).verdict;
    expect(verdictAt((early ?? NaN) - 60_000)).toBe("wet");
    expect(verdictAt((early ?? NaN) + 60_000)).toBe("maybe");
    expect(verdictAt((late ?? NaN) - 60_000)).toBe("maybe");
    expect(verdictAt((late ?? NaN) + 60_000)).toBe("dry");
  });
});

describe("when nothing can be said", () => {
  test("air above 80 % never dries, with the reason", () => {
    const outer = outerOf(fiveBackups(), steady(31, { rh: 0.85 }), at(31));
    expect(outer).toMatchObject({ verdict: "wet", reason: "air-too-damp" });
    expect(outer.readyAt.late).toBeNull();
  });

  test("a blind core in cold damp air takes longer than is looked ahead", () => {
    const outer = outerOf(
      fiveBackups({ geometry: "blind" }),
      steady(31, { airC: 2, rh: 0.79, air: "still" }),
      at(31),
    );
    expect(outer).toMatchObject({ reason: "beyond-forecast", verdict: "wet" });
  });

  test("a coat long before the first reading is not judged by it", () => {
    const log = testLog();
    log.coat(at(0));
    log.coat(at(7));
    log.coat(at(40));
    const { drying } = standingOf(log.piece(), testShop(steadyAir({ from: at(47), hours: 2 })), at(50));
    // The air of hour 47 is held back twelve hours: the first coat hung in an ordinary room for all that is known.
    expect(drying.map(({ basis }) => basis.assumed)).toEqual([true, true, false]);
  });

  test("a reading no room can have is left out", () => {
    const broken = { id: "x", at: at(30), airC: 900, rh: 5, air: "still" } as const;
    const readings = steady(31);
    expect(outerOf(fiveBackups(), [...readings, broken], at(31))).toEqual(
      outerOf(fiveBackups(), readings, at(31)),
    );
  });
});

describe("rooms", () => {
  test("a piece carried to a dry room dries by that room's air from then on", () => {
    const log = fiveBackups();
    const damp = steady(60, { rh: 0.9 });
    const attic = { id: "attic", name: "Attic", altitudeM: 1500, retired: false, last: null };
    log.tell("piece-moved", { roomId: "attic" }, at(33));
    const shop = testShop(damp, { rooms: [attic] });
    const both = { ...shop, readings: new Map([...shop.readings, ["attic", steady(60)]]) };
    const { outer, room } = standingOf(log.piece(), both, at(34));
    expect(room?.name).toBe("Attic");
    expect((outer?.readyAt.likely ?? 0) - at(33)).toBeGreaterThan(hourMs);
    expect((outer?.readyAt.likely ?? 0) - at(33)).toBeLessThan(4 * hourMs);
    expect(standingOf(log.piece(), shop, at(34)).outer?.basis.assumed).toBe(true);
    expect(outer?.basis.assumed).toBe(false);
  });
});

describe("a coat put on too early", () => {
  test("is told as wet for ever, and hands its water to the next", () => {
    const log = fiveBackups();
    log.coat(at(31), { step: null });
    const early = standingOf(log.piece(), testShop(steady(31)), at(31.5)).drying;
    const later = standingOf(log.piece(), testShop(steady(80)), at(80)).drying;
    expect(early[4]).toMatchObject({ verdict: "wet", readyAt: { likely: null } });
    expect(early[4]?.leftShare).toBeGreaterThan(0.3);
    expect(later[4]?.verdict).toBe("wet");
    expect(later[4]?.leftShare).toBeCloseTo(early[4]?.leftShare ?? NaN, 9);
    expect(early[5]?.carriedKgM2).toBeCloseTo(early[4]?.waterKgM2 ?? NaN, 12);
    expect(early[5]?.startKgM2).toBeCloseTo(0.2 + (early[4]?.waterKgM2 ?? NaN), 12);
  });

  test("a dry one hands over nothing; prewetting adds its own", () => {
    const log = fiveBackups();
    log.coat(at(48), { step: null, prewet: true });
    const { drying } = standingOf(log.piece(), testShop(steady(50)), at(49));
    expect(drying[4]?.verdict).toBe("dry");
    expect(drying[5]).toMatchObject({ carriedKgM2: 0 });
    expect(drying[5]?.startKgM2).toBeCloseTo(0.245, 12);
  });

  test("a second dip of the same coat adds water and starts its wait again", () => {
    const log = fiveBackups();
    const once = outerOf(log, steady(40), at(33));
    log.tell("coat-redipped", { coatId: log.piece().coats.at(-1)?.id ?? "" }, at(32));
    const twice = outerOf(log, steady(40), at(33));
    expect(twice.startKgM2).toBeGreaterThan(0.2);
    expect(twice.readyAt.likely ?? 0).toBeGreaterThan((once.readyAt.likely ?? 0) + 1.5 * hourMs);
    expect(twice.verdict).toBe("wet");
  });
});

test("a covered coat is told the same however often, and anew when its air is corrected", () => {
  const log = fiveBackups();
  log.coat(at(31), { step: null });
  const piece = log.piece();
  const shop = testShop(steady(40));
  const first = standingOf(piece, shop, at(32)).drying;
  const second = standingOf(piece, shop, at(33)).drying;
  expect(second.slice(0, -1)).toEqual(first.slice(0, -1));
  const damper = standingOf(piece, testShop(steady(40, { rh: 0.75 })), at(33)).drying;
  expect(damper[4]?.leftShare ?? 0).toBeGreaterThan(first[4]?.leftShare ?? 1);
});

test("striking the dip above makes a coat the outer one again", () => {
  const log = fiveBackups();
  const before = outerOf(log, steady(40), at(33));
  const id = log.coat(at(31), { step: null });
  log.run({ do: "strike", stream: testStream, entryId: id, reason: "wrong piece" }, at(32));
  expect(outerOf(log, steady(40), at(33))).toEqual(before);
});
