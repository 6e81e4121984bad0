import { millisecondsInHour as hourMs } from "date-fns/constants";
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { DipWish, Span } from "./dipProposal.ts";
import { dipProposal } from "./dipProposal.ts";

const midnight = Date.UTC(2026, 2, 4);
const at = (hours: number): number => midnight + hours * hourMs;
/** 8–10 and 17–21, today and tomorrow. */
const hours: readonly Span[] = [0, 24].flatMap((day) => [
  { from: at(day + 8), to: at(day + 10) },
  { from: at(day + 17), to: at(day + 21) },
]);
const noon = at(12);

const wish = (id: string, lateH: number | null, more: Partial<DipWish> = {}): DipWish => ({
  id,
  group: "backup",
  late: lateH === null ? null : at(lateH),
  likely: lateH === null ? null : at(lateH) - hourMs,
  coverBy: null,
  ...more,
});
const plan = (wishes: readonly DipWish[], now = noon) => dipProposal({ wishes, hours, now });
const told = (wishes: readonly DipWish[], now = noon) =>
  plan(wishes, now).visits.map((visit) => [
    (visit.at - midnight) / hourMs,
    ...visit.dips.map(({ group, pieces }) => `${group}: ${pieces.map(({ id }) => id).join(" ")}`),
  ]);

describe("when to go to the bucket", () => {
  test("four go at 18:10 when the last of them is ready, two the next morning at eight", () => {
    const four = [wish("a", 13), wish("b", 17.2), wish("c", 18 + 8 / 60), wish("d", 16)];
    expect(told([...four, wish("e", 22), wish("f", 26)])).toEqual([
      [18 + 10 / 60, "backup: a b c d"],
      [32, "backup: e f"],
    ]);
  });

  test("two buckets are one visit", () => {
    const { visits } = plan([wish("a", 18), wish("p", 17.5, { group: "prime" })]);
    expect(visits.map((visit) => visit.at)).toEqual([at(18)]);
    expect(visits[0]?.dips.map(({ group }) => group).toSorted()).toEqual(["backup", "prime"]);
  });

  test("what is ready now goes at once within the hours, else when they begin", () => {
    expect(told([wish("a", 3)], at(18.5))).toEqual([[18.5, "backup: a"]]);
    expect(told([wish("a", 3)], at(11))).toEqual([[17, "backup: a"]]);
  });

  test("a prime that must be covered before the others are ready makes a visit of its own", () => {
    const prime = wish("p", 17.5, { group: "prime", coverBy: at(18) });
    expect(told([prime, wish("a", 20)])).toEqual([
      [17.5, "prime: p"],
      [20, "backup: a"],
    ]);
  });

  test("no one is kept waiting past their time for a round minute", () => {
    const [visit] = plan([wish("p", 17 + 31 / 60, { coverBy: at(17 + 33 / 60) })]).visits;
    expect(visit?.at).toBe(at(17 + 31 / 60));
  });

  test("a prime that is surely ready only after its day is up goes by the likely guess, and it says so", () => {
    const prime = wish("p", 21.5, { group: "prime", coverBy: at(26) });
    const [visit] = plan([prime]).visits;
    expect(visit?.at).toBe(at(20.5));
    expect(visit?.dips[0]?.pieces).toEqual([{ id: "p", by: "likely", isBareTooLong: false }]);
  });

  test("a prime that no hour of the maker can save is told of", () => {
    const [visit] = plan([wish("p", 23, { coverBy: at(24) })]).visits;
    expect(visit?.dips[0]?.pieces).toEqual([{ id: "p", by: "late", isBareTooLong: true }]);
    expect(visit?.at).toBe(at(32));
  });

  test("a piece that is surely ready only after the last of the hours goes by its likely time, and it says so", () => {
    const [visit] = plan([wish("a", 50, { likely: at(33) })]).visits;
    expect(visit?.at).toBe(at(33));
    expect(visit?.dips[0]?.pieces[0]?.by).toBe("likely");
  });

  test("without a late guess the likely one serves; without either there is no time", () => {
    const { visits, left } = plan([wish("a", null, { likely: at(17.5) }), wish("b", null), wish("c", 80)]);
    expect(visits[0]?.dips[0]?.pieces[0]).toMatchObject({ id: "a", by: "likely" });
    expect(left).toEqual([
      { id: "b", why: "no-time" },
      { id: "c", why: "after-the-hours" },
    ]);
  });

  test("without any hours nothing is proposed", () => {
    const { visits, left } = dipProposal({ wishes: [wish("a", 3)], hours: [], now: noon });
    expect(visits).toEqual([]);
    expect(left).toEqual([{ id: "a", why: "after-the-hours" }]);
  });

  test("hours that overlap are one", () => {
    const double = [
      { from: at(17), to: at(19) },
      { from: at(18), to: at(21) },
    ];
    const { visits } = dipProposal({ wishes: [wish("a", 17.5), wish("b", 20)], hours: double, now: noon });
    expect(visits.map((visit) => visit.at)).toEqual([at(20)]);
  });
});

const minute = fc.integer({ min: -600, max: 2880 });
const anyWish = fc
  .record({
    group: fc.constantFrom("prime", "backup", "seal"),
    late: fc.option(minute),
    before: fc.integer({ min: 0, max: 400 }),
    cover: fc.option(minute, { freq: 2 }),
  })
  .map(({ group, late, before, cover }): Omit<DipWish, "id"> => {
    const toMs = (minutes: number): number => noon + minutes * 60_000 + 7;
    return {
      group,
      late: late === null ? null : toMs(late),
      likely: late === null ? null : toMs(late - before),
      coverBy: cover === null ? null : toMs(cover),
    };
  });
const anyWishes = fc
  .array(anyWish, { maxLength: 30 })
  .map((all) => all.map((one, i): DipWish => ({ ...one, id: `p${i}` })));
const byId = (wishes: readonly DipWish[]) => new Map(wishes.map((one) => [one.id, one]));

describe("whatever hangs on the rack", () => {
  test("every piece is proposed once or left with a reason, in the maker's hours, ready as it is said to be", () => {
    fc.assert(
      fc.property(anyWishes, (wishes) => {
        const { visits, left } = plan(wishes);
        const all = byId(wishes);
        const ids = visits.flatMap(({ dips }) => dips.flatMap(({ pieces }) => pieces.map(({ id }) => id)));
        expect([...ids, ...left.map(({ id }) => id)].toSorted()).toEqual([...all.keys()].toSorted());
        for (const visit of visits) {
          expect(visit.at).toBeGreaterThanOrEqual(noon);
          expect(hours.some(({ from, to }) => visit.at >= from && visit.at <= to)).toBe(true);
          expect(new Set(visit.dips.map(({ group }) => group)).size).toBe(visit.dips.length);
          for (const { group, pieces } of visit.dips)
            for (const { id, by, isBareTooLong } of pieces) {
              const one = all.get(id);
              expect(one?.group).toBe(group);
              expect(one?.[by] ?? Infinity).toBeLessThanOrEqual(visit.at);
              // Said to be covered in time is covered in time.
              if (!isBareTooLong) expect(one?.coverBy ?? Infinity).toBeGreaterThanOrEqual(visit.at);
            }
        }
      }),
      { numRuns: 200 },
    );
  });

  test("no prime is left bare too long where some minute of the hours would have served it", () => {
    fc.assert(
      fc.property(anyWishes, (wishes) => {
        const all = byId(wishes);
        for (const { dips } of plan(wishes).visits)
          for (const { id, isBareTooLong } of dips.flatMap(({ pieces }) => pieces)) {
            const one = all.get(id);
            if (!isBareTooLong || one === undefined) continue;
            const ready = Math.max(noon, one.likely ?? Infinity);
            const served = hours.some(
              ({ from, to }) => Math.max(from, ready) <= Math.min(to, one.coverBy ?? Infinity),
            );
            expect(served).toBe(false);
          }
      }),
      { numRuns: 200 },
    );
  });

  test("no two visits of the same hours could have been one", () => {
    fc.assert(
      fc.property(anyWishes, (wishes) => {
        const all = byId(wishes);
        const { visits } = plan(wishes);
        for (const span of hours) {
          const here = visits.filter((visit) => visit.at >= span.from && visit.at <= span.to);
          for (const [i, first] of here.entries()) {
            const second = here[i + 1];
            if (second === undefined) continue;
            // The later one was made because someone of the earlier could not wait for it.
            const couldWait = first.dips.every(({ pieces }) =>
              pieces.every(({ id }) => (all.get(id)?.coverBy ?? Infinity) >= second.at),
            );
            expect(couldWait).toBe(false);
          }
        }
      }),
      { numRuns: 200 },
    );
  });

  test("the order in which pieces hang changes no visit", () => {
    fc.assert(
      fc.property(anyWishes, (wishes) => {
        const times = (list: readonly DipWish[]) => plan(list).visits.map((visit) => visit.at);
        expect(times(wishes.toReversed())).toEqual(times(wishes));
      }),
      { numRuns: 100 },
    );
  });
});
