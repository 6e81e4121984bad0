import { tz } from "@date-fns/tz";
import { millisecondsInHour as hourMs, millisecondsInMinute as minuteMs } from "date-fns/constants";
import { differenceInCalendarDays } from "date-fns/differenceInCalendarDays";
import { dateFormat } from "./formatters.ts";

/** "18:40", or "6:40 PM" where the locale writes so; in the device's zone unless told another. */
export function clockTime(at: number, locale: string, zone?: string): string {
  return dateFormat(locale, { timeStyle: "short", timeZone: zone }).format(at);
}

/** "today 18:40", "tomorrow 06:10", "Thursday 18:40" within a week, else "12 March 18:40". */
export function dayTime(at: number, now: number, locale: string, zone?: string): string {
  return `${dayName(at, now, locale, zone)} ${clockTime(at, locale, zone)}`;
}

export function dayName(at: number, now: number, locale: string, zone?: string): string {
  const days = daysApart(at, now, zone);
  if (days === 0) return "today";
  if (days === 1) return "tomorrow";
  if (days === -1) return "yesterday";
  const write = (options: Intl.DateTimeFormatOptions): string =>
    dateFormat(locale, { ...options, timeZone: zone }).format(at);
  if (Math.abs(days) < 7) return write({ weekday: "long" });
  const sameYear =
    write({ year: "numeric" }) === dateFormat(locale, { year: "numeric", timeZone: zone }).format(now);
  return write({ day: "numeric", month: "long", ...(sameYear ? {} : { year: "numeric" }) });
}

/** The clock alone for today, else with its day: "18:40", "tomorrow 06:10". */
export function soonTime(at: number, now: number, locale: string, zone?: string): string {
  return daysApart(at, now, zone) === 0 ? clockTime(at, locale, zone) : dayTime(at, now, locale, zone);
}

/** "at 18:40" today, else "tomorrow 06:10": for the middle of a sentence. */
export const atTime = (at: number, now: number, locale: string, zone?: string): string =>
  `${daysApart(at, now, zone) === 0 ? "at " : ""}${soonTime(at, now, locale, zone)}`;

/** "just now", "12 min ago", "in 3 h 20 min". */
export function ago(at: number, now: number): string {
  const apart = now - at;
  if (Math.abs(apart) < minuteMs) return "just now";
  return apart > 0 ? `${duration(apart)} ago` : `in ${duration(-apart)}`;
}

/** "45 s", "12 min", "3 h 20 min", "2 days 4 h": the two largest units that matter. */
export function duration(ms: number): string {
  if (ms < minuteMs) return `${Math.round(ms / 1000)} s`;
  const minutes = Math.round(ms / minuteMs);
  if (minutes < 60) return `${minutes} min`;
  if (minutes < 24 * 60) return joined(Math.floor(minutes / 60), "h", minutes % 60, "min");
  const hours = Math.round(ms / hourMs);
  const days = Math.floor(hours / 24);
  return joined(days, days === 1 ? "day" : "days", days < 10 ? hours % 24 : 0, "h");
}

function joined(large: number, largeUnit: string, small: number, smallUnit: string): string {
  return small === 0 ? `${large} ${largeUnit}` : `${large} ${largeUnit} ${small} ${smallUnit}`;
}

/** Midnights between two moments there; below 0 where the first is the earlier. */
const daysApart = (at: number, from: number, zone?: string): number =>
  differenceInCalendarDays(at, from, zone === undefined ? {} : { in: tz(zone) });

/** The words of this app are English: take the reader's own English if they have one, for clock and dates. */
export function pickLocale(languages: readonly string[]): string {
  return languages.find((language) => language === "en" || language.startsWith("en-")) ?? "en-GB";
}
