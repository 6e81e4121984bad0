import { millisecondsInDay as dayMs, millisecondsInHour as hourMs } from "date-fns/constants";
import { describe, expect, test } from "vitest";
import { bucketStandingOf } from "./bucketStanding.ts";
import type { BucketReading } from "../piece/piece.ts";
import { codes, given, later, made, read, shop, standingAt, start } from "../../../tests/logs/testBucket.ts";

describe("the chart", () => {
  const daily = (
    count: number,
    body: (i: number) => Partial<BucketReading> = () => ({}),
  ): readonly BucketReading[] =>
    Array.from({ length: count }, (_, i) =>
      read(`r${i}`, later + i * dayMs, { cupS: 23 + (i % 3) * 0.2, ...body(i) }),
    );

  test("a new batch and another cup begin anew, a top-up cuts the moving range only", () => {
    const { segments } = standingAt(later + 30 * dayMs, {
      readings: daily(12, (i) => ({ cupId: i < 8 ? "blue" : "spare" })),
      mixes: [made, { ...made, id: "m2", at: later + 3.5 * dayMs }],
      tops: [{ id: "t1", at: later + 5.5 * dayMs, flourKg: 0, solKg: 0, waterKg: 1, why: "evaporation" }],
    });
    expect(segments.map(({ because, points }) => [because, points.length])).toEqual([
      ["first", 4],
      ["new-batch", 4],
      ["other-cup", 4],
    ]);
    expect(segments[1]?.chart?.movingRanges.map((range) => range === null)).toEqual([
      true,
      false,
      true,
      false,
    ]);
    expect(segments[1]?.points.map(({ afterCorrection }) => afterCorrection)).toEqual([
      false,
      false,
      true,
      false,
    ]);
  });

  test("as-left readings stay off it", () => {
    const { segments } = standingAt(later + 30 * dayMs, { readings: daily(4, (i) => ({ asLeft: i === 2 })) });
    expect(segments[0]?.points.map(({ id }) => id)).toEqual(["r0", "r1", "r3"]);
  });

  test("a jump beyond three sigma in the newest reading is a reason to watch, and no more once the next one is back", () => {
    const jump = daily(21, (i) => (i === 20 ? { cupS: 25.6 } : {}));
    const at = later + 20 * dayMs + hourMs;
    expect(codes(standingAt(at, { readings: jump }))).toContain("chart-signal");
    const back = [...jump, read("r21", later + 21 * dayMs)];
    expect(codes(standingAt(later + 21 * dayMs + hourMs, { readings: back }))).not.toContain("chart-signal");
  });
});

describe("the ledger", () => {
  test("20 L at 1.7 hold what was put in, at the density of their parts", () => {
    const { ledger, volume } = standingAt(later);
    expect(ledger?.massKg).toBeCloseTo(33.623, 3);
    // By components: silica of 2.2 and water of 1.0 take 0.2 % less than a label's 1.20.
    expect(ledger?.volumeL).toBeCloseTo(20.037, 2);
    expect(volume?.basis).toBe("ledger");
    expect(ledger?.startSilica).toBeCloseTo(0.3, 9);
  });

  test("a kilo of water lost is seen in the density, and told as water", () => {
    const { ledger } = standingAt(later, {
      readings: [read("r1", later - hourMs, { densityGCm3: 32.623 / 19.037 })],
    });
    expect(ledger?.waterLostKg).toBeCloseTo(1, 2);
    expect(ledger?.now.waterKg).toBeCloseTo(7.717, 2);
  });

  test("water made up for evaporation leaves what was made; dips take all in proportion", () => {
    const top = {
      id: "t1",
      at: start + dayMs,
      flourKg: 0,
      solKg: 0,
      waterKg: 1,
      why: "evaporation",
    } as const;
    const { ledger } = bucketStandingOf(given({ tops: [top] }), shop, later, [
      { at: start + 2 * dayMs, massKg: 10 },
    ]);
    expect(ledger?.massKg).toBeCloseTo(23.623, 3);
    expect(ledger?.ratio).toBeCloseTo(1.7, 3);
    expect(ledger?.dippedKg).toBe(10);
  });

  test("a count sets the litres, whatever was written down before", () => {
    const { ledger } = standingAt(later, { counts: [{ id: "c1", at: start + dayMs, litre: 12 }] });
    expect(ledger?.volumeL).toBeCloseTo(12, 9);
  });

  test("three top-ups teach the bucket's own loss, lid on and lid off apart", () => {
    const tops = [1, 2, 3].map(
      (i) =>
        ({
          id: `t${i}`,
          at: start + i * 2 * dayMs,
          flourKg: 0,
          solKg: 0,
          waterKg: 0.5,
          why: "evaporation",
          lid: "off",
        }) as const,
    );
    const { learned } = standingAt(later, { tops });
    expect(learned.lidOff.lossLDay).toBeCloseTo(0.25, 9);
    expect(learned.lidOn.lossLDay).toBeNull();
  });
});

describe("what to do", () => {
  test("thick and dense: water, as much as brings the density back", () => {
    const { advice, ledger, volume } = standingAt(later, {
      readings: [read("r1", later - hourMs, { cupS: 29, densityGCm3: 1.717 })],
    });
    // 33.623 kg of 20.038 L read at 1.717: (1.717 · 20.038 − 33.623) / 0.717 kg of water are gone, and as many litres.
    expect(ledger?.waterLostKg).toBeCloseTo(1.091, 3);
    expect(volume?.volumeL).toBeCloseTo(18.947, 3);
    // 2.7 / (1.7/2.2 + 1/1.20) = 1.6811 is wanted: 18.947 · (1.717 − 1.6811) / (1.6811 − 1).
    const water = advice.ok && advice.correction.ok ? advice.correction.advice[0] : null;
    expect(water?.code).toBe("add-water");
    expect(water?.code === "add-water" && water.waterL).toBeCloseTo(0.998, 3);
  });

  test("without targets it names what is missing", () => {
    const { advice } = standingAt(later, { targets: {}, readings: [read("r1", later - hourMs)] });
    expect(!advice.ok && advice.missing).toEqual([
      "own-temperature",
      "band",
      "density-target",
      "flour",
      "volume",
    ]);
  });

  test("the reading after an addition is set beside what was foretold", () => {
    const top = {
      id: "t1",
      at: later - 2 * hourMs,
      flourKg: 0,
      solKg: 0,
      waterKg: 1,
      why: "correction",
      expected: { densityGCm3: 1.68, cupS: 23 },
    } as const;
    const before = read("r1", later - 3 * hourMs, { cupS: 29, densityGCm3: 1.717 });
    const waiting = standingAt(later, { tops: [top], readings: [before] });
    expect(waiting.afterAddition).toMatchObject({ read: null, met: null });
    const after = read("r2", later - hourMs, { cupS: 23.5, densityGCm3: 1.7, asLeft: true });
    const { afterAddition } = standingAt(later, { tops: [top], readings: [before, after] });
    expect(afterAddition?.met).toMatchObject({ density: "denser", seconds: "as-expected" });
  });

  test("what is due: everything on a bucket never read, nothing of a session that was just read", () => {
    expect(standingAt(later).checksDue).toEqual([
      "temperature",
      "seconds",
      "density",
      "pH",
      "liquor",
      "gel",
      "plate",
      "look",
    ]);
    const readings = [
      read("r1", later - hourMs, {
        densityGCm3: 1.68,
        pH: 9.6,
        liquorGCm3: 1.2,
        liquidForH: 48,
        smell: "none",
      }),
    ];
    expect(standingAt(later, { readings }).checksDue).toEqual(["plate"]);
    expect(standingAt(later + dayMs, { readings }).checksDue).toEqual([
      "temperature",
      "seconds",
      "density",
      "plate",
      "look",
    ]);
  });
});
