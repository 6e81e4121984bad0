import type { Coat, Recipe } from "../logbook/piece/piece.ts";
import type { Standing } from "../logbook/piece/standing.ts";
import { figure } from "./finding.ts";
import { coatsAreDone } from "./stage.ts";
import type { FindingOf, VariantOf } from "./variants.ts";

type Found = FindingOf<"recipe-not-followed">;

/** What was put on against what the recipe asked for. Coats after a burnout, which are mending, and coats from before the log count as no departure. */
export function recipeNotFollowed(standing: Standing): readonly Found[] {
  const { piece, recipe } = standing;
  if (recipe === null)
    return piece.coats.length === 0 && !coatsAreDone(standing)
      ? []
      : [finding({ variant: "no-recipe", level: "note", coats: [], steps: [] })];
  const logged = piece.coats.filter(({ beforeLog }) => beforeLog === undefined);
  return [
    ...ofSkipped(standing, recipe),
    ...ofLeftOut(standing, recipe),
    ...ofOther(logged, recipe),
    ...ofExtra(logged),
  ];
}

function ofSkipped({ piece }: Standing, recipe: Recipe): readonly Found[] {
  const done = new Set(piece.coats.map(({ step }) => step));
  const skipped = piece.skipped.filter(({ step }) => !done.has(step) && step < recipe.coats.length);
  if (skipped.length === 0) return [];
  const steps = skipped.map(({ step }) => step);
  const found = finding({ variant: "skipped", level: "watch", coats: [], steps });
  return [{ ...found, entries: skipped.map(({ id }) => id) }];
}

/**
 * Steps of the recipe that were neither put on nor skipped in words, once no coat is to come. A seal that is the only
 * one missing is another rule's word.
 */
export function leftOutSteps(standing: Standing, recipe: Recipe): readonly number[] {
  if (!coatsAreDone(standing)) return [];
  const { coats, skipped } = standing.piece;
  const told = new Set([...coats.map(({ step }) => step), ...skipped.map(({ step }) => step)]);
  const steps = recipe.coats.flatMap((_, step) => (told.has(step) ? [] : [step]));
  return steps.every((step) => recipe.coats[step]?.kind === "seal") ? [] : steps;
}

function ofLeftOut(standing: Standing, recipe: Recipe): readonly Found[] {
  const steps = leftOutSteps(standing, recipe);
  return steps.length === 0 ? [] : [finding({ variant: "left-out", level: "hold", coats: [], steps })];
}

function ofOther(coats: readonly Coat[], recipe: Recipe): readonly Found[] {
  const planned = (coat: Coat) => (coat.step === null ? undefined : recipe.coats[coat.step]);
  const otherKind = coats.filter((coat) => {
    const plan = planned(coat);
    return plan !== undefined && plan.kind !== coat.kind;
  });
  const otherStucco = coats.filter((coat) => {
    const plan = planned(coat);
    return plan !== undefined && plan.kind === coat.kind && plan.stuccoId !== coat.stuccoId;
  });
  return [
    ...(otherKind.length === 0
      ? []
      : [finding({ variant: "other-kind", level: "note", coats: otherKind, steps: [] })]),
    ...(otherStucco.length === 0
      ? []
      : [finding({ variant: "other-stucco", level: "note", coats: otherStucco, steps: [] })]),
  ];
}

function ofExtra(coats: readonly Coat[]): readonly Found[] {
  const extra = coats.filter(({ step, afterBurnout }) => step === null && !afterBurnout);
  return extra.length === 0 ? [] : [finding({ variant: "extra", level: "note", coats: extra, steps: [] })];
}

/** `texts.which` counts from 1: coats by their number on the piece, steps by their place in the recipe. */
function finding({
  variant,
  level,
  coats,
  steps,
}: {
  variant: VariantOf<"recipe-not-followed">;
  level: Found["level"];
  coats: readonly Coat[];
  steps: readonly number[];
}): Found {
  const numbers = [...coats.map(({ number }) => number), ...steps.map((step) => step + 1)];
  return {
    rule: "recipe-not-followed",
    variant,
    level,
    figures: { count: figure(numbers.length, "count") },
    texts: { which: numbers.join(", ") },
    entries: coats.map(({ id }) => id),
    source: "the piece's own recipe",
  };
}
