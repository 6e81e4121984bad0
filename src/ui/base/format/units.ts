import { numberFormat } from "./formatters.ts";

export type UnitSystem = "metric" | "us" | "mixed";

/**
 * What a number is. Canonical units, as the core holds them: temp °C, tempDiff K, mm, m, kg, g, m2, litre,
 * percent a fraction 0–1, min, s, h, MPa, kPa, N, density g/cm³, hPa, plain a bare number; share a fraction told to
 * hundredths of a percent, kilnL litres inside a kiln, kW, kWh, mm2, cm2, cm3, speed m/s, deg an angle, rate K/h,
 * kgM3 the density of a solid, kgS a pouring rate, wMK conductivity, wM2K a film of heat, jKgK heat of a kelvin, jKg latent heat.
 */
export type Quantity =
  | "temp"
  | "tempDiff"
  | "mm"
  | "m"
  | "kg"
  | "g"
  | "m2"
  | "litre"
  | "kilnL"
  | "percent"
  | "min"
  | "s"
  | "h"
  | "MPa"
  | "kPa"
  | "N"
  | "density"
  | "hPa"
  | "gM2"
  | "gM3"
  | "kgM2"
  | "kgM3"
  | "kgS"
  | "wMK"
  | "wM2K"
  | "jKgK"
  | "jKg"
  | "share"
  | "kW"
  | "kWh"
  | "mm2"
  | "cm2"
  | "cm3"
  | "speed"
  | "deg"
  | "rate"
  | "plain";

type Shown = {
  readonly unit: string;
  readonly factor: number;
  readonly offset?: number;
  /** Most decimals worth showing. */
  readonly digits: number;
};

const metric: Record<Quantity, Shown> = {
  temp: { unit: "°C", factor: 1, digits: 1 },
  tempDiff: { unit: "°C", factor: 1, digits: 1 },
  mm: { unit: "mm", factor: 1, digits: 1 },
  m: { unit: "m", factor: 1, digits: 2 },
  kg: { unit: "kg", factor: 1, digits: 2 },
  g: { unit: "g", factor: 1, digits: 0 },
  m2: { unit: "m²", factor: 1, digits: 3 },
  litre: { unit: "L", factor: 1, digits: 2 },
  kilnL: { unit: "L", factor: 1, digits: 0 },
  percent: { unit: "%", factor: 100, digits: 0 },
  min: { unit: "min", factor: 1, digits: 0 },
  s: { unit: "s", factor: 1, digits: 1 },
  h: { unit: "h", factor: 1, digits: 1 },
  MPa: { unit: "MPa", factor: 1, digits: 2 },
  kPa: { unit: "kPa", factor: 1, digits: 1 },
  N: { unit: "N", factor: 1, digits: 0 },
  density: { unit: "g/cm³", factor: 1, digits: 3 },
  hPa: { unit: "hPa", factor: 1, digits: 0 },
  gM2: { unit: "g/m²", factor: 1, digits: 0 },
  gM3: { unit: "g/m³", factor: 1, digits: 1 },
  kgM2: { unit: "kg/m²", factor: 1, digits: 2 },
  kgM3: { unit: "kg/m³", factor: 1, digits: 0 },
  kgS: { unit: "kg/s", factor: 1, digits: 2 },
  wMK: { unit: "W/m·K", factor: 1, digits: 2 },
  wM2K: { unit: "W/m²·K", factor: 1, digits: 0 },
  jKgK: { unit: "J/kg·K", factor: 1, digits: 0 },
  jKg: { unit: "kJ/kg", factor: 1 / 1000, digits: 0 },
  share: { unit: "%", factor: 100, digits: 2 },
  kW: { unit: "kW", factor: 1, digits: 1 },
  kWh: { unit: "kWh", factor: 1, digits: 2 },
  mm2: { unit: "mm²", factor: 1, digits: 0 },
  cm2: { unit: "cm²", factor: 1, digits: 1 },
  cm3: { unit: "cm³", factor: 1, digits: 1 },
  speed: { unit: "m/s", factor: 1, digits: 2 },
  deg: { unit: "°", factor: 1, digits: 0 },
  rate: { unit: "°C/h", factor: 1, digits: 0 },
  plain: { unit: "", factor: 1, digits: 2 },
};

// Exact by definition: inch 25.4 mm, pound 0.45359237 kg, US gallon 231 in³, pound-force 4.4482216152605 N
// (NIST SP 811, appendix B). Density stays in g/cm³: slurry is weighed so in both systems.
const us: Record<Quantity, Shown> = {
  ...metric,
  temp: { unit: "°F", factor: 1.8, offset: 32, digits: 0 },
  tempDiff: { unit: "°F", factor: 1.8, digits: 1 },
  rate: { unit: "°F/h", factor: 1.8, digits: 0 },
  mm: { unit: "in", factor: 1 / 25.4, digits: 3 },
  m: { unit: "ft", factor: 1 / 0.3048, digits: 2 },
  kg: { unit: "lb", factor: 1 / 0.45359237, digits: 2 },
  g: { unit: "oz", factor: 16 / 453.59237, digits: 2 },
  m2: { unit: "ft²", factor: 1 / 0.09290304, digits: 2 },
  mm2: { unit: "in²", factor: 1 / 645.16, digits: 3 },
  cm2: { unit: "in²", factor: 1 / 6.4516, digits: 2 },
  cm3: { unit: "in³", factor: 1 / 16.387064, digits: 2 },
  speed: { unit: "ft/s", factor: 1 / 0.3048, digits: 1 },
  gM2: { unit: "oz/ft²", factor: (16 / 453.59237) * 0.09290304, digits: 2 },
  litre: { unit: "qt", factor: 1 / 0.946352946, digits: 2 },
  // Kilns are sold by the cubic foot, 28.316846592 L.
  kilnL: { unit: "ft³", factor: 1 / 28.316846592, digits: 1 },
  MPa: { unit: "psi", factor: 145.03773773, digits: 0 },
  kPa: { unit: "psi", factor: 0.14503773773, digits: 2 },
  N: { unit: "lbf", factor: 1 / 4.4482216152605, digits: 1 },
  hPa: { unit: "inHg", factor: 1 / 33.8638866667, digits: 2 },
  // Grains (64.79891 mg, by definition) a cubic foot.
  gM3: { unit: "gr/ft³", factor: 0.028316846592 / 0.06479891, digits: 1 },
  kgM2: { unit: "lb/ft²", factor: 0.09290304 / 0.45359237, digits: 3 },
  kgM3: { unit: "lb/ft³", factor: 0.028316846592 / 0.45359237, digits: 1 },
  kgS: { unit: "lb/s", factor: 1 / 0.45359237, digits: 1 },
  // Heat in the Btu of the International Table, 1055.05585262 J (NIST SP 811, appendix B).
  wMK: { unit: "Btu/(h·ft·°F)", factor: (3600 * 0.3048) / (1.8 * 1055.05585262), digits: 2 },
  wM2K: { unit: "Btu/(h·ft²·°F)", factor: (3600 * 0.09290304) / (1.8 * 1055.05585262), digits: 1 },
  jKgK: { unit: "Btu/(lb·°F)", factor: 0.45359237 / (1.8 * 1055.05585262), digits: 3 },
  jKg: { unit: "Btu/lb", factor: 0.45359237 / 1055.05585262, digits: 0 },
};

/** Mixed: heat in °F and metal in pounds, as many kilns and scales read; the wall and all else metric. */
const mixed: Record<Quantity, Shown> = {
  ...metric,
  temp: us.temp,
  tempDiff: us.tempDiff,
  rate: us.rate,
  kg: us.kg,
};

const systems: Record<UnitSystem, Record<Quantity, Shown>> = { metric, us, mixed };

export type Format = {
  readonly units: UnitSystem;
  readonly locale: string;
  /** The number with its unit, such as "7.4 mm". */
  show(quantity: Quantity, canonical: number): string;
  unit(quantity: Quantity): string;
  toShown(quantity: Quantity, canonical: number): number;
  fromShown(quantity: Quantity, shown: number): number;
  /** Most decimals worth showing or typing. */
  digits(quantity: Quantity): number;
  number(value: number, digits: number): string;
};

/** What a shop starts with: US units where the browser speaks for the United States. */
export const usualUnits = (locale: string): UnitSystem =>
  new Intl.Locale(locale).region === "US" ? "us" : "metric";

const noBreak = "\u00a0";

export function makeFormat(units: UnitSystem, locale: string): Format {
  const table = systems[units];
  const number = (value: number, digits: number): string =>
    numberFormat(locale, { maximumFractionDigits: digits }).format(withoutMinusZero(value, digits));
  const toShown = (quantity: Quantity, canonical: number): number =>
    canonical * table[quantity].factor + (table[quantity].offset ?? 0);
  return {
    units,
    locale,
    number,
    toShown,
    fromShown: (quantity, shown) => (shown - (table[quantity].offset ?? 0)) / table[quantity].factor,
    unit: (quantity) => table[quantity].unit,
    digits: (quantity) => table[quantity].digits,
    show: (quantity, canonical) => {
      const { unit, digits } = table[quantity];
      const shown = toShown(quantity, canonical);
      const fitting = Math.min(digits, saidDigits(quantity, unit, Math.abs(shown)));
      const text = number(shown, fitting);
      if (unit === "") return text;
      return unit === "%" || unit === "°" ? `${text}${unit}` : `${text}${noBreak}${unit}`;
    },
  };
}

/** Decimals a person would say: no tenth of a degree at the kiln; inches to a hundredth, finer only for a coat or a film. */
function saidDigits(quantity: Quantity, unit: string, shown: number): number {
  if (quantity === "temp") return shown >= 200 ? 0 : Infinity;
  if (unit === "°F" && shown >= 10) return 0;
  // A scale shows hundredths of an ounce at best; a light thing has a digit more in grams.
  if (unit === "oz" && shown >= 10) return 1;
  if (unit !== "in") return Infinity;
  if (shown < 0.0995) return 3;
  return shown < 20 ? 2 : shown < 100 ? 1 : 0;
}

function withoutMinusZero(value: number, digits: number): number {
  return Math.abs(value) < 0.5 * 10 ** -digits ? 0 : value;
}
