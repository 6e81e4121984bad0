import { expect, test } from "vitest";
import truth from "../../../tests/truth/drying.json" with { type: "json" };
import { dryStep, waterAfterStep } from "../drying/dryStep.ts";
import { factorCurves } from "./factorCurves.ts";
import { readySpread } from "../stats/spread.ts";
import { targetMassEvidence } from "../slurry/targetMass.ts";
import { waterPosterior } from "./waterPosterior.ts";

const coat = truth.coats.backup;
const air = { tempC: 22, rh: 0.5, pressurePa: 101_325, filmWM2K: 15 };
const step = dryStep({ ...air, durationS: 1e5 }, { filmWM2K: 15, pocketSM: 0 });
const timesS = [2400, 3600, 4800, 6000, 7200];
const lastS = 7200;
const curves = factorCurves({ coat, steps: [step], timesS, spread: readySpread() });
const three = { dryG: 1180, drainedG: 1238, stuccoedG: 1301.5, waterFraction: 0.28, balanceG: 0.1 };

/** Share of 300 coats, each weighed five times over a slurry whose water is off by its own error, that the band holds. */
function heldShare({ isChained }: { isChained: boolean }): number {
  let seed = 5;
  const dice = () => (seed = (seed * 48_271) % 2_147_483_647) / 2_147_483_647;
  const bell = () => Math.sqrt(-2 * Math.log(dice())) * Math.cos(2 * Math.PI * dice());
  let held = 0;
  for (let i = 0; i < 300; i++) {
    const resistanceFactor = Math.exp(0.4717 * bell());
    const waterG = (0.28 + 0.02 * bell()) * 58;
    const shareAt = (durationS: number): number =>
      waterAfterStep({ ...step, durationS }, { coat, waterKgM2: coat.waterKgM2, resistanceFactor }) /
      coat.waterKgM2;
    const weighed = timesS.map((afterS) => ({
      afterS,
      massG: three.stuccoedG - waterG * (1 - shareAt(afterS)) + 0.1 * bell(),
    }));
    const evidence = weighed.flatMap((one, n) => {
      const before = isChained ? (weighed[n - 1] ?? null) : null;
      return targetMassEvidence({ ...three, ...one, before }) ?? [];
    });
    const { low, high } = waterPosterior({ curves, evidence, nowS: lastS, readyShare: 0.03 });
    const share = shareAt(lastS);
    if (share >= low - 0.003 && share <= high + 0.003) held++;
  }
  return held / 300;
}

test("five weighings over one slurry leave a band that holds; taken as strangers to each other they would not", () => {
  expect(heldShare({ isChained: true })).toBeGreaterThan(0.8);
  expect(heldShare({ isChained: false })).toBeLessThan(0.72);
});

test("a second weighing in the same minute tells no more of the water than the balance does", () => {
  const of = { ...three, massG: 1287, afterS: 7200 };
  const alone = targetMassEvidence(of);
  const second = targetMassEvidence({ ...of, before: { massG: 1287, afterS: 7200 } });
  // Both shares moved together: the first one's error goes with the second, which then says little against it.
  const fall = (one: typeof alone): number =>
    (one?.logLikelihood(0.107, 0.107) ?? NaN) - (one?.logLikelihood(0.207, 0.207) ?? NaN);
  expect(fall(second)).toBeLessThan(0.1 * fall(alone));
});
