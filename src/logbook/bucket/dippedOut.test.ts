import { millisecondsInHour as hourMs } from "date-fns/constants";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { builtInShop } from "../piece/builtIns.ts";
import { dipsFrom, takenBy } from "./dippedOut.ts";
import type { Piece } from "../piece/piece.ts";
import { given as bucketGiven, shop as testShop } from "../../../tests/logs/testBucket.ts";
import { testLog, monday } from "../../../tests/logs/testLog.ts";

const none = { buckets: new Map(), shop: builtInShop, gains: new Map() };
const coated = (areaM2: number | undefined, kinds: readonly ("prime" | "backup")[]): Piece => {
  const log = testLog(areaM2 === undefined ? {} : { areaM2 });
  kinds.forEach((kind, i) =>
    log.coat(monday + (1 + i * 12) * hourMs, { kind, bucketId: "b1", stuccoId: "16-30" }),
  );
  return log.piece();
};

describe("slurry carried out on pieces", () => {
  test("the first prime on 0.4 m² takes 0.42 kg a m²: 0.168 kg", () => {
    const { dips } = takenBy([coated(0.4, ["prime"])], none);
    expect(dips[0]?.slurryKg).toBeCloseTo(0.168, 6);
    expect(dips[0]?.basis).toBe("starting");
  });

  test("a later coat covers the wall beneath: it takes more than area times gain, by some percent", () => {
    const { dips } = takenBy([coated(0.4, ["backup", "backup", "backup"])], none);
    const third = (dips[2]?.slurryKg ?? 0) / (0.4 * 0.75);
    expect(third).toBeGreaterThan(1.01);
    expect(third).toBeLessThan(1.08);
  });

  test("a zircon bucket of 2.85 carries out more by its density; own figures stand as they are", () => {
    const heavy = bucketGiven({ targets: { densityGCm3: 2.85 } });
    const around = { ...none, buckets: new Map([["b1", heavy]]), shop: testShop };
    const [dip] = takenBy([coated(0.4, ["prime"])], around).dips;
    expect(dip?.slurryKg).toBeCloseTo((0.168 * 2.85) / 1.68, 6);
    const own = { ...around, shop: { ...testShop, slurryKgM2: { prime: 0.5 } } };
    expect(takenBy([coated(0.4, ["prime"])], own).dips[0]).toMatchObject({ slurryKg: 0.2, basis: "own" });
  });

  test("own weighings come before the starting value and after a figure that was set", () => {
    const gain = (kgM2: number) => ({ kgM2, sdKgM2: null });
    const gains = new Map([["prime", { slurry: gain(0.6), stucco: gain(0.5) }]]);
    const [dip] = takenBy([coated(0.5, ["prime"])], { ...none, gains }).dips;
    expect(dip).toMatchObject({ slurryKg: 0.3, stuccoKg: 0.25, basis: "weighed" });
  });

  test("a second dip of a coat takes slurry again and no stucco", () => {
    const log = testLog({ areaM2: 0.4 });
    const coatId = log.coat(monday + hourMs, { kind: "prime", bucketId: "b1" });
    log.tell("coat-redipped", { coatId }, monday + 2 * hourMs);
    const { dips } = takenBy([log.piece()], none);
    expect(dips.map(({ slurryKg }) => slurryKg.toFixed(3))).toEqual(["0.168", "0.168"]);
    expect(dips[1]?.stuccoKg).toBe(0);
  });

  test("a piece of no known area is counted and not guessed", () => {
    expect(takenBy([coated(undefined, ["prime", "backup"])], none)).toEqual({ dips: [], unknown: 2 });
  });

  test("only its own dips leave a bucket, in the order of time", () => {
    const taken = takenBy([coated(0.4, ["prime", "backup"]), coated(0.1, ["prime"])], none);
    expect(dipsFrom(taken, "b1").map(({ at }) => at)).toEqual(
      dipsFrom(taken, "b1")
        .map(({ at }) => at)
        .toSorted((a, b) => a - b),
    );
    expect(dipsFrom(taken, "another")).toEqual([]);
  });

  test("twice the area never takes twice the slurry or more once a wall grows, and always more than once", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 5, noNaN: true }), (areaM2) => {
        const sum = (area: number) =>
          takenBy([coated(area, ["backup", "backup"])], none).dips.reduce(
            (all, dip) => all + dip.slurryKg,
            0,
          );
        const [one, two] = [sum(areaM2), sum(2 * areaM2)];
        expect(two).toBeGreaterThan(one);
        expect(two).toBeLessThan(2 * one);
      }),
      { numRuns: 60 },
    );
  });
});
