import { describe, expect, test } from "vitest";
import truth from "../../../tests/truth/drying.json" with { type: "json" };
import { dryThrough } from "../../../tests/dryThrough.ts";
import { dryStep } from "../drying/dryStep.ts";
import { factorCurves, sharesAt } from "./factorCurves.ts";
import { nextWeighing } from "./nextWeighing.ts";
import type { ShareEvidence } from "./shareEvidence.ts";
import { aboutShare } from "./shareEvidence.ts";
import { readySpread } from "../stats/spread.ts";
import { beliefAfter, waterPosterior } from "./waterPosterior.ts";

const coat = truth.coats.backup;
const hour = 3600;
const air = { tempC: 22, rh: 0.5, pressurePa: 101_325, filmWM2K: 15, durationS: 6 * hour };
const steps = [dryStep(air, { filmWM2K: 15, pocketSM: 0 })];
const timesS = Array.from({ length: 25 }, (_, i) => (i * hour) / 4);
const curves = factorCurves({ coat, steps, timesS, spread: readySpread() });
const at = (evidence: readonly ShareEvidence[], nowH: number) =>
  waterPosterior({ curves, evidence, nowS: nowH * hour, readyShare: 0.03 });
const weighed = (share: number, afterH: number, sd: number): ShareEvidence => ({
  source: "target-mass",
  weight: 1,
  afterS: afterH * hour,
  sinceS: null,
  logLikelihood: aboutShare({ share, sd }),
});
const shareOf = (factor: number, afterH: number) => {
  const intervals = [{ ...air, durationS: afterH * hour }];
  const walked = dryThrough({ coat, filmWM2K: 15, pocketSM: 0, intervals, resistanceFactor: factor });
  return walked.waterKgM2 / coat.waterKgM2;
};

describe("when to weigh next", () => {
  const next = (evidence: readonly ShareEvidence[], nowH: number, balanceShare = 0.01) =>
    nextWeighing({ curves, belief: beliefAfter(curves, evidence), nowS: nowH * hour, balanceShare });

  test("neither at once, when all factors still agree, nor when all are dry", () => {
    const said = next([], 0);
    if (said.kind === "refused") throw new Error(said.code);
    expect(said.afterS / hour).toBeGreaterThan(0.25);
    expect(said.afterS / hour).toBeLessThan(2);
    expect(said.sdAfter).toBeLessThan(said.sdBefore);
  });

  test("its promise is kept: a weighing then leaves about the spread it says", () => {
    const said = next([], 0);
    if (said.kind === "refused") throw new Error(said.code);
    const afterH = said.afterS / hour;
    const left = [0.55, 0.75, 1, 1.3, 1.8].map((factor) => {
      const share = shareOf(factor, afterH);
      const { low, high } = at([weighed(share, afterH, Math.hypot(0.01, 0.07 * (1 - share)))], afterH);
      return (high - low) / 2 / 1.2816;
    });
    const mean = left.reduce((sum, one) => sum + one, 0) / left.length;
    expect(mean / said.sdAfter).toBeGreaterThan(0.7);
    expect(mean / said.sdAfter).toBeLessThan(1.3);
  });

  test("no other time in the curves narrows it much more, and no earlier one as much", () => {
    const said = next([], 0);
    if (said.kind === "refused") throw new Error(said.code);
    const narrowing = said.sdBefore - said.sdAfter;
    for (const afterS of timesS) {
      const only = { ...curves, timesS: [afterS], shares: [sharesAt(curves, afterS)] };
      const other = nextWeighing({
        curves: only,
        belief: beliefAfter(only, []),
        nowS: 0,
        balanceShare: 0.01,
      });
      const its = other.kind === "weigh" ? other.sdBefore - other.sdAfter : 0;
      expect(its).toBeLessThanOrEqual(narrowing / 0.95 + 1e-9);
      if (afterS < said.afterS) expect(its).toBeLessThan(narrowing);
    }
  });

  test("a coat that is surely dry, or a balance that can't tell, has nothing to learn", () => {
    expect(next([weighed(0, 2, 0.01)], 5)).toMatchObject({
      kind: "refused",
      code: "nothing-to-learn",
      leastNats: 0.1,
    });
    expect(next([], 0, 2)).toMatchObject({ code: "nothing-to-learn" });
  });
});
