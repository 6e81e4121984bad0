import { millisecondsInHour as hourMs, millisecondsInMinute as minuteMs } from "date-fns/constants";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { aheadNow as now, demoAhead } from "../../../tests/demoAhead.ts";
import { makeMemo } from "../log/memo.ts";
import type { Piece } from "../piece/piece.ts";
import type { Standing } from "../piece/standing.ts";
import { coatsToCome, standingAhead, withCoat, type Ahead } from "./coatsAhead.ts";
import { latestTimes, soonestWay, type By } from "./coatTimes.ts";
import { firstWithin, lastWithin, type WorkSpans } from "./workSpans.ts";

const demo = demoAhead();
const { ahead } = demo;
const wet = ["demo-heron", "demo-handle", "demo-carp"] as const;

/** Eight to ten and five to nine, as a new shop's hours at the bucket stand, for forty days. */
const hours: WorkSpans = Array.from({ length: 40 }, (_, day) => {
  const midnight = Date.parse("2026-03-04T00:00:00Z") + day * 24 * hourMs;
  return [
    { from: midnight + 8 * hourMs, to: midnight + 10 * hourMs },
    { from: midnight + 17 * hourMs, to: midnight + 21 * hourMs },
  ];
}).flat();

const isWithin = (at: number): boolean => hours.some(({ from, to }) => at >= from && at <= to);

/** Dips the coats left at these times and tells when each was ready by the forecast, and the shell dry at last. */
function done(standing: Standing, dips: readonly number[], by: By): readonly (number | null)[] {
  let { piece }: { piece: Piece } = standing;
  const ready: (number | null)[] = [];
  for (const [place, coat] of coatsToCome(standing).entries()) {
    const at = dips[place] ?? 0;
    piece = withCoat(piece, coat, { at, around: ahead.around });
    const { cover, forFire } = standingAhead(piece, ahead, at);
    const isLast = place === dips.length - 1;
    ready.push((isLast ? forFire?.dryAt : by === "late" ? cover?.dryAt : cover?.checkAt) ?? null);
  }
  return ready;
}

describe("hours at the bucket", () => {
  it("go to the next and the last moment in them, and to the time itself where nobody said", () => {
    const at = (hour: number): number => Date.parse("2026-03-04T00:00:00Z") + hour * hourMs;
    expect(firstWithin(hours, at(7))).toBe(at(8));
    expect(firstWithin(hours, at(9))).toBe(at(9));
    expect(firstWithin(hours, at(22))).toBe(at(32));
    expect(lastWithin(hours, at(12))).toBe(at(10));
    expect(lastWithin(hours, at(7))).toBeNull();
    expect(firstWithin(hours, at(24 * 50))).toBeNull();
    expect(firstWithin(null, at(3))).toBe(at(3));
    expect(lastWithin(null, at(3))).toBe(at(3));
  });
});

describe("the soonest way through the coats that are left", () => {
  it.each(wet)("puts each coat of %s on in the hours, when the one beneath is ready", (id) => {
    const standing = demo.standing(id);
    for (const by of ["late", "middle"] as const) {
      const way = soonestWay({ standing, ahead, hours }, by);
      if (!way.ok) throw new Error(`${id} has no way: ${way.why}`);
      expect(way.dips).toHaveLength(coatsToCome(standing).length);
      expect(way.dips.every(isWithin)).toBe(true);
      expect(done(standing, way.dips, by)).toEqual(way.readyAt);
      for (const [place, dip] of way.dips.entries())
        expect(dip).toBeGreaterThanOrEqual(place === 0 ? now : (way.readyAt[place - 1] ?? Infinity));
      expect(way.dryAt).toBe(way.readyAt.at(-1));
    }
  });

  it("is never later by the middle figures than by the late ones, nor without hours than with them", () => {
    for (const id of wet) {
      const standing = demo.standing(id);
      const [late, middle, free] = [
        soonestWay({ standing, ahead, hours }, "late"),
        soonestWay({ standing, ahead, hours }, "middle"),
        soonestWay({ standing, ahead, hours: null }, "late"),
      ];
      if (!late.ok || !middle.ok || !free.ok) throw new Error(`${id} has no way`);
      expect(middle.dryAt).toBeLessThanOrEqual(late.dryAt);
      expect(free.dryAt).toBeLessThanOrEqual(late.dryAt);
    }
  });

  it("of a piece with all its coats on is the answer for its fire", () => {
    const standing = demo.standing("demo-medals");
    const way = soonestWay({ standing, ahead, hours }, "late");
    expect(way).toMatchObject({ ok: true, dips: [], dryAt: standing.forFire?.dryAt });
  });

  it("says so where nobody is at the bucket any more", () => {
    const standing = demo.standing("demo-heron");
    expect(soonestWay({ standing, ahead, hours: hours.slice(0, 2) }, "late")).toMatchObject({
      ok: false,
      why: "after-the-hours",
    });
  });

  it("keeps nothing that would answer for the log itself", () => {
    const standing = demo.standing("demo-handle");
    const before = standingAhead(standing.piece, ahead, now).cover;
    soonestWay({ standing, ahead, hours }, "late");
    expect(standingAhead(standing.piece, ahead, now).cover).toEqual(before);
    expect(before?.dryAt).toBe(standing.cover?.dryAt);
  });
});

describe("the memo of a look ahead", () => {
  it("answers for a coat put on at one time never with that of another, in a room nobody read either", () => {
    const standing = demo.standing("demo-heron");
    const unread = { ...ahead.around, readings: new Map() };
    const kept = { around: unread, memo: makeMemo() };
    const [first, second] = coatsToCome(standing);
    if (first === undefined || second === undefined) throw new Error("two coats are left");
    const later = now + 40 * hourMs;
    const left = (startH: number, by: Ahead): number | null => {
      const one = withCoat(standing.piece, first, { at: now + startH * hourMs, around: unread });
      const two = withCoat(one, second, { at: later, around: unread });
      return standingAhead(two, by, later).drying.at(-2)?.waterKgM2 ?? null;
    };
    for (const startH of [30, 39, 35])
      expect(left(startH, kept)).toBe(left(startH, { around: unread, memo: makeMemo() }));
    expect(left(30, kept)).not.toBe(left(39, kept));
  });
});

describe("by when each coat must be on", () => {
  const cases = fc.record({
    id: fc.constantFrom(...wet),
    by: fc.constantFrom<By>("late", "middle"),
    spareH: fc.integer({ min: 0, max: 200 }),
    inHours: fc.boolean(),
  });

  it("goes down backwards, in the hours; done then, each is ready for the next and the shell dry in time by the forecast", () => {
    fc.assert(
      fc.property(cases, ({ id, by, spareH, inHours }) => {
        const standing = demo.standing(id);
        const of = { standing, ahead, hours: inHours ? hours : null };
        const way = soonestWay(of, by);
        if (!way.ok) throw new Error(`${id} has no way: ${way.why}`);
        const dryBy = way.dryAt + spareH * hourMs;
        const times = latestTimes(of, { way, by, dryBy });
        if (times === null) throw new Error("there is time");
        expect(times).toHaveLength(way.dips.length);
        const ready = done(standing, times, by);
        for (const [place, at] of times.entries()) {
          expect(at).toBeGreaterThanOrEqual(way.dips[place] ?? Infinity);
          expect(at).toBeLessThan(times[place + 1] ?? Infinity);
          expect(ready[place] ?? Infinity).toBeLessThanOrEqual(times[place + 1] ?? dryBy);
          if (inHours) expect(isWithin(at)).toBe(true);
        }
      }),
      { numRuns: 25 },
    );
  });

  it("is the latest: a quarter of an hour later, the shell is not dry in time", () => {
    for (const id of wet) {
      const standing = demo.standing(id);
      const of = { standing, ahead, hours: null };
      const way = soonestWay(of, "late");
      if (!way.ok) throw new Error(`${id} has no way`);
      const dryBy = way.dryAt + 50 * hourMs;
      const times = latestTimes(of, { way, by: "late", dryBy }) ?? [];
      const lastLater = [...times.slice(0, -1), (times.at(-1) ?? 0) + 15 * minuteMs];
      expect(done(standing, lastLater, "late").at(-1) ?? Infinity).toBeGreaterThan(dryBy);
    }
  });

  it("is not given where the soonest way is too late, by a minute too", () => {
    const standing = demo.standing("demo-carp");
    const of = { standing, ahead, hours };
    const way = soonestWay(of, "late");
    if (!way.ok) throw new Error("there is a way");
    expect(latestTimes(of, { way, by: "late", dryBy: way.dryAt - minuteMs })).toBeNull();
    expect(latestTimes(of, { way, by: "late", dryBy: way.dryAt })).not.toBeNull();
  });
});
