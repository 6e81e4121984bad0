import { runLengthMm, runSpread, runTime, type RunAsked } from "./fluidity.ts";
import { requirePositive, requireWithin } from "./range.ts";
import { risingRoot } from "./root.ts";

export type MisrunAsked = {
  readonly run: Omit<RunAsked, "stopShare" | "interfaceWM2K">;
  /** From the gate along the thinnest section to where the metal must get. */
  readonly neededMm: number;
  readonly speedMS: number;
  readonly solidusC: number;
  /** Usual preheat for this wall; null where no practice is known. */
  readonly preheat: { readonly lowC: number; readonly highC: number } | null;
};

export type MisrunStep =
  /** Heat the shell to this; thin walls ask the shell first and the metal second. */
  | { readonly do: "heat-shell"; readonly toC: number }
  /** No shell heat that is allowed is enough. */
  | { readonly do: "add-gate-or-thicken"; readonly mostPlanMm: number }
  /** Within 50 K of the solidus: coarse grain, gas, slow freezing (common practice, no source). */
  | { readonly do: "cool-shell"; readonly toC: number }
  | { readonly do: "shell-below-usual"; readonly usualC: number }
  | { readonly do: "shell-above-usual"; readonly usualC: number };

export type MisrunAdvice = {
  /** Length to plan with, mm; null where the stream never stops. */
  readonly planMm: number | null;
  readonly verdict: "runs" | "may-stop" | "will-stop";
  readonly steps: readonly MisrunStep[];
};

const solidusGapK = 50;
/** As hot as a shell may be for the sums of a stream. */
const mostShellC = 2000;

/**
 * Will the thinnest section run full, and what to change. "runs": half the reckoned length is enough; "may-stop":
 * only the whole of it is; "will-stop": not even that. The shell heat told is the least that makes it "runs".
 */
export function misrunAdvice(asked: MisrunAsked): MisrunAdvice {
  const { run, neededMm, speedMS, solidusC, preheat } = asked;
  requirePositive("neededMm", neededMm, { high: 20_000, unit: "mm" });
  requirePositive("speedMS", speedMS, { high: 20, unit: "m/s" });
  requireWithin("solidusC", solidusC, { low: 30, high: run.liquidusC, unit: "°C (not above the liquidus)" });
  if (preheat !== null) {
    requireWithin("preheat's lowC", preheat.lowC, { low: -50, high: mostShellC, unit: "°C" });
    requireWithin("preheat's highC", preheat.highC, { low: preheat.lowC, high: mostShellC, unit: "°C" });
  }
  const topC = Math.min(solidusC - solidusGapK, mostShellC);
  const planAt = (shellC: number): number => planMm({ ...run, shellC }, speedMS);
  const plan = planAt(run.shellC);
  const steps: MisrunStep[] = [];
  if (run.shellC > topC) steps.push({ do: "cool-shell", toC: topC });
  if (plan < neededMm && run.shellC < topC)
    steps.push(
      planAt(topC) < neededMm
        ? { do: "add-gate-or-thicken", mostPlanMm: planAt(topC) }
        : { do: "heat-shell", toC: risingRoot((c) => planAt(c) - neededMm, { low: run.shellC, high: topC }) },
    );
  if (plan < neededMm && run.shellC >= topC)
    steps.push({ do: "add-gate-or-thicken", mostPlanMm: planAt(topC) });
  if (preheat !== null && run.shellC < preheat.lowC)
    steps.push({ do: "shell-below-usual", usualC: preheat.lowC });
  if (preheat !== null && run.shellC > preheat.highC)
    steps.push({ do: "shell-above-usual", usualC: preheat.highC });
  return {
    planMm: plan === Infinity ? null : plan,
    verdict: plan >= neededMm ? "runs" : plan * 2 >= neededMm ? "may-stop" : "will-stop",
    steps,
  };
}

function planMm(run: MisrunAsked["run"], speedMS: number): number {
  const { stopShare, interfaceWM2K } = runSpread;
  const time = runTime({ ...run, stopShare: stopShare.likely, interfaceWM2K: interfaceWM2K.likely });
  return time === null ? Infinity : runLengthMm({ timeS: time.timeS, speedMS }).planMm;
}
