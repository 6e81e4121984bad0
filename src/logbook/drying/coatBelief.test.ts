import { millisecondsInHour as hourMs } from "date-fns/constants";
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { standingOf } from "../piece/buildStanding.ts";
import { unusedBucket } from "../piece/builtIns.ts";
import { coatPicture } from "./coatPicture.ts";
import type { SpanBelief } from "./coatBelief.ts";
import { makeMemo } from "../log/memo.ts";
import type { EntryBodies } from "../entries/entry.ts";
import type { AirReading } from "../piece/piece.ts";
import type { CoatDrying } from "../piece/standing.ts";
import { stamped } from "../../../tests/logs/testStamps.ts";
import type { TestLog } from "../../../tests/logs/testLog.ts";
import { monday, steadyAir, testLog, testShop } from "../../../tests/logs/testLog.ts";

const at = (hours: number): number => monday + hours * hourMs;
const steady = (hours: number, air: Partial<AirReading> = {}): readonly AirReading[] =>
  steadyAir({ from: monday - 2 * hourMs, hours: hours + 2 }, air);

/** A shell of four dry backups, weighed 1180 g, and a fifth dipped at hour 30. */
function weighedShell(plan: Parameters<typeof testLog>[0] = {}): TestLog {
  const log = testLog(plan);
  for (const hours of [0, 7, 14, 22]) log.coat(at(hours), { step: null });
  log.tell("piece-weighed", { massG: 1180 }, at(29.9));
  log.coat(at(30), { step: null });
  return log;
}
type Seen = EntryBodies["dryness-seen"];
type SeenOf<T = Seen> = T extends Seen ? Omit<T, "coatId"> : never;
const see = (log: TestLog, hours: number, seen: SeenOf): string =>
  log.tell("dryness-seen", { ...seen, coatId: log.piece().coats.at(-1)?.id ?? "" }, at(hours));
const weigh = (log: TestLog, hours: number, massG: number, moment?: "drained" | "stuccoed"): string =>
  see(log, hours, { method: "weight", massG, ...(moment ? { moment } : {}) });

function outerOf(log: TestLog, now: number, readings = steady(40)): CoatDrying {
  const { outer } = standingOf(log.piece(), testShop(readings), now);
  if (outer === null) throw new Error("no coat");
  return outer;
}
/** Slurry 58 g of which 15.47 g water by the starting fraction, 63.5 g of stucco. */
function threeWeighings(plan?: Parameters<typeof testLog>[0]): TestLog {
  const log = weighedShell(plan);
  weigh(log, 30.01, 1238, "drained");
  weigh(log, 30.05, 1301.5, "stuccoed");
  return log;
}

describe("weights", () => {
  test("three weighings give the dry mass, and a fourth the water left with its error", () => {
    const log = threeWeighings();
    weigh(log, 31, 1293.8);
    const { belief } = outerOf(log, at(31));
    const said = belief?.heard[0]?.said;
    if (said?.by !== "target-mass") throw new Error("the target mass did not speak");
    // 1301.5 − 58 · 0.2/0.75 = 1286.03, where half the water had gone.
    expect(said.targetG).toBeCloseTo(1286.03, 2);
    expect(said.waterShare).toBeCloseTo(0.502, 2);
    expect((belief?.median ?? NaN) / 0.2).toBeCloseTo(0.49, 1);
    expect(belief?.dryChance).toBeLessThan(0.01);
  });

  test("weighings that all end in 0 or 5 are a scale of 5 g steps, too coarse for a coat with 40 g of water", () => {
    const codes = (drainedG: number): readonly string[] => {
      const log = weighedShell({ areaM2: 0.2 });
      weigh(log, 30.01, drainedG, "drained");
      weigh(log, 30.05, 1500, "stuccoed");
      weigh(log, 31, 1480);
      const drying = outerOf(log, at(31));
      return [...(drying.belief?.unheard ?? []), ...(drying.saidAlone?.unheard ?? [])].map(
        ({ why }) => why.code,
      );
    };
    expect(codes(1330)).toContain("balance-too-coarse");
    expect(codes(1331)).not.toContain("balance-too-coarse");
  });

  test("a weight says dry by the dry mass only where its whole error does, and wet where that does", () => {
    // Dry 1286.03 g, water 15.47 g, known to 7.5 %: nine in ten of that are 1.9 g either way.
    const saidAt = (massG: number): CoatDrying["evidence"] => {
      const log = threeWeighings();
      weigh(log, 31.5, massG);
      return outerOf(log, at(31.6)).evidence;
    };
    expect(saidAt(1283.9)).toMatchObject({ says: "dry", by: "target", whole: true });
    expect(saidAt(1286.2)).toBeNull();
    expect(saidAt(1290)).toMatchObject({ says: "wet" });
  });

  test("a bucket whose makings were told gives its own water fraction", () => {
    const log = threeWeighings();
    weigh(log, 31, 1293.8);
    const mix = { id: "m", at: at(1), flourKg: 15, solKg: 10, waterKg: 0 };
    const shop = testShop(steady(40));
    const bucket = {
      ...unusedBucket,
      id: "b",
      name: "B",
      use: "backup",
      slurry: "fused silica",
      mixes: [mix],
    } as const;
    const surroundings = { ...shop, buckets: new Map([["first-backup", bucket]]) };
    const said = standingOf(log.piece(), surroundings, at(31)).outer?.belief?.heard[0]?.said;
    // 7 kg of water in 25 kg: 0.28 of 58 g is 16.24 g.
    expect(said?.by === "target-mass" ? said.waterG : 0).toBeCloseTo(16.24, 2);
  });

  test("without the weighing before the dip, the loss between two weighings speaks, where the area is known", () => {
    const log = weighedShell({ areaM2: 0.1 });
    weigh(log, 30.2, 1300);
    weigh(log, 31.2, 1296);
    const { belief, waterKgM2 } = outerOf(log, at(31.2));
    expect(belief?.heard).toMatchObject([{ said: { by: "weight-loss", lossG: 4 } }]);
    // 4 g of 20 g an hour is slow: the sum takes off eleven.
    expect(waterKgM2).toBeGreaterThan(outerOf(weighedShell(), at(31.2)).waterKgM2 ?? 1);
    const unknown = weighedShell();
    weigh(unknown, 30.2, 1300);
    weigh(unknown, 31.2, 1296);
    expect(outerOf(unknown, at(31.2)).belief).toBeNull();
  });

  test("weighings on a piece that was not dry, or was prewetted, are not held against its dry mass", () => {
    const early = testLog({});
    early.coat(at(0), { step: null });
    early.tell("piece-weighed", { massG: 1180 }, at(0.5));
    early.coat(at(0.6), { step: null });
    weigh(early, 0.62, 1238, "drained");
    weigh(early, 0.65, 1301.5, "stuccoed");
    weigh(early, 1.5, 1295);
    expect(outerOf(early, at(1.5)).belief).toBeNull();
  });
});

describe("belief", () => {
  test("narrows with each weighing that goes with the sum", () => {
    const log = threeWeighings();
    const band = (hours: number): number => {
      const { readyAt } = outerOf(log, at(hours));
      return Math.log(((readyAt.late ?? NaN) - at(30)) / ((readyAt.early ?? NaN) - at(30)));
    };
    const before = band(30.1);
    weigh(log, 30.5, 1294.5);
    const once = band(30.5);
    weigh(log, 31.2, 1290.1);
    expect(once).toBeLessThan(0.8 * before);
    expect(band(31.2)).toBeLessThan(once);
  });

  test("tells which observation does not go with the rest", () => {
    const log = threeWeighings();
    weigh(log, 31, 1293.8);
    const odd = see(log, 31.1, { method: "surface", surfaceC: 21.9, dryShellC: 21.9 });
    const { belief } = outerOf(log, at(31.2));
    expect(belief?.conflicts.map(({ seenId }) => seenId)).toContain(odd);
  });

  test("an observation that can't be read says why", () => {
    const log = weighedShell();
    const coarse = see(log, 31, { method: "bag", rh: 0.5, roomRh: 0.5, minutes: 5 });
    see(log, 31, { method: "bag", rh: 0.97, roomRh: 0.5, minutes: 30 });
    const { belief } = outerOf(log, at(31.2));
    expect(belief?.unheard).toMatchObject([{ seenId: coarse, why: { code: "too-soon" } }]);
    expect(belief?.heard).toHaveLength(1);
  });

  test("resistance speaks against its own reference, and not without one", () => {
    const log = weighedShell();
    see(log, 31.5, { method: "resistance", ohm: 8_000_000 });
    expect(outerOf(log, at(31.6)).belief).toBeNull();
    see(log, 31.6, { method: "touch", verdict: "damp" });
    const other = weighedShell();
    see(other, 30.1, { method: "resistance", ohm: 60_000, reference: true });
    see(other, 31.5, { method: "resistance", ohm: 8_000_000 });
    expect(outerOf(other, at(31.6)).belief?.heard).toMatchObject([
      { said: { by: "resistance", says: "dry" } },
    ]);
    expect(outerOf(other, at(31.6)).belief?.dryChance).toBeGreaterThan(0.4);
  });

  test("starts anew with a further dip", () => {
    const log = threeWeighings();
    weigh(log, 31, 1293.8);
    log.tell("coat-redipped", { coatId: log.piece().coats.at(-1)?.id ?? "" }, at(31.1));
    expect(outerOf(log, at(31.2)).belief).toBeNull();
  });

  test("where no air was read it is put to the sum of an ordinary room", () => {
    const log = threeWeighings();
    weigh(log, 31, 1293.8);
    expect(outerOf(log, at(31), [])).toMatchObject({
      verdict: "wet",
      basis: { readings: 0, assumed: true },
      belief: { heard: [{ said: { by: "target-mass" } }] },
    });
  });
});

test("a lighter piece is never believed wetter", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1285, max: 1301, noNaN: true }),
      fc.double({ min: 0.2, max: 8, noNaN: true }),
      (massG, lighterG) => {
        const waterAt = (grams: number): number => {
          const log = threeWeighings();
          weigh(log, 31, Math.round(grams * 10) / 10);
          return outerOf(log, at(31)).waterKgM2 ?? NaN;
        };
        const lighter = massG - lighterG;
        fc.pre(lighter > 1285.2);
        expect(waterAt(lighter)).toBeLessThanOrEqual(waterAt(massG) + 1e-9);
      },
    ),
    { numRuns: 30 },
  );
});

describe("the picture of a coat", () => {
  test("goes from the dip through what was seen to ready, with each source's pull", () => {
    const log = threeWeighings();
    weigh(log, 31, 1293.8);
    see(log, 31.1, { method: "touch", verdict: "damp" });
    const surroundings = testShop(steady(40));
    const outer = outerOf(log, at(31.2));
    const picture = coatPicture(log.piece(), outer.coat.id, { surroundings, recipe: null, now: at(31.2) });
    if (picture === null) throw new Error("no picture");
    expect(picture.points[0]).toEqual({ at: at(30), low: 0.2, median: 0.2, high: 0.2 });
    for (const { low, median, high } of picture.points) {
      expect(low).toBeLessThanOrEqual(median + 1e-12);
      expect(median).toBeLessThanOrEqual(high + 1e-12);
    }
    const now = picture.points.findLast((point) => point.at === at(31.2));
    expect(now?.median).toBeCloseTo(outer.waterKgM2 ?? NaN, 9);
    expect(picture.pulls.map(({ said }) => said.by)).toEqual(["target-mass", "touch"]);
    // Without the weighing hardly more is known than by the sum; it moves the belief more than a hand does.
    const [weighed, felt] = picture.pulls;
    const width = (band: { low: number; high: number } | undefined): number =>
      (band?.high ?? NaN) - (band?.low ?? NaN);
    expect(width(weighed?.without)).toBeGreaterThan(1.5 * width(felt?.without));
    expect(picture.next).toMatchObject({ kind: "weigh", from: at(30) });
    expect(picture.air.length).toBeGreaterThan(2);
  });

  test("bends within a long stretch of steady air, so that its line is dry when the coat is said to be", () => {
    const log = weighedShell();
    const surroundings = testShop(steady(31));
    const outer = outerOf(log, at(30.5), steady(31));
    const picture = coatPicture(log.piece(), outer.coat.id, { surroundings, recipe: null, now: at(30.5) });
    for (const [lane, guess] of [
      ["low", "early"],
      ["median", "likely"],
      ["high", "late"],
    ] as const) {
      const dryAt = picture?.points.find((point) => point[lane] <= (picture.readyKgM2 ?? 0) + 1e-12)?.at;
      expect(Math.abs((dryAt ?? NaN) - (outer.readyAt[guess] ?? NaN)) / 60_000).toBeLessThan(6);
    }
  });

  test("a covered coat ends at the dip over it and wants no more weighing", () => {
    const log = threeWeighings();
    log.coat(at(33), { step: null });
    const surroundings = testShop(steady(40));
    const under = log.piece().coats[4]?.id ?? "";
    const picture = coatPicture(log.piece(), under, { surroundings, recipe: null, now: at(35) });
    expect(picture).toMatchObject({ isOuter: false, judgedAt: at(33), next: null });
    expect(picture?.points.at(-1)?.at).toBe(at(33));
  });
});

test("a rack of coats with checks on them is believed once, and not again at the next look", () => {
  const pieces = Array.from({ length: 60 }, (_, n) => {
    const log = threeWeighings();
    weigh(log, 31, 1293.8 - (n % 5) / 10);
    return { ...log.piece(), id: `p${n}` };
  });
  const shop = stamped(pieces, testShop(steadyAir({ from: at(-2), hours: 42, everyH: 1 / 12 })));
  const memory = makeMemo();
  const look = (minutes: number) => {
    for (const piece of structuredClone(pieces)) standingOf(piece, shop, at(31.2) + minutes * 60_000, memory);
    return [...(memory.get("belief") ?? [])].map(([id, { value }]) => ({
      id,
      belief: (value as { readonly belief: SpanBelief | null }).belief,
    }));
  };
  const first = look(0);
  expect(first.length).toBeGreaterThanOrEqual(60);
  const again = look(4);
  expect(again.map(({ id }) => id)).toEqual(first.map(({ id }) => id));
  for (const [i, { belief }] of again.entries()) expect(belief).toBe(first[i]?.belief);
});
