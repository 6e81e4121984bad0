import { runTimeBandS, type RunAsked, type RunBand } from "./fluidity.ts";
import { requirePositive, requireWithin } from "../stats/range.ts";
import { risingRoot } from "../stats/root.ts";

/** What fills the section: all the metal poured, how long that takes, and the way from gate to far end. */
export type FrontAsked = {
  readonly massKg: number;
  readonly fillS: number;
  readonly wayMm: number;
  /** Breadth of the front in that section; null where it isn't known. */
  readonly widthMm: number | null;
  /** Speed the gate gives the metal at most: no front runs faster. */
  readonly gateMS: number;
};

export type Front = { readonly speedMS: number; readonly takesS: number };

type FrontOf = FrontAsked & { readonly liquidKgM3: number; readonly wallMm: number };

/**
 * Time the front takes along a section, s, and its mean speed, m/s. With all of the gate's flow it moves at flow over
 * cross-section, wall times width (continuity); with only its share by volume it takes the whole fill. Metal divides,
 * so the geometric mean of the two is taken (judgement). Without a width the whole casting counts as this thin: the
 * fill time. Mass 0–100 000 kg, fill 0–3600 s, way and width 0–20 m, gate 0–20 m/s.
 */
export function frontIn({ liquidKgM3, wallMm, massKg, fillS, wayMm, widthMm, gateMS }: FrontOf): Front {
  requireWithin("liquidKgM3", liquidKgM3, { low: 500, high: 25_000, unit: "kg/m³ (not g/cm³)" });
  requirePositive("wallMm", wallMm, { high: 500, unit: "mm" });
  requirePositive("massKg", massKg, { high: 100_000, unit: "kg" });
  requirePositive("fillS", fillS, { high: mostS, unit: "s" });
  requirePositive("wayMm", wayMm, { high: 20_000, unit: "mm" });
  requirePositive("gateMS", gateMS, { high: 20, unit: "m/s" });
  if (widthMm === null) return { takesS: fillS, speedMS: wayMm / 1000 / fillS };
  requirePositive("widthMm", widthMm, { high: 20_000, unit: "mm" });
  const castingMm3 = (massKg / liquidKgM3) * 1e9;
  const share = Math.min(1, (wallMm * widthMm * wayMm) / castingMm3);
  const allOfItS = Math.max(fillS * share, wayMm / 1000 / gateMS);
  const takesS = Math.min(fillS, Math.sqrt(allOfItS * fillS));
  return { takesS, speedMS: wayMm / 1000 / takesS };
}

const mostS = 3600;

/** Longest fill, s, at which the front is through within `hasS`; an hour where any shorter one is. */
export function fillWithinS(front: Omit<FrontOf, "fillS">, hasS: number): number {
  requirePositive("hasS", hasS, { high: 1e9, unit: "s" });
  if (front.widthMm === null || hasS >= mostS) return Math.min(mostS, hasS);
  return risingRoot((fillS) => frontIn({ ...front, fillS }).takesS - hasS, { low: hasS, high: mostS });
}

export type MisrunAsked = {
  readonly run: Omit<RunAsked, "stopShare" | "interfaceWM2K">;
  readonly front: FrontAsked;
  /** Quickest fill that the way of pouring gives, s; null where it isn't known. */
  readonly leastFillS: number | null;
  readonly solidusC: number;
  /** Usual preheat for this wall; null where no practice is known. */
  readonly preheat: { readonly lowC: number; readonly highC: number } | null;
};

export type MisrunStep =
  /** Heat the shell to this; thin walls ask the shell first and the metal second. */
  | { readonly do: "heat-shell"; readonly toC: number }
  /** Pour faster, where the way of pouring can. */
  | { readonly do: "fill-within"; readonly fillS: number }
  /** No shell heat that is allowed is enough; at the hottest one the front surely gets this far. */
  | { readonly do: "add-gate-or-thicken"; readonly mostWayMm: number }
  /** Within 50 K of the solidus: coarse grain, gas, slow freezing (common practice, no source). */
  | { readonly do: "cool-shell"; readonly toC: number }
  | { readonly do: "shell-below-usual"; readonly usualC: number }
  | { readonly do: "shell-above-usual"; readonly usualC: number };

export type MisrunAdvice = {
  readonly verdict: "runs" | "may-stop" | "will-stop";
  readonly front: Front;
  /** Time the front has before it stops; null where it doesn't stop. */
  readonly has: RunBand | null;
  readonly steps: readonly MisrunStep[];
};

const solidusGapK = 50;
/** As hot as a shell may be for the sums of a stream. */
const mostShellC = 2000;

/**
 * Will the thinnest section run full, and what to change. "runs": the front is through within the low end of the time
 * it has; "will-stop": it isn't within the high end. Hotter metal, a hotter shell, a thicker section, a shorter way and
 * a quicker fill never make it worse. The shell heat asked for is the least that makes it "runs".
 */
export function misrunAdvice({
  run,
  front: asked,
  leastFillS,
  solidusC,
  preheat,
}: MisrunAsked): MisrunAdvice {
  requireWithin("solidusC", solidusC, { low: 30, high: run.liquidusC, unit: "°C (not above the liquidus)" });
  requireWithin("leastFillS", leastFillS ?? 0, { low: 0, high: 1e6, unit: "s" });
  if (preheat !== null) {
    requireWithin("preheat's lowC", preheat.lowC, { low: -50, high: mostShellC, unit: "°C" });
    requireWithin("preheat's highC", preheat.highC, { low: preheat.lowC, high: mostShellC, unit: "°C" });
  }
  const front = frontIn({ ...asked, liquidKgM3: run.liquidKgM3, wallMm: run.wallMm });
  const topC = Math.min(solidusC - solidusGapK, mostShellC);
  const lowAt = (shellC: number): number => runTimeBandS({ ...run, shellC })?.lowS ?? Infinity;
  const has = runTimeBandS(run);
  const lowS = has?.lowS ?? Infinity;
  const steps: MisrunStep[] = [];
  if (run.shellC > topC) steps.push({ do: "cool-shell", toC: topC });
  if (front.takesS > lowS) {
    const topS = lowAt(topC);
    if (run.shellC < topC && topS >= front.takesS)
      steps.push({
        do: "heat-shell",
        toC: risingRoot((c) => lowAt(c) - front.takesS, { low: run.shellC, high: topC }),
      });
    const withinS = fillWithinS({ ...asked, liquidKgM3: run.liquidKgM3, wallMm: run.wallMm }, lowS);
    if (leastFillS !== null && withinS >= leastFillS) steps.push({ do: "fill-within", fillS: withinS });
    if (topS < front.takesS || run.shellC >= topC)
      steps.push({ do: "add-gate-or-thicken", mostWayMm: topS * front.speedMS * 1000 });
  }
  if (preheat !== null && run.shellC < preheat.lowC)
    steps.push({ do: "shell-below-usual", usualC: preheat.lowC });
  if (preheat !== null && run.shellC > preheat.highC)
    steps.push({ do: "shell-above-usual", usualC: preheat.highC });
  const isOver = has !== null && has.highS !== null && front.takesS > has.highS;
  return {
    verdict: front.takesS <= lowS ? "runs" : isOver ? "will-stop" : "may-stop",
    front,
    has,
    steps,
  };
}
