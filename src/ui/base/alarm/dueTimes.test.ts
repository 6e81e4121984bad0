import { millisecondsInHour as hourMs } from "date-fns/constants";
import { expect, test } from "vitest";
import { coverAt } from "../../../../tests/coverAt.ts";
import { givenPiece } from "../../../../tests/givenPiece.ts";
import { type DueTime, dueList, dueTimes } from "./dueTimes.ts";
import { dueTimeWords, dueWords } from "../../making/due/dueWords.ts";
import { calendarOld, cameDueWords, layerWords, ringLabel, silentWords, testedWords } from "./ringLabel.ts";

const noon = Date.UTC(2026, 2, 4, 12);
const due = (dueMs = noon, id = "heron-coat-4"): DueTime => ({
  id,
  pieceId: "heron",
  name: "Heron",
  coat: 4,
  allows: "next-coat",
  dueMs,
  cover: coverAt({ checkAt: dueMs, dryAt: dueMs + 2 * hourMs }),
});

test("a drying piece has one due time, that of its outermost coat", () => {
  const given = givenPiece({ recipeId: "start-general" });
  given.air(0);
  given.coats([1, 25]);
  const standing = given.standing(26);
  const [only, ...more] = dueTimes([standing]);
  expect(more).toEqual([]);
  expect(only).toMatchObject({ coat: 2, name: "Heron", allows: "next-coat" });
  expect(only?.id).toBe(`${standing.piece.id}-coat-2`);
  // Prime 2: the likely time is within its two hours, so the minimum speaks.
  expect(only?.dueMs).toBe(standing.cover?.minimum.until);
  expect(only?.dueMs).toBe(standing.cover?.checkAt);
});

test("before the first coat and past coating there is nothing to wait for; without air there is, widely", () => {
  const bare = givenPiece();
  expect(dueTimes([bare.standing(2)])).toEqual([]);
  bare.coats([3]);
  expect(dueTimes([bare.standing(4)])).toHaveLength(1);
  const given = givenPiece();
  given.air(0);
  given.coats([1]);
  given.log(30, "burnout-started", {});
  expect(dueTimes([given.standing(31)])).toEqual([]);
});

test("after the last coat of the recipe the dry piece goes to its review", () => {
  const given = givenPiece({ recipeId: "start-general" });
  given.air(0);
  given.coats(Array.from({ length: 9 }, (_, i) => 1 + 24 * i));
  const [review] = dueTimes([given.standing(195)]);
  expect(review).toMatchObject({ allows: "review", dueMs: given.standing(195).forFire?.dryAt });
  expect(review && dueTimeWords(review, given.standing(195).now, "en-GB")).toMatch(
    /^Final dry: review not before /,
  );
  expect(review && dueWords(review)).not.toContain("Coat 9");
});

test("what came due unseen is listed apart from what was seen and what is to come", () => {
  const [old, fresh, coming] = [due(noon - 5, "a"), due(noon, "b"), due(noon + 9, "c")];
  const list = dueList([old, fresh, coming], { shownMs: noon - 1, nowMs: noon });
  expect(list).toEqual({ ready: [old], cameDue: [fresh], coming: [coming] });
});

test("words say how sure a time is, before and after it", () => {
  const say = (now: number): string => dueTimeWords(due(), now, "en-GB");
  expect(say(noon - 3 * hourMs)).toMatch(/^Coat 4: check from .*; dry .* at the latest$/);
  expect(say(noon + hourMs)).toMatch(/^Coat 4: perhaps dry since .*; dry .* at the latest$/);
  expect(say(noon + 3 * hourMs)).toMatch(/^Coat 4: dry since \d\d:\d\d$/);
  expect(dueWords(due())).toBe("Heron: check if coat 4 is dry, then the next coat");
  expect(cameDueWords([{ name: "Heron" }])).toBe("Came due while the app was closed: Heron");
  expect(cameDueWords([{ name: "Heron" }, { name: "Spout" }, { name: "Fox" }, { name: "Owl" }])).toMatch(
    /Heron, Spout and 2 more$/,
  );
});

test("a due time's label promises only what can make it known now", () => {
  const label = (changes: Partial<Parameters<typeof ringLabel>[1]>) =>
    ringLabel(noon, { screenOn: false, permission: "not-asked", inCalendarMs: null, tested: {}, ...changes });
  expect(label({})).toBe(layerWords.none);
  expect(label({ permission: "granted" })).toBe(layerWords.notice);
  expect(label({ permission: "denied" })).toBe(layerWords.none);
  expect(label({ inCalendarMs: noon + 60_000 })).toBe(layerWords.calendar);
  expect(label({ inCalendarMs: noon + hourMs, permission: "granted" })).toBe(calendarOld);
  expect(label({ screenOn: true, inCalendarMs: noon })).toBe(layerWords.screen);
  // What stayed silent on this device is not promised; the next way that did not fail is named.
  const silent = { at: noon, rang: false };
  const all = { screenOn: true, inCalendarMs: noon, permission: "granted" } as const;
  expect(label({ ...all, tested: { screen: silent } })).toBe(layerWords.calendar);
  expect(label({ ...all, tested: { screen: silent, calendar: silent } })).toBe(layerWords.notice);
  expect(label({ ...all, tested: { screen: silent, calendar: silent, notice: silent } })).toBe(
    silentWords.screen,
  );
  expect(label({ inCalendarMs: noon, tested: { calendar: silent } })).toBe(silentWords.calendar);
  expect(label({ inCalendarMs: noon, tested: { calendar: { at: noon, rang: true } } })).toBe(
    layerWords.calendar,
  );
});

test("a layer that was not tried here says so, and one that failed says that louder", () => {
  const say = () => "2 days ago";
  expect(testedWords(undefined, say)).toBe("Not tried yet.");
  expect(testedWords({ at: 1, rang: true }, say)).toBe("Tried here 2 days ago: it rang.");
  expect(testedWords({ at: 1, rang: false }, say)).toContain("did NOT ring");
});
