import type { BucketHealth } from "../../physics/slurry/bucketHealth.ts";
import type { HealthCode, HealthReason } from "../../physics/slurry/bucketJudge.ts";
import type { CorrectionStep } from "../../physics/slurry/correctionAdvice.ts";
import type { BucketStanding } from "./bucketStanding.ts";

/** What is said of a bucket: how it stands, why, and what to do. Every screen reads its advice here. */
export type BucketVoice = {
  readonly level: BucketHealth["level"];
  /** Worst first; `isActed` where the reason's own remedy is part of the advice, false where a step below takes its place. */
  readonly reasons: readonly { readonly reason: HealthReason; readonly isActed: boolean }[];
  /** What the last reading asks for, in order; `leave-alone` stands alone and only with a bucket that is fit. */
  readonly steps: readonly CorrectionStep[];
};

/** Nothing is corrected before these are over: nobody read it, it still mixes, or it was close to freezing. */
const waits: readonly HealthCode[] = [
  "not-checked-today",
  "not-mixed-enough",
  "readings-not-steady",
  "frozen-or-hot",
];
/** A binder that is going is not made good by adding to it. */
const spoilt: readonly HealthCode[] = ["gels-early", "pH-too-low", "foul-smell"];
const ofTemperature: readonly HealthCode[] = ["temperature-off", "temperature-not-its-own"];
/** What seconds and density say is said together by the steps. */
const ofReading: readonly HealthCode[] = ["seconds-out-of-band", "density-off", "chart-signal"];

/** The one advice of a bucket, from its health and from what its last reading asks for. */
export function bucketVoice({ health, advice }: Pick<BucketStanding, "health" | "advice">): BucketVoice {
  const steps = stepsOf(health, advice);
  const has = (codes: readonly CorrectionStep["code"][]): boolean =>
    steps.some(({ code }) => codes.includes(code));
  const isCorrected = steps.some(({ code }) => code !== "bring-to-temperature" && code !== "leave-alone");
  const isTaken = (code: HealthCode): boolean =>
    (ofTemperature.includes(code) && has(["bring-to-temperature"])) ||
    (ofReading.includes(code) && isCorrected);
  return {
    level: health.level,
    reasons: health.reasons.map((reason) => ({ reason, isActed: !isTaken(reason.code) })),
    steps,
  };
}

function stepsOf(
  { level, reasons }: BucketHealth,
  advice: BucketStanding["advice"],
): readonly CorrectionStep[] {
  if (!advice.ok || !advice.correction.ok) return [];
  const is = (codes: readonly HealthCode[]): boolean => reasons.some(({ code }) => codes.includes(code));
  if (is(waits)) return [];
  const isDying = reasons.some((one) => spoilt.includes(one.code) || isStop(one, "bacteria"));
  const asked = advice.correction.advice.filter(({ code }) => !isDying || !adds.has(code));
  // A bucket that is fit is left alone, also where its seconds are compared at another temperature.
  const isRight = asked.every(({ code }) => code === "leave-alone" || code === "bring-to-temperature");
  if (level === "fit" && isRight) return asked.filter(({ code }) => code === "leave-alone");
  return asked.filter(({ code }) => code !== "leave-alone");
}

const adds: ReadonlySet<CorrectionStep["code"]> = new Set(["add-water", "add-flour-and-binder"]);
const isStop = ({ code, level }: HealthReason, wanted: HealthCode): boolean =>
  code === wanted && level === "do-not-dip";
