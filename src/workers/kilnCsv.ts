import { millisecondsInDay as dayMs, millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { DateOrder } from "./airCsv/airCsvPlan.ts";
import { guessDialect, usualWidth } from "./airCsv/guessDialect.ts";
import { guessTime } from "./airCsv/guessTime.ts";
import { readNumber } from "./airCsv/numberText.ts";
import { dateMarks, isClockText, readTimeText } from "./airCsv/timeText.ts";
import { zoneClock } from "./airCsv/zoneTime.ts";

export type KilnCsvOptions = {
  /** IANA zone of a clock that does not tell its own. */
  readonly zone: string;
  /** The run, epoch ms: what lies outside is left out, and a file without dates counts from its start. */
  readonly startMs: number;
  readonly endMs: number;
  /** Unit of a column that does not tell it. */
  readonly unit: "C" | "F";
};

export type KilnCsv =
  | {
      readonly ok: true;
      readonly column: string;
      readonly unit: "C" | "F";
      readonly isUnitTold: boolean;
      /** How its times were taken: as dates, as times of day, or as counted from the run's start. */
      readonly clock: "date" | "time-of-day" | "elapsed";
      /** Whole seconds, rising, none within 30 s of the last. */
      readonly atS: readonly number[];
      readonly kilnC: readonly number[];
      readonly outside: number;
      readonly unread: number;
    }
  | { readonly ok: false; readonly why: "no-rows" | "no-time" | "no-temperature" | "none-in-run" };

/** A kiln hardly moves in less, and a day of such readings stays quick to judge. */
const leastApartS = 30;
const kilnC = { low: -30, high: 1500 };

type Row = readonly string[];

/** A kiln logger's file: one column of time and one of temperature, whatever else stands beside them. */
export function readKilnCsv(text: string, options: KilnCsvOptions): KilnCsv {
  const { rows: all, decimal } = guessDialect(text.replace(/^\uFEFF/, ""));
  const width = usualWidth(all);
  const rows = all.map(({ cells }) => cells).filter((cells) => cells.length === width);
  const tells = (cell: string): boolean =>
    readNumber(cell, decimal) !== null || isClockText(cell) || dateMarks(cell) !== null;
  const first = rows.findIndex((cells) => cells.some(tells));
  if (first === -1 || width < 2) return { ok: false, why: "no-rows" };
  const names = rows[first - 1] ?? [];
  const body = rows.slice(first);
  const time = timeOf(body, { names, decimal, ...options });
  if (time === null) return { ok: false, why: "no-time" };
  const column = temperatureColumn(body, { names, decimal, taken: time.columns });
  if (column === null) return { ok: false, why: "no-temperature" };
  const name = names[column] ?? "";
  const told = unitIn(`${name} ${body[0]?.[column] ?? ""}`);
  const unit = told ?? options.unit;
  const found: { atS: number; kilnC: number }[] = [];
  const left = { outside: 0, unread: 0 };
  for (const cells of body) {
    const atMs = time.read(cells);
    const value = readNumber(cells[column] ?? "", decimal);
    const celsius = value === null ? null : unit === "F" ? ((value - 32) * 5) / 9 : value;
    if (atMs === null || celsius === null || celsius < kilnC.low || celsius > kilnC.high) left.unread += 1;
    else if (atMs < options.startMs || atMs > options.endMs) left.outside += 1;
    else found.push({ atS: Math.ceil(atMs / 1000), kilnC: Number(celsius.toFixed(1)) });
  }
  found.sort((a, b) => a.atS - b.atS);
  const kept: typeof found = [];
  for (const one of found)
    if (one.atS - (kept.at(-1)?.atS ?? -Infinity) >= leastApartS && one.atS * 1000 <= options.endMs)
      kept.push(one);
  if (kept.length === 0) return { ok: false, why: "none-in-run" };
  return {
    ok: true,
    column: name === "" ? `column ${column + 1}` : name,
    unit,
    isUnitTold: told !== null,
    clock: time.clock,
    atS: kept.map(({ atS }) => atS),
    kilnC: kept.map((one) => one.kilnC),
    ...left,
  };
}

function unitIn(text: string): "C" | "F" | null {
  if (/[°º˚]\s?F|fahrenheit|\(F\)|\[F\]|_F\b|\bF\b/.test(text)) return "F";
  return /[°º˚]\s?C|celsius|\(C\)|\[C\]|_C\b|\bC\b/.test(text) ? "C" : null;
}

type Timed = {
  readonly clock: "date" | "time-of-day" | "elapsed";
  readonly columns: readonly number[];
  readonly read: (cells: Row) => number | null;
};
type Known = KilnCsvOptions & { readonly names: Row; readonly decimal: "." | "," };

function timeOf(rows: readonly Row[], { names, decimal, zone, startMs }: Known): Timed | null {
  const guess = guessTime(rows.slice(0, 200), { names, zone });
  if (guess?.time.kind === "epoch") {
    const { column, unit } = guess.time;
    const read = (cells: Row): number | null => {
      const value = readNumber(cells[column] ?? "", ".");
      return value === null ? null : unit === "ms" ? value : value * 1000;
    };
    return { clock: "date", columns: [column], read };
  }
  if (guess !== null && guess.time.kind === "text") {
    const { columns, order } = guess.time;
    const clock = zoneClock(guess.time.zone);
    // Of two ways to read a date the one nearer to the run is the right one.
    const orders: readonly DateOrder[] = guess.open?.readings.map((one) => one.order) ?? [order];
    const read = (cells: Row): number | null => {
      const written = columns.map((column) => cells[column] ?? "").join(" ");
      const moments = orders.flatMap((one) => {
        const told = readTimeText(written, one);
        if (typeof told === "string") return [];
        return told.offsetMs === null ? (clock?.(told.localMs) ?? []) : [told.localMs - told.offsetMs];
      });
      return moments.toSorted((a, b) => Math.abs(a - startMs) - Math.abs(b - startMs))[0] ?? null;
    };
    return { clock: "date", columns, read };
  }
  return undated(rows, { names, decimal, zone, startMs });
}

function undated(
  rows: readonly Row[],
  { names, decimal, zone, startMs }: Pick<Known, "names" | "decimal" | "zone" | "startMs">,
): Timed | null {
  const width = rows[0]?.length ?? 0;
  const columns = Array.from({ length: width }, (_, i) => i);
  const cellsOf = (column: number): Row => rows.map((cells) => cells[column] ?? "");
  const clockColumn = columns.find((column) => cellsOf(column).every(isClockText));
  if (clockColumn !== undefined) {
    const times = cellsOf(clockColumn).map(clockMs);
    const isElapsed = (times[0] ?? 0) < 10 * minuteMs;
    // Midnight of the run's own day, by the zone it was fired in.
    const midnight = isElapsed ? startMs : midnightBefore(startMs, zone);
    let days = 0;
    let lastMs = -Infinity;
    const read = (cells: Row): number | null => {
      const atMs = clockMs(cells[clockColumn] ?? "");
      if (atMs < lastMs - dayMs / 2) days += 1;
      lastMs = atMs;
      return midnight + days * dayMs + atMs;
    };
    return { clock: isElapsed ? "elapsed" : "time-of-day", columns: [clockColumn], read };
  }
  const rising = columns.find((column) => {
    const values = cellsOf(column).map((cell) => readNumber(cell, decimal));
    return (
      /time|elapsed|zeit|sec|min|hour|\bt\b/i.test(names[column] ?? "") &&
      values.every((value, i) => value !== null && (i === 0 || value > (values[i - 1] ?? -Infinity)))
    );
  });
  if (rising === undefined) return null;
  const name = names[rising] ?? "";
  const unitMs = /\bms\b/i.test(name)
    ? 1
    : /min/i.test(name)
      ? minuteMs
      : /hour|\bh\b/i.test(name)
        ? 60 * minuteMs
        : 1000;
  return {
    clock: "elapsed",
    columns: [rising],
    read: (cells) => {
      const value = readNumber(cells[rising] ?? "", decimal);
      return value === null ? null : startMs + value * unitMs;
    },
  };
}

/** "1:30", "01:30:20", "1:30 pm" as ms of a day. */
function clockMs(text: string): number {
  const read = readTimeText(`2000-01-01 ${text}`, "ymd");
  return typeof read === "string" ? 0 : read.localMs - Date.UTC(2000, 0, 1);
}

function midnightBefore(atMs: number, zone: string): number {
  const clock = zoneClock(zone);
  const day = Math.floor(atMs / dayMs);
  const midnights = [day - 1, day, day + 1].flatMap((one) => clock?.(one * dayMs) ?? []);
  return midnights.filter((one) => one <= atMs).at(-1) ?? day * dayMs;
}

/** Of the columns of numbers the one named for a temperature and not for a setting; else the one that rises most. */
function temperatureColumn(
  rows: readonly Row[],
  {
    names,
    decimal,
    taken,
  }: { readonly names: Row; readonly decimal: "." | ","; readonly taken: readonly number[] },
): number | null {
  const spans = Array.from({ length: rows[0]?.length ?? 0 }, (_, column) => {
    const values = rows
      .map((cells) => readNumber(cells[column] ?? "", decimal))
      .filter((one) => one !== null);
    const isFull = values.length >= 0.3 * rows.length && !taken.includes(column);
    return { column, span: isFull ? Math.max(...minMax(values)) - Math.min(...minMax(values)) : -1 };
  }).filter(({ span }) => span >= 0);
  // What was asked of the kiln is never taken for what it had.
  const read = spans.filter(({ column }) => !/set|target|\bsp\b|soll/i.test(names[column] ?? ""));
  const named = read.find(({ column }) =>
    /temp|[°º˚]\s?[cf]\b|celsius|fahrenheit|kiln|actual|measured|\bpv\b|thermo|ofen/i.test(
      names[column] ?? "",
    ),
  );
  return named?.column ?? read.toSorted((a, b) => b.span - a.span)[0]?.column ?? null;
}

/** A spread call would overflow on a long file. */
function minMax(values: readonly number[]): readonly [number, number] {
  return values.reduce<readonly [number, number]>(
    ([low, high], value) => [Math.min(low, value), Math.max(high, value)],
    [Infinity, -Infinity],
  );
}
