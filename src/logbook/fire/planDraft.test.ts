import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { kiln } from "../../../tests/givenFiring.ts";
import type { FireFacts } from "./fireFacts.ts";
import { firingForOf } from "./runBasis.ts";
import { loggedSegments } from "./runStanding.ts";
import { ranges } from "../entries/ranges.ts";
import { checkSchedule } from "../../physics/heat/checkSchedule.ts";
import { planFiring } from "../../physics/heat/firingSchedule.ts";
import { askedOf, chosenKiln, notListed, startingDraft, type PlanDraft } from "./planDraft.ts";

const heron: FireFacts = {
  pieceId: "heron",
  name: "Heron",
  hasPattern: true,
  isFilm: false,
  material: "pla",
  pattern: { massKg: 0.3, source: "weighed" },
  wallMm: 8,
  wallBasis: "table",
  shell: { massKg: 3, source: "starting" },
  damp: { state: "dry", source: "drying" },
  firedBefore: false,
  seenAbove1100: false,
  greenShare: 1,
};
const start = startingDraft("burnout", ["heron"]);
const gapsOf = (draft: PlanDraft, facts: readonly FireFacts[] = [heron]) => {
  const asked = askedOf(draft, { facts, kiln, preheatC: 500 });
  return asked.ok ? [] : asked.gaps;
};

describe("what a plan asks for", () => {
  test("nothing where the log knows it all; what it lacks by name", () => {
    expect(gapsOf(start)).toEqual([]);
    expect(gapsOf(start, [])).toContain("pieces");
    expect(gapsOf(start, [{ ...heron, material: null }])).toEqual(["material"]);
    expect(gapsOf(start, [{ ...heron, material: "other", pattern: null }])).toEqual([
      "material",
      "pattern-mass",
    ]);
    expect(gapsOf(start, [heron, { ...heron, material: "wax" }])).toEqual(["materials-differ"]);
    expect(gapsOf({ ...start, told: { material: "resin", patternKg: 1, wallMm: null } })).toEqual(["wall"]);
  });

  test("what is said stands before what the log says", () => {
    const told = { wallMm: 12, damp: "damp", material: "wax", patternKg: 0.5 } as const;
    const asked = askedOf({ ...start, told }, { facts: [heron], kiln, preheatC: 500 });
    expect(asked.ok && asked.basis).toMatchObject({
      wallMm: 12,
      damp: "damp",
      pattern: { material: "wax", massKg: 0.5 },
      shellKg: 3,
    });
  });

  test("a firing has nothing inside; the preheat is asked only where it is poured", () => {
    const empty = { ...heron, hasPattern: false, pattern: null };
    const of = (draft: Partial<PlanDraft>) => {
      const asked = askedOf({ ...start, ...draft }, { facts: [empty], kiln, preheatC: 480 });
      return asked.ok ? asked.basis : null;
    };
    expect(of({ purpose: "firing" })).toMatchObject({ pattern: null, preheatC: null });
    expect(of({ purpose: "firing", after: "pour" })?.preheatC).toBe(480);
    expect(of({ purpose: "preheat", fireC: 900 })).toMatchObject({
      after: "pour",
      preheatC: 480,
      fireC: null,
    });
  });

  test("the shop's first kiln serves until another is chosen; figures of no kiln are none", () => {
    const own = {
      id: "k",
      name: "Top loader",
      heat: "electric",
      powerKW: 6,
      volumeL: 90,
      maxC: 1250,
      retired: false,
    } as const;
    expect(chosenKiln(start, [own])?.kiln.maxC).toBe(1250);
    expect(chosenKiln({ ...start, kilnId: notListed }, [own])?.listed).toBeNull();
    expect(chosenKiln({ ...start, ownKiln: { powerKW: 3, maxC: 50, volumeL: 60 } }, [])).toBeNull();
    expect(chosenKiln({ ...start, ownKiln: { powerKW: null, maxC: 900, volumeL: 60 } }, [])).toBeNull();
  });
});

const within = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });

test("whatever can be asked gets a plan the log takes, or a refusal, and a plan as proposed breaks none of its limits", () => {
  const drafts = fc.record({
    purpose: fc.constantFrom("burnout" as const, "firing" as const, "preheat" as const),
    route: fc.constantFrom("staged" as const, "flash" as const),
    after: fc.constantFrom("inspect" as const, "pour" as const),
    family: fc.constantFrom(
      "fused-silica" as const,
      "aluminosilicate" as const,
      "zircon" as const,
      "quartz" as const,
    ),
    blindMm: within(0, 300),
    startC: within(-20, 180),
    fireC: fc.option(within(700, 1250)),
    preheatC: fc.option(within(200, 900)),
    told: fc.record({
      material: fc.constantFrom(
        "wax" as const,
        "pla" as const,
        "pvb" as const,
        "foam" as const,
        "pu-foam" as const,
      ),
      patternKg: within(0, 20),
      wallMm: within(1, 60),
      shellKg: within(0.1, 300),
      damp: fc.constantFrom("dry" as const, "damp" as const, "patched-wet" as const),
      firedBefore: fc.boolean(),
      seenAbove1100: fc.boolean(),
    }),
  });
  let plans = 0;
  fc.assert(
    fc.property(drafts, within(600, 1300), within(2, 40), (draft, maxC, powerKW) => {
      const asked = askedOf(
        { ...start, ...draft },
        { facts: [heron], kiln: { powerKW, maxC, volumeL: 100 }, preheatC: 500 },
      );
      if (!asked.ok) throw new Error(asked.gaps.join());
      const question = firingForOf(draft.purpose, { basis: asked.basis, startC: draft.startC });
      const plan = question && planFiring(question);
      if (plan?.kind !== "plan") return;
      plans += 1;
      for (const part of loggedSegments(plan.segments)) {
        if (part.kind === "ramp") expect(part.rateKPerH).toBeGreaterThanOrEqual(ranges.rateKPerH.low);
        if (part.kind !== "ramp") expect(part.minutes ?? 0).toBeLessThanOrEqual(ranges.segmentMin.high);
      }
      const holds = checkSchedule(plan.segments, { limits: plan.limits, startC: draft.startC }).filter(
        ({ level }) => level === "hold",
      );
      expect(holds).toEqual([]);
    }),
    { numRuns: 200 },
  );
  expect(plans).toBeGreaterThan(50);
});
