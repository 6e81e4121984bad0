import type { AirCsvPlan, PlanGap } from "./airCsvPlan.ts";
import { planGaps } from "./airCsvPlan.ts";
import type { BadLine } from "./airCsvRow.ts";
import { mostAheadMs, rowReader } from "./airCsvRow.ts";
import { makeRowReader, decodedText } from "./csvRows.ts";
import type { Merged, PackedAir } from "./packAir.ts";
import { airPile } from "./packAir.ts";

/** Bad lines told one by one; past this they are only counted. */
const mostTold = 1000;
export type BadLines = { readonly count: number; readonly first: readonly BadLine[] };

export type AirCsvResult =
  | {
      readonly ok: true;
      readonly air: PackedAir;
      /** Lines from the first reading on that were not empty. */
      readonly lines: number;
      readonly bad: BadLines;
      readonly merged: Merged;
    }
  | { readonly ok: false; readonly why: "plan-gaps"; readonly gaps: readonly PlanGap[] }
  | { readonly ok: false; readonly why: "unknown-zone" | "aborted" }
  | { readonly ok: false; readonly why: "bad-lines" | "no-readings"; readonly bad: BadLines };

export type AirCsvProgress = { readonly bytesRead: number; readonly bytes: number; readonly lines: number };

export type AirCsvOptions = {
  /** "skip": bad lines are left out and told. "refuse": one bad line, and nothing is read; all of them are told. */
  readonly onBad: "skip" | "refuse";
  /** Now, epoch ms: no reading may be more than a day ahead of it. */
  readonly nowMs: number;
  /** Moments already stored, epoch s: they are left out and counted. */
  readonly storedS?: Float64Array | undefined;
  readonly onProgress?: ((progress: AirCsvProgress) => void) | undefined;
  readonly signal?: AbortSignal | undefined;
  readonly pieceBytes?: number | undefined;
};

/** Reads a logger's file by a plan, piece by piece. A file that cannot be read is an answer, never an error. */
export async function readAirCsv(
  file: Blob,
  plan: AirCsvPlan,
  options: AirCsvOptions,
): Promise<AirCsvResult> {
  const { onBad, nowMs, storedS = new Float64Array(), onProgress, signal, pieceBytes } = options;
  const gaps = planGaps(plan);
  if (gaps.length > 0) return { ok: false, why: "plan-gaps", gaps };
  const readRow = rowReader(plan, { latestS: (nowMs + mostAheadMs) / 1000 });
  if (readRow === null) return { ok: false, why: "unknown-zone" };
  const rows = makeRowReader(plan.delimiter);
  const pile = airPile();
  const bad: BadLine[] = [];
  let badCount = 0;
  let lines = 0;
  const take = (some: ReturnType<typeof rows.end>): void => {
    for (const row of some) {
      if (row.line < plan.firstLine) continue;
      lines += 1;
      const result = readRow(row);
      if (result.ok) {
        pile.add(result.row);
        continue;
      }
      badCount += 1;
      if (bad.length < mostTold) bad.push(result.bad);
    }
  };
  const aborted = { ok: false, why: "aborted" } as const;
  for await (const { text, bytesRead } of decodedText(file, { encoding: plan.encoding, pieceBytes })) {
    if (signal?.aborted === true) return aborted;
    take(rows.push(text));
    onProgress?.({ bytesRead, bytes: file.size, lines });
  }
  if (signal?.aborted === true) return aborted;
  take(rows.end());
  const told = { count: badCount, first: bad };
  if (badCount > 0 && onBad === "refuse") return { ok: false, why: "bad-lines", bad: told };
  const { air, merged } = pile.pack(storedS);
  if (air.count === 0 && merged.stored === 0) return { ok: false, why: "no-readings", bad: told };
  return { ok: true, air, lines, bad: told, merged };
}
