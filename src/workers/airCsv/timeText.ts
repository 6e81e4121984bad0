import type { DateOrder } from "./airCsvPlan.ts";
import { fixedOffsetMs } from "./zoneTime.ts";

/** A time as written: as if it were UTC, epoch ms, and the offset that stands with it, if any does. */
export type WrittenTime = { readonly localMs: number; readonly offsetMs: number | null };

export type TimeFault = "not-a-time" | "no-such-date";

/** The three numbers of a date as they stand; `month` where it is told by name. */
export type DateMarks = {
  readonly marks: readonly [number, number, number];
  readonly digits: readonly [number, number, number];
  readonly hasMonthName: boolean;
  readonly rest: string;
};

const months = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
const weekday = /^(?:mon|tue|wed|thu|fri|sat|sun)[a-z]*\.?,?\s+/i;
const numeric = /^(\d{1,4})([-./ ])(\d{1,2})\2(\d{1,4})(?!\d)/;
const named = /^(\d{1,4})[-./ ]+([a-z]{3,9})[-./, ]+(\d{1,4})(?!\d)/i;
const monthFirst = /^([a-z]{3,9})\.? +(\d{1,2}),? +(\d{4})(?!\d)/i;
const compact = /^(\d{4})(\d{2})(\d{2})(?!\d)/;
const clock = /^(\d{1,2})[:.h](\d{2})(?:[:.](\d{2})(?:[.,]\d+)?)?\s*(?:([ap])\.?\s?m\.?)?/i;

/** The date a text begins with; null where it begins with none. */
export function dateMarks(text: string): DateMarks | null {
  const trimmed = text.replace(weekday, "");
  const found = numeric.exec(trimmed);
  if (found) return marksOf(trimmed, found[0], [found[1], found[3], found[4]]);
  const inRow = compact.exec(trimmed);
  if (inRow) return marksOf(trimmed, inRow[0], [inRow[1], inRow[2], inRow[3]]);
  const byName = named.exec(trimmed);
  const month = monthOf(byName?.[2]);
  if (byName && month !== null) return withMonth(trimmed, byName[0], [byName[1], month, byName[3]]);
  const american = monthFirst.exec(trimmed);
  const first = monthOf(american?.[1]);
  if (american && first !== null) return withMonth(trimmed, american[0], [american[2], first, american[3]]);
  return null;
}

/** True for a time of day with a colon and nothing else about it but am, pm or an offset. */
export function isClockText(text: string): boolean {
  return /^\d{1,2}:\d{2}/.test(text) && readClock(text) !== null;
}

export const isDateText = (text: string): boolean => dateMarks(text)?.rest.trim() === "";

/** The date and time of a text, seconds and all; a date alone is its midnight. `order` is asked where it is open. */
export function readTimeText(text: string, order: DateOrder): WrittenTime | TimeFault {
  const trimmed = text.trim();
  const date = dateMarks(trimmed) ?? dateBehindClock(trimmed);
  if (date === null) return "not-a-time";
  const rest = date.rest.replace(/^[Tt, ]+/, "");
  const time = rest === "" ? { dayMs: 0, offsetMs: null } : readClock(rest);
  if (time === null) return "not-a-time";
  const dayMs = dayOf(date, order);
  if (typeof dayMs === "string") return dayMs;
  return { localMs: dayMs + time.dayMs, offsetMs: time.offsetMs };
}

function dateBehindClock(text: string): DateMarks | null {
  const found = /^(\d{1,2}:\d{2}(?::\d{2})?(?:\s*[ap]m)?)[ ,]+(.+)$/i.exec(text);
  const date = dateMarks(found?.[2] ?? "");
  return found && date && date.rest.trim() === "" ? { ...date, rest: found[1] ?? "" } : null;
}

function readClock(text: string): { readonly dayMs: number; readonly offsetMs: number | null } | null {
  const found = clock.exec(text);
  if (found === null) return null;
  const [whole, hourText, minuteText, secondText = "0", half] = found;
  const hour = Number(hourText);
  const minute = Number(minuteText);
  const second = Number(secondText);
  if (minute > 59 || second > 60) return null;
  if (half === undefined ? hour > 24 : hour < 1 || hour > 12) return null;
  const hours = half === undefined ? hour : (hour % 12) + (half.toLowerCase() === "p" ? 12 : 0);
  if (hours === 24 && (minute > 0 || second > 0)) return null;
  const zone = text.slice(whole.length).trim();
  const offsetMs = zone === "" ? null : fixedOffsetMs(zone);
  if (zone !== "" && offsetMs === null) return null;
  return { dayMs: 1000 * (3600 * hours + 60 * minute + second), offsetMs };
}

function dayOf({ marks, digits, hasMonthName }: DateMarks, order: DateOrder): number | TimeFault {
  const [a, b, c] = marks;
  if (digits[0] >= 3) return dayFrom({ year: a, month: b, day: c });
  if (hasMonthName) return dayFrom({ year: yearOf(c, digits[2]), month: b, day: a });
  if (digits[2] < 3 && order === "ymd") return dayFrom({ year: yearOf(a, digits[0]), month: b, day: c });
  const year = yearOf(c, digits[2]);
  return order === "mdy" ? dayFrom({ year, month: a, day: b }) : dayFrom({ year, month: b, day: a });
}

function dayFrom({ year, month, day }: { year: number; month: number; day: number }): number | TimeFault {
  const atMs = Date.UTC(year, month - 1, day);
  const date = new Date(atMs);
  const exists = date.getUTCMonth() === month - 1 && date.getUTCDate() === day && year >= 1900;
  return exists ? atMs : "no-such-date";
}

/** Years of two digits are of this century up to 79; the usual pivot. */
const yearOf = (year: number, digits: number): number =>
  digits >= 3 ? year : year + (year < 80 ? 2000 : 1900);

type Three<T> = readonly [T, T, T];

function marksOf(text: string, found: string, parts: Three<string | undefined>): DateMarks {
  const [a = "", b = "", c = ""] = parts;
  return {
    marks: [Number(a), Number(b), Number(c)],
    digits: [a.length, b.length, c.length],
    hasMonthName: false,
    rest: text.slice(found.length),
  };
}

function withMonth(
  text: string,
  found: string,
  [a, month, c]: readonly [string | undefined, number, string | undefined],
): DateMarks {
  return { ...marksOf(text, found, [a, String(month), c]), hasMonthName: true };
}

/** English names and their first three letters; 1–12. */
function monthOf(name: string | undefined): number | null {
  const index = months.indexOf((name ?? "").slice(0, 3).toLowerCase());
  return index < 0 ? null : index + 1;
}
