import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { DateOrder, TimeColumns } from "./airCsvPlan.ts";
import { readNumber } from "./numberText.ts";
import { dateMarks, isClockText, isDateText, readTimeText } from "./timeText.ts";
import { fixedOffsetMs, zoneClock } from "./zoneTime.ts";

type Rows = readonly (readonly string[])[];

/** A date that can be read in more than one order, and the moments it would be, epoch s. */
export type OpenDate = {
  readonly text: string;
  readonly readings: readonly { readonly order: DateOrder; readonly atS: number }[];
};

/** Years a bare number may be a time in: from 2001 to 2096, in s. */
const epochS = { low: 1e9, high: 4e9 };
/** Rows a column must be read in to count as what it is taken for. */
const mostRows = 0.8;

/** Which columns tell the time. `zone` is the caller's own, for clocks that do not tell theirs. */
export function guessTime(
  rows: Rows,
  { names, zone }: { names: readonly string[]; zone: string },
): { readonly time: TimeColumns; readonly open: OpenDate | null } | null {
  const width = Math.max(0, ...rows.map((cells) => cells.length));
  const columns = Array.from({ length: width }, (_, i) => i);
  const most = (column: number, holds: (text: string) => boolean): boolean => {
    const there = rows.map((cells) => cells[column] ?? "").filter((cell) => cell !== "");
    return there.length > 0 && there.filter(holds).length >= mostRows * there.length;
  };
  const whole = columns.find((column) => most(column, isWhole));
  const date = columns.find((column) => most(column, isDateText));
  const clock = columns.find((column) => most(column, isClockText));
  const half = clock === undefined ? undefined : columns.find((column) => most(column, isHalf));
  const found =
    whole !== undefined && !(date === whole && clock !== undefined)
      ? [whole]
      : [date, clock, half].filter((column) => column !== undefined);
  if (date !== undefined || whole !== undefined) {
    const { order, open } = dateOrder(rows, found, zone);
    return { time: { kind: "text", columns: found, order, zone: zoneIn(names, found) ?? zone }, open };
  }
  for (const [unit, times] of [
    ["s", 1],
    ["ms", 1000],
  ] as const) {
    const column = columns.find((one) =>
      most(one, (text) => {
        const value = readNumber(text, ".");
        return value !== null && value >= epochS.low * times && value <= epochS.high * times;
      }),
    );
    if (column !== undefined) return { time: { kind: "epoch", column, unit }, open: null };
  }
  return null;
}

const orders: readonly DateOrder[] = ["dmy", "mdy", "ymd"];
const isWhole = (text: string): boolean =>
  orders.some((order) => typeof readTimeText(text, order) !== "string");
const isHalf = (text: string): boolean => /^[ap]\.?m\.?$/i.test(text);

/** "Time (UTC+1)" in the head: the clock's own zone. */
function zoneIn(names: readonly string[], columns: readonly number[]): string | null {
  for (const column of columns) {
    const [told] = /(?:utc|gmt)\s*(?:[+-−]\s?\d{1,2}(?::?\d{2})?)?/i.exec(names[column] ?? "") ?? [];
    const offsetMs = told === undefined ? null : fixedOffsetMs(told.replaceAll(" ", ""));
    if (offsetMs !== null) return offsetText(offsetMs);
  }
  return null;
}

function offsetText(offsetMs: number): string {
  const minutes = Math.abs(offsetMs) / minuteMs;
  const two = (value: number): string => String(value).padStart(2, "0");
  return `${offsetMs < 0 ? "-" : "+"}${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
}

/** The orders a sample leaves open: each number over 12 is no month, each over 31 no day. */
function dateOrder(
  rows: Rows,
  columns: readonly number[],
  zone: string,
): { readonly order: DateOrder; readonly open: OpenDate | null } {
  const texts = rows.map((cells) =>
    columns
      .map((column) => cells[column] ?? "")
      .join(" ")
      .trim(),
  );
  const dated = texts.flatMap((text) => {
    const date = dateMarks(text);
    return date === null ? [] : [{ text, ...date }];
  });
  const [sample] = dated;
  if (sample === undefined || sample.digits[0] >= 3) return { order: "ymd", open: null };
  if (sample.hasMonthName) return { order: "dmy", open: null };
  const possible: readonly DateOrder[] = sample.digits[2] >= 3 ? ["dmy", "mdy"] : ["dmy", "mdy", "ymd"];
  const left = possible.filter((order) => dated.every(({ marks }) => fits(marks, order)));
  const [order, ...others] = left;
  // Where no order fits all lines the one that fits most is taken, and its bad lines will be told.
  if (order === undefined) return { order: bestOf(possible, dated), open: null };
  return { order, open: others.length === 0 ? null : openDate(dated, left, zone) };
}

function fits([a, b, c]: readonly [number, number, number], order: DateOrder): boolean {
  const [month, day] = order === "dmy" ? [b, a] : order === "mdy" ? [a, b] : [b, c];
  return month >= 1 && month <= 12 && day >= 1 && day <= 31;
}

function bestOf(
  orders: readonly DateOrder[],
  dated: readonly { readonly marks: readonly [number, number, number] }[],
): DateOrder {
  const fitting = (order: DateOrder): number => dated.filter(({ marks }) => fits(marks, order)).length;
  return orders.reduce((a, b) => (fitting(b) > fitting(a) ? b : a), orders[0] ?? "dmy");
}

/** The date whose readings differ, told as each of them; a day like 5/5 says nothing, so another is looked for. */
function openDate(
  dated: readonly { readonly text: string; readonly marks: readonly number[] }[],
  orders: readonly DateOrder[],
  zone: string,
): OpenDate | null {
  const telling = dated.find(({ marks }) => marks[0] !== marks[1]) ?? dated[0];
  const clock = zoneClock(zone);
  if (telling === undefined || clock === null) return null;
  const readings = orders.flatMap((order) => {
    const written = readTimeText(telling.text, order);
    if (typeof written === "string") return [];
    const [atMs] = written.offsetMs === null ? clock(written.localMs) : [written.localMs - written.offsetMs];
    return atMs === undefined ? [] : [{ order, atS: atMs / 1000 }];
  });
  return { text: telling.text, readings };
}
