import { expect, test } from "vitest";
import { givenPiece } from "../../../tests/givenPiece.ts";
import { type DueTime, dueList, dueTimes } from "./dueTimes.ts";
import { cameDueWords, dueTimeWords, dueWords } from "./dueWords.ts";
import { calendarOld, layerWords, ringLabel, testedWords } from "./ringLabel.ts";

const hourMs = 3_600_000;
const noon = Date.UTC(2026, 2, 4, 12);
const due = (changes: Partial<DueTime> = {}): DueTime => ({
  id: "heron-coat-4",
  pieceId: "heron",
  name: "Heron",
  coat: 4,
  allows: "next-coat",
  dueMs: noon,
  early: noon - hourMs,
  late: noon + 2 * hourMs,
  seen: false,
  ...changes,
});

test("a drying piece has one due time, that of its outermost coat", () => {
  const given = givenPiece({ recipeId: "start-general" });
  given.air(0);
  given.coats([1, 25]);
  const standing = given.standing(26);
  const [only, ...more] = dueTimes([standing]);
  expect(more).toEqual([]);
  expect(only).toMatchObject({ coat: 2, name: "Heron", allows: "next-coat", seen: false });
  expect(only?.id).toBe(`${standing.piece.id}-coat-2`);
  expect(only?.dueMs).toBe(standing.outer?.readyAt.likely);
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
  expect(dueTimes([given.standing(195)])[0]?.allows).toBe("review");
});

test("what came due unseen is listed apart from what was seen and what is to come", () => {
  const [old, fresh, coming] = [
    due({ id: "a", dueMs: noon - 5 }),
    due({ id: "b" }),
    due({ id: "c", dueMs: noon + 9 }),
  ];
  const list = dueList([old, fresh, coming], { shownMs: noon - 1, nowMs: noon });
  expect(list).toEqual({ ready: [old], cameDue: [fresh], coming: [coming] });
});

test("words say how sure a time is, before and after it", () => {
  const say = (now: number, changes: Partial<DueTime> = {}) => dueTimeWords(due(changes), now, "en-GB");
  expect(say(noon - 3 * hourMs)).toMatch(/^likely .*, between .* and /);
  expect(say(noon + hourMs)).toMatch(/^likely dry since .*, surely by /);
  expect(say(noon + 3 * hourMs)).toMatch(/^dry since .* at the latest$/);
  expect(say(noon + hourMs, { seen: true })).toMatch(/as seen$/);
  expect(say(noon - 3 * hourMs, { late: null })).toMatch(/not before/);
  expect(dueWords(due())).toBe("Heron: coat 4 likely dry – feel it, then the next coat");
  expect(cameDueWords([{ name: "Heron" }])).toBe("Came due while the app was closed: Heron");
  expect(cameDueWords([{ name: "Heron" }, { name: "Bust" }, { name: "Fox" }, { name: "Owl" }])).toMatch(
    /Heron, Bust and 2 more$/,
  );
});

test("a due time's label promises only what can make it known now", () => {
  const label = (changes: Partial<Parameters<typeof ringLabel>[1]>) =>
    ringLabel(noon, { screenOn: false, permission: "not-asked", inCalendarMs: null, ...changes });
  expect(label({})).toBe(layerWords.none);
  expect(label({ permission: "granted" })).toBe(layerWords.notice);
  expect(label({ permission: "denied" })).toBe(layerWords.none);
  expect(label({ inCalendarMs: noon + 60_000 })).toBe(layerWords.calendar);
  expect(label({ inCalendarMs: noon + hourMs, permission: "granted" })).toBe(calendarOld);
  expect(label({ screenOn: true, inCalendarMs: noon })).toBe(layerWords.screen);
});

test("a layer that was not tried here says so, and one that failed says that louder", () => {
  const say = () => "2 days ago";
  expect(testedWords(undefined, say)).toBe("Not tried on this device yet.");
  expect(testedWords({ at: 1, rang: true }, say)).toBe("Tried here 2 days ago: it rang.");
  expect(testedWords({ at: 1, rang: false }, say)).toContain("did NOT ring");
});
