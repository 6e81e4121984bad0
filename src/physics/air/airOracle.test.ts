import psychrolib from "psychrolib";
import { beforeAll, describe, expect, test } from "vitest";
import truth from "../../../tests/truth/air.json" with { type: "json" };
import { dewPointC, humidityRatio, pressureAtAltitudePa, saturationPressurePa } from "./air.ts";
import { moistAirDensityKgM3 } from "./transport.ts";
import {
  enthalpyKJKg,
  relativeHumidityFromWetBulb,
  vapourPressureDeficitPa,
  wetBulbC,
} from "../../../tests/sums/moistAir.ts";

// One unit system for the whole package, set once.
beforeAll(() => psychrolib.SetUnitSystem(psychrolib.SI));

describe("the printed grid", () => {
  // Where the bulb freezes the package turns to ice and ours stays liquid: 0.4 K apart on this grid.
  test.each(truth.grid.wetBulb)("wet bulb at $tempC °C, $rh, $pressurePa Pa is $wetBulbC °C", (row) => {
    expect(Math.abs(wetBulbC(row) - row.wetBulbC)).toBeLessThanOrEqual(row.wetBulbC < 0 ? 0.5 : 0.02);
  });

  test.each(truth.grid.dewPoint)("dew point at $tempC °C, $rh is $dewPointC °C", (row) => {
    expect(Math.abs((dewPointC(row) ?? NaN) - row.dewPointC)).toBeLessThanOrEqual(0.03);
  });

  test.each(truth.grid.ratio)("air of $tempC °C, $rh, $pressurePa Pa holds $gKg g/kg", (row) => {
    expect(Math.abs((humidityRatio(row) * 1000) / row.gKg - 1)).toBeLessThan(0.001);
  });
});

describe("the reference library, asked live", () => {
  const airs = [54_000, 70_000, 84_000, 101_325, 107_000].flatMap((pressurePa) =>
    [-20, -5, 1, 4, 8, 12.5, 17, 21, 26, 33, 41, 48].flatMap((tempC) =>
      [0.05, 0.15, 0.33, 0.5, 0.66, 0.8, 0.95, 1].map((rh) => ({ tempC, rh, pressurePa })),
    ),
  );

  test("agrees on wet bulb over 480 airs, freezing ones included", () => {
    let worst = 0;
    for (const air of airs) {
      const expected = psychrolib.GetTWetBulbFromRelHum(air.tempC, air.rh, air.pressurePa);
      const error = Math.abs(wetBulbC(air) - expected);
      expect(error, JSON.stringify(air)).toBeLessThan(air.tempC > 0 && expected < 0 ? 0.7 : 0.02);
      worst = Math.max(worst, expected >= 0 ? error : 0);
    }
    // Its own tolerance is 1e-3 K.
    expect(worst).toBeLessThan(0.002);
  });

  test("agrees on dew point, humidity ratio, density, deficit and enthalpy over the same airs", () => {
    for (const air of airs) {
      const { tempC, rh, pressurePa } = air;
      const ratio = psychrolib.GetHumRatioFromRelHum(tempC, rh, pressurePa);
      expect(Math.abs(humidityRatio(air) / ratio - 1)).toBeLessThan(0.001);
      expect(Math.abs((dewPointC(air) ?? NaN) - psychrolib.GetTDewPointFromRelHum(tempC, rh))).toBeLessThan(
        0.03,
      );
      const density = psychrolib.GetMoistAirDensity(tempC, ratio, pressurePa);
      expect(Math.abs(moistAirDensityKgM3(air) / density - 1)).toBeLessThan(2e-4);
      const deficit = psychrolib.GetVaporPressureDeficit(tempC, ratio, pressurePa);
      expect(Math.abs(vapourPressureDeficitPa(air) - deficit)).toBeLessThan(0.001 * deficit + 0.01);
      const enthalpy = psychrolib.GetMoistAirEnthalpy(tempC, ratio) / 1000;
      expect(Math.abs(enthalpyKJKg({ tempC, ratio }) - enthalpy)).toBeLessThan(0.01);
    }
  });

  test("agrees on saturation to 0.05 % from −60 to 120 °C", () => {
    for (let tempC = -60; tempC <= 120; tempC += 1.3)
      expect(Math.abs(saturationPressurePa(tempC) / psychrolib.GetSatVapPres(tempC) - 1)).toBeLessThan(5e-4);
  });

  test("agrees on a psychrometer's reading and on the standard atmosphere", () => {
    for (const [tempC, bulbC] of [
      [22, 15],
      [30, 21.4],
      [12, 10],
    ] as const) {
      const expected = psychrolib.GetRelHumFromTWetBulb(tempC, bulbC, 95_000);
      const got = relativeHumidityFromWetBulb({ tempC, wetBulbC: bulbC, pressurePa: 95_000 });
      expect(Math.abs((got ?? NaN) - expected)).toBeLessThan(0.0005);
    }
    for (const z of [-500, 0, 700, 1609, 3000, 5000])
      expect(Math.abs(pressureAtAltitudePa(z) - psychrolib.GetStandardAtmPressure(z))).toBeLessThan(1);
  });
});
