import type { KilnCsv, KilnCsvOptions } from "./kilnCsv.ts";
import type { KilnCsvJob, KilnCsvReply } from "./kilnCsvMessages.ts";

/** "failed": the file could not be read. "no-worker": the browser has none, or it did not load. */
export type KilnCsvAnswer =
  KilnCsv | { readonly ok: false; readonly why: "aborted" | "failed" | "no-worker" };

export type KilnCsvClient = (
  file: Blob,
  options: KilnCsvOptions & { readonly signal?: AbortSignal | undefined },
) => Promise<KilnCsvAnswer>;

/** Reads a kiln logger's file off the page's thread, each in a worker of its own. Aborting ends it at once. Never rejects. */
export const makeKilnCsvClient =
  (startWorker: () => Worker = startKilnCsvWorker): KilnCsvClient =>
  (file, { signal, ...options }) =>
    new Promise((settle) => {
      let worker: Worker | null = null;
      const end = (answer: KilnCsvAnswer): void => {
        worker?.terminate();
        signal?.removeEventListener("abort", abort);
        settle(answer);
      };
      const abort = (): void => end({ ok: false, why: "aborted" });
      const lost = (): void => end({ ok: false, why: "no-worker" });
      if (signal?.aborted === true) return abort();
      signal?.addEventListener("abort", abort);
      try {
        worker = startWorker();
      } catch {
        return lost();
      }
      worker.addEventListener("error", lost);
      worker.addEventListener("messageerror", lost);
      worker.addEventListener("message", ({ data }: MessageEvent<KilnCsvReply>) =>
        end(data.says === "read" ? data.read : { ok: false, why: "failed" }),
      );
      const job: KilnCsvJob = { file, options };
      worker.postMessage(job);
    });

function startKilnCsvWorker(): Worker {
  return new Worker(new URL("./kilnCsv.worker.ts", import.meta.url), { type: "module", name: "kiln-csv" });
}
