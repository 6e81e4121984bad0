import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { runTimeBandS } from "./fluidity.ts";
import { fillWithinS, frontIn, misrunAdvice, type FrontAsked, type MisrunAsked } from "./misrun.ts";

const mould = { conductivityWMK: 1, densityKgM3: 1900, heatJKgK: 1130 };
const bronze: MisrunAsked["run"] = {
  mould,
  liquidKgM3: 7860,
  latentJKg: 195_000,
  liquidJKgK: 490,
  superheatK: 120,
  liquidusC: 1000,
  wallMm: 4,
  shellC: 600,
};
const front: FrontAsked = { massKg: 8, fillS: 3, wayMm: 300, widthMm: null, gateMS: 0.5 };
const asked: MisrunAsked = { run: bronze, front, leastFillS: null, solidusC: 854, preheat: null };
const of = ({ run, front: more, ...rest }: { run?: object; front?: object; leastFillS?: number | null }) =>
  misrunAdvice({ ...asked, ...rest, run: { ...bronze, ...run }, front: { ...front, ...more } });

describe("the front", () => {
  const at = (more: Partial<FrontAsked>, wallMm = 4) =>
    frontIn({ ...front, ...more, liquidKgM3: 7860, wallMm });

  test("a casting that is all of one wall takes its fill time, whatever the gate's speed", () => {
    expect(at({}).takesS).toBe(3);
    expect(at({}).speedMS).toBeCloseTo(0.1, 12);
    expect(at({ gateMS: 5 }).takesS).toBe(3);
    // 8 kg at 7860 kg/m³ are 1018 cm³: 4 × 300 × 848 mm hold them all.
    expect(at({ widthMm: 849 }).takesS).toBe(3);
  });

  test("a part of it takes the geometric mean of all the flow and its share by volume", () => {
    // 4 × 300 × 212 mm are a quarter of it: with all the flow 0.75 s, with its share 3 s.
    expect(at({ widthMm: 212 }).takesS).toBeCloseTo(1.5, 2);
    expect(at({ widthMm: 212 }).speedMS).toBeCloseTo(0.2, 2);
  });

  test("no front is faster than the gate: a bar of 4 × 4 mm over 300 mm at 0.5 m/s takes at least 0.6 s", () => {
    expect(at({ widthMm: 4 }).takesS).toBeCloseTo(Math.sqrt(0.6 * 3), 9);
    expect(at({ widthMm: 4, fillS: 0.2 }).takesS).toBe(0.2);
  });

  test("the longest fill that is through in a time is just that", () => {
    for (const widthMm of [null, 5, 100, 2000]) {
      const narrow = { ...front, widthMm, liquidKgM3: 7860, wallMm: 4 };
      const fillS = fillWithinS(narrow, 3);
      expect(frontIn({ ...narrow, fillS }).takesS).toBeCloseTo(3, 6);
    }
  });

  test("metres for millimetres, no fill and no metal are refused", () => {
    expect(() => at({ fillS: 0 })).toThrow(RangeError);
    expect(() => at({ massKg: NaN })).toThrow(RangeError);
    expect(() => at({ widthMm: -1 })).toThrow(/widthMm/);
  });
});

describe("will it run full", () => {
  test("it runs within the low end of its time, stops beyond the high end, and may stop between", () => {
    const band = runTimeBandS(bronze);
    const [lowS, highS] = [band?.lowS ?? NaN, band?.highS ?? NaN];
    const at = (fillS: number) => of({ front: { fillS } }).verdict;
    expect(lowS).toBeLessThan(highS / 2);
    expect([at(lowS), at(lowS * 1.001)]).toEqual(["runs", "may-stop"]);
    expect([at(highS), at(highS * 1.001)]).toEqual(["may-stop", "will-stop"]);
  });

  test("the shell heat it advises is the least that runs", () => {
    const [step] = of({ front: { fillS: 9 } }).steps;
    const toC = step?.do === "heat-shell" ? step.toC : NaN;
    expect(toC).toBeGreaterThan(600);
    expect(of({ run: { shellC: toC + 1e-6 }, front: { fillS: 9 } }).verdict).toBe("runs");
    expect(of({ run: { shellC: toC - 1 }, front: { fillS: 9 } }).verdict).toBe("may-stop");
  });

  test("a quicker fill is asked only where the way of pouring gives it", () => {
    const steps = (leastFillS: number | null) =>
      of({ front: { fillS: 9 }, leastFillS }).steps.map((s) => s.do);
    expect(steps(2)).toEqual(["heat-shell", "fill-within"]);
    expect(steps(8)).toEqual(["heat-shell"]);
    expect(steps(null)).toEqual(["heat-shell"]);
    const within = of({ front: { fillS: 9 }, leastFillS: 2 }).steps.find((s) => s.do === "fill-within");
    expect(of({ front: { fillS: within?.do === "fill-within" ? within.fillS * 0.999 : NaN } }).verdict).toBe(
      "runs",
    );
  });

  test("where no shell heat is enough it asks for a gate, within what the hottest shell gives", () => {
    const far = of({ front: { fillS: 120, wayMm: 1000 } });
    expect(far).toMatchObject({ verdict: "will-stop", steps: [{ do: "add-gate-or-thicken" }] });
    const step = far.steps[0];
    const mostWayMm = step?.do === "add-gate-or-thicken" ? step.mostWayMm : NaN;
    expect(mostWayMm).toBeLessThan(1000);
    expect(mostWayMm).toBeGreaterThan(10);
  });

  test("near the solidus it asks for a cooler shell", () => {
    expect(of({ run: { shellC: 840 } })).toMatchObject({
      verdict: "runs",
      steps: [{ do: "cool-shell", toC: 804 }],
    });
  });

  test("in a shell as hot as its liquidus it never stops", () => {
    expect(of({ run: { shellC: 1040 }, front: { fillS: 3000 } })).toMatchObject({
      verdict: "runs",
      has: null,
    });
  });

  test("for a metal that melts above it, no shell heat above 2000 °C is asked for", () => {
    const run = { ...bronze, liquidusC: 2200, shellC: 1500, wallMm: 0.5 };
    const steps = misrunAdvice({ ...asked, run, solidusC: 2150, front: { ...front, fillS: 600 } }).steps;
    expect(steps).toMatchObject([{ do: "add-gate-or-thicken" }]);
  });

  test("a shell outside of what is usual for its wall is said", () => {
    const quick = { ...asked, front: { ...front, fillS: 2 } };
    const steps = (lowC: number, highC: number) => misrunAdvice({ ...quick, preheat: { lowC, highC } }).steps;
    expect(steps(650, 850)).toEqual([{ do: "shell-below-usual", usualC: 650 }]);
    expect(steps(350, 550)).toEqual([{ do: "shell-above-usual", usualC: 550 }]);
  });

  test("hotter metal, a hotter shell, a thicker section, a shorter way and a quicker fill never make it worse", () => {
    const rank = { "will-stop": 0, "may-stop": 1, runs: 2 } as const;
    const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        fc.record({
          superheatK: between(0, 250),
          shellC: between(-20, 990),
          wallMm: between(0.5, 30),
        }),
        fc.record({
          massKg: between(0.1, 200),
          fillS: between(0.5, 120),
          wayMm: between(5, 3000),
          widthMm: fc.option(between(2, 2000)),
        }),
        between(1, 1.5),
        (run, into, more) => {
          const verdict = (runMore: object, frontMore: object) =>
            rank[of({ run: { ...run, ...runMore }, front: { ...into, ...frontMore } }).verdict];
          const now = verdict({}, {});
          expect(verdict({ superheatK: run.superheatK * more + 1 }, {})).toBeGreaterThanOrEqual(now);
          expect(verdict({ shellC: run.shellC + 100 * (more - 1) }, {})).toBeGreaterThanOrEqual(now);
          expect(verdict({ wallMm: run.wallMm * more }, {})).toBeGreaterThanOrEqual(now);
          expect(verdict({}, { wayMm: into.wayMm / more })).toBeGreaterThanOrEqual(now);
          expect(verdict({}, { fillS: into.fillS / more })).toBeGreaterThanOrEqual(now);
        },
      ),
      { numRuns: 400 },
    );
  });
});
