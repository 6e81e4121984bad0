import * as fc from "fast-check";
import { expect, test } from "vitest";
import { lookAtDues, newsMs } from "./dueAlarm.ts";
import type { Due, LastLook } from "./dueAlarm.ts";

const minute = 60_000;
const hour = 60 * minute;
const nowMs = Date.parse("2026-03-07T18:30:00Z");
const heron = { id: "heron", dueMs: nowMs };
const lookedAt = (atMs: number, waiting: readonly string[] = []): LastLook => ({ atMs, waiting });
const ids = (dues: readonly Due[]): readonly string[] => dues.map(({ id }) => id);

test("a coat that comes due while the screen is on rings, once", () => {
  const first = lookAtDues({ dues: [heron], seen: lookedAt(nowMs - 20_000, ["heron"]), nowMs });
  expect(ids(first.ringNow)).toEqual(["heron"]);
  expect(first.whileClosed).toEqual([]);
  const second = lookAtDues({ dues: [heron], seen: first.seen, nowMs: nowMs + 20_000 });
  expect(second.ringNow).toEqual([]);
  expect(second.whileClosed).toEqual([]);
});

test("what came due while the app was closed is listed, earliest first, and does not ring", () => {
  const dues = [
    { id: "late", dueMs: nowMs - hour },
    { id: "early", dueMs: nowMs - 9 * hour },
  ];
  const look = lookAtDues({ dues, seen: lookedAt(nowMs - 12 * hour), nowMs });
  expect(ids(look.whileClosed)).toEqual(["early", "late"]);
  expect(look.ringNow).toEqual([]);
});

test("one that came due a minute before the app was opened still rings", () => {
  const dues = [{ id: "heron", dueMs: nowMs - minute }];
  expect(ids(lookAtDues({ dues, seen: lookedAt(nowMs - 12 * hour), nowMs }).ringNow)).toEqual(["heron"]);
});

test("the edge of news is ninety seconds", () => {
  const at = (agoMs: number) =>
    lookAtDues({ dues: [{ id: "x", dueMs: nowMs - agoMs }], seen: lookedAt(nowMs - hour), nowMs });
  expect(ids(at(90_000).ringNow)).toEqual(["x"]);
  expect(ids(at(90_001).whileClosed)).toEqual(["x"]);
});

test("what was seen due before is not told again", () => {
  const dues = [{ id: "heron", dueMs: nowMs - 2 * hour }];
  const look = lookAtDues({ dues, seen: lookedAt(nowMs - hour), nowMs });
  expect([...look.ringNow, ...look.whileClosed]).toEqual([]);
});

test("a forecast that jumps from ahead to behind the last look still rings", () => {
  const before = lookAtDues({ dues: [{ id: "heron", dueMs: nowMs + minute }], seen: lookedAt(0), nowMs });
  const moved = [{ id: "heron", dueMs: nowMs - 5 * minute }];
  const look = lookAtDues({ dues: moved, seen: before.seen, nowMs: nowMs + 30_000 });
  expect(ids(look.ringNow)).toEqual(["heron"]);
});

test("a clock set back loses no ring, even if the app was closed after it", () => {
  const dues = [{ id: "heron", dueMs: nowMs + hour }];
  const setBack = lookAtDues({ dues, seen: lookedAt(nowMs + 5 * hour), nowMs });
  expect(setBack.ringNow).toEqual([]);
  const reopened = lookedAt(setBack.seen.atMs);
  const look = lookAtDues({ dues, seen: reopened, nowMs: nowMs + hour });
  expect(ids(look.ringNow)).toEqual(["heron"]);
});

test("the next look is at the next due time, and never more than half a minute away", () => {
  const wait = (...dues: readonly Due[]): number =>
    lookAtDues({ dues, seen: lookedAt(nowMs), nowMs }).lookAgainMs;
  expect(wait({ id: "a", dueMs: nowMs + 5000 }, { id: "b", dueMs: nowMs + 9000 })).toBe(5000);
  expect(wait({ id: "a", dueMs: nowMs + hour })).toBe(30_000);
  expect(wait()).toBe(30_000);
});

const step = (atMinute: number, id = "p-metal-melted") => ({ id, dueMs: nowMs + atMinute * minute });
const lookAt = (atMinute: number, seen: LastLook, ...dues: readonly Due[]) =>
  lookAtDues({ dues, seen, nowMs: nowMs + atMinute * minute });

test("a step rings once as its time comes, though its time then goes along with the clock", () => {
  const before = lookAt(9, lookedAt(nowMs), step(10));
  expect(before.ringNow).toEqual([]);
  const come = lookAt(10, before.seen, step(10));
  expect(ids(come.ringNow)).toEqual(["p-metal-melted"]);
  // Nobody began it: it would now begin a minute later, and again a minute later.
  const later = lookAt(11, come.seen, step(11));
  expect(later.ringNow).toEqual([]);
  expect(lookAt(12, later.seen, step(13)).seen.rung).toEqual(["p-metal-melted"]);
});

test("a step that was put off by a quarter of an hour rings again", () => {
  const come = lookAt(10, lookedAt(nowMs), step(10));
  const putOff = lookAt(10.5, come.seen, step(25));
  expect(putOff.ringNow).toEqual([]);
  expect(ids(lookAt(25, putOff.seen, step(25)).ringNow)).toHaveLength(1);
});

test("what was due long before the first look is no news, what came within ninety seconds of it is", () => {
  const first = lookAt(30, lookedAt(nowMs + 30 * minute - newsMs), step(0), step(29.5, "p-skim"));
  expect(ids(first.ringNow)).toEqual(["p-skim"]);
  expect(first.whileClosed).toEqual([]);
});

test("however the looks fall, every due time is told exactly once", () =>
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.integer({ min: 1, max: 600 }), { maxLength: 12 }),
      fc.array(fc.integer({ min: 1, max: 200 }), { maxLength: 20 }),
      (dueMinutes, gapsMin) => {
        const dues = dueMinutes.map((at) => ({ id: `d${at}`, dueMs: at * minute }));
        const told: string[] = [];
        let seen = lookedAt(0);
        for (const gapMin of [...gapsMin, 601]) {
          const look = lookAtDues({ dues, seen, nowMs: seen.atMs + gapMin * minute });
          told.push(...ids(look.ringNow), ...ids(look.whileClosed));
          seen = look.seen;
        }
        expect(told.sort()).toEqual([...ids(dues)].sort());
      },
    ),
  ));
