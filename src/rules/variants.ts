import type { Finding, RuleId } from "./finding.ts";

/** Every way each rule can speak. The words are checked against this list by the compiler. */
export const variants = {
  "recoated-before-dry": ["wet", "wet-accepted", "maybe", "maybe-accepted", "dried-since", "weak", "unknown"],
  "wall-too-thin": ["fails", "thin", "marginal", "below-floor", "plan-short", "plan-below-floor"],
  "cannot-judge-wall": ["missing"],
  "air-too-damp": ["drying", "final", "final-caution"],
  "air-reading-old": ["old", "none"],
  "prime-temperature-moved": ["wax", "not-wax", "not-known", "covered"],
  "prime-drying-hard": ["wax", "not-known", "covered"],
  "prime-left-bare": ["bare", "was-bare"],
  "stucco-out-of-order": ["coarse-first", "grade-skipped", "finer", "not-known"],
  "recipe-not-followed": ["left-out", "skipped", "other-kind", "other-stucco", "extra", "no-recipe"],
  "no-seal-coat": ["left-out", "none-planned"],
  "last-coat-damp": [
    "wet",
    "maybe",
    "unknown",
    "touch-only",
    "slow-place",
    "burnout-damp",
    "burnout-unknown",
  ],
  "open-crack": ["open", "patch-not-dry"],
  "patched-without-wire": ["no-wire"],
  "damp-recoat-weakens": ["carries", "short"],
  "dipped-from-unfit-bucket": ["unfit", "unfit-accepted", "watched", "not-checked"],
  "pattern-inside": ["inside", "film"],
  "burnout-residue": ["residue"],
  "shell-damp-again": ["rinsed", "cold"],
  "fired-too-little": ["cool", "short", "not-bonded", "not-logged"],
  "run-broke-a-limit": ["too-fast", "no-drain", "steam-short", "hold-short"],
  "poured-cold-shell": ["too-long", "too-cold", "preheat-cold", "not-known"],
} as const satisfies Record<RuleId, readonly string[]>;

export type VariantOf<R extends RuleId> = (typeof variants)[R][number];

/** A finding of one rule, whose variant is one of that rule's. */
export type FindingOf<R extends RuleId> = Finding & { readonly rule: R; readonly variant: VariantOf<R> };
