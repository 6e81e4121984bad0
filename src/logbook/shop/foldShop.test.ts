import { millisecondsInHour as hourMs } from "date-fns/constants";
import { describe, expect, test } from "vitest";
import { foldBucket } from "../bucket/foldBucket.ts";
import { foldShop } from "./foldShop.ts";
import { monday, testLog } from "../../../tests/logs/testLog.ts";
import { streamLog } from "../../../tests/logs/testStreamLog.ts";

const at = (hours: number): number => monday + hours * hourMs;

describe("the shop", () => {
  const shop = () => streamLog("shop/own");

  test("own figures by kind of coat are set and cleared one by one", () => {
    const log = shop();
    log.tell("shop-figures-set", { slurryKgM2: { prime: 0.5, backup: 0.7 }, buildMm: { seal: 0.3 } }, at(0));
    log.tell("shop-figures-set", { slurryKgM2: { backup: null, seal: 0.4 } }, at(1));
    expect(foldShop(log.entries())).toMatchObject({
      slurryKgM2: { prime: 0.5, seal: 0.4 },
      stuccoKgM2: {},
      buildMm: { seal: 0.3 },
      morMPa: null,
    });
    expect(foldShop(log.entries()).slurryKgM2).not.toHaveProperty("backup");
  });

  test("a thing set again is replaced whole and keeps its place", () => {
    const log = shop();
    const kiln = { name: "Top loader", heat: "electric", powerKW: 7, volumeL: 120, maxC: 1200 } as const;
    log.tell("kiln-set", { kilnId: "a", ...kiln, maxRampKPerH: 200 }, at(0));
    log.tell("kiln-set", { kilnId: "b", ...kiln, name: "Small one" }, at(1));
    log.tell("kiln-set", { kilnId: "a", ...kiln, name: "Old top loader", retired: true }, at(2));
    const { kilns } = foldShop(log.entries());
    expect(kilns.map(({ id, name, retired }) => [id, name, retired])).toEqual([
      ["a", "Old top loader", true],
      ["b", "Small one", false],
    ]);
    expect(kilns[0]).not.toHaveProperty("maxRampKPerH");
  });

  test("a drying time is left out until it is taken in again", () => {
    const log = shop();
    log.tell("drying-pair-judged", { coatId: "c", leftOut: true, reason: "door open" }, at(0));
    log.tell("drying-pair-judged", { coatId: "d", leftOut: true, reason: "power cut" }, at(1));
    log.tell("drying-pair-judged", { coatId: "c", leftOut: false, reason: "" }, at(2));
    expect(foldShop(log.entries()).pairsLeftOut.map(({ coatId, reason }) => [coatId, reason])).toEqual([
      ["d", "power cut"],
    ]);
    expect(log.refusal("drying-pair-judged", { coatId: "c", leftOut: true, reason: " " }, at(3))).toEqual({
      code: "missing",
      field: "reason",
    });
  });

  test("stock and shrink are kept line by line, a struck one is gone", () => {
    const log = shop();
    const slip = log.tell("stock-moved", { materialId: "f", how: "received", massKg: 500 }, at(0));
    log.tell("stock-moved", { materialId: "f", how: "received", massKg: 50 }, at(1));
    log.tell("shrink-measured", { alloyId: "x", patternMm: 160, castingMm: 157.6, held: "free" }, at(2));
    log.run({ do: "strike", stream: "shop/own", entryId: slip, reason: "a nought too many" }, at(3));
    const { stockMoves, shrinks } = foldShop(log.entries());
    expect([stockMoves.map(({ massKg }) => massKg), shrinks.length]).toEqual([[50], 1]);
  });

  test("figures no shop could have are refused with their limits", () => {
    const log = shop();
    const cast = (castingMm: number) =>
      log.refusal("shrink-measured", { alloyId: "x", patternMm: 160, castingMm, held: "free" }, at(0));
    expect(cast(15.7)).toMatchObject({ field: "castingMm", low: 144 });
    expect(cast(157)).toBeNull();
    const alloy = { alloyId: "x", copiedFrom: null, name: "Ours" };
    expect(log.refusal("alloy-set", { ...alloy, solidusC: 900, liquidusC: 850 }, at(0))).toMatchObject({
      field: "liquidusC",
      low: 900,
    });
    expect(log.refusal("alloy-set", { ...alloy, solidusC: 820, liquidusC: 970 }, at(0))).toBeNull();
    expect(log.refusal("shop-figures-set", { buildMm: { prime: 12 } }, at(0))).toMatchObject({
      field: "buildMm",
    });
  });
});

describe("a bucket", () => {
  test("tells its targets, all its readings and what was done to it; the last reading is the newest", () => {
    const log = streamLog("bucket/first-prime");
    const set = { name: "Prime", use: "prime", slurry: "silica" } as const;
    log.tell("bucket-set", { ...set, lowS: 26, highS: 32, fullL: 20 }, at(0));
    log.tell("bucket-mixed", { flourKg: 24, solKg: 7, waterKg: 0.4 }, at(0));
    const one = log.tell("bucket-read", { cupS: 33, dipsS: [33, 33] }, at(1));
    log.tell("bucket-topped", { flourKg: 0, solKg: 0, waterKg: 0.2, why: "evaporation" }, at(1.1));
    log.tell("bucket-read", { cupS: 29, asLeft: true }, at(1.2));
    log.tell("bucket-lost", { litre: 0.5, how: "lost" }, at(1.3));
    log.tell("bucket-counted", { litre: 17 }, at(1.4));
    log.tell("bucket-passed", { verdict: "fit" }, at(1.5));
    const bucket = foldBucket("first-prime", log.entries());
    expect(bucket).toMatchObject({
      ...set,
      retired: false,
      targets: { lowS: 26, highS: 32, fullL: 20 },
      last: { cupS: 29, asLeft: true },
      readings: [{ id: one, at: at(1), cupS: 33 }, { cupS: 29 }],
      mixes: [{ flourKg: 24 }],
      tops: [{ why: "evaporation" }],
      losses: [{ litre: 0.5 }],
      counts: [{ litre: 17 }],
      passes: [{ verdict: "fit" }],
    });
    expect(bucket?.targets).not.toHaveProperty("name");
  });

  test("set again has the new targets and keeps what was read", () => {
    const log = streamLog("bucket/first-prime");
    log.tell("bucket-read", { cupS: 33 }, at(1));
    log.tell("bucket-set", { name: "Prime", use: "prime", slurry: "zircon", lowS: 20 }, at(2));
    log.tell("bucket-set", { name: "Prime", use: "prime", slurry: "zircon" }, at(3));
    const bucket = foldBucket("first-prime", log.entries());
    expect([bucket?.slurry, bucket?.targets, bucket?.readings.length]).toEqual(["zircon", {}, 1]);
  });

  test("refuses a mix of nothing and a band turned round", () => {
    const log = streamLog("bucket/first-prime");
    const none = { flourKg: 0, solKg: 0, waterKg: 0 };
    expect(log.refusal("bucket-mixed", none, at(0))).toEqual({ code: "missing", field: "makings" });
    expect(log.refusal("bucket-mixed", { ...none, waterKg: 0.1 }, at(0))).toBeNull();
    const set = { name: "Prime", use: "prime", slurry: "" } as const;
    expect(log.refusal("bucket-set", { ...set, lowS: 30, highS: 26 }, at(0))).toMatchObject({
      field: "highS",
      low: 30,
    });
    expect(log.refusal("bucket-read", { dipsS: [30, 3000] }, at(0))).toMatchObject({ field: "dipsS" });
  });
});

describe("a piece", () => {
  test("keeps weighings, holds, patterns, its runs, and the times round the pour", () => {
    const log = testLog();
    log.tell("piece-weighed", { massG: 200 }, at(0.5));
    log.coat(at(1));
    log.tell("piece-weighed", { massG: 310, note: "dry" }, at(6));
    log.tell("hold-passed", { point: "prime-coverage", name: "Ines" }, at(6.1));
    log.tell("burnout-started", { runId: "r1" }, at(20));
    log.tell("crack-found", { kind: "open", stage: "burnout", where: "neck", runId: "r1" }, at(21));
    log.tell("shell-fired", { peakC: 820, holdMin: 60, runId: "r2" }, at(30));
    log.tell("shell-out-of-kiln", { shellC: 520, pourId: "p" }, at(40));
    log.tell("pour-begun", { metalC: 1150, pourId: "p" }, at(40.05));
    expect(log.piece()).toMatchObject({
      weighings: [
        { massG: 200, coats: 0, note: null },
        { massG: 310, coats: 1, note: "dry" },
      ],
      holdsPassed: [{ point: "prime-coverage", name: "Ines", coats: 1 }],
      runIds: ["r1", "r2"],
      cracks: [{ runId: "r1" }],
      outOfKiln: [{ at: at(40), shellC: 520, pourId: "p" }],
      pourBegun: [{ at: at(40.05), metalC: 1150 }],
      phase: "fired",
    });
  });

  test("is out of the kiln and poured into only where a pour can be", () => {
    const log = testLog();
    const asked = (type: "shell-out-of-kiln" | "pour-begun", now: number) => {
      const body = type === "pour-begun" ? { metalC: null } : { shellC: null };
      const command = { do: "log", stream: "piece/heron", type, body };
      const decision = log.ask(command as Parameters<typeof log.ask>[0], now);
      return decision.ok ? null : decision.refusal;
    };
    expect(asked("shell-out-of-kiln", at(1))).toEqual({ code: "missing", field: "coats" });
    log.coat(at(1));
    expect(asked("pour-begun", at(2))).toBeNull();
    log.tell("metal-poured", { metalC: 1150, shellC: 500, massKg: 3, outOfKilnMin: 2 }, at(3));
    log.tell("shell-knocked-out", {}, at(5));
    expect(asked("pour-begun", at(6))).toMatchObject({ code: "wrong-phase", phase: "knocked-out" });
    expect(asked("shell-out-of-kiln", at(6))).toMatchObject({ code: "wrong-phase" });
  });
});
