import type { AirCsvPlan, Decimal, PressureUnit, RhUnit, TempUnit } from "./airCsvPlan.ts";
import { readNumber } from "./numberText.ts";

type Rows = readonly (readonly string[])[];
type Columns = Pick<AirCsvPlan, "temp" | "rh" | "dew" | "pressure">;

/** What was taken from the numbers alone, as neither head nor cells tell it. */
export type ColumnDoubt = "temp-column" | "rh-column" | "temp-unit" | "rh-unit" | "pressure-unit";

/** Words of the head in the languages loggers are sold in; the first that fits counts, so dew stands before temp. */
const words = {
  dew: /dew|frost ?p|taupunkt|ros[ée]e|roc[ií]o|rugiada|dauwp|orvalho/i,
  rh: /hum|feucht|\brh\b|\brf\b|\bhr\b|\bur\b|hygro|vocht|umid|%/i,
  pressure: /press|druck|presi[óo]n|\bbaro|\b[hk]pa\b|mbar|in ?hg/i,
  temp: /temp|celsius|fahrenheit|[°º˚]\s?[cf]\b|\b[tc]\b/i,
} as const;

type Numbers = {
  readonly column: number;
  readonly values: readonly number[];
  readonly cells: readonly string[];
};

/** Which columns tell the air, by the words of the head, else by what the numbers can be; and in which units. */
export function guessColumns(
  rows: Rows,
  { names, decimal, taken }: { names: readonly string[]; decimal: Decimal; taken: readonly number[] },
): Columns & { readonly doubts: readonly ColumnDoubt[] } {
  const numeric = numbersIn(rows, decimal).filter(({ column }) => !taken.includes(column));
  const doubts: ColumnDoubt[] = [];
  const used = new Set<number>();
  const byName = (word: RegExp): Numbers | null => {
    const found = numeric.find(({ column }) => !used.has(column) && word.test(names[column] ?? "")) ?? null;
    if (found) used.add(found.column);
    return found;
  };
  const byValue = (fits: (values: readonly number[]) => boolean, doubt: ColumnDoubt): Numbers | null => {
    const found = numeric.find(({ column, values }) => !used.has(column) && fits(values)) ?? null;
    if (found === null) return null;
    used.add(found.column);
    doubts.push(doubt);
    return found;
  };
  const dew = byName(words.dew);
  const pressure = byName(words.pressure);
  const namedRh = byName(words.rh);
  const temp =
    byName(words.temp) ?? byValue((values) => within(values, -40, 140) && !counts(values), "temp-column");
  const rh =
    namedRh ?? (dew ? null : byValue((values) => within(values, 0, 105) && !counts(values), "rh-column"));
  const nameOf = ({ column }: Numbers): string => names[column] ?? "";
  const tempUnit = temp && unitOfTemp(temp, nameOf(temp));
  if (tempUnit?.isGuess === true) doubts.push("temp-unit");
  const rhUnit = rh && unitOfRh(rh, nameOf(rh));
  if (rhUnit?.isGuess === true) doubts.push("rh-unit");
  const pressureUnit = pressure && unitOfPressure(pressure, nameOf(pressure));
  if (pressureUnit?.isGuess === true) doubts.push("pressure-unit");
  const dewUnit = dew && unitOfTemp(dew, nameOf(dew));
  return {
    temp: temp && tempUnit && { column: temp.column, unit: tempUnit.unit },
    rh: rh && rhUnit && { column: rh.column, unit: rhUnit.unit },
    // A dew point without a unit has the air's.
    dew: dew &&
      dewUnit && {
        column: dew.column,
        unit: dewUnit.isGuess ? (tempUnit?.unit ?? dewUnit.unit) : dewUnit.unit,
      },
    pressure: pressure && pressureUnit && { column: pressure.column, unit: pressureUnit.unit },
    doubts,
  };
}

/** A column of air may be full of lost readings; one of notes holds hardly a number. */
const leastRead = 0.3;

function numbersIn(rows: Rows, decimal: Decimal): readonly Numbers[] {
  const width = Math.max(0, ...rows.map((cells) => cells.length));
  return Array.from({ length: width }, (_, column) => {
    const cells = rows.map((row) => row[column] ?? "").filter((cell) => cell !== "");
    const values = cells.map((cell) => readNumber(cell, decimal)).filter((value) => value !== null);
    return { column, cells, values };
  }).filter(({ cells, values }) => values.length > 0 && values.length >= leastRead * cells.length);
}

/** Most of the values, as a sensor that has lost its probe writes nonsense now and then. */
const within = (values: readonly number[], low: number, high: number): boolean =>
  values.filter((value) => value >= low && value <= high).length >= 0.9 * values.length;

/** A running number: whole, and each one more than the last. */
const counts = (values: readonly number[]): boolean =>
  values.length > 2 && values.every((value, i) => i === 0 || value === (values[i - 1] ?? 0) + 1);

type Unit<T> = { readonly unit: T; readonly isGuess: boolean };

function unitOfTemp({ cells, values }: Numbers, name: string): Unit<TempUnit> {
  const told = [name, cells[0] ?? ""].join(" ");
  if (/[°º˚]\s?F|fahrenheit|\(F\)|\[F\]|_F\b|\bF\b/.test(told)) return { unit: "F", isGuess: false };
  if (/[°º˚]\s?C|celsius|\(C\)|\[C\]|_C\b|\bC\b/i.test(told)) return { unit: "C", isGuess: false };
  // No shop is at 45 °C, nor under 7 °C as a rule: a median above is °F.
  return { unit: median(values) > 45 ? "F" : "C", isGuess: true };
}

function unitOfRh({ cells, values }: Numbers, name: string): Unit<RhUnit> {
  const isSmall = values.every((value) => value <= 1.05);
  if (/%|percent|prozent/i.test(`${name} ${cells[0] ?? ""}`) && !isSmall)
    return { unit: "percent", isGuess: false };
  return {
    unit: isSmall ? "fraction" : "percent",
    isGuess: isSmall && values.every((value) => value === 0 || value === 1),
  };
}

function unitOfPressure({ cells, values }: Numbers, name: string): Unit<PressureUnit> {
  const told = `${name} ${cells[0] ?? ""}`;
  if (/hpa|mbar|\bmb\b/i.test(told)) return { unit: "hPa", isGuess: false };
  if (/kpa/i.test(told)) return { unit: "kPa", isGuess: false };
  if (/in\.? ?hg/i.test(told)) return { unit: "inHg", isGuess: false };
  if (/\bpa\b/i.test(told)) return { unit: "Pa", isGuess: false };
  const middle = median(values);
  const unit = middle > 20_000 ? "Pa" : middle > 300 ? "hPa" : middle > 45 ? "kPa" : "inHg";
  return { unit, isGuess: true };
}

function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[sorted.length >> 1] ?? 0;
}
