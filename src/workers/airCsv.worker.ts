import { guessAirCsv } from "./airCsv/guessAirCsv.ts";
import { previewAirCsv } from "./airCsv/previewAirCsv.ts";
import type { AirCsvProgress, AirCsvResult } from "./airCsv/readAirCsv.ts";
import { readAirCsv } from "./airCsv/readAirCsv.ts";
import type { AirCsvJob, AirCsvReply } from "./airCsvMessages.ts";

addEventListener("message", (event: MessageEvent<AirCsvJob>) => {
  void work(event.data).catch(() => tell({ says: "failed" }));
});

const tell = (reply: AirCsvReply, hand: Transferable[] = []): void => postMessage(reply, hand);

async function work(job: AirCsvJob): Promise<void> {
  switch (job.do) {
    case "guess":
      return tell({ says: "guessed", guess: await guessAirCsv(job.file, job.options) });
    case "preview":
      return tell({ says: "previewed", rows: await previewAirCsv(job.file, job.plan, job.options) });
    case "read": {
      const onProgress = (progress: AirCsvProgress): void => tell({ says: "progress", progress });
      const result = await readAirCsv(job.file, job.plan, { ...job.options, onProgress });
      return tell({ says: "read", result }, buffersOf(result));
    }
  }
}

/** Handed over, not copied. */
function buffersOf(result: AirCsvResult): Transferable[] {
  if (!result.ok) return [];
  const { atS, airC, rh, pressurePa, hasPressure } = result.air;
  return [atS, airC, rh, pressurePa, hasPressure].flatMap((column) => (column ? [column.buffer] : []));
}
