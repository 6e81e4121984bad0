import { planFiring, type FiringRefusal } from "../../physics/heat/firingSchedule.ts";
import { scheduleCurve } from "../../physics/heat/firingSegments.ts";
import type { RunPurpose } from "../entries/fireBodies.ts";
import { fireFacts, type FireFacts } from "../fire/fireFacts.ts";
import { askedOf, chosenKiln, startingDraft, type PlanQuestion } from "../fire/planDraft.ts";
import { firingForOf } from "../fire/runBasis.ts";
import { patternState } from "../piece/patternState.ts";
import type { Standing } from "../piece/standing.ts";
import type { Kiln } from "../shop/shopThings.ts";

export type PlanGap = Extract<PlanQuestion, { ok: false }>["gaps"][number];

/** What a shell still has to go through once it is dry, in the order it does. */
export type FireAhead =
  | { readonly ok: true; readonly runs: readonly RunAhead[]; readonly minutes: number }
  | { readonly ok: false; readonly purpose: RunPurpose; readonly gaps: readonly PlanGap[] }
  | { readonly ok: false; readonly purpose: RunPurpose; readonly refused: FiringRefusal };

export type RunAhead = {
  readonly purpose: RunPurpose;
  readonly pieceIds: readonly string[];
  readonly minutes: number;
};

/**
 * The runs a shell still needs: its pattern out, which fires it too; else a firing where it has not been fired since, or
 * where carbon was left; and the preheat of the day.
 */
export function purposesOf({ piece, metalBars }: Standing): readonly RunPurpose[] {
  if (patternState(piece) !== "gone" && piece.phase !== "burnout") return ["burnout", "preheat"];
  const isFired = piece.phase === "fired" || piece.phase === "preheated" || piece.phase === "burnout";
  const isLeft = metalBars.some(({ code }) => code === "residue" || code === "wax-film");
  return isFired && !isLeft ? ["preheat"] : ["firing", "preheat"];
}

const purposes: readonly RunPurpose[] = ["burnout", "firing", "preheat"];

/**
 * How long these shells take together from dry to hot in one kiln, minutes: each run as its form would plan it, patterns
 * that burn differently one after the other. `preheatC` is what they leave the kiln with. `standings` are the shells
 * dry, their coats on; without a kiln the form's own starting one is taken.
 */
export function fireAhead(
  standings: readonly Standing[],
  { kiln, preheatC }: { readonly kiln: Kiln | null; readonly preheatC: number },
): FireAhead {
  const runs: RunAhead[] = [];
  for (const purpose of purposes) {
    const inIt = standings.filter((one) => purposesOf(one).includes(purpose));
    for (const together of purpose === "burnout" ? byPattern(inIt) : [inIt]) {
      if (together.length === 0) continue;
      const pieceIds = together.map(({ piece }) => piece.id);
      const made = minutesOf(purpose, together, { kiln, preheatC });
      if (typeof made !== "number") return { ok: false, purpose, ...made };
      runs.push({ purpose, pieceIds, minutes: made });
    }
  }
  return { ok: true, runs, minutes: runs.reduce((sum, { minutes }) => sum + minutes, 0) };
}

/** Patterns that burn alike go in together; those that are dry first burn first. */
function byPattern(standings: readonly Standing[]): readonly (readonly Standing[])[] {
  const groups = new Map<string, Standing[]>();
  for (const standing of standings) {
    const { piece } = standing;
    const key = `${piece.plan.material ?? ""} ${patternState(piece)}`;
    groups.set(key, [...(groups.get(key) ?? []), standing]);
  }
  const dryAt = (group: readonly Standing[]): number => Math.max(...group.map(({ now }) => now));
  return [...groups.values()].toSorted((a, b) => dryAt(a) - dryAt(b));
}

function minutesOf(
  purpose: RunPurpose,
  standings: readonly Standing[],
  { kiln, preheatC }: { readonly kiln: Kiln | null; readonly preheatC: number },
): number | { readonly gaps: readonly PlanGap[] } | { readonly refused: FiringRefusal } {
  const draft = startingDraft(
    purpose,
    standings.map(({ piece }) => piece.id),
  );
  const facts = standings.map((standing) => burntOut(fireFacts(standing, draft.family), purpose));
  const chosen = chosenKiln(draft, kiln === null ? [] : [kiln]);
  const asked = askedOf(draft, { facts, kiln: chosen?.kiln ?? null, preheatC });
  if (!asked.ok) return { gaps: asked.gaps };
  const question = firingForOf(purpose, { basis: asked.basis, startC: draft.startC });
  if (question === null) return { gaps: ["material"] };
  const plan = planFiring(question);
  if (plan.kind === "refused") return { refused: plan };
  return Math.ceil(scheduleCurve(plan.segments, draft.startC).at(-1)?.endMin ?? 0);
}

/** After its burnout a shell is fired, and there is nothing in it. */
const burntOut = (facts: FireFacts, purpose: RunPurpose): FireFacts =>
  purpose === "burnout" || !facts.hasPattern
    ? facts
    : { ...facts, hasPattern: false, isFilm: false, pattern: null, firedBefore: true };
