import { expect, test } from "vitest";
import { millisecondsInDay as dayMs } from "date-fns/constants";
import { individualsChart } from "../../../physics/slurry/controlChart.ts";
import { secondsTitle } from "./secondsTitle.ts";

/** Thursday noon. */
const now = new Date(2026, 4, 7, 12).getTime();

/** One reading a day, the last today. */
function segment(seconds: readonly number[]) {
  const points = seconds.map((value, i) => ({
    id: `${i}`,
    at: now - (seconds.length - 1 - i) * dayMs,
    seconds: value,
    hollow: false,
    afterCorrection: false,
  }));
  return { points, charted: points, chart: individualsChart(seconds) };
}
const say = (seconds: readonly number[], band: { lowS: number; highS: number } | null) =>
  secondsTitle(segment(seconds), band, { now, locale: "en-GB" });

test("steady since the first reading that has been in the target without a break", () => {
  expect(say([20, 26, 22, 22.5, 22], { lowS: 20, highS: 24 })).toBe("Viscosity steady since Tuesday");
});

test("past the target it says on which side, and since when", () => {
  expect(say([22, 22, 25, 26], { lowS: 20, highS: 24 })).toBe("Viscosity above its target since yesterday");
  expect(say([22, 19], { lowS: 20, highS: 24 })).toBe("Viscosity below its target since today");
});

test("without a target its own limits count, from ten readings on", () => {
  const calm = [12.4, 12.7, 12.5, 12.9, 12.6, 12.8, 12.3, 12.6, 12.7, 12.5];
  expect(say(calm, null)).toMatch(/^Viscosity steady since /);
  // Limits of these eleven by hand: 12.86 ± 3 · 0.54 ÷ 1.128, so 11.4 and 14.3.
  expect(say([...calm, 15.5], null)).toBe("Viscosity above its own limits since today");
  expect(say([12.4, 12.7], null)).toBe("Viscosity: 2 checks, no limits yet");
});

test("six in a row one way inside the target is drift, not steady", () => {
  const climbing = [12.4, 12.7, 12.5, 12.9, 12.6, 12.8, 12.3, 12.5, 12.6, 12.7, 12.8, 12.9, 13];
  expect(say(climbing, { lowS: 11, highS: 14 })).toBe("Viscosity inside its limits, but drifting");
});
