import type { AirCsvPlan, DateOrder, Delimiter, TimeColumns } from "../../../../workers/airCsv/airCsvPlan.ts";

type Option = { readonly value: string; readonly label: string };

export const delimiters: readonly Option[] = [
  { value: ",", label: "Comma ," },
  { value: ";", label: "Semicolon ;" },
  { value: "\t", label: "Tab" },
  { value: "|", label: "Bar |" },
  { value: " ", label: "Space" },
];

export const decimals: readonly Option[] = [
  { value: ".", label: "Point: 21.4" },
  { value: ",", label: "Comma: 21,4" },
];

export const encodings: readonly Option[] = [
  { value: "utf-8", label: "UTF-8" },
  { value: "windows-1252", label: "Windows-1252 (Western)" },
  { value: "utf-16le", label: "UTF-16, low byte first" },
  { value: "utf-16be", label: "UTF-16, high byte first" },
];

export const orders: readonly (Option & { readonly value: DateOrder })[] = [
  { value: "dmy", label: "Day, month, year" },
  { value: "mdy", label: "Month, day, year" },
  { value: "ymd", label: "Year, month, day" },
];

export const tempUnits: readonly Option[] = [
  { value: "C", label: "°C" },
  { value: "F", label: "°F" },
];

export const rhUnits: readonly Option[] = [
  { value: "percent", label: "% (0 to 100)" },
  { value: "fraction", label: "Fraction (0 to 1)" },
];

export const pressureUnits: readonly Option[] = [
  { value: "hPa", label: "hPa (mbar)" },
  { value: "Pa", label: "Pa" },
  { value: "kPa", label: "kPa" },
  { value: "inHg", label: "inHg" },
];

export const timeKinds: readonly Option[] = [
  { value: "text", label: "Date and time of day" },
  { value: "s", label: "Seconds since 1970" },
  { value: "ms", label: "Milliseconds since 1970" },
];

export const timeKindOf = (time: TimeColumns | null): string =>
  time === null || time.kind === "text" ? "text" : time.unit;

/** The columns by name, or by number where the head names none, each with what stands in it first. */
export function columnOptions({ names }: AirCsvPlan, sample: readonly string[]): readonly Option[] {
  return Array.from({ length: Math.max(names.length, sample.length) }, (_, column) => {
    const name = names[column] ?? "";
    const cell = sample[column] ?? "";
    return {
      value: String(column),
      label: `${name === "" ? `Column ${column + 1}` : name}${cell === "" ? "" : ` (${cell})`}`,
    };
  });
}

const delimiterWords: Readonly<Record<Delimiter, string>> = {
  ",": "a comma",
  ";": "a semicolon",
  "\t": "a tab",
  "|": "a bar",
  " ": "spaces",
};

/** How the file is read as a few sentences, to be nodded at. */
export function planFacts(plan: AirCsvPlan): readonly string[] {
  const { time, temp, rh, dew, pressure, delimiter, decimal } = plan;
  const label = (options: readonly Option[], value: string): string =>
    options.find((option) => option.value === value)?.label.toLowerCase() ?? value;
  const named = (column: number): string => plan.names[column] || `column ${column + 1}`;
  const told = (name: string, at: { column: number; unit: string } | null, units: readonly Option[]) =>
    at &&
    `${name}: “${named(at.column)}”, in ${label(units, at.unit).replace("°c", "°C").replace("°f", "°F")}`;
  const when =
    time === null
      ? null
      : time.kind === "epoch"
        ? `Time: “${named(time.column)}”, ${label(timeKinds, time.unit)}`
        : `Time: “${time.columns.map(named).join("” and “")}”, ${label(orders, time.order)}, clock of ${placeName(time.zone)}`;
  return [
    when,
    told("Temperature", temp, tempUnits),
    told("Humidity", rh, rhUnits),
    told("Dew point", dew, tempUnits),
    told("Pressure", pressure, pressureUnits),
    `Columns separated by ${delimiterWords[delimiter]}, decimal ${decimal === "," ? "comma" : "point"}`,
  ].filter((fact) => fact !== null);
}

/** This device's zone first, then clocks that know no daylight saving, then every place the browser knows. */
export function zoneOptions(own: string, chosen: string): readonly Option[] {
  const fixed = Array.from({ length: 27 }, (_, i) => i - 12).map((hours) => {
    const offset = `${hours < 0 ? "-" : "+"}${String(Math.abs(hours)).padStart(2, "0")}:00`;
    return { value: offset, label: `UTC${offset}, no daylight saving` };
  });
  const first = [
    { value: own, label: `${placeName(own)} (this device)` },
    ...(chosen === own ? [] : [{ value: chosen, label: placeName(chosen) }]),
  ];
  const seen = new Set(first.map(({ value }) => value));
  const places = Intl.supportedValuesOf("timeZone").map((zone) => ({ value: zone, label: placeName(zone) }));
  return [...first, ...[...fixed, ...places].filter(({ value }) => !seen.has(value))];
}

const placeName = (zone: string): string =>
  /^[+-]/.test(zone) ? `UTC${zone}, no daylight saving` : zone.replaceAll("_", " ");

/** Time columns changed in one place; a date without columns is a gap the reader tells. */
export function withTimeKind(time: TimeColumns | null, kind: string, zone: string): TimeColumns {
  const column = time === null ? 0 : time.kind === "epoch" ? time.column : (time.columns[0] ?? 0);
  if (kind === "s" || kind === "ms") return { kind: "epoch", column, unit: kind };
  return time?.kind === "text" ? time : { kind: "text", columns: [column], order: "ymd", zone };
}

/** Column `place` of those that hold the time; null takes it and what follows it away. */
export function withTimeColumn(
  columns: readonly number[],
  place: number,
  column: number | null,
): readonly number[] {
  return column === null
    ? columns.slice(0, place)
    : [...columns.slice(0, place), column, ...columns.slice(place + 1)];
}
