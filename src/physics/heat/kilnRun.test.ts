import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { keeping, kiln, pla, plan, runStart as start, silicaShell, wax } from "../../../tests/givenFiring.ts";
import type { FiringPlan } from "./firingSchedule.ts";
import { scheduleCurve } from "./firingSegments.ts";
import type { KilnRun, RunJudgement } from "./kilnRun.ts";
import { judgeRun } from "./kilnRun.ts";
import type { KilnReading } from "./runPosition.ts";

const minute = 60_000;
const printed = plan();
const refired = plan({
  purpose: "preheat",
  pattern: null,
  preheatC: 500,
  firedBefore: true,
  seenAbove1100: true,
  damp: "patched-wet",
});
const flashed = plan({ route: "flash", pattern: wax, after: "pour", preheatC: 500 });
const quartz = plan({ shell: { ...silicaShell, hasQuartz: true } });
const plans = [printed, refired, flashed, quartz];

const lengthOf = ({ segments }: FiringPlan): number => scheduleCurve(segments, 20).at(-1)?.endMin ?? 0;
const everyTenMin = (made: FiringPlan, untilMin = lengthOf(made)): readonly number[] =>
  Array.from({ length: Math.floor(untilMin / 10) + 1 }, (_, i) => i * 10);
const read = (pairs: readonly (readonly [min: number, kilnC: number])[]): readonly KilnReading[] =>
  pairs.map(([min, kilnC]) => ({ at: start + min * minute, kilnC }));
const codes = ({ findings }: RunJudgement) => findings.map(({ code, limit }) => `${code} ${limit}`);

describe("a run that keeps its plan", () => {
  const any = fc.constantFrom(...plans).chain((made) =>
    fc.record({
      made: fc.constant(made),
      minutes: fc.array(fc.double({ min: 0, max: lengthOf(made), noNaN: true }), { maxLength: 40 }),
      now: fc.double({ min: 0, max: lengthOf(made), noNaN: true }),
    }),
  );

  test("has no finding and is on time, however few its readings", () =>
    fc.assert(
      fc.property(any, ({ made, minutes, now }) => {
        const judged = judgeRun(keeping(made, minutes), start + now * minute);
        expect(judged.findings).toEqual([]);
        expect(Math.abs(judged.aheadMin ?? 0)).toBeLessThan(4);
      }),
      { numRuns: 200 },
    ));

  test("reads the same whatever the order its readings came in", () =>
    fc.assert(
      fc.property(any, fc.infiniteStream(fc.nat()), ({ made, minutes, now }, seeds) => {
        const run = keeping(made, minutes);
        const shuffled = run.readings
          .map((reading) => ({ reading, key: seeds.next().value ?? 0 }))
          .sort((a, b) => a.key - b.key)
          .map(({ reading }) => reading);
        const at = start + now * minute;
        expect(judgeRun({ ...run, readings: shuffled }, at)).toEqual(judgeRun(run, at));
      }),
      { numRuns: 100 },
    ));

  test("is told what is next and when", () => {
    const judged = judgeRun(keeping(printed, everyTenMin(printed, 60)), start + 65 * minute);
    expect(judged.position.segment).toBe(5);
    expect(judged.next).toMatchObject({ what: "ramp" });
    // 57.6 min up to 260 °C, half an hour there.
    expect((judged.next?.at ?? 0) - start).toBeCloseTo(87.6 * minute, -4);
    expect(judged.waiting).toEqual([]);
  });

  test("is over when all its minutes are", () => {
    const over = judgeRun(keeping(printed, everyTenMin(printed)), start + (lengthOf(printed) + 30) * minute);
    expect(over.next).toBeNull();
  });
});

describe("a run that does not", () => {
  const at = (min: number) => start + min * minute;
  const run = (
    made: FiringPlan,
    readings: readonly KilnReading[],
    ticks: "ticked" | "nothing" = "ticked",
  ): KilnRun => ({
    ...keeping(made, []),
    readings,
    ticked: ticks === "ticked" ? keeping(made, []).ticked : [],
  });

  test("a kiln that lags by half is behind by the minutes it needs", () => {
    const judged = judgeRun(
      run(
        printed,
        read([
          [0, 20],
          [30, 82],
          [60, 145],
        ]),
      ),
      at(60),
    );
    expect(judged.aheadMin).toBeCloseTo(-30, 0);
    expect(judged.plannedC).toBeCloseTo(260, 0);
    expect(judged.endsAt).toBeCloseTo(at(lengthOf(printed) + 30), -5);
  });

  test("one that is early is ahead", () => {
    expect(
      judgeRun(
        run(
          printed,
          read([
            [0, 20],
            [30, 170],
          ]),
        ),
        at(30),
      ).aheadMin,
    ).toBeCloseTo(6, 0);
  });

  test("through the smoke at twice the pace is said with the rate and the limit", () => {
    const hasty = read([
      [0, 20],
      [58, 260],
      [88, 262],
      [97, 290],
      [117, 430],
    ]);
    const [found] = judgeRun(run(printed, hasty), at(120)).findings;
    expect(found).toMatchObject({ code: "too-fast", limit: "decomposition", figures: { limitKPerH: 200 } });
    expect(found?.figures["rateKPerH"]).toBeGreaterThan(350);
  });

  test("a wet shell that did not wait, though nobody read the kiln between", () => {
    const judged = judgeRun(
      run(
        refired,
        read([
          [0, 20],
          [20, 100],
          [60, 165],
        ]),
      ),
      at(70),
    );
    expect(codes(judged)).toContain("hold-short steam");
  });

  test("and it is not accused while it might have waited", () => {
    const judged = judgeRun(
      run(
        refired,
        read([
          [0, 20],
          [20, 100],
          [125, 165],
        ]),
      ),
      at(130),
    );
    expect(codes(judged)).toEqual([]);
    // First read long after: what came before counts.
    expect(codes(judgeRun(run(refired, read([[144, 240]])), at(150)))).toEqual([]);
  });

  test("a plastic piece driven past its drain", () => {
    const judged = judgeRun(
      run(
        printed,
        read([
          [0, 20],
          [50, 225],
          [65, 275],
          [75, 310],
        ]),
      ),
      at(80),
    );
    expect(codes(judged)).toContain("drain-missed drain-window");
  });

  test("vents that nobody ticked before the smoke", () => {
    const judged = judgeRun(
      run(printed, keeping(printed, everyTenMin(printed, 120)).readings, "nothing"),
      at(121),
    );
    expect(codes(judged)).toEqual(["vents-unticked decomposition"]);
    expect(judged.waiting.map(({ code }) => code)).toEqual([
      "extraction-on",
      "openings-checked",
      "cup-down",
      "drain-watched",
      "vents-open",
    ]);
  });

  test("a firing cut short shows once the kiln has come down", () => {
    const short = [
      ...keeping(printed, everyTenMin(printed, 260)).readings,
      ...read([
        [275, 845],
        [300, 740],
      ]),
    ];
    expect(codes(judgeRun(run(printed, short), at(280)))).toEqual([]);
    expect(codes(judgeRun(run(printed, short), at(301)))).toContain("hold-short sintering");
  });

  test("cooled through cristobalite at three times its pace", () => {
    const hot = plan({
      purpose: "fire",
      pattern: null,
      firedBefore: true,
      seenAbove1100: true,
      kiln: { ...kiln, liningKJPerK: 5 },
    });
    const peak = lengthOf(hot);
    const down = read([
      [0, 20],
      [peak, 870],
      [peak + 200, 320],
      [peak + 240, 120],
    ]);
    const found = judgeRun(run(hot, down), at(peak + 241)).findings.find(
      ({ limit }) => limit === "cristobalite",
    );
    expect(found?.figures["timesLimit"]).toBeGreaterThan(1.7);
  });

  test("hotter than the kiln may be", () => {
    expect(
      codes(
        judgeRun(
          run(
            printed,
            read([
              [0, 20],
              [400, 1260],
            ]),
          ),
          at(401),
        ),
      ),
    ).toContain("over-kiln null");
  });

  test("readings after now, and from before the start, are left out", () => {
    const judged = judgeRun(
      run(
        printed,
        read([
          [-60, 900],
          [0, 20],
          [500, 1260],
        ]),
      ),
      at(10),
    );
    expect(judged.findings).toEqual([]);
    expect(judged.lastReading?.kilnC).toBe(20);
    expect(judged.unreadMin).toBe(10);
  });

  test("before the first reading nothing is known but the plan", () => {
    const judged = judgeRun(run(printed, []), at(30));
    expect(judged).toMatchObject({ aheadMin: null, lastReading: null, findings: [] });
    expect(judged.plannedC).toBeCloseTo(145, 6);
  });

  test("a wax piece taken from the hot kiln before it has drained", () => {
    const loadedMin = scheduleCurve(flashed.segments, 20).find(
      ({ segment }) =>
        segment === flashed.segments.findIndex((p) => p.kind === "instruction" && p.code === "load-hot"),
    )?.startMin;
    const m = loadedMin ?? NaN;
    const cut = read([
      [0, 20],
      [m, 870],
      [m + 3, 868],
      [m + 6, 700],
      [m + 25, 400],
    ]);
    expect(codes(judgeRun(run(flashed, cut), at(m + 7)))).toEqual(["hold-short sintering"]);
    expect(codes(judgeRun(run(flashed, cut), at(m + 26)))).toContain("drain-missed drain-window");
  });

  test("an empty hot kiln on its way up harms nobody", () => {
    const up = read([
      [0, 20],
      [40, 870],
    ]);
    expect(codes(judgeRun(run(flashed, up, "nothing"), at(60)))).toEqual([]);
    expect(pla.isWax).toBe(false);
  });
});
