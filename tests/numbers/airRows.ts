import { millisecondsInHour as hourMs } from "date-fns/constants";
import * as air from "../../src/physics/air/air.ts";
import * as dayView from "../../src/physics/drying/dayView.ts";
import * as evaporation from "../../src/physics/air/evaporation.ts";
import * as forecast from "../../src/physics/drying/forecast.ts";
import * as forecastError from "../../src/physics/drying/forecastError.ts";
import * as range from "../../src/physics/stats/range.ts";
import * as readings from "../../src/physics/drying/readings.ts";
import * as root from "../../src/physics/stats/root.ts";
import * as transport from "../../src/physics/air/transport.ts";
import type { Rows } from "./numberRow.ts";
import { row } from "./numberRow.ts";

const room = { tempC: 20, rh: 0.5 };
const airOf = { ...room, pressurePa: 101_325 };
const nowMs = 1_790_000_000_000;
const few = [0, 1, 3].map((h) => ({
  atMs: nowMs - (3 - h) * hourMs,
  tempC: 20 - h,
  rh: 0.5 + h / 20,
  filmWM2K: 4,
}));
const [first, second] = few as [(typeof few)[number], (typeof few)[number]];
const over = { airC: 21, rh: 0.5, pressurePa: 101_325, surfaceC: 18 };
const topUps = [1, 2, 3, 4].map((days) => ({ waterL: 0.4 * days, days, lid: "off" as const }));

export const airRows: Rows = {
  air: {
    kelvin: row(air.kelvin, [20]),
    saturationPressurePa: row(air.saturationPressurePa, [20]),
    saturationPressureWaterPa: row(air.saturationPressureWaterPa, [20]),
    wettedPressurePa: row(air.wettedPressurePa, [{ surfaceC: 15, airC: 20 }]),
    vapourPressurePa: row(air.vapourPressurePa, [room]),
    rhOverIce: row(air.rhOverIce, [{ tempC: -5, rh: 0.5 }]),
    vapourDensityKgM3: row(air.vapourDensityKgM3, [room]),
    densityOfVapour: row(air.densityOfVapour, [{ tempC: 20, vapourPa: 1200 }]),
    saturationDeficitGM3: row(air.saturationDeficitGM3, [room]),
    dewPointC: row(air.dewPointC, [room]),
    humidityRatio: row(air.humidityRatio, [airOf]),
    pressureAtAltitudePa: row(air.pressureAtAltitudePa, [500]),
  },
  dayView: {
    airPoint: row(dayView.airPoint, [{ atMs: nowMs, ...room }]),
    dayView: row(dayView.dayView, [{ readings: few, fromMs: nowMs - 4 * hourMs, toMs: nowMs, stepS: 1800 }]),
    forecastPoints: row(dayView.forecastPoints, [[{ durationS: 3600, ...airOf }], nowMs], {
      unread: ["0.0.pressurePa"],
    }),
    airThrough: row(dayView.airThrough, [few], {
      read: (at) => [at(nowMs - 2 * hourMs), at(nowMs)],
      unread: ["0.0.filmWM2K", "0.1.filmWM2K", "0.2.filmWM2K"],
    }),
  },
  evaporation: {
    stillLossKgM2H: row(evaporation.stillLossKgM2H, [over]),
    movingLossKgM2H: row(evaporation.movingLossKgM2H, [{ ...over, speedMS: 0.3 }]),
    modelLossLDay: row(evaporation.modelLossLDay, [{ areaM2: 0.1, speedMS: 0.2, lid: "off", over }]),
    learnedLoss: row(evaporation.learnedLoss, [{ topUps, lid: "off" }]),
  },
  forecast: {
    forecastAir: row(forecast.forecastAir, [
      { readings: few, nowMs, untilMs: nowMs + 6 * hourMs, stepS: 3600, pressurePa: 101_325 },
    ]),
  },
  forecastError: {
    forecastError: row(forecastError.forecastError, [{ readings: few, nowMs, mostDays: 3 }]),
  },
  range: {
    requireWithin: row(range.requireWithin, ["x", 1, { low: 0, high: 2, unit: "m" }]),
    requireFraction: row(range.requireFraction, ["rh", 0.5]),
    requireAirPressure: row(range.requireAirPressure, [101_325]),
    requireFigures: row(range.requireFigures, [{ x: 1 }]),
    requireEveryFigure: row(range.requireEveryFigure, ["x", { y: [1] }]),
    requireWhole: row(range.requireWhole, ["x", 1, { low: 0, high: 2 }]),
    requireMoment: row(range.requireMoment, ["atMs", nowMs]),
    requirePositive: row(range.requirePositive, ["x", 1, { high: 2, unit: "m" }]),
  },
  readings: {
    inOrder: row(readings.inOrder, [few]),
    intervalsBetween: row(readings.intervalsBetween, [
      first,
      second,
      { from: first.atMs, to: second.atMs, pressurePa: 101_325 },
    ]),
  },
  root: {
    risingRoot: row(root.risingRoot, [(x: number) => x - 1, { low: 0, high: 3 }]),
  },
  transport: {
    vapourDiffusivityM2S: row(transport.vapourDiffusivityM2S, [{ tempC: 20, pressurePa: 101_325 }]),
    airConductivityWMK: row(transport.airConductivityWMK, [20]),
    latentHeatJKg: row(transport.latentHeatJKg, [20]),
    moistAirDensityKgM3: row(transport.moistAirDensityKgM3, [airOf]),
    lewisNumber: row(transport.lewisNumber, [airOf]),
  },
};
