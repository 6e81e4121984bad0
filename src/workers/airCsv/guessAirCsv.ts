import type { AirCsvPlan, Delimiter, Encoding } from "./airCsvPlan.ts";
import type { CsvRow } from "./csvRows.ts";
import { encodingOf, makeRowReader } from "./csvRows.ts";
import type { ColumnDoubt } from "./guessColumns.ts";
import { guessColumns } from "./guessColumns.ts";
import { guessDialect, usualWidth } from "./guessDialect.ts";
import type { OpenDate } from "./guessTime.ts";
import { guessTime } from "./guessTime.ts";
import { looksLikeNumber } from "./numberText.ts";
import { dateMarks, isClockText } from "./timeText.ts";

export type AirCsvGuess =
  | {
      readonly ok: true;
      readonly plan: AirCsvPlan;
      /** A date that can be read in two orders: the person must say which; null where a day over 12 tells. */
      readonly openDate: OpenDate | null;
      readonly doubts: readonly ColumnDoubt[];
    }
  | { readonly ok: false; readonly why: "empty" | "no-rows" };

export type GuessOptions = { readonly zone: string; readonly delimiter?: Delimiter | undefined };

const headBytes = 65_536;
const sliceBytes = 4096;
const slices = 16;
const mostHeadRows = 400;

/**
 * Guesses how a logger's file is to be read, from its start and from slices all through it. `zone`: the person's own;
 * `delimiter` where the person has said it.
 */
export async function guessAirCsv(
  file: Blob,
  { zone, delimiter: known }: GuessOptions,
): Promise<AirCsvGuess> {
  const head = new Uint8Array(await file.slice(0, headBytes).arrayBuffer());
  if (head.length === 0) return { ok: false, why: "empty" };
  const encoding = encodingOf(head);
  const { delimiter, decimal, rows } = guessDialect(
    wholeLines(head, encoding, { isEnd: file.size <= headBytes }),
    known,
  );
  const width = usualWidth(rows);
  const start = rows.findIndex(
    (row, i) =>
      isReading(row, width) &&
      [1, 2].every((n) => rows[i + n] === undefined || isReading(rows[i + n], width)),
  );
  const first = rows[start];
  if (first === undefined || width < 2) return { ok: false, why: "no-rows" };
  const names = namesOf(rows.slice(0, start), first.cells.length);
  const further = await furtherRows(file, { encoding, delimiter });
  const readings = [...rows.slice(start, start + mostHeadRows), ...further].map(({ cells }) => cells);
  const guessed = guessTime(readings, { names, zone });
  const time = guessed?.time ?? null;
  const taken = time === null ? [] : time.kind === "epoch" ? [time.column] : time.columns;
  const { doubts, ...columns } = guessColumns(readings, { names, decimal, taken });
  const plan = { encoding, delimiter, decimal, firstLine: first.line, names, time, ...columns };
  return { ok: true, plan, openDate: guessed?.open ?? null, doubts };
}

/** As wide as most, with a time and a number, or with two numbers. */
function isReading(row: CsvRow | undefined, width: number): boolean {
  if (row === undefined || row.cells.length < 2 || Math.abs(row.cells.length - width) > 1) return false;
  const isTime = (cell: string): boolean => isClockText(cell) || dateMarks(cell) !== null;
  const times = row.cells.filter(isTime).length;
  const numbers = row.cells.filter((cell) => looksLikeNumber(cell) && !isTime(cell)).length;
  return numbers + Math.min(1, times) >= 2 && numbers >= 1;
}

/** The last row above the readings that is as wide as they are and mostly words. */
function namesOf(above: readonly CsvRow[], width: number): readonly string[] {
  const named = above.findLast(({ cells }) => {
    const words = cells.filter((cell) => cell !== "" && !looksLikeNumber(cell) && dateMarks(cell) === null);
    return Math.abs(cells.length - width) <= 1 && words.length >= cells.length / 2;
  });
  return Array.from({ length: width }, (_, i) => named?.cells[i] ?? "");
}

/** Whole rows from slices spread over the file: a day over 12 may come late, a sensor may warm up. */
async function furtherRows(
  file: Blob,
  { encoding, delimiter }: Pick<AirCsvPlan, "encoding" | "delimiter">,
): Promise<readonly CsvRow[]> {
  if (file.size <= headBytes) return [];
  const starts = Array.from({ length: slices }, (_, i) => {
    const from = headBytes + ((file.size - headBytes) * (i + 1)) / slices - sliceBytes;
    // UTF-16 is cut between two of its pairs of bytes.
    return Math.max(headBytes, Math.floor(from / 2) * 2);
  });
  const texts = await Promise.all(
    starts.map(async (from) => {
      const bytes = new Uint8Array(await file.slice(from, from + sliceBytes).arrayBuffer());
      const text = wholeLines(bytes, encoding, { isEnd: false });
      return text.slice(text.search(/[\r\n]/) + 1);
    }),
  );
  return texts.flatMap((text) => {
    const reader = makeRowReader(delimiter);
    return [...reader.push(text), ...reader.end()];
  });
}

function wholeLines(bytes: Uint8Array, encoding: Encoding, { isEnd }: { isEnd: boolean }): string {
  const text = new TextDecoder(encoding).decode(bytes);
  return isEnd ? text : text.slice(0, Math.max(text.lastIndexOf("\n"), text.lastIndexOf("\r")) + 1);
}
