import { describe, expect, it } from "vitest";
import { demoAhead } from "../../../tests/demoAhead.ts";
import { planFiring } from "../../physics/heat/firingSchedule.ts";
import { scheduleCurve } from "../../physics/heat/firingSegments.ts";
import { fireFacts } from "../fire/fireFacts.ts";
import { askedOf, startingDraft } from "../fire/planDraft.ts";
import { firingForOf } from "../fire/runBasis.ts";
import type { Standing } from "../piece/standing.ts";
import { minutesFor } from "./dayVerdict.ts";
import { fireAhead, purposesOf } from "./fireAhead.ts";

const demo = demoAhead({
  "demo-plaque": { material: "wax", metalLitre: 0.4 },
});
const [kiln] = demo.ahead.around.shop.kilns;
if (kiln === undefined) throw new Error("the demo has a kiln");
const plaque = demo.standing("demo-plaque");
const dancer = demo.standing("demo-dancer");
const named = (standing: Standing, id: string): Standing => ({
  ...standing,
  piece: { ...standing.piece, id },
});
const printed = named(
  { ...plaque, piece: { ...plaque.piece, plan: { ...plaque.piece.plan, material: "resin" } } },
  "printed",
);
const at = { kiln, preheatC: 700 };

describe("the fire that is left", () => {
  it("is burnout and preheat with the pattern inside, the preheat alone once it is fired", () => {
    expect(purposesOf(plaque)).toEqual(["burnout", "preheat"]);
    expect(purposesOf(dancer)).toEqual(["preheat"]);
  });

  it("takes as long as the run's own form plans for the same shells", () => {
    // A strong kiln is held back by a thick shell, which its first fire has made stronger.
    const strong = { ...kiln, powerKW: 60 };
    const thick = { ...plaque, wall: { ...plaque.wall, reachedMm: 50 } };
    const fire = fireAhead([thick], { kiln: strong, preheatC: 900 });
    if (!fire.ok) throw new Error("it can be planned");
    const minutes = (["burnout", "preheat"] as const).map((purpose) => {
      const draft = startingDraft(purpose, [plaque.piece.id]);
      const facts = fireFacts(thick, draft.family);
      // As the form of the preheat finds the shell once its burnout is over.
      const then =
        purpose === "burnout" ? facts : { ...facts, hasPattern: false, pattern: null, firedBefore: true };
      const asked = askedOf(draft, { facts: [then], kiln: strong, preheatC: 900 });
      const question = asked.ok && firingForOf(purpose, { basis: asked.basis, startC: draft.startC });
      const plan = question ? planFiring(question) : null;
      if (plan?.kind !== "plan") throw new Error(`no ${purpose}`);
      return Math.ceil(scheduleCurve(plan.segments, draft.startC).at(-1)?.endMin ?? 0);
    });
    expect(fire.runs.map((run) => run.minutes)).toEqual(minutes);
    expect(fire.minutes).toBe(minutes.reduce((sum, one) => sum + one, 0));
  });

  it("burns patterns that differ one after the other, and each piece waits for the runs from its own on", () => {
    const fire = fireAhead([plaque, printed, dancer], at);
    if (!fire.ok) throw new Error("it can be planned");
    expect(fire.runs.map(({ purpose, pieceIds }) => [purpose, pieceIds.length])).toEqual([
      ["burnout", 1],
      ["burnout", 1],
      ["preheat", 3],
    ]);
    const [first, second, preheat] = fire.runs.map(({ minutes }) => minutes);
    expect(minutesFor(fire, "demo-plaque")).toBe((first ?? 0) + (second ?? 0) + (preheat ?? 0));
    expect(minutesFor(fire, "printed")).toBe((second ?? 0) + (preheat ?? 0));
    expect(minutesFor(fire, "demo-dancer")).toBe(preheat);
  });

  it("is no shorter with more shells in the same kiln", () => {
    const many = Array.from({ length: 8 }, (_, i) => named(plaque, `p${i}`));
    const [one, eight] = [fireAhead([plaque], at), fireAhead(many, at)];
    if (!one.ok || !eight.ok) throw new Error("both can be planned");
    expect(eight.minutes).toBeGreaterThan(one.minutes);
  });

  it("says what its plan lacks, and why it refuses", () => {
    const unknown = { ...plaque, piece: { ...plaque.piece, plan: { name: "Plaque" } } };
    expect(fireAhead([unknown], at)).toMatchObject({ ok: false, purpose: "burnout" });
    expect(fireAhead([dancer], { kiln: { ...kiln, maxC: 600 }, preheatC: 700 })).toMatchObject({
      ok: false,
      purpose: "preheat",
      refused: { code: "kiln-below-preheat", neededC: 700, maxC: 600 },
    });
  });

  it("takes the form's own starting kiln where none is set up", () => {
    expect(fireAhead([dancer], { kiln: null, preheatC: 250 })).toMatchObject({ ok: true });
  });
});
