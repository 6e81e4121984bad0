import type { BadField, BadLine } from "../../../../workers/airCsv/airCsvRow.ts";
import { dayTime } from "../../../base/format/time.ts";
import type { Format } from "../../../base/format/units.ts";

const names: Readonly<Record<BadField, string>> = {
  time: "time",
  temp: "temperature",
  rh: "humidity",
  dew: "dew point",
  pressure: "pressure",
};

/** "Line 14, temperature: found “---”, expected a number." */
export function badLineWords(bad: BadLine, format: Format, now: number): string {
  const found = bad.found === "" ? "nothing" : `“${bad.found}”`;
  return `Line ${bad.line}, ${names[bad.field]}: found ${found}, expected ${expectedWords(bad, format, now)}.`;
}

function expectedWords({ field, why, low, high }: BadLine, format: Format, now: number): string {
  switch (why) {
    case "not-a-time":
      return "a date and a time of day";
    case "no-such-date":
      return "a day that exists";
    case "missing":
      return field === "time" ? "a time" : "a number";
    case "not-a-number":
      return "a number";
    case "in-the-future":
      return "a time in the past; is the time zone right";
    case "hour-left-out":
      return "a time that exists there; clocks were put forward over it";
    case "above-air":
      return high === null
        ? "no more than the air’s temperature"
        : `no more than the air’s ${shown(field, high, format)}`;
    case "out-of-range":
      return rangeWords(field, { low, high }, { format, now });
  }
}

function rangeWords(
  field: BadField,
  { low, high }: { readonly low: number | null; readonly high: number | null },
  { format, now }: { readonly format: Format; readonly now: number },
): string {
  const show = (value: number): string =>
    field === "time" ? dayTime(value * 1000, now, format.locale) : shown(field, value, format);
  if (low !== null && high !== null) return `${show(low)} to ${show(high)}`;
  if (low !== null) return `${show(low)} or more`;
  return high === null ? "something else" : `${show(high)} or less`;
}

function shown(field: BadField, value: number, format: Format): string {
  switch (field) {
    case "temp":
    case "dew":
      return format.show("temp", value);
    case "rh":
      return format.show("percent", value);
    case "pressure":
      return format.show("hPa", value / 100);
    case "time":
      return String(value);
  }
}
