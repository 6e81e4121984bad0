import { millisecondsInHour as hourMs } from "date-fns/constants";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readingsOf } from "../air/airLog.ts";
import { foldBucket } from "../bucket/foldBucket.ts";
import { streamOf, type Entry, type EntryBodies, type EntryType } from "../entries/entry.ts";
import type { SaidOfBeneath } from "../entries/pieceBodies.ts";
import { decide } from "../log/decide.ts";
import { foldPiece, foldRoom } from "../log/fold.ts";
import { standingOf } from "../piece/buildStanding.ts";
import { builtInBucketIds, builtInRecipe } from "../piece/builtIns.ts";
import type { Standing } from "../piece/standing.ts";
import { foldShop } from "../shop/foldShop.ts";
import { dryingSumsVersion } from "./dryingSums.ts";

const dayOne = Date.UTC(2026, 3, 6, 6);
const at = (hours: number): number => dayOne + Math.round(hours * hourMs);
const piece = streamOf("piece", "heron");
const room = streamOf("room", "first");
const attic = streamOf("room", "attic");

type Line = { readonly stream: string; readonly type: EntryType; readonly body: object; readonly at: number };
const line = <T extends EntryType>(hours: number, stream: string, type: T, body: EntryBodies[T]): Line => ({
  stream,
  type,
  body,
  at: at(hours),
});
const air = (hours: number, rh: number, on = room): Line =>
  line(hours, on, "air-read", { airC: 20, rh, air: "still" });

/** A log in which lines are written at one time for another, each through the gate. */
function logOf() {
  const entries: Entry[] = [];
  let made = 0;
  const write = (now: number, command: object): string => {
    const moment = { now, zone: "UTC", device: "d", newId: () => `e${String(++made).padStart(4, "0")}` };
    const decision = decide(entries, command as Parameters<typeof decide>[1], moment);
    if (!decision.ok) throw new Error(`refused: ${JSON.stringify([command, decision.refusal])}`);
    entries.push(...decision.entries);
    return decision.entries.at(-1)?.id ?? "";
  };
  return {
    entries,
    log: (one: Line, writtenAt = one.at): string => write(writtenAt, { do: "log", ...one }),
    strike: (hours: number, stream: string, entryId: string): string =>
      write(at(hours), { do: "strike", stream, entryId, reason: "wrong room" }),
    retime: (hours: number, entryId: string, to: number): string =>
      write(at(hours), { do: "correct", stream: piece, entryId, at: at(to), reason: "time put right" }),
  };
}

function standing(entries: readonly Entry[], hours: number): Standing {
  const of = (stream: string): readonly Entry[] => entries.filter((entry) => entry.stream === stream);
  const folded = foldPiece("heron", of(piece));
  const rooms = ["first", "attic"].flatMap((id) => foldRoom(id, of(streamOf("room", id))) ?? []);
  if (folded === null) throw new Error("no piece");
  const buckets = builtInBucketIds.flatMap((id) => foldBucket(id, of(streamOf("bucket", id))) ?? []);
  const recipe = builtInRecipe("start-general");
  const around = {
    rooms: new Map(rooms.map((one) => [one.id, one])),
    readings: new Map(["first", "attic"].map((id) => [id, readingsOf(of(streamOf("room", id)))])),
    recipes: new Map(recipe === null ? [] : [[recipe.id, recipe]]),
    buckets: new Map(buckets.map((one) => [one.id, one])),
    shop: foldShop(of("shop/own")),
  };
  return standingOf(folded, around, at(hours));
}

const coatBody = (number: number): EntryBodies["coat-dipped"] => ({
  number,
  step: number - 1,
  kind: number < 3 ? "prime" : "intermediate",
  stuccoId: "80-120",
  bucketId: null,
  roomId: "first",
  prewet: false,
});

/** Coat 1 at one o'clock, covered 36 minutes later, or at `coveredAt`, over most of its water, with what was said kept or not. */
function hasty({
  keeps = true,
  coveredAt = 1.6,
  old = {},
}: {
  readonly keeps?: boolean;
  readonly coveredAt?: number;
  /** What other sums would have said. */
  readonly old?: Partial<SaidOfBeneath>;
} = {}) {
  const log = logOf();
  log.log(
    line(0, piece, "piece-started", { plan: { name: "heron", recipeId: "start-general" }, roomId: "first" }),
  );
  log.log(line(0, attic, "room-set", { name: "Attic", altitudeM: 0 }));
  log.log(air(-3, 0.55));
  log.log(air(0.5, 0.5));
  const first = log.log(line(1, piece, "coat-dipped", coatBody(1)));
  const { saying } = standing(log.entries, coveredAt);
  if (saying === null) throw new Error("nothing is said");
  const said = { ...saying, ...old };
  const second = log.log(
    line(coveredAt, piece, "coat-dipped", { ...coatBody(2), ...(keeps ? { said } : {}) }),
  );
  return { ...log, first, second, said };
}
const of = (entries: readonly Entry[], hours = 50) => standing(entries, hours).drying[0];

describe("what is said before the tap", () => {
  test("is the verdict, the water left with its band, the hours and the version of the sums", () => {
    const { said, first } = hasty();
    expect(said).toMatchObject({ coatId: first, saidAt: at(1.6), cover: "drying", dryness: "wet" });
    expect(said.sumsVersion).toBe(dryingSumsVersion);
    expect(said.leftShare).toBeGreaterThan(0.3);
    expect(said.leftLow).toBeLessThan(said.leftShare ?? 0);
    expect(said.leftHigh).toBeGreaterThan(said.leftShare ?? 1);
    expect(said.neededH).toBeGreaterThan(0.6);
  });

  test("is nothing before the first coat", () => {
    const { entries, log } = logOf();
    log(line(0, piece, "piece-started", { plan: { name: "heron" }, roomId: "first" }));
    expect(standing(entries, 1).saying).toBeNull();
  });
});

/** What has nothing to do with the time of coat 1 as the outer one. */
const others: readonly Line[] = [
  air(1.65, 0.95),
  air(2, 0.2),
  air(9, 0.7),
  air(-30, 0.9),
  air(1.3, 0.95, attic),
  line(3, piece, "note-written", { text: "hung straight" }),
  line(3.1, piece, "piece-changed", { changes: { geometry: "recess", areaM2: 0.2 } }),
  line(3.2, piece, "piece-moved", { roomId: "attic" }),
  line(4, "shop/own", "shop-figures-set", { dryingFactor: 2.4 }),
  line(30, piece, "coat-dipped", coatBody(3)),
];
const someOthers = fc.shuffledSubarray([...others]);

const percent = (of: { readonly leftShare: number | null } | undefined): number =>
  Math.round(100 * (of?.leftShare ?? NaN));

describe("what was said of a covered coat", () => {
  test("stands, whatever else comes to the log in any order", () => {
    fc.assert(
      fc.property(someOthers, fc.integer({ min: 31, max: 3000 }), (lines, hours) => {
        const { log, entries, said } = hasty();
        for (const one of lines) log(one, at(31));
        expect(of(entries, hours)).toMatchObject({
          verdict: said.dryness,
          leftShare: said.leftShare,
          said: { ...said, anew: null },
        });
      }),
    );
  });

  test("stands beside what a reading of its time says, logged later; struck, it stands alone again", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1.02, max: 1.55, noNaN: true }),
        fc.constantFrom(0.1, 0.97),
        someOthers,
        (hours, rh, lines) => {
          const { log, strike, entries, said } = hasty();
          for (const one of lines) log(one, at(31));
          const late = log(air(hours, rh), at(32));
          const plain = hasty({ keeps: false });
          for (const one of lines) plain.log(one, at(31));
          plain.log(air(hours, rh), at(32));
          const workedOut = of(plain.entries);
          const found = of(entries);
          expect(found?.said).toMatchObject(said);
          if (workedOut?.verdict === said.dryness && percent(workedOut) === percent(said))
            expect(found).toMatchObject({ leftShare: said.leftShare, said: { anew: null } });
          else
            expect(found).toMatchObject({
              leftShare: workedOut?.leftShare,
              verdict: workedOut?.verdict,
              said: { anew: { why: [{ of: "air", how: "added", count: 1, at: at(hours) }] } },
            });
          strike(33, room, late);
          expect(of(entries)).toMatchObject({ leftShare: said.leftShare, said: { anew: null } });
        },
      ),
    );
  });

  test("the damper the late reading, the more water is worked out", () => {
    const left = (rh: number): number => {
      const { log, entries } = hasty();
      log(air(1.2, rh), at(32));
      return of(entries)?.leftShare ?? 0;
    };
    expect(left(0.95)).toBeGreaterThan(left(0.3));
  });

  test("is the same in whatever order the lines came", () => {
    const { log, strike, entries } = hasty();
    const late = log(air(1.2, 0.95), at(32));
    log(air(1.4, 0.9), at(32.1));
    log(line(30, piece, "coat-dipped", coatBody(3)), at(33));
    strike(34, room, late);
    const told = of(entries);
    expect(told?.said?.anew).not.toBeNull();
    fc.assert(
      fc.property(fc.shuffledSubarray([...entries], { minLength: entries.length }), (shuffled) => {
        expect(of(shuffled)).toEqual(told);
      }),
    );
  });

  test("a check of its time logged later puts it right, and struck it is as it was said", () => {
    const { log, strike, entries, first, said } = hasty({ coveredAt: 4 });
    expect(said.dryness).not.toBe("wet");
    const touch = { method: "touch", verdict: "wet", coatId: first } as const;
    const id = log(line(3.9, piece, "dryness-seen", touch), at(20));
    expect(of(entries)).toMatchObject({
      verdict: "wet",
      said: {
        dryness: said.dryness,
        anew: { dryness: "wet", why: [{ of: "checks", how: "added", count: 1, at: at(3.9) }] },
      },
    });
    strike(21, piece, id);
    expect(of(entries)).toMatchObject({ verdict: said.dryness, said: { anew: null } });
  });

  test("a check of the next coat says nothing of it", () => {
    const { log, entries, second, said } = hasty();
    log(line(1.7, piece, "dryness-seen", { method: "touch", verdict: "wet", coatId: second }), at(20));
    expect(of(entries)).toMatchObject({ leftShare: said.leftShare, said: { anew: null } });
  });

  test("a reading it rested on that is struck, or one before its dip that then held, is a reason", () => {
    const gone = hasty();
    const held = gone.entries.find((one) => one.stream === room && one.at === at(0.5))?.id ?? "";
    gone.log(air(0.9, 0.95), at(20));
    expect(of(gone.entries)?.said?.anew?.why).toEqual([{ of: "air", how: "added", count: 1, at: at(0.9) }]);
    const struck = hasty();
    struck.log(air(0.4, 0.97), at(20));
    expect(of(struck.entries)?.said?.anew).toBeNull();
    struck.strike(21, room, held);
    expect(of(struck.entries)?.said?.anew?.why).toMatchObject([{ of: "air", how: "changed" }]);
  });

  test("many readings at once are counted", () => {
    const { log, entries } = hasty();
    for (const hours of [1.1, 1.2, 1.3, 1.4]) log(air(hours, 0.97), at(20));
    expect(of(entries)?.said?.anew?.why).toEqual([{ of: "air", how: "added", count: 4, at: null }]);
  });

  test("a dip whose time is put right is judged at that time, with what was said beside it", () => {
    const { retime, entries, second, said } = hasty();
    retime(20, second, 1.2);
    const found = of(entries);
    expect(found?.said).toMatchObject({ leftShare: said.leftShare, saidAt: at(1.6) });
    expect(found?.said?.anew?.why).toEqual([{ of: "dip", how: "changed", count: 1, at: at(1.2) }]);
    expect(found?.leftShare).toBeGreaterThan(said.leftShare ?? 1);
  });

  test("follows its coat where the coat's own time is put right", () => {
    const { retime, entries, first, said } = hasty();
    retime(20, first, 1.1);
    const found = of(entries);
    expect(found?.said?.leftShare).toBe(said.leftShare);
    expect(found?.said?.anew?.why).toMatchObject([{ of: "checks", how: "changed" }]);
  });

  test("by an older version of the sums stands, on the rack and of a piece that is put away", () => {
    const old = { sumsVersion: dryingSumsVersion + 7, leftShare: 0.91, dryness: "maybe" } as const;
    const { entries, log } = hasty({ old });
    const stands = { leftShare: 0.91, verdict: "maybe", said: { ...old, anew: null } };
    expect(of(entries)).toMatchObject(stands);
    log(line(40, piece, "piece-scrapped", { reason: "dropped" }));
    log(line(41, piece, "piece-archived", { archived: true }));
    expect(of(entries, 4000)).toMatchObject(stands);
  });

  test("by a line that keeps nothing of it is as it is worked out, with nothing invented", () => {
    const { entries, log } = hasty({ keeps: false });
    const before = of(entries);
    expect(before?.said).toBeUndefined();
    log(air(1.2, 0.97), at(20));
    expect(of(entries)?.leftShare).toBeGreaterThan(before?.leftShare ?? 1);
    expect(of(entries)?.said).toBeUndefined();
  });
});
