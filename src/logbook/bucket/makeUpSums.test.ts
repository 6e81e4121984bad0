import { millisecondsInHour as hourMs } from "date-fns/constants";
import { describe, expect, test } from "vitest";
import { later, read, standingAt, targets } from "../../../tests/logs/testBucket.ts";
import { askedMakings, byComposition, foretold, makingsOf, nothingIn, waterByDensity } from "./makeUpSums.ts";

/** 20 L of fused silica prime that lost a litre: 19 L of 1.717 g/cm³ (worked by hand, mass over volume). */
const dry = (more = {}) =>
  standingAt(later, {
    readings: [read("r", later - hourMs, { cupS: 30, densityGCm3: 1.717, ...more })],
    counts: [],
  });

describe("make-up sums", () => {
  test("a litre dried off is asked for by density and by what went in and out alike", () => {
    const standing = dry();
    const density = waterByDensity(standing);
    const made = byComposition(standing, 0.3);
    expect(density?.water.ok && density.water.waterL).toBeCloseTo(1, 1);
    // The sol's label and its parts differ by 0.2 % in volume: a tenth of a litre here.
    expect(made?.ok && made.waterKg).toBeGreaterThan(0.95);
    expect(made?.ok && made.waterKg).toBeLessThan(1.15);
    expect(askedMakings(standing)?.waterKg).toBeCloseTo(1, 1);
  });

  test("the water asked for brings the density foretold to its target, half of it half way", () => {
    const standing = dry();
    const asked = askedMakings(standing) ?? nothingIn;
    const whole = foretold(standing, asked)?.densityGCm3 ?? 0;
    const half = foretold(standing, makingsOf(asked, 0.5))?.densityGCm3 ?? 0;
    expect(whole).toBeCloseTo(1.681, 3);
    expect(half).toBeGreaterThan(whole);
    expect(half).toBeLessThan(1.717);
    expect(foretold(standing, asked)?.secondsBand?.likelyS).toBeLessThan(30);
  });

  test("over-watered: a sol as weak as the first is refused, one of 40 % solves it", () => {
    const wet = dry({ cupS: 15, densityGCm3: 1.63 });
    const same = byComposition(wet, 0.3);
    expect(same).toMatchObject({ ok: false, code: "over-watered" });
    const strong = byComposition(wet, 0.4);
    expect(strong?.ok && strong.solKg > 0 && strong.flourKg > 0).toBe(true);
  });

  test("a density below its target refuses water; unread, nothing is reckoned from it", () => {
    expect(waterByDensity(dry({ densityGCm3: 1.66 }))?.water).toMatchObject({
      ok: false,
      code: "water-lowers-density",
    });
    expect(waterByDensity(standingAt(later))).toBeNull();
  });

  test("nothing put in foretells nothing, and a bucket nobody told of neither", () => {
    expect(foretold(dry(), nothingIn)).toBeNull();
    const bare = standingAt(later, { mixes: [], targets: { ...targets, flourId: undefined } });
    expect(foretold(bare, { ...nothingIn, waterKg: 1 })).toBeNull();
  });
});
