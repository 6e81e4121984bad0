const dateFormats = new Map<string, Intl.DateTimeFormat>();
const numberFormats = new Map<string, Intl.NumberFormat>();

const januaryMs = Date.UTC(2026, 0, 1);
const julyMs = Date.UTC(2026, 6, 1);

/** Tells the device's zones apart by their offsets, so that a phone carried abroad is not shown the old clock. */
const ownClock = (): string =>
  `${new Date(januaryMs).getTimezoneOffset()} ${new Date(julyMs).getTimezoneOffset()}`;

/** The IANA name of the zone the device's clock is set to. */
export const deviceZone = (): string => Intl.DateTimeFormat().resolvedOptions().timeZone;

/**
 * A date and clock writer, made once a locale and way of writing: making one takes a hundred times as long as using it.
 * Without a `timeZone` it writes by the device's own clock.
 */
export function dateFormat(locale: string, options: Intl.DateTimeFormatOptions = {}): Intl.DateTimeFormat {
  const key = `${locale} ${JSON.stringify(options)} ${options.timeZone ?? ownClock()}`;
  const kept = dateFormats.get(key);
  if (kept !== undefined) return kept;
  const made = new Intl.DateTimeFormat(locale, options);
  dateFormats.set(key, made);
  return made;
}

/** A number writer, made once a locale and way of writing. */
export function numberFormat(locale: string, options: Intl.NumberFormatOptions = {}): Intl.NumberFormat {
  const key = `${locale} ${JSON.stringify(options)}`;
  const kept = numberFormats.get(key);
  if (kept !== undefined) return kept;
  const made = new Intl.NumberFormat(locale, options);
  numberFormats.set(key, made);
  return made;
}

/** "Thu": how a day is named where a plot has little room. */
export const weekdayText = (at: number, locale: string): string =>
  dateFormat(locale, { weekday: "short" }).format(at);
