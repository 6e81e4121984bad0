import type { Finding, RuleId } from "./finding.ts";

/** Every way each rule can speak. The words are checked against this list by the compiler. */
export const variants = {
  "recoated-before-dry": ["wet", "maybe", "dried-since", "weak", "unknown"],
  "wall-too-thin": ["fails", "thin", "marginal", "below-floor", "plan-short", "plan-below-floor"],
  "cannot-judge-wall": ["missing", "will-be-missing"],
  "air-too-damp": ["drying", "final", "final-caution"],
  frost: ["froze", "will-freeze"],
  "air-reading-old": ["old", "none"],
  "prime-temperature-moved": ["wax", "not-known", "covered"],
  "prime-drying-hard": ["wax", "not-known", "covered"],
  "prime-left-bare": ["bare", "was-bare"],
  "stucco-out-of-order": ["coarse-first", "grade-skipped", "finer", "not-known"],
  "recipe-not-followed": ["left-out", "skipped", "other-kind", "other-stucco", "extra", "no-recipe"],
  "no-seal-coat": ["left-out", "none-planned"],
  "last-coat-damp": [
    "hours",
    "air",
    "damp-air",
    "air-too-damp",
    "condensing",
    "frost",
    "unknown",
    "burnout-damp",
    "burnout-unknown",
  ],
  "open-crack": ["open", "patch-not-dry", "trimmed-off"],
  "patched-without-wire": ["no-wire"],
  "dipped-from-unfit-bucket": ["unfit", "unfit-accepted", "watched", "not-checked", "never-read"],
  "core-lift": ["floats", "not-known"],
  "pattern-inside": ["inside", "film"],
  "burnout-residue": ["residue"],
  "shell-damp-again": ["rinsed", "cold"],
  "fired-too-little": ["cool", "short", "not-bonded", "not-logged"],
  "run-broke-a-limit": ["too-fast", "no-drain", "steam-short", "hold-short"],
  "poured-cold-shell": [
    "too-long",
    "too-long-if",
    "too-cold",
    "cold-if-thin",
    "preheat-cold",
    "preheat-cold-if-thin",
    "not-known",
  ],
} as const satisfies Record<RuleId, readonly string[]>;

export type VariantOf<R extends RuleId> = (typeof variants)[R][number];

/** A finding of one rule, whose variant is one of that rule's. */
export type FindingOf<R extends RuleId> = Finding & { readonly rule: R; readonly variant: VariantOf<R> };
