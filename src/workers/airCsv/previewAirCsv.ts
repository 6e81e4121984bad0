import type { AirCsvPlan } from "./airCsvPlan.ts";
import type { RowResult } from "./airCsvRow.ts";
import { mostAheadMs, rowReader } from "./airCsvRow.ts";
import type { CsvRow } from "./csvRows.ts";
import { makeRowReader, decodedText } from "./csvRows.ts";

/** A row of the file's start and what the plan makes of it: null above the first reading, or while the plan has gaps. */
export type PreviewRow = CsvRow & { readonly result: RowResult | null };

const headBytes = 32_768;

/** The first `mostRows` rows as a plan reads them, gaps and all: for the table and the plot that are confirmed. */
export async function previewAirCsv(
  file: Blob,
  plan: AirCsvPlan,
  { nowMs, mostRows }: { nowMs: number; mostRows: number },
): Promise<readonly PreviewRow[]> {
  const head = file.slice(0, headBytes);
  const reader = makeRowReader(plan.delimiter);
  const rows: CsvRow[] = [];
  for await (const { text } of decodedText(head, { encoding: plan.encoding }))
    rows.push(...reader.push(text));
  // The last line of a part is no whole one.
  if (file.size <= headBytes) rows.push(...reader.end());
  const read = rowReader(plan, { latestS: (nowMs + mostAheadMs) / 1000 });
  return rows
    .slice(0, mostRows)
    .map((row) => ({ ...row, result: row.line < plan.firstLine ? null : (read?.(row) ?? null) }));
}
