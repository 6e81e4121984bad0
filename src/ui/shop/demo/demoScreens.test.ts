import { millisecondsInDay as dayMs } from "date-fns/constants";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { entriesOf, idsOf, surroundingsOf } from "../../../../tests/readDemo.ts";
import { airAhead } from "../../../logbook/air/airAhead.ts";
import { standingOf } from "../../../logbook/piece/buildStanding.ts";
import { bucketStandingOf } from "../../../logbook/bucket/bucketStanding.ts";
import { pairsOf } from "../../../logbook/drying/dryingPairs.ts";
import { foldPiece } from "../../../logbook/log/fold.ts";
import { foldMelt } from "../../../logbook/pour/foldMelt.ts";
import { foldPour } from "../../../logbook/pour/foldPour.ts";
import { foldRun } from "../../../logbook/fire/foldRun.ts";
import { furnaceMemory, lossMemory, meltSeen } from "../../../logbook/fire/furnaceMemory.ts";
import { weighedCoats } from "../../../logbook/drying/learnedGains.ts";
import { pourStanding } from "../../../logbook/pour/pourStanding.ts";
import { runStanding } from "../../../logbook/fire/runStanding.ts";
import { shellCost } from "../../../logbook/piece/pieceCost.ts";
import { demoBackupId, demoFurnaceId, demoPrimeId, demoRoomId, demoShedId } from "./demoIds.ts";
import { demoEntries } from "./demoShop.ts";
import { wantsLook } from "../../../logbook/bucket/bucketLook.ts";
import { learnFrom } from "../../../../tests/logs/learnFrom.ts";

const now = Date.parse("2026-03-04T14:02:00Z");
const entries = demoEntries(now, "UTC");
const surroundings = surroundingsOf(entries);
const { shop } = surroundings;
const pieces = idsOf(entries, "piece").flatMap((id) => foldPiece(id, entriesOf(entries, "piece", id)) ?? []);
const piece = (id: string) => pieces.filter((one) => one.id === id);
const melts = idsOf(entries, "melt").flatMap((id) => foldMelt(id, entriesOf(entries, "melt", id)) ?? []);
const runs = idsOf(entries, "run").flatMap((id) => foldRun(id, entriesOf(entries, "run", id)) ?? []);

describe("the air of the demo", () => {
  const ahead = (id: string) =>
    airAhead(surroundings.readings.get(id) ?? [], { altitudeM: 120, from: now, to: now + 2 * dayMs });

  test("a week of readings every ten minutes lies in the drying room, and no damp is ahead there", () => {
    const week = (surroundings.readings.get(demoRoomId) ?? []).filter(({ at }) => at >= now - 7 * dayMs);
    expect(week).toHaveLength(7 * 144);
    expect(ahead(demoRoomId)).toMatchObject({ basis: "repeat-yesterday", damp: [] });
  });

  test("the shed is too damp in both nights ahead, as it was last night", () => {
    const tooDamp = (ahead(demoShedId)?.damp ?? []).filter(({ isTooDamp }) => isTooDamp);
    expect(tooDamp.map(({ from }) => new Date(from).getUTCHours())).toEqual([
      expect.toSatisfy((hour: number) => hour >= 20),
      expect.toSatisfy((hour: number) => hour >= 20),
    ]);
    for (const { mostRh } of tooDamp) expect(mostRh).toBeCloseTo(0.88, 1.5);
  });
});

describe("what the demo has learned", () => {
  const pairs = pieces.flatMap((one) => pairsOf(one, { surroundings, now }));

  test("nine coats teach it, some only that they were still wet; one is left out with its reason", () => {
    expect(pairs).toHaveLength(10);
    expect(pairs.filter(({ dryAtS }) => dryAtS === null).length).toBeGreaterThanOrEqual(2);
    expect(pairs.filter(({ wetAtS }) => wetAtS === null).length).toBeGreaterThanOrEqual(1);
    const [out] = shop.pairsLeftOut;
    expect(pairs.some(({ coatId }) => coatId === out?.coatId)).toBe(true);
    expect(out?.reason).toMatch(/^Demo: /);
    expect(learnFrom(pairs, shop).shop).toMatchObject({ pairs: 9, limited: false });
  });

  test("two coats were weighed before the dip, drained and stuccoed, and until they were dry", () => {
    expect(pieces.flatMap((one) => weighedCoats(one, { surroundings, now }))).toHaveLength(2);
    expect(pairs.filter(({ method }) => method === "weighing")).toMatchObject([
      { pieceId: "demo-handle" },
      { pieceId: "demo-medals" },
    ]);
  });

  test("a shell with a pocket waits for it longest, and its wet coat is told by a thermometer", () => {
    const [medals] = piece("demo-medals");
    if (medals === undefined) throw new Error("no medals");
    const { outer, finalDry } = standingOf(medals, surroundings, now);
    expect(outer?.readyAt.likely).toBeGreaterThan(now);
    expect(finalDry?.places.map(({ geometry }) => geometry)).toEqual(["recess", "open"]);
  });
});

describe("the fires of the demo", () => {
  test("the burnout went as planned: nothing to find, every step ticked, the kiln cold at its end", () => {
    const [run] = runs.filter(({ ended }) => ended !== null);
    const judged = run && runStanding(run, now)?.judged;
    expect(judged?.findings).toEqual([]);
    expect(judged?.waiting).toEqual([]);
    expect(run?.readings.at(-1)?.kilnC).toBeLessThanOrEqual(85);
    expect(runs.filter(({ startedAt }) => startedAt === null)).toHaveLength(1);
  });

  test("a cold lining took twice as long as a hot one, and two in a hundred were lost", () => {
    const minutes = melts.flatMap((melt) => {
      const seen = meltSeen(melt, shop);
      return seen === null ? [] : [seen.timeS / 60];
    });
    expect(minutes).toEqual([82, 39, 78, 37]);
    const { hot, cold } = furnaceMemory({ furnaceId: demoFurnaceId, melts, shop });
    expect((hot?.medianW ?? 0) / (cold?.medianW ?? 1)).toBeGreaterThan(1.8);
    expect(lossMemory({ family: "bronze", melts, shop })).toMatchObject({ kind: "learned", melts: 4 });
  });

  test("a pour waits for tomorrow with its tracks, its kiln run and its melt", () => {
    const [pour] = idsOf(entries, "pour").flatMap((id) => foldPour(id, entriesOf(entries, "pour", id)) ?? []);
    if (pour === undefined) throw new Error("no pour");
    expect(new Date(pour.plan.pourAt).toISOString()).toBe("2026-03-05T14:00:00.000Z");
    expect(runs.map(({ id }) => id)).toContain(pour.plan.runId);
    expect(melts.map(({ id }) => id)).toContain(pour.plan.meltId);
    const { tracks, plan } = pourStanding(pour, { now, people: 2, sensed: [] });
    expect(tracks.length).toBeGreaterThanOrEqual(4);
    expect(plan.pourAt).toBe(pour.plan.pourAt);
  });
});

test("the shell of a piece by the general recipe has its price", () => {
  const [plaque] = piece("demo-plaque");
  if (plaque === undefined) throw new Error("no plaque");
  const recipe = surroundings.recipes.get("start-general") ?? null;
  const cost = shellCost(plaque, { recipe, buckets: surroundings.buckets, shop, gains: new Map() });
  expect(cost).toMatchObject({ ok: true, currency: "EUR" });
});

test("every name and every word of the demo says that it is one", () => {
  for (const { body } of entries)
    for (const field of ["name", "note", "fileName", "source"] as const) {
      const text = field in body ? (body as Readonly<Record<string, unknown>>)[field] : undefined;
      // Notes on a piece are of the demo by its name.
      if (typeof text === "string" && (field !== "note" || "how" in body)) expect(text).toMatch(/^Demo: /);
    }
});

test("all through the working day the buckets in use may be dipped from without a look", () =>
  fc.assert(
    fc.property(fc.integer({ min: 9 * 60, max: 20 * 60 - 1 }), (minute) => {
      const then = Date.parse("2026-03-04T00:00:00+01:00") + minute * 60_000;
      const around = surroundingsOf(demoEntries(then, "Europe/Berlin"));
      for (const id of [demoPrimeId, demoBackupId]) {
        const bucket = around.buckets.get(id);
        if (bucket === undefined) throw new Error(`no ${id}`);
        const standing = bucketStandingOf(bucket, around.shop, then);
        expect(wantsLook(standing)).toBe(false);
        expect(wantsLook(bucketStandingOf(bucket, around.shop, then + 4 * 3_600_000))).toBe(false);
      }
    }),
    { numRuns: 5 },
  ));
