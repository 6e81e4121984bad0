import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import truth from "../../../tests/truth/air.json" with { type: "json" };
import {
  dewPointC,
  humidityRatio,
  pressureAtAltitudePa,
  rhOverIce,
  saturationDeficitGM3,
  saturationPressurePa,
  saturationPressureWaterPa,
} from "./air.ts";
import { moistAirDensityKgM3 } from "./transport.ts";
import {
  enthalpyKJKg,
  relativeHumidityFromWetBulb,
  vapourPressureDeficitPa,
  wetBulbC,
} from "../../../tests/sums/moistAir.ts";

const seaPa = 101_325;
const off = (got: number, expected: number): number => Math.abs(got / expected - 1);

describe("published values", () => {
  test.each(truth.saturation)("saturation at $tempC °C is $pa Pa", ({ tempC, pa, within }) => {
    expect(off(saturationPressurePa(tempC), pa)).toBeLessThan(within);
  });

  test.each(truth.saturatedRatio)(
    "saturated air at $tempC °C holds $ratio kg/kg",
    ({ tempC, ratio, within }) => {
      expect(off(humidityRatio({ tempC, rh: 1, pressurePa: seaPa }), ratio)).toBeLessThan(within);
    },
  );

  test.each(truth.deficit)(
    "air of $tempC °C at $rh could take up $gM3 g/m³ more",
    ({ tempC, rh, vpdPa, gM3 }) => {
      expect(off(saturationDeficitGM3({ tempC, rh }), gM3)).toBeLessThan(0.001);
      expect(off(vapourPressureDeficitPa({ tempC, rh }), vpdPa)).toBeLessThan(0.0005);
    },
  );

  test.each(truth.altitude)("air at $altitudeM m presses with $pa Pa", ({ altitudeM, pa, withinPa }) => {
    expect(Math.abs(pressureAtAltitudePa(altitudeM) - pa)).toBeLessThanOrEqual(withinPa);
  });

  test.each(truth.density)("air of $tempC °C, $rh, $pressurePa Pa weighs $kgM3 kg/m³", ({ kgM3, ...air }) => {
    expect(Math.abs(moistAirDensityKgM3(air) - kgM3)).toBeLessThan(2e-4);
  });

  test.each(truth.dewPoint)("air of $tempC °C at $rh has its dew point at $dewPointC °C", (row) => {
    expect(Math.abs((dewPointC(row) ?? NaN) - row.dewPointC)).toBeLessThan(row.withinK);
  });

  test.each(truth.psychrometer)(
    "a psychrometer at $tempC / $wetBulbC °C reads the air of the example",
    (row) => {
      const rh = relativeHumidityFromWetBulb(row) ?? NaN;
      const ratio = humidityRatio({ ...row, rh });
      expect(Math.abs(rh - row.rh)).toBeLessThan(row.rhWithin);
      expect(Math.abs(ratio - row.ratio)).toBeLessThan(row.ratioWithin);
      expect(Math.abs((dewPointC({ ...row, rh }) ?? NaN) - row.dewPointC)).toBeLessThan(row.dewWithin);
      expect(Math.abs(enthalpyKJKg({ ...row, ratio }) - row.enthalpyKJKg)).toBeLessThan(row.enthalpyWithin);
      // Volume is told per kg of dry air.
      const volume = (1 + ratio) / moistAirDensityKgM3({ ...row, rh });
      expect(Math.abs(volume - row.volumeM3Kg)).toBeLessThan(row.volumeWithin);
    },
  );

  test.each(truth.vapour)("a psychrometer at $tempC / $wetBulbC °C finds $vapourPa Pa of vapour", (row) => {
    const rh = relativeHumidityFromWetBulb(row) ?? NaN;
    expect(Math.abs(rh * saturationPressurePa(row.tempC) - row.vapourPa)).toBeLessThan(row.withinPa);
  });

  test("the closed form of Stull misses the balance at 20 °C and half humidity by what it is known to", () => {
    const { tempC: t, rh, wetBulbC: printed, gapK, within } = truth.stull;
    const h = rh * 100;
    const stull =
      t * Math.atan(0.151977 * Math.sqrt(h + 8.313659)) +
      Math.atan(t + h) -
      Math.atan(h - 1.676331) +
      0.00391838 * h ** 1.5 * Math.atan(0.023101 * h) -
      4.686035;
    expect(Math.abs(stull - printed)).toBeLessThan(within);
    expect(Math.abs(stull - wetBulbC({ tempC: t, rh, pressurePa: seaPa }) - gapK)).toBeLessThan(within);
  });

  test("supercooled water presses as Murphy and Koop say, down to −20 °C", () => {
    for (let tempC = -20; tempC <= 20; tempC += 2.5) {
      const k = tempC + 273.15;
      // Q. J. R. Meteorol. Soc. 131 (2005) 1539 eq. 10, from memory.
      const expected = Math.exp(
        54.842763 -
          6763.22 / k -
          4.21 * Math.log(k) +
          0.000367 * k +
          Math.tanh(0.0415 * (k - 218.8)) * (53.878 - 1331.22 / k - 9.44523 * Math.log(k) + 0.014025 * k),
      );
      expect(off(saturationPressureWaterPa(tempC), expected)).toBeLessThan(0.001);
    }
  });
});

describe("the edges of the weather", () => {
  test("bone-dry air has no dew point, but it does have a wet bulb", () => {
    expect(dewPointC({ tempC: 20, rh: 0 })).toBeNull();
    expect(wetBulbC({ tempC: 20, rh: 0, pressurePa: seaPa })).toBeCloseTo(5.84, 2);
    expect(humidityRatio({ tempC: 20, rh: 0, pressurePa: seaPa })).toBe(0);
  });

  test("saturated air is at its own dew point and wet bulb, warm or freezing", () => {
    for (const tempC of [-30, -5, 0, 0.01, 0.02, 5, 20, 40]) {
      expect(dewPointC({ tempC, rh: 1 })).toBeCloseTo(tempC, 6);
      expect(wetBulbC({ tempC, rh: 1, pressurePa: seaPa })).toBeCloseTo(tempC, 6);
      expect(saturationDeficitGM3({ tempC, rh: 1 })).toBe(0);
    }
  });

  test("ice and water meet at the triple point without a step", () => {
    expect(off(saturationPressurePa(0.0099999), saturationPressurePa(0.01))).toBeLessThan(1e-6);
  });

  test("a sensor at −10 °C that reads 90 % over water has 99 % over ice", () => {
    expect(rhOverIce({ tempC: -10, rh: 0.9 })).toBeCloseTo((0.9 * 286.5) / 259.9, 2);
    expect(rhOverIce({ tempC: -10, rh: 1 })).toBe(1);
    expect(rhOverIce({ tempC: 15, rh: 0.9 })).toBe(0.9);
  });

  test("a wet bulb warmer than the air, or impossibly cold, is no air at all", () => {
    expect(relativeHumidityFromWetBulb({ tempC: 20, wetBulbC: 20.1, pressurePa: seaPa })).toBeNull();
    expect(relativeHumidityFromWetBulb({ tempC: 20, wetBulbC: 2, pressurePa: seaPa })).toBeNull();
  });

  test.each([
    ["percent", () => wetBulbC({ tempC: 20, rh: 50, pressurePa: seaPa }), /rh must be 0–1.*50/],
    ["negative humidity", () => dewPointC({ tempC: 20, rh: -0.01 }), /rh must be 0–1/],
    ["hPa", () => wetBulbC({ tempC: 20, rh: 0.5, pressurePa: 1013 }), /pressurePa must be.*1013/],
    ["kPa", () => humidityRatio({ tempC: 20, rh: 0.5, pressurePa: 101.3 }), /pressurePa must be/],
    ["no number", () => saturationPressurePa(NaN), /tempC must be.*NaN/],
    ["no humidity", () => saturationDeficitGM3({ tempC: 20, rh: NaN }), /rh must be/],
    ["kelvin", () => wetBulbC({ tempC: 293, rh: 0.5, pressurePa: seaPa }), /tempC must be/],
    ["no altitude", () => pressureAtAltitudePa(NaN), /altitudeM must be/],
  ])("%s is refused with what was found", (_, call, message) => {
    expect(call).toThrow(RangeError);
    expect(call).toThrow(message);
  });
});

const temp = fc.double({ min: -25, max: 45, noNaN: true });
const humidity = fc.double({ min: 0.01, max: 0.99, noNaN: true });
const pressure = fc.integer({ min: 54_000, max: 108_000 });

describe("laws of moist air", () => {
  test("dew point ≤ wet bulb ≤ air, in any air", () =>
    fc.assert(
      fc.property(temp, humidity, pressure, (tempC, rh, pressurePa) => {
        const wet = wetBulbC({ tempC, rh, pressurePa });
        const dew = dewPointC({ tempC, rh });
        // A supercooled bulb may stand a little under the frost point: the curve over ice is the lower one.
        expect(dew).toBeLessThanOrEqual(tempC >= 0.01 && wet < 0 ? wet + 1.5 : wet + 1e-9);
        expect(wet).toBeLessThanOrEqual(tempC);
      }),
    ));

  test("more humidity never lowers the wet bulb or the dew point, nor raises the deficit", () =>
    fc.assert(
      fc.property(temp, humidity, pressure, (tempC, rh, pressurePa) => {
        const damper = Math.min(1, rh + 0.01);
        expect(wetBulbC({ tempC, rh: damper, pressurePa })).toBeGreaterThan(
          wetBulbC({ tempC, rh, pressurePa }),
        );
        expect(dewPointC({ tempC, rh: damper })).toBeGreaterThan(dewPointC({ tempC, rh }) ?? NaN);
        expect(saturationDeficitGM3({ tempC, rh: damper })).toBeLessThan(saturationDeficitGM3({ tempC, rh }));
      }),
    ));

  test("the wet bulb of an air gives that air back", () =>
    fc.assert(
      fc.property(temp, humidity, pressure, (tempC, rh, pressurePa) => {
        const back = relativeHumidityFromWetBulb({
          tempC,
          wetBulbC: wetBulbC({ tempC, rh, pressurePa }),
          pressurePa,
        });
        expect(back).toBeCloseTo(rh, 6);
      }),
    ));

  test("air cooled to its dew point is saturated", () =>
    fc.assert(
      fc.property(temp, humidity, (tempC, rh) => {
        const dew = dewPointC({ tempC, rh }) ?? NaN;
        expect(off(saturationPressurePa(dew), rh * saturationPressurePa(tempC))).toBeLessThan(1e-8);
      }),
    ));

  test("the wet bulb moves without a jump as the air dries through freezing", () => {
    let before = wetBulbC({ tempC: 5, rh: 0.5, pressurePa: seaPa });
    for (let percent = 49.9; percent > 20; percent -= 0.1) {
      const wet = wetBulbC({ tempC: 5, rh: percent / 100, pressurePa: seaPa });
      expect(before - wet).toBeLessThan(0.02);
      before = wet;
    }
  });
});
