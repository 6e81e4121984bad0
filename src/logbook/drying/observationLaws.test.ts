import { millisecondsInHour as hourMs } from "date-fns/constants";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { GeometryClass } from "../../trade/geometryClasses.ts";
import { standingOf } from "../piece/buildStanding.ts";
import type { EntryBodies } from "../entries/entry.ts";
import type { CoatDrying } from "../piece/standing.ts";
import { monday, testLog, testShop } from "../../../tests/logs/testLog.ts";

const at = (hours: number): number => monday + hours * hourMs;
type Seen = EntryBodies["dryness-seen"];
type SeenOf<T = Seen> = T extends Seen ? Omit<T, "coatId"> : never;
type At = { readonly hours: number; readonly seen: SeenOf };
type History = {
  readonly geometry: GeometryClass;
  readonly dips: number;
  readonly airs: readonly { readonly hours: number; readonly airC: number; readonly rh: number }[];
  readonly seen: readonly At[];
  readonly hours: number;
};

/** The last coat goes on at hour 0; checks and readings follow, and the clock stands at `hours`. */
function judged({ geometry, dips, airs, seen, hours }: History): CoatDrying {
  const log = testLog({ geometry, areaM2: 0.1 }, at(-40));
  for (let i = dips; i >= 0; i -= 1) log.coat(at(-9 * i), { step: null });
  const coatId = log.piece().coats.at(-1)?.id ?? "";
  for (const one of seen.toSorted((a, b) => a.hours - b.hours))
    log.tell("dryness-seen", { ...one.seen, coatId }, at(one.hours));
  const readings = airs
    .map((one, i) => ({
      id: `r${i}`,
      at: at(one.hours),
      airC: one.airC,
      rh: one.rh,
      air: "room-fan" as const,
    }))
    .toSorted((a, b) => a.at - b.at);
  const { outer } = standingOf(log.piece(), testShop(readings), at(hours));
  if (outer === null) throw new Error("a coat was dipped");
  return outer;
}

const hour = (least: number, most: number) =>
  fc.integer({ min: Math.round(least * 60), max: most * 60 }).map((minutes) => minutes / 60);
const aVerdict = fc.constantFrom("dry" as const, "damp" as const, "wet" as const);
const aCheck: fc.Arbitrary<At> = fc.record({
  hours: hour(0.1, 12),
  seen: fc.oneof(
    {
      weight: 3,
      arbitrary: fc.record({
        method: fc.constantFrom("touch" as const, "colour" as const),
        verdict: aVerdict,
      }),
    },
    {
      weight: 1,
      arbitrary: fc.record({
        method: fc.constant("weight" as const),
        massG: fc.integer({ min: 23_900, max: 24_100 }).map((tenths) => tenths / 10),
      }),
    },
    {
      weight: 1,
      arbitrary: fc.record({
        method: fc.constant("surface" as const),
        surfaceC: fc.integer({ min: 150, max: 220 }).map((tenths) => tenths / 10),
        dryShellC: fc.constant(22),
      }),
    },
  ),
});
const aHistory: fc.Arbitrary<History> = fc.record({
  geometry: fc.constantFrom("open" as const, "corner" as const, "recess" as const),
  dips: fc.integer({ min: 0, max: 2 }),
  airs: fc.array(
    fc.record({
      hours: hour(-30, 12),
      airC: fc.integer({ min: 14, max: 28 }),
      rh: fc.integer({ min: 30, max: 85 }).map((percent) => percent / 100),
    }),
    { minLength: 1, maxLength: 8 },
  ),
  seen: fc.array(aCheck, { maxLength: 4 }),
  hours: fc.constant(12),
});

const guesses = ["early", "likely", "late"] as const;
const never = (time: number | null): number => time ?? Infinity;
/** A second, for sums cut at another place. */
const slackMs = 1000;

describe("without news", () => {
  test("an hour or a day later the coat has the same times, and its verdict only grows drier", () => {
    const words = ["unknown", "wet", "maybe", "dry"];
    fc.assert(
      fc.property(aHistory, hour(0.1, 30), (history, later) => {
        const now = judged(history);
        const then = judged({ ...history, hours: history.hours + later });
        for (const guess of guesses) {
          const [a, b] = [never(now.readyAt[guess]), never(then.readyAt[guess])];
          expect(a === b || Math.abs(a - b) < slackMs, `${guess} ${a} ${b}`).toBe(true);
        }
        expect(words.indexOf(then.verdict)).toBeGreaterThanOrEqual(words.indexOf(now.verdict));
      }),
      { numRuns: 150 },
    );
  });
});

describe("one more touch", () => {
  const moved = (history: History, one: At): readonly (readonly [number, number])[] => {
    const before = judged(history).readyAt;
    const after = judged({ ...history, seen: [...history.seen, one] }).readyAt;
    return guesses.map((guess) => [never(before[guess]), never(after[guess])]);
  };

  test("that finds it dry moves none of the three later, wherever it comes", () => {
    fc.assert(
      fc.property(aHistory, hour(0.1, 12), fc.constantFrom("touch", "colour"), (history, hours, method) => {
        const one = { hours, seen: { method, verdict: "dry" } } as At;
        for (const [before, after] of moved(history, one))
          expect(after).toBeLessThanOrEqual(before + slackMs);
      }),
      { numRuns: 200 },
    );
  });

  test("that finds it wet or damp moves none of the three sooner, wherever it comes", () => {
    fc.assert(
      fc.property(aHistory, hour(0.1, 12), fc.constantFrom("wet", "damp"), (history, hours, verdict) => {
        const one = { hours, seen: { method: "touch", verdict } } as At;
        for (const [before, after] of moved(history, one))
          expect(after).toBeGreaterThanOrEqual(before - slackMs);
      }),
      { numRuns: 200 },
    );
  });

  test("that finds it dry makes no coat dry that was not", () => {
    fc.assert(
      fc.property(aHistory, hour(0.1, 12), (history, hours) => {
        const before = judged(history);
        const seen = [...history.seen, { hours, seen: { method: "touch", verdict: "dry" } } as const];
        const after = judged({ ...history, seen });
        if (after.verdict === "dry" && before.verdict !== "dry")
          expect(after.readyAt.late).toBeLessThanOrEqual(at(12));
      }),
      { numRuns: 150 },
    );
  });
});
