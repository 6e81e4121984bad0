import { millisecondsInDay as dayMs, millisecondsInHour as hourMs } from "date-fns/constants";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { builtInBucket, builtInShop } from "../piece/builtIns.ts";
import { bucketStandingOf } from "./bucketStanding.ts";
import { codes, later, made, read, standingAt, start, targets } from "../../../tests/logs/testBucket.ts";

describe("the look of it", () => {
  test("a bucket nobody told anything of is not checked, and says that it is untold", () => {
    const prime = builtInBucket("first-prime");
    if (prime === null) throw new Error("no built-in bucket");
    const standing = bucketStandingOf(prime, builtInShop, start);
    expect(standing.health.level).toBe("not-checked");
    expect(standing.isUntold).toBe(true);
  });

  test("read this morning, in its band and at its density, it is fit", () => {
    const standing = standingAt(later, {
      readings: [read("r1", later - hourMs, { dipsS: [23.2, 22.8], densityGCm3: 1.68, pH: 9.6 })],
    });
    expect(standing.health).toEqual({ level: "fit", reasons: [] });
    expect(standing.last?.seconds?.seconds).toBeCloseTo(23, 9);
  });

  test("yesterday's good reading leaves it not checked today; yesterday's bad one is a reason not to dip", () => {
    const yesterday = later - 20 * hourMs;
    expect(standingAt(later, { readings: [read("r1", yesterday)] }).health.level).toBe("not-checked");
    const thick = standingAt(later, { readings: [read("r1", yesterday, { cupS: 31 })] });
    expect(thick.health.level).toBe("do-not-dip");
    expect(codes(thick)).toEqual(["seconds-out-of-band", "not-checked-today"]);
  });

  test("what was read before a top-up says nothing any more of seconds and density", () => {
    const topped = {
      id: "t1",
      at: later - 3 * hourMs,
      flourKg: 0,
      solKg: 0,
      waterKg: 1,
      why: "correction",
    } as const;
    const before = [read("r1", later - 4 * hourMs, { cupS: 31, densityGCm3: 1.73 })];
    const standing = standingAt(later, { readings: before, tops: [topped] });
    expect(codes(standing)).toEqual(["not-checked-today"]);
  });

  test("what comes after now is left out", () => {
    const readings = [read("r1", later - hourMs), read("r2", later + hourMs, { cupS: 40 })];
    expect(standingAt(later, { readings }).readings.map(({ reading }) => reading.id)).toEqual(["r1"]);
    expect(standingAt(later, { readings }).health.level).toBe("fit");
  });

  test("seconds of another kind of cup are not held against the band", () => {
    const wide = standingAt(later, { readings: [read("r1", later - hourMs, { cupId: "wide", cupS: 13 })] });
    expect(codes(wide)).toEqual([]);
    const spare = standingAt(later, { readings: [read("r1", later - hourMs, { cupId: "spare", cupS: 13 })] });
    expect(codes(spare)).toEqual(["seconds-out-of-band"]);
  });

  test("a new prime waits its day, and three steady readings outweigh the clock", () => {
    const young = start + 5 * hourMs;
    const two = [1, 2].map((h) => read(`r${h}`, start + h * hourMs));
    expect(codes(standingAt(young, { readings: two }))).toEqual(["not-mixed-enough"]);
    const three = [...two, read("r3", start + 4 * hourMs, { cupS: 23.4 })];
    expect(standingAt(young, { readings: three }).health.level).toBe("fit");
  });

  test("whether it has settled is told by each cup for itself: seconds of two cups are no three readings", () => {
    const young = start + 5 * hourMs;
    const wide = read("w", start + 3 * hourMs, { cupId: "wide", cupS: 13 });
    const three = [1, 2, 4].map((h) => read(`r${h}`, start + h * hourMs));
    const late = { ...wide, id: "late", at: start + 5 * hourMs };
    expect(
      standingAt(young, { readings: [...three, wide].toSorted((a, b) => a.at - b.at) }).health.level,
    ).toBe("fit");
    expect(standingAt(young, { readings: [...three, late] }).steadiness.steady).toBe(true);
    const alike = [...three.slice(0, 2), read("w2", start + 3 * hourMs, { cupId: "wide", cupS: 23 })];
    expect(standingAt(young, { readings: alike }).steadiness).toMatchObject({ steady: null, readings: 1 });
  });

  test("readings a week apart that differ are use, not unsteadiness", () => {
    const readings = [0, 1, 2].map((i) => read(`r${i}`, later + i * dayMs, { cupS: 21 + i }));
    expect(codes(standingAt(later + 2 * dayMs, { readings }))).toEqual([]);
  });

  test("a foul smell stands until somebody smelt that it is gone", () => {
    const foul = read("r1", later - 2 * dayMs, { smell: "foul" });
    expect(codes(standingAt(later, { readings: [foul, read("r2", later - hourMs)] }))).toEqual([
      "foul-smell",
    ]);
    const aired = [foul, read("r2", later - hourMs, { smell: "none" })];
    expect(standingAt(later, { readings: aired }).health.level).toBe("fit");
  });

  test("pH that sank by a quarter within the week is watched", () => {
    const readings = [read("r1", later - 7 * dayMs, { pH: 9.75 }), read("r2", later - hourMs, { pH: 9.5 })];
    expect(codes(standingAt(later, { readings }))).toEqual(["pH-sinking"]);
  });
});

describe("the reading", () => {
  test("ASTM D4212: 25 s in a Zahn 4 are 296 mm²/s; 12 s lie below the standard's range", () => {
    const [there, below] = [25, 12].map(
      (cupS) =>
        standingAt(later, { readings: [read("r1", later - hourMs, { cupS })] }).last?.seconds?.viscosity,
    );
    expect(there?.ok && [there.viscosityMm2S, there.range]).toEqual([296, "within"]);
    expect(below?.ok && below.range).toBe("below");
  });

  test("three kelvin from its own temperature it is hollow, and told as it would read there", () => {
    const { last, segments } = standingAt(later, { readings: [read("r1", later - hourMs, { slurryC: 26 })] });
    expect(last?.seconds?.hollow).toBe(true);
    expect(last?.seconds?.atReferenceS).toBeGreaterThan(23);
    expect(segments[0]?.points).toHaveLength(1);
    expect(segments[0]?.charted).toHaveLength(0);
  });

  test("a weighed volume is told with what scale and cup leave open", () => {
    const weighed = read("r1", later - hourMs, { weighedG: 168, weighedMl: 100 });
    const { density } = standingAt(later, { readings: [weighed] }).last ?? {};
    expect(density).toMatchObject({ densityGCm3: 1.68, how: "weighed" });
    expect(density?.plusMinusGCm3).toBeGreaterThan(0.002);
  });

  test("a flour like silica sends the oven away and asks for the liquor", () => {
    const oven = read("r1", later - hourMs, { densityGCm3: 1.68, ovenSolids: 0.74 });
    expect(standingAt(later, { readings: [oven] }).last?.solids).toMatchObject({
      code: "liquor-density-needed",
    });
    const liquor = read("r1", later - hourMs, { densityGCm3: 1.68, liquorGCm3: 1.2 });
    const { solids } = standingAt(later, { readings: [liquor] }).last ?? {};
    expect(solids?.ok && solids.ratio).toBeCloseTo(1.69, 1);
  });
});

test("any reading the log takes is reckoned without a throw", () => {
  const inRange = (low: number, high: number) =>
    fc.option(fc.double({ min: low, max: high, noNaN: true }), { nil: undefined });
  const reading = fc.record({
    cupS: inRange(1, 600),
    slurryC: inRange(-10, 60),
    densityGCm3: inRange(0.9, 5),
    weighedG: inRange(0.1, 2_000_000),
    weighedMl: inRange(1, 10_000),
    pH: inRange(0, 14),
    liquorGCm3: inRange(0.9, 5),
    ovenSolids: inRange(0, 1),
    plateG: inRange(0, 1000),
    plateCm2: inRange(1, 10_000),
    gelledAfterH: inRange(0, 10_000),
  });
  const aims = fc.record({
    flourGCm3: inRange(1, 8),
    solGCm3: inRange(0.9, 5),
    solSilica: inRange(0, 0.6),
    ratio: inRange(0.1, 10),
    densityGCm3: inRange(0.9, 5),
    slurryC: inRange(-10, 60),
  });
  const kg = fc.double({ min: 0, max: 5000, noNaN: true });
  fc.assert(
    fc.property(
      fc.array(reading, { maxLength: 6 }),
      aims,
      fc.tuple(kg, kg, kg),
      (told, own, [flourKg, solKg, waterKg]) => {
        const readings = told.map((one, i) => ({
          ...one,
          id: `r${i}`,
          at: later + i * hourMs,
          cupId: "blue",
        }));
        const lot = { flourKg, solKg, waterKg };
        const standing = standingAt(later + 10 * hourMs, {
          readings,
          targets: { ...targets, ...own },
          mixes: [{ ...made, ...lot }],
          tops: [{ id: "t", at: later - dayMs, ...lot, why: "fresh" }],
          losses: [{ id: "l", at: later - hourMs, litre: flourKg, how: "lost" }],
        });
        expect(["fit", "watch", "do-not-dip", "not-checked"]).toContain(standing.health.level);
      },
    ),
    { numRuns: 150 },
  );
});
