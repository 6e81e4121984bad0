import type { Decimal, Delimiter } from "./airCsvPlan.ts";
import type { CsvRow } from "./csvRows.ts";
import { makeRowReader } from "./csvRows.ts";
import { looksLikeNumber } from "./numberText.ts";
import { dateMarks, isClockText } from "./timeText.ts";

/** In this order where two split a file equally well: the rarer a mark is in numbers and dates, the sooner. */
const delimiters: readonly Delimiter[] = ["\t", ";", "|", ",", " "];

export type Dialect = {
  readonly delimiter: Delimiter;
  readonly decimal: Decimal;
  readonly rows: readonly CsvRow[];
};

/** The delimiter that splits most lines alike and leaves the most cells that are a number or a time as a whole; or the one that is known. */
export function guessDialect(text: string, known?: Delimiter): Dialect {
  const tried = (known === undefined ? delimiters : [known]).map((delimiter) => {
    const reader = makeRowReader(delimiter);
    const rows = [...reader.push(text), ...reader.end()];
    return { delimiter, rows, score: scoreOf(rows) };
  });
  const best = tried.reduce((a, b) => (b.score > a.score + 1e-9 ? b : a));
  return { delimiter: best.delimiter, rows: best.rows, decimal: guessDecimal(best.rows) };
}

/** The number of cells most rows have. */
export function usualWidth(rows: readonly CsvRow[]): number {
  const counts = new Map<number, number>();
  for (const { cells } of rows) counts.set(cells.length, (counts.get(cells.length) ?? 0) + 1);
  return [...counts].reduce((best, one) => (one[1] > best[1] ? one : best), [0, 0])[0];
}

function scoreOf(rows: readonly CsvRow[]): number {
  const width = usualWidth(rows);
  if (width < 2) return 0;
  const alike = rows.filter(({ cells }) => cells.length === width);
  const cells = alike.flatMap((row) => row.cells).filter((cell) => cell !== "");
  const whole = cells.filter((cell) => looksLikeNumber(cell) || isClockText(cell) || isWholeDate(cell));
  return (alike.length / rows.length) * (whole.length / Math.max(1, cells.length));
}

/** A date, and behind it nothing or a time: not also the next column. */
function isWholeDate(text: string): boolean {
  const rest = dateMarks(text)?.rest;
  return rest !== undefined && (rest.trim() === "" || isClockText(rest.replace(/^[Tt, ]+/, "")));
}

/** A comma where more cells need one to be a number than need a point. */
function guessDecimal(rows: readonly CsvRow[]): Decimal {
  const cells = rows.flatMap((row) => row.cells);
  const count = (form: RegExp): number => cells.filter((cell) => form.test(cell)).length;
  return count(/^[-+−]?\d+,\d+(?!\S*[:/])/) > count(/^[-+−]?\d+\.\d+(?!\S*[.:/])/) ? "," : ".";
}
