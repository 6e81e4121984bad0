import { describe, expect, test } from "vitest";
import {
  airOfWeek,
  dipsOf,
  heavier,
  isWorkingHour,
  looksAt,
  looksOf,
  lookThrough,
  quietWeeks,
  type Look,
  type Week,
} from "../../tests/weeks.ts";

/** Looks with something to watch that a quiet week may have, of 52 and of 106. */
const mostWatched = { 1: 8, 2: 4 } as const;

const named = (name: string): Week => {
  const week = quietWeeks.find((one) => one.name === name);
  if (week === undefined) throw new Error(`there is no week "${name}"`);
  return week;
};

const kept = new Map<Week, readonly Look[]>();
/** Looking through a week costs a while, so each is looked through once. */
function looksThrough(week: Week): readonly Look[] {
  const looks = kept.get(week) ?? lookThrough(week);
  kept.set(week, looks);
  return looks;
}

test("a week has nine coats, and a look at each hour of its working days", () => {
  for (const week of quietWeeks) {
    expect(dipsOf(week)).toHaveLength(9);
    expect(looksOf(week)).toHaveLength(week.coatsADay === 2 ? 52 : 106);
    expect(looksOf(week).filter((hour) => !isWorkingHour(hour))).toEqual([]);
  }
});

test("its rooms are as warm and as cold as they are meant to be", () => {
  const spanOf = (name: string): readonly number[] => {
    const ofDay = Array.from({ length: 24 }, (_, hour) => airOfWeek(named(name), hour).airC);
    return [Math.min(...ofDay), Math.max(...ofDay)].map((airC) => Math.round(airC * 10) / 10);
  };
  expect(spanOf("wax, steady air, logger")).toEqual([21, 21]);
  expect(spanOf("wax, day and night")).toEqual([17.5, 23.5]);
  expect(spanOf("wax, summer")).toEqual([21, 29]);
  expect(spanOf("wax, winter")).toEqual([13.5, 18.5]);
});

describe.each(quietWeeks)("$name", (week) => {
  test("few looks find anything to watch", () => {
    const watched = looksAt(looksThrough(week), "watch");
    expect(watched.length, heavier(watched).join("\n")).toBeLessThanOrEqual(mostWatched[week.coatsADay]);
  });

  test("nothing holds it but the last coat", () => {
    const holds = looksAt(looksThrough(week), "hold");
    const of = holds.flatMap(({ findings }) => findings.filter(({ level }) => level === "hold"));
    expect(of.filter(({ rule }) => rule !== "last-coat-damp")).toEqual([]);
    expect(holds.filter(({ coats }) => coats < 9)).toEqual([]);
  });
});

test("of a piece that has only a name nothing is to be watched until half its coats are on", () => {
  const early = looksThrough(named("name only")).filter(({ coats }) => coats < 4);
  expect(early.length).toBeGreaterThan(25);
  expect(looksAt(early, "watch")).toEqual([]);
});

test("with a recipe the last coat of a full plan holds until it has dried", () => {
  for (const week of quietWeeks.filter(({ plan }) => plan.recipeId !== undefined)) {
    const afterLast = looksThrough(week).filter(({ coats }) => coats === 9);
    expect(looksAt(afterLast.slice(0, 1), "hold")).toHaveLength(1);
  }
});

test("the count would catch a rule that speaks all week", () => {
  const week = named("wax, steady air, logger");
  const looks = looksThrough(week).map((look) => ({
    ...look,
    findings: look.findings.concat({
      rule: "no-seal-coat",
      variant: "left-out",
      level: "watch",
      figures: {},
      texts: {},
      entries: [],
      source: "",
    }),
  }));
  expect(looksAt(looks, "watch").length).toBeGreaterThan(mostWatched[week.coatsADay]);
});
