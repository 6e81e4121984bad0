/** A span of seconds to start from; the middle is what a timer is set to. */
export type StepSeconds = { readonly low: number; readonly high: number };

/** Must be ticked before the next step: bucket fit, prime covers all, look over, weight, before the seal, lip clear. */
export type GuideHold =
  "bucket-fit" | "no-bare-wax" | "after-second-coat" | "mid-shell" | "before-seal" | "lip-clear";

export type DipStepId =
  | "piece-ready"
  | "bucket-ready"
  | "prewet"
  | "prewet-drain"
  | "enter"
  | "bubbles"
  | "drain"
  | "wait"
  | "stucco"
  | "after"
  | "dry";

export type GuideDipStep = {
  readonly id: DipStepId;
  readonly seconds: StepSeconds | null;
  readonly hold: GuideHold | null;
  /** Silica dust: mask on. */
  readonly dust: boolean;
};

/** Where the times come from. */
export const dipStepSource = "common practice, no source; starting values";

const step = (
  id: DipStepId,
  seconds: StepSeconds | null = null,
  hold: GuideHold | null = null,
): GuideDipStep => ({
  id,
  seconds,
  hold,
  dust: id === "stucco",
});

const span = (low: number, high: number): StepSeconds => ({ low, high });

const prime: readonly GuideDipStep[] = [
  step("piece-ready"),
  step("bucket-ready", null, "bucket-fit"),
  step("enter"),
  step("bubbles", null, "no-bare-wax"),
  step("drain", span(30, 60)),
  step("wait", span(5, 30)),
  step("stucco"),
  step("after", null, "lip-clear"),
  step("dry"),
];
const backup: readonly GuideDipStep[] = [
  step("piece-ready"),
  step("bucket-ready", null, "bucket-fit"),
  step("prewet", span(2, 5)),
  step("prewet-drain", span(10, 30)),
  step("enter", span(5, 15)),
  step("bubbles"),
  step("drain", span(20, 40)),
  step("wait", span(0, 15)),
  step("stucco"),
  step("after", null, "lip-clear"),
  step("dry"),
];
const seal: readonly GuideDipStep[] = [
  step("piece-ready", null, "before-seal"),
  step("bucket-ready", null, "bucket-fit"),
  step("enter", span(5, 15)),
  step("drain", span(20, 40)),
  step("after", null, "lip-clear"),
  step("dry"),
];

/** Steps of one dip, in order. Intermediate coats go as backups do. */
export const dipSteps: Readonly<
  Record<"prime" | "intermediate" | "backup" | "seal", readonly GuideDipStep[]>
> = {
  prime,
  intermediate: backup,
  backup,
  seal,
};

/** The look-over a piece owes before this coat: after its second coat, and half way through its shell. Null for none. */
export function lookOverBefore({
  coatsDone,
  coatsPlanned,
}: {
  coatsDone: number;
  coatsPlanned: number;
}): GuideHold | null {
  if (coatsDone === 2) return "after-second-coat";
  return coatsDone > 2 && coatsDone === Math.ceil(coatsPlanned / 2) ? "mid-shell" : null;
}

/** Dip the smallest and most delicate first, and read the seconds again after so much was used, or so long open. */
export const readAgainAfter = {
  usedShare: { value: 0.1, basis: "practice", source: dipStepSource },
  openMin: { value: 60, basis: "practice", source: dipStepSource },
} as const;
