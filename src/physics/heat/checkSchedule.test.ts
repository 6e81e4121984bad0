import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  aluminosilicateShell,
  burnout,
  kiln,
  pla,
  plan,
  silicaShell,
  wax,
} from "../../../tests/givenFiring.ts";
import { checkSchedule } from "./checkSchedule.ts";
import type { FiringFor } from "./firingLimits.ts";
import type { FiringPlan } from "./firingSchedule.ts";
import { planFiring } from "./firingSchedule.ts";
import type { Segment } from "./firingSegments.ts";
import { scheduleCurve } from "./firingSegments.ts";

const judged = (made: FiringPlan, edit: (segments: readonly Segment[]) => readonly Segment[]) =>
  checkSchedule(edit(made.segments), { limits: made.limits, startC: 20 });
const codes = (...of: Parameters<typeof judged>) => [...new Set(judged(...of).map(({ code }) => code))];
const without = (code: string) => (all: readonly Segment[]) =>
  all.filter((part) => part.kind !== "instruction" || part.code !== code);
const withRate = (rateKPerH: number) => (all: readonly Segment[]) =>
  all.map((part) => (part.kind === "ramp" ? { ...part, rateKPerH } : part));
const withHold = (nth: number, minutes: number) => (all: readonly Segment[]) => {
  let seen = -1;
  return all.map((part) => {
    if (part.kind !== "hold") return part;
    seen += 1;
    return seen === nth ? { ...part, minutes } : part;
  });
};

describe("a schedule someone changed", () => {
  test("faster through the smoke than the practice is told with both rates", () => {
    const strong = plan({ kiln: { ...kiln, powerKW: 40 } });
    const found = judged(strong, withRate(400)).filter(({ code }) => code === "too-fast");
    expect(found[0]).toMatchObject({
      limit: "decomposition",
      level: "hold",
      figures: { rateKPerH: 400, limitKPerH: 200 },
    });
  });

  test("faster than the kiln's own power is no danger but will not happen", () => {
    expect(judged(plan(), withRate(340))).toContainEqual(
      expect.objectContaining({ code: "kiln-cannot", level: "watch", limit: "kiln-power-limit" }),
    );
  });

  test("steeper than the wall bears is told as thermal stress", () => {
    const strong = plan({ kiln: { ...kiln, powerKW: 400 }, shell: { ...aluminosilicateShell, wallMm: 20 } });
    expect(judged(strong, withRate(500)).map(({ limit }) => limit)).toContain("thermal-stress");
  });

  test("hotter than the kiln", () => {
    const hotter = (all: readonly Segment[]) =>
      all.map((part) => (part.kind === "ramp" && part.toC === 870 ? { ...part, toC: 1250 } : part));
    expect(codes(plan(), hotter)).toContain("over-kiln");
  });

  test.each([
    ["no look at the openings", without("openings-checked"), "openings-unchecked"],
    ["the cup not turned down", without("cup-down"), "openings-unchecked"],
    ["vents never opened", without("vents-open"), "vents-shut"],
    [
      "vents opened after the smoke",
      (all: readonly Segment[]) => {
        const vents = all.filter((part) => part.kind === "instruction" && part.code === "vents-open");
        return [...without("vents-open")(all), ...vents];
      },
      "vents-shut",
    ],
    ["no time to drain", withHold(0, 0), "no-drain"],
    ["less time to drain", withHold(0, 15), "drain-short"],
    ["a short firing", withHold(1, 20), "finish-short"],
  ] as const)("%s", (_, edit, code) => {
    expect(codes(plan(), edit)).toEqual([code]);
  });

  test("a damp shell's wait cut short", () => {
    expect(codes(plan({ damp: "damp" }), withHold(0, 20))).toEqual(["steam-hold-short"]);
  });

  test("a wax piece in a hot kiln: its drain cut short, its vents opened after", () => {
    const flash = plan({ route: "flash", pattern: wax });
    expect(codes(flash, without("vents-open"))).toEqual(["vents-shut"]);
    expect(codes(flash, without("cup-down"))).toEqual(["openings-unchecked"]);
  });

  test("burning three kilos at the practice's pace is too much for sixty litres", () => {
    expect(codes(plan({ pattern: { ...pla, massKg: 3 } }), withRate(190))).toContain("heat-release");
  });

  test("quartz cooled faster than it bears", () => {
    const made = plan({ shell: { ...silicaShell, hasQuartz: true, wallMm: 15 } });
    const fastDown = (all: readonly Segment[]) =>
      all.map((part) =>
        part.kind === "ramp" && part.toC < 600 && part.toC >= 80 ? { ...part, rateKPerH: 120 } : part,
      );
    expect(judged(made, fastDown).filter(({ limit }) => limit === "quartz").length).toBeGreaterThan(0);
  });
});

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyFiring: fc.Arbitrary<FiringFor> = fc
  .record({
    purpose: fc.constantFrom("burnout", "fire", "preheat" as const),
    route: fc.constantFrom("flash", "staged" as const),
    after: fc.constantFrom("inspect", "pour" as const),
    damp: fc.constantFrom("dry", "damp", "patched-wet" as const),
    firedBefore: fc.boolean(),
    seenAbove1100: fc.boolean(),
    wallMm: within(3, 25),
    hasQuartz: fc.boolean(),
    isSilica: fc.boolean(),
    pattern: fc.constantFrom(null, pla, wax, { ...pla, drainC: null, heatMJKg: 25 }),
    massKg: within(0, 4),
    powerKW: within(2, 30),
    maxC: within(720, 1300),
    volumeL: within(20, 500),
    shellKg: within(0.5, 30),
    preheatC: within(200, 700),
    fireC: fc.option(within(750, 1250), { nil: undefined }),
    blindMm: within(0, 100),
  })
  .map((of) => {
    const base = of.isSilica ? silicaShell : aluminosilicateShell;
    return {
      ...burnout,
      purpose: of.purpose,
      route: of.route,
      after: of.after,
      damp: of.damp,
      firedBefore: of.firedBefore,
      seenAbove1100: of.seenAbove1100,
      shell: { ...base, wallMm: of.wallMm, hasQuartz: of.hasQuartz },
      pattern: of.pattern === null || of.purpose !== "burnout" ? null : { ...of.pattern, massKg: of.massKg },
      kiln: { powerKW: of.powerKW, maxC: of.maxC, volumeL: of.volumeL },
      shellKg: of.shellKg,
      preheatC: of.preheatC,
      fireC: of.fireC,
      blindMm: of.blindMm,
    };
  });

describe("whatever the piece", () => {
  test("a plan keeps its own limits", () =>
    fc.assert(
      fc.property(anyFiring, within(-20, 180), (some, startC) => {
        const of = { ...some, startC };
        const made = planFiring(of);
        if (made.kind === "refused") return;
        expect(checkSchedule(made.segments, { limits: made.limits, startC: of.startC })).toEqual([]);
      }),
      { numRuns: 200 },
    ));

  test("every slope and hold has its reason, the binding one first, and all of them a length", () =>
    fc.assert(
      fc.property(anyFiring, (of) => {
        const made = planFiring(of);
        if (made.kind === "refused") return true;
        return made.segments.every(
          (part) =>
            part.reasons.length > 0 &&
            (part.kind !== "ramp" ||
              (part.rateKPerH > 0 &&
                part.reasons.every(({ figures }) => part.rateKPerH <= (figures["rateKPerH"] ?? 0)))) &&
            (part.kind !== "hold" || part.minutes > 0),
        );
      }),
      { numRuns: 200 },
    ));

  test("a thicker wall is never fired in less time", () =>
    fc.assert(
      fc.property(anyFiring, (of) => {
        const lengthOf = (wallMm: number): number | null => {
          const made = planFiring({ ...of, shell: { ...of.shell, wallMm } });
          return made.kind === "refused" ? null : (scheduleCurve(made.segments, 20).at(-1)?.endMin ?? 0);
        };
        const thin = lengthOf(of.shell.wallMm);
        const thick = lengthOf(of.shell.wallMm + 2);
        return thin === null || thick === null || thick >= thin - 1e-6;
      }),
      { numRuns: 100 },
    ));

  test("the curve never jumps and time never runs back", () =>
    fc.assert(
      fc.property(anyFiring, (of) => {
        const made = planFiring(of);
        if (made.kind === "refused") return true;
        const curve = scheduleCurve(made.segments, 20);
        return curve.every(
          ({ fromC, startMin, endMin }, i) =>
            fromC === (curve[i - 1]?.toC ?? 20) &&
            startMin === (curve[i - 1]?.endMin ?? 0) &&
            endMin >= startMin,
        );
      }),
      { numRuns: 100 },
    ));
});
