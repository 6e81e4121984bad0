import { millisecondsInHour as hourMs } from "date-fns/constants";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { anyEntries } from "../../../tests/logs/anyEntries.ts";
import type { Entry, EntryBodies, EntryType } from "../entries/entry.ts";
import { readingsOf } from "../air/airLog.ts";
import { standingOf } from "../piece/buildStanding.ts";
import { foldPiece, foldRecipe, foldRoom } from "./fold.ts";
import { foldBucket } from "../bucket/foldBucket.ts";
import { foldMelt } from "../pour/foldMelt.ts";
import { foldPour } from "../pour/foldPour.ts";
import { foldRun } from "../fire/foldRun.ts";
import { foldShop } from "../shop/foldShop.ts";
import { monday, steadyAir, testLog, testShop, testStream } from "../../../tests/logs/testLog.ts";

/** The same lines read as the log of each kind of thing. */
const everyFold = (log: readonly Entry[]) => [
  foldPiece("heron", log),
  foldRoom("first", log),
  foldBucket("first-prime", log),
  foldRecipe("heron", log),
  foldShop(log),
  foldRun("heron", log),
  foldMelt("heron", log),
  foldPour("heron", log),
  readingsOf(log),
];

let count = 0;
const line = <T extends EntryType>(type: T, body: EntryBodies[T], at = monday): Entry =>
  ({
    id: `f${(count += 1)}`,
    stream: "room/x",
    type,
    at,
    recordedAt: at,
    zone: "UTC",
    device: "d",
    version: 1,
    body,
  }) as unknown as Entry;

describe("a piece's log", () => {
  test("no start, no piece", () => {
    expect(foldPiece("heron", [])).toBeNull();
    expect(foldPiece("heron", [line("note-written", { text: "lost" })])).toBeNull();
  });

  test("a coat another device dates before the start still counts", () => {
    const log = testLog();
    const id = log.coat(monday + hourMs);
    const early = log.entries().map((entry) => (entry.id === id ? { ...entry, at: monday - hourMs } : entry));
    expect(foldPiece("heron", early)?.coats).toMatchObject([{ number: 1, dippedAt: monday - hourMs }]);
  });

  test("a plan grows and shrinks by changes; null clears a figure, what is not named stays", () => {
    const log = testLog({ headM: 0.3, alloyId: "x" });
    log.tell("piece-changed", { changes: { headM: 0.4, areaM2: 0.2 } }, monday + 1);
    log.tell("piece-changed", { changes: { alloyId: null, name: "Grey heron" } }, monday + 2);
    expect(log.piece().plan).toEqual({ name: "Grey heron", headM: 0.4, areaM2: 0.2 });
  });

  test("a coat dipped in another room has moved the piece there", () => {
    const log = testLog();
    log.coat(monday + hourMs);
    log.coat(monday + 5 * hourMs, { roomId: "attic" });
    log.tell("piece-moved", { roomId: "attic" }, monday + 6 * hourMs);
    expect(log.piece().rooms).toEqual([
      { roomId: "first", from: monday },
      { roomId: "attic", from: monday + 5 * hourMs },
    ]);
  });

  test("a caliper reading remembers how many coats it went round", () => {
    const log = testLog();
    log.coat(monday + hourMs);
    log.tell("wall-measured", { wallMm: 1.2, where: "cup" }, monday + 4 * hourMs);
    log.coat(monday + 5 * hourMs);
    expect(log.piece().wall).toMatchObject([{ wallMm: 1.2, where: "cup", coats: 1 }]);
  });

  test("review, burnout, fire, preheat, pour, knock-out and finish follow each other", () => {
    const log = testLog();
    const phases: string[] = [];
    const tell: typeof log.tell = (type, body, at) => {
      const id = log.tell(type, body, at);
      phases.push(log.piece().phase);
      return id;
    };
    log.coat(monday + hourMs);
    tell("review-signed", { name: "Ines", verdict: "clear", passed: [], safety: 3 }, monday + 9 * hourMs);
    tell("burnout-started", {}, monday + 10 * hourMs);
    tell("burnout-read", { kilnC: 700 }, monday + 11 * hourMs);
    tell("burnout-ended", { result: "clean" }, monday + 12 * hourMs);
    tell("shell-fired", { peakC: 850, holdMin: 60 }, monday + 13 * hourMs);
    tell("shell-preheated", { shellC: 500 }, monday + 20 * hourMs);
    tell("metal-poured", { metalC: 1150, shellC: 480, massKg: 4, outOfKilnMin: 2 }, monday + 21 * hourMs);
    tell("shell-knocked-out", {}, monday + 23 * hourMs);
    tell("piece-finished", { note: "liver patina" }, monday + 30 * hourMs);
    expect(phases).toEqual([
      "reviewed",
      "burnout",
      "burnout",
      "burnt-out",
      "fired",
      "preheated",
      "poured",
      "knocked-out",
      "finished",
    ]);
  });

  test("a stopped burnout leaves the piece as it was signed, unless it has cracked since", () => {
    const log = testLog();
    log.coat(monday + hourMs);
    log.tell("review-signed", { name: "I", verdict: "clear", passed: [], safety: 3 }, monday + 9 * hourMs);
    log.tell("burnout-started", {}, monday + 10 * hourMs);
    log.tell("burnout-ended", { result: "stopped" }, monday + 11 * hourMs);
    expect(log.piece().phase).toBe("reviewed");
    log.tell("burnout-started", {}, monday + 12 * hourMs);
    log.tell("crack-found", { kind: "open", stage: "burnout", where: "neck" }, monday + 13 * hourMs);
    log.tell("burnout-ended", { result: "stopped" }, monday + 14 * hourMs);
    expect(log.piece().phase).toBe("coating");
    expect(log.piece().cracks[0]?.afterBurnout).toBe(true);
  });

  test("any new coat or crack sends a signed piece back to coating", () => {
    const log = testLog();
    log.coat(monday + hourMs);
    log.tell("review-signed", { name: "I", verdict: "clear", passed: [], safety: 3 }, monday + 9 * hourMs);
    log.coat(monday + 10 * hourMs);
    expect(log.piece().phase).toBe("coating");
    expect(log.piece().reviews[0]?.coats).toBe(1);
    log.tell("review-signed", { name: "I", verdict: "clear", passed: [], safety: 3 }, monday + 19 * hourMs);
    log.tell("crack-found", { kind: "chip", stage: "other", where: "cup" }, monday + 20 * hourMs);
    expect(log.piece().phase).toBe("coating");
  });

  test("a shell that is dipped again is out of the kiln, whether or not anyone ended the burnout", () => {
    const log = testLog();
    log.coat(monday + hourMs);
    log.tell("burnout-started", {}, monday + 10 * hourMs);
    log.tell("crack-found", { kind: "open", stage: "burnout", where: "neck" }, monday + 12 * hourMs);
    log.coat(monday + 20 * hourMs);
    const { burnouts, coats } = log.piece();
    expect(burnouts[0]?.ended).toMatchObject({ at: monday + 20 * hourMs, result: "stopped" });
    expect(coats.map(({ afterBurnout }) => afterBurnout)).toEqual([false, true]);
    log.tell("burnout-started", {}, monday + 30 * hourMs);
    expect(log.piece().burnouts).toHaveLength(2);
  });

  test("striking a dip leaves the piece exactly as before it", () => {
    const log = testLog();
    log.coat(monday + hourMs);
    const before = log.piece();
    const id = log.coat(monday + 5 * hourMs, { roomId: "attic" });
    log.run({ do: "strike", stream: testStream, entryId: id, reason: "undo" }, monday + 6 * hourMs);
    expect(log.piece()).toEqual(before);
  });
});

describe("rooms, buckets, recipes, the shop", () => {
  test("the first room and buckets are there before any entry, and can be renamed", () => {
    expect(foldRoom("first", [])).toMatchObject({ name: "Drying room", altitudeM: 0, last: null });
    expect(foldRoom("attic", [])).toBeNull();
    expect(foldBucket("first-prime", [])).toMatchObject({ use: "prime" });
    expect(foldBucket("first-backup", [])).toMatchObject({ use: "backup" });
    expect(foldBucket("other", [])).toBeNull();
    const set = line("room-set", { name: "Cellar", altitudeM: 320 }, monday + 1);
    expect(foldRoom("first", [set])).toMatchObject({ name: "Cellar", altitudeM: 320, retired: false });
  });

  test("the last reading is the newest in time, not the last written", () => {
    const late = line("air-read", { airC: 20, rh: 0.5, air: "still" }, monday + hourMs);
    const early = line("air-read", { airC: 15, rh: 0.7, air: "still" }, monday);
    expect(foldRoom("first", [late, early])?.last?.airC).toBe(20);
    expect(readingsOf([late, early]).map(({ airC }) => airC)).toEqual([15, 20]);
  });

  test("a starting recipe is itself until it is edited, then the shop's own", () => {
    expect(foldRecipe("start-general", [])).toMatchObject({ name: "General bronze", starting: true });
    const body = { name: "Ours", coats: [], morMPa: 5, safetyFactor: 3, floorMm: 6 };
    expect(foldRecipe("start-general", [line("recipe-set", body)])).toMatchObject({
      name: "Ours",
      starting: false,
    });
    expect(foldRecipe("unheard-of", [])).toBeNull();
  });

  test("a bucket's cup reading shows on it", () => {
    const read = line("bucket-read", { cupS: 22, slurryC: 21 });
    expect(foldBucket("first-prime", [read])?.last).toMatchObject({ cupS: 22, at: monday });
  });

  test("the shop's figures are set one by one and cleared with null", () => {
    const set = [
      line("shop-figures-set", { morMPa: 5 }, monday),
      line("shop-figures-set", { dryingFactor: 1.4 }, monday + 1),
    ];
    expect(foldShop(set)).toMatchObject({ morMPa: 5, dryingFactor: 1.4 });
    expect(foldShop([...set, line("shop-figures-set", { morMPa: null }, monday + 2)])).toMatchObject({
      morMPa: null,
      dryingFactor: 1.4,
    });
  });
});

describe("laws of any log", () => {
  test("a fold does not depend on the order the entries came in, nor on one coming twice", () =>
    fc.assert(
      fc.property(
        anyEntries.chain((log) =>
          fc.tuple(fc.constant(log), fc.shuffledSubarray([...log], { minLength: log.length })),
        ),
        ([log, shuffled]) => {
          const folded = everyFold(log);
          expect(everyFold(shuffled)).toEqual(folded);
          expect(everyFold([...shuffled, ...log])).toEqual(folded);
        },
      ),
    ));

  test("a union of two devices' logs is the same from either side", () =>
    fc.assert(
      fc.property(anyEntries, fc.array(fc.boolean(), { maxLength: 40 }), (log, sides) => {
        const here = log.filter((_, i) => sides[i] ?? true);
        const there = log.filter((_, i) => !(sides[i] ?? true));
        expect(everyFold([...there, ...here])).toEqual(everyFold([...here, ...there]));
      }),
    ));

  test("the newest reading of a room is the last of all its readings, packed or single", () =>
    fc.assert(
      fc.property(anyEntries, (log) => {
        expect(foldRoom("first", log)?.last).toEqual(readingsOf(log).at(-1) ?? null);
      }),
    ));

  test("no sequence of entries, sensible or not, throws: not the fold, not the standing", () =>
    fc.assert(
      fc.property(anyEntries, fc.integer({ min: 0, max: 60 }), (log, hours) => {
        const piece = foldPiece("heron", log);
        everyFold(log);
        if (piece === null) return;
        const shop = testShop([...steadyAir({ from: monday, hours: 12 }), ...readingsOf(log)]);
        const standing = standingOf(piece, shop, monday + hours * hourMs);
        expect(standing.drying).toHaveLength(piece.coats.length);
        for (const { waterKgM2, leftShare, curve } of standing.drying) {
          expect(waterKgM2 === null || (waterKgM2 >= 0 && waterKgM2 < 10)).toBe(true);
          expect(leftShare === null || (leftShare >= 0 && leftShare <= 1)).toBe(true);
          expect(curve.every((point) => Number.isFinite(point.at) && Number.isFinite(point.waterKgM2))).toBe(
            true,
          );
        }
        expect(standing.wall.reachedMm).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 300 },
    ));

  test("coats are numbered from 1 without a gap, oldest first, whatever was struck", () =>
    fc.assert(
      fc.property(anyEntries, (log) => {
        const coats = foldPiece("heron", log)?.coats ?? [];
        expect(coats.map(({ number }) => number)).toEqual(coats.map((_, i) => i + 1));
        const times = coats.map(({ dippedAt }) => dippedAt);
        expect(times).toEqual(times.toSorted((a, b) => a - b));
      }),
    ));
});
