import Papa from "papaparse";
import type { Delimiter, Encoding } from "./airCsvPlan.ts";

/** One line of a file as cells, trimmed; `line` is the number of its first physical line, from 1. */
export type CsvRow = { readonly line: number; readonly cells: readonly string[] };

export type RowReader = {
  /** Rows that are complete with this piece of text. */
  readonly push: (text: string) => readonly CsvRow[];
  readonly end: () => readonly CsvRow[];
};

/** An open quote may hold back this much text, characters; past it the quote is taken for a stray one. */
const longestOpenQuote = 65_536;

/** Splits text into rows, piece by piece: quotes by RFC 4180, any line ending, empty lines left out but counted. */
export function makeRowReader(delimiter: Delimiter): RowReader {
  let held = "";
  let line = 1;
  const read = (text: string): readonly CsvRow[] => {
    const rows = parse(text, delimiter).map(({ lines, cells }) => {
      const row = { line, cells };
      line += lines;
      return row;
    });
    return rows.filter(({ cells }) => cells.some((cell) => cell !== ""));
  };
  return {
    push: (text) => {
      const all = held + text;
      // A carriage return at the very end may have its line feed in the next piece.
      const cut = cutAt(all.endsWith("\r") ? all.slice(0, -1) : all);
      held = all.slice(cut);
      return cut === 0 ? [] : read(all.slice(0, cut));
    },
    end: () => {
      const rest = held;
      held = "";
      return rest === "" ? [] : read(rest);
    },
  };
}

/** Just behind the last line end that no quote holds open; 0 where there is none yet. */
function cutAt(text: string): number {
  const last = Math.max(text.lastIndexOf("\n"), text.lastIndexOf("\r")) + 1;
  if (!text.includes('"')) return last;
  let isOpen = false;
  let cut = 0;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code === 34) isOpen = !isOpen;
    else if ((code === 10 || code === 13) && !isOpen) cut = i + 1;
  }
  // Never between the two halves of a line end.
  if (text.charCodeAt(cut - 1) === 13 && text.charCodeAt(cut) === 10) cut += 1;
  return text.length - cut > longestOpenQuote ? last : cut;
}

type Parsed = { readonly lines: number; readonly cells: readonly string[] };

function parse(text: string, delimiter: Delimiter): readonly Parsed[] {
  const unix = text.replace(/\r\n?/g, "\n");
  const body = unix.endsWith("\n") ? unix.slice(0, -1) : unix;
  if (body === "") return [{ lines: 1, cells: [] }];
  const { data, errors } = cellsOf(body, delimiter);
  // A stray quote swallows what follows it: then every line is read by itself.
  const rows = errors.some(({ type }) => type === "Quotes")
    ? body.split("\n").map((one) => cellsOf(one, delimiter).data[0] ?? [])
    : data;
  const hasQuotes = body.includes('"');
  return rows.map((raw) => ({
    lines: hasQuotes ? 1 + raw.reduce((sum, cell) => sum + (cell.split("\n").length - 1), 0) : 1,
    cells: delimiter === " " ? raw.filter((cell) => cell !== "") : raw.map((cell) => cell.trim()),
  }));
}

const cellsOf = (text: string, delimiter: Delimiter): Papa.ParseResult<string[]> =>
  Papa.parse<string[]>(text, { delimiter, newline: "\n", quoteChar: '"', skipEmptyLines: false });

/** The encoding a file begins with: by its mark, by the zeros of UTF-16, else UTF-8 where it is valid. */
export function encodingOf(head: Uint8Array): Encoding {
  const [a, b] = head;
  if (a === 0xff && b === 0xfe) return "utf-16le";
  if (a === 0xfe && b === 0xff) return "utf-16be";
  const zeros = [0, 0];
  for (const [i, byte] of head.entries()) if (byte === 0) zeros[i % 2] = (zeros[i % 2] ?? 0) + 1;
  const [even = 0, odd = 0] = zeros;
  if (odd > head.length / 5) return "utf-16le";
  if (even > head.length / 5) return "utf-16be";
  try {
    new TextDecoder("utf-8", { fatal: true }).decode(head, { stream: true });
    return "utf-8";
  } catch {
    return "windows-1252";
  }
}

/** A file as pieces of text, in order; a mark at its start is left out. */
export async function* decodedText(
  file: Blob,
  { encoding, pieceBytes = 262_144 }: { encoding: Encoding; pieceBytes?: number | undefined },
): AsyncGenerator<{ readonly text: string; readonly bytesRead: number }> {
  const decoder = new TextDecoder(encoding);
  for (let from = 0; from < file.size; from += pieceBytes) {
    const bytes = await file.slice(from, from + pieceBytes).arrayBuffer();
    const bytesRead = Math.min(file.size, from + pieceBytes);
    yield { text: decoder.decode(bytes, { stream: bytesRead < file.size }), bytesRead };
  }
}
