import { millisecondsInDay as dayMs } from "date-fns/constants";
import { saturationPressureWaterPa } from "../../physics/air/air.ts";
import type { AirCsvPlan, PressureUnit, TempUnit } from "./airCsvPlan.ts";
import { planGaps } from "./airCsvPlan.ts";
import type { CsvRow } from "./csvRows.ts";
import { readNumber } from "./numberText.ts";
import type { TimeFault } from "./timeText.ts";
import { readTimeText } from "./timeText.ts";
import { zoneClock } from "./zoneTime.ts";

/** What a reading may be. Air as in the log; pressure from sea level to 5000 m; clocks that were ever set. Judgement. */
export const airCsvLimits = {
  airC: { low: -30, high: 60 },
  rh: { low: 0, high: 1 },
  pressurePa: { low: 50_000, high: 110_000 },
  atS: { low: Date.UTC(2000, 0) / 1000 },
} as const;

/** A clock may run this far ahead of ours. */
export const mostAheadMs = dayMs;

/** Sensors in wet air show a little over 100 %; up to here that counts as 100 %. Judgement. */
const overfullRh = 1.05;

export type AirRow = {
  readonly atS: number;
  readonly airC: number;
  readonly rh: number;
  readonly pressurePa: number | null;
};

export type BadField = "time" | "temp" | "rh" | "dew" | "pressure";
export type BadReason =
  TimeFault | "missing" | "not-a-number" | "out-of-range" | "in-the-future" | "hour-left-out" | "above-air";

/** A line that is no reading: its number, what stands there, and, for a range, what was expected (canonical units). */
export type BadLine = {
  readonly line: number;
  readonly field: BadField;
  readonly why: BadReason;
  readonly found: string;
  readonly low: number | null;
  readonly high: number | null;
};

export type RowResult =
  { readonly ok: true; readonly row: AirRow } | { readonly ok: false; readonly bad: BadLine };

type Fault = Omit<BadLine, "line">;
type Cells = readonly string[];
type Bounds = { readonly low: number | null; readonly high: number | null };

/**
 * Reads rows by a plan, one after the other; null where the plan has gaps or names no zone there is. In the hour that
 * comes twice a row counts as the first passing unless the rows before it have already gone through that.
 */
export function rowReader(
  plan: AirCsvPlan,
  { latestS }: { latestS: number },
): ((row: CsvRow) => RowResult) | null {
  const { temp } = plan;
  const timeOf = timeReader(plan, latestS);
  if (planGaps(plan).length > 0 || temp === null || timeOf === null) return null;
  const read = (cells: Cells): AirRow | Fault => {
    const atS = timeOf(cells);
    if (typeof atS !== "number") return atS;
    const airC = tempIn(cells, temp, { field: "temp", plan, ...airCsvLimits.airC });
    if (typeof airC !== "number") return airC;
    const rh = humidityOf(cells, airC, plan);
    if (typeof rh !== "number") return rh;
    const pressurePa = pressureOf(cells, plan);
    if (pressurePa !== null && typeof pressurePa !== "number") return pressurePa;
    return { atS, airC, rh, pressurePa };
  };
  return ({ line, cells }) => {
    const found = read(cells);
    return "why" in found ? { ok: false, bad: { line, ...found } } : { ok: true, row: found };
  };
}

function timeReader({ time }: AirCsvPlan, latestS: number): ((cells: Cells) => number | Fault) | null {
  if (time === null) return null;
  const known = (atS: number, found: string): number | Fault => {
    if (atS > latestS) return fault("time", "in-the-future", found, { low: null, high: latestS });
    return within(atS, { field: "time", found, low: airCsvLimits.atS.low, high: latestS });
  };
  if (time.kind === "epoch")
    return (cells) => {
      const text = cells[time.column] ?? "";
      const value = readNumber(text, ".");
      if (value === null) return fault("time", text === "" ? "missing" : "not-a-time", text);
      return known(Math.floor(time.unit === "ms" ? value / 1000 : value), text);
    };
  const clock = zoneClock(time.zone);
  if (clock === null) return null;
  const { columns, order } = time;
  let lastMs: number | null = null;
  let isRising = true;
  return (cells) => {
    const text = columns.length === 1 ? (cells[columns[0] ?? 0] ?? "") : joined(cells, columns);
    if (text === "") return fault("time", "missing", text);
    const written = readTimeText(text, order);
    if (typeof written === "string") return fault("time", written, text);
    const { localMs, offsetMs } = written;
    const moments = offsetMs === null ? clock(localMs) : [localMs - offsetMs];
    const atMs = momentAfter(lastMs, { moments, isRising });
    if (atMs === null) return fault("time", "hour-left-out", text);
    if (lastMs !== null && atMs !== lastMs) isRising = atMs > lastMs;
    lastMs = atMs;
    return known(Math.floor(atMs / 1000), text);
  };
}

/** Of two moments the next one the way the lines go; where both lie behind, the nearer. */
function momentAfter(
  lastMs: number | null,
  { moments, isRising }: { moments: readonly number[]; isRising: boolean },
): number | null {
  const [first = null, second = null] = moments;
  if (first === null || second === null || lastMs === null) return first;
  if (isRising) return first > lastMs ? first : second;
  return second < lastMs ? second : first;
}

const joined = (cells: Cells, columns: readonly number[]): string =>
  columns
    .map((column) => cells[column] ?? "")
    .join(" ")
    .trim();

function humidityOf(cells: Cells, airC: number, plan: AirCsvPlan): number | Fault {
  const { rh, dew } = plan;
  if (rh !== null && ((cells[rh.column] ?? "") !== "" || dew === null)) {
    const value = numberIn(cells, rh.column, { field: "rh", plan });
    if (typeof value !== "number") return value;
    const found = cells[rh.column] ?? "";
    const told = rh.unit === "percent" ? value / 100 : value;
    const share = told > 1 && told <= overfullRh ? 1 : told;
    return within(share, { field: "rh", found, ...airCsvLimits.rh });
  }
  if (dew === null) return fault("rh", "missing", "");
  const dewC = tempIn(cells, dew, { field: "dew", plan, low: -50, high: airCsvLimits.airC.high });
  if (typeof dewC !== "number") return dewC;
  // Loggers tell the dew point over water also in frost, as they tell the humidity. A rounded one may pass the air's.
  if (dewC > airC + 0.5) return fault("dew", "above-air", cells[dew.column] ?? "", { low: null, high: airC });
  return Math.min(1, saturationPressureWaterPa(dewC) / saturationPressureWaterPa(airC));
}

function pressureOf(cells: Cells, plan: AirCsvPlan): number | null | Fault {
  const { pressure } = plan;
  const found = pressure === null ? "" : (cells[pressure.column] ?? "");
  if (pressure === null || found === "") return null;
  const value = numberIn(cells, pressure.column, { field: "pressure", plan });
  if (typeof value !== "number") return value;
  return within(value * pascalsIn[pressure.unit], { field: "pressure", found, ...airCsvLimits.pressurePa });
}

/** Inch of mercury at 0 °C: NIST SP 811 appendix B.8. */
const pascalsIn: Readonly<Record<PressureUnit, number>> = { Pa: 1, hPa: 100, kPa: 1000, inHg: 3386.389 };

function tempIn(
  cells: Cells,
  { column, unit }: { column: number; unit: TempUnit },
  { field, plan, low, high }: { field: BadField; plan: AirCsvPlan; low: number; high: number },
): number | Fault {
  const value = numberIn(cells, column, { field, plan });
  if (typeof value !== "number") return value;
  const celsius = unit === "F" ? ((value - 32) * 5) / 9 : value;
  return within(celsius, { field, found: cells[column] ?? "", low, high });
}

function numberIn(
  cells: Cells,
  column: number,
  { field, plan }: { field: BadField; plan: AirCsvPlan },
): number | Fault {
  const text = cells[column] ?? "";
  const value = readNumber(text, plan.decimal);
  return value ?? fault(field, text === "" ? "missing" : "not-a-number", text);
}

function within(
  value: number,
  { field, found, low, high }: { field: BadField; found: string; low: number; high: number },
): number | Fault {
  return value >= low && value <= high ? value : fault(field, "out-of-range", found, { low, high });
}

function fault(
  field: BadField,
  why: BadReason,
  found: string,
  { low, high }: Bounds = { low: null, high: null },
): Fault {
  return { field, why, found: found.slice(0, 60), low, high };
}
