import { describe, expect, test } from "vitest";
import { dryThrough } from "../../../tests/dryThrough.ts";

const coat = { waterKgM2: 0.2, criticalKgM2: 0.12, depthM: 0.0035, dryFraction: 0.95 };
const hours = (h: number, tempC: number, rh: number) => ({
  durationS: h * 3600,
  tempC,
  rh,
  pressurePa: 101_325,
});
const through = (...intervals: Parameters<typeof dryThrough>[0]["intervals"]) =>
  dryThrough({ coat, filmWM2K: 15, pocketSM: 0, intervals });

describe("air too damp", () => {
  test("a week at 85 % dries no coat through, and the reason is told", () => {
    const { readyAfterS, reason, waterKgM2 } = through(hours(168, 22, 0.85));
    expect(readyAfterS).toBeNull();
    expect(reason).toBe("air-too-damp");
    expect(waterKgM2).toBeCloseTo(0.012, 9);
  });

  test("the coat is ready only once drier air has taken the last of it", () => {
    const { readyAfterS, reason } = through(hours(168, 22, 0.85), hours(5, 22, 0.6));
    expect(reason).toBeNull();
    expect(readyAfterS).toBeGreaterThan(168 * 3600);
    expect(readyAfterS).toBeLessThan(169 * 3600);
  });

  test("damp air after drying stops the answer as long as it lasts", () => {
    expect(through(hours(1, 22, 0.5), hours(5, 22, 0.82)).reason).toBe("air-too-damp");
    expect(through(hours(1, 22, 0.82), hours(0.5, 22, 0.5)).reason).toBe("history-ends");
  });

  test("a coat already ready stays ready through a damp night", () => {
    const { readyAfterS, condensed } = through(hours(3, 22, 0.5), hours(10, 15, 0.9));
    expect(readyAfterS).toBeLessThan(3 * 3600);
    expect(condensed).toBe(false);
  });

  test("a coat dry from the start is ready at once in good air, and not called so in damp", () => {
    const dry = { ...coat, waterKgM2: 0.005 };
    const at = (rh: number) =>
      dryThrough({ coat: dry, filmWM2K: 15, pocketSM: 0, intervals: [hours(1, 22, rh)] });
    expect(at(0.5).readyAfterS).toBe(0);
    expect(at(0.85).readyAfterS).toBeNull();
    expect(at(0.85).waterKgM2).toBe(0.005);
  });
});

describe("water that settles", () => {
  const cold = (h: number) => ({ ...hours(h, 22, 0.7), surfaceC: 10 });

  test("saturated air takes nothing and is flagged", () => {
    const { waterKgM2, condensed, reason, readyAfterS } = through(hours(5, 20, 1));
    expect(waterKgM2).toBe(0.2);
    expect([condensed, reason, readyAfterS]).toEqual([true, "condensing", null]);
  });

  test("a cold shell carried into a warm room grows wetter, by what the vapour film lets through", () => {
    const { waterKgM2, condensed, reason } = through(cold(1));
    // 1851 and 1228 Pa (room at 70 %, water at 10 °C), 461.5 J/kgK, 16 °C between, film about 72 s/m: by hand.
    const settledKgM2 = ((1851 - 1228) / (461.5 * 289.15) / 72) * 3600;
    expect(Math.abs((waterKgM2 - 0.2) / settledKgM2 - 1)).toBeLessThan(0.02);
    expect([condensed, reason]).toEqual([true, "condensing"]);
  });

  test("what settled on a half-dry coat goes back into its pores and has to leave again", () => {
    const half = through(hours(1, 22, 0.5));
    const wetted = through(hours(1, 22, 0.5), cold(0.05));
    expect(wetted.waterKgM2).toBeGreaterThan(half.waterKgM2);
    const again = dryThrough({
      coat: { ...coat, waterKgM2: wetted.waterKgM2 },
      filmWM2K: 15,
      pocketSM: 0,
      intervals: [hours(9, 22, 0.5)],
    });
    const straight = through(hours(1, 22, 0.5), cold(0.05), hours(9, 22, 0.5));
    expect(straight.readyAfterS).toBeCloseTo(1.05 * 3600 + (again.readyAfterS ?? NaN), 6);
    expect(straight.condensed).toBe(true);
  });

  test("a ready coat that sweats is ready no more, until it has dried again", () => {
    const sweated = through(hours(4, 22, 0.5), cold(0.5));
    expect([sweated.readyAfterS, sweated.reason, sweated.condensed]).toEqual([null, "condensing", true]);
    expect(through(hours(4, 22, 0.5), cold(0.5), hours(9, 22, 0.5)).readyAfterS).toBeGreaterThan(4.5 * 3600);
  });

  test("a shell colder than the air but above its dew point dries as usual", () => {
    expect(through({ ...hours(1, 22, 0.5), surfaceC: 15 }).waterKgM2).toBe(
      through(hours(1, 22, 0.5)).waterKgM2,
    );
  });
});
