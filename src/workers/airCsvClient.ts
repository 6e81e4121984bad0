import type { AirCsvPlan } from "./airCsv/airCsvPlan.ts";
import type { AirCsvGuess, GuessOptions } from "./airCsv/guessAirCsv.ts";
import type { PreviewRow } from "./airCsv/previewAirCsv.ts";
import type { AirCsvOptions, AirCsvProgress, AirCsvResult } from "./airCsv/readAirCsv.ts";
import type { AirCsvJob, AirCsvReply } from "./airCsvMessages.ts";

/** "failed": the file could not be read. "no-worker": the browser has none, or it did not load. */
type NotDone = { readonly ok: false; readonly why: "aborted" | "failed" | "no-worker" };

type WithSignal = { readonly signal?: AbortSignal | undefined };

export type AirCsvClient = {
  readonly guess: (file: Blob, options: GuessOptions & WithSignal) => Promise<AirCsvGuess | NotDone>;
  /** The first rows as a plan reads them; asked again whenever the person changes the plan. */
  readonly preview: (
    file: Blob,
    plan: AirCsvPlan,
    options: { readonly nowMs: number; readonly mostRows: number } & WithSignal,
  ) => Promise<{ readonly ok: true; readonly rows: readonly PreviewRow[] } | NotDone>;
  readonly read: (
    file: Blob,
    plan: AirCsvPlan,
    options: Omit<AirCsvOptions, "pieceBytes">,
  ) => Promise<AirCsvResult | NotDone>;
};

/** Reads loggers' files off the page's thread, each in a worker of its own. Aborting ends it at once. Never rejects. */
export function makeAirCsvClient(startWorker: () => Worker = startAirCsvWorker): AirCsvClient {
  return {
    guess: async (file, { signal, ...options }) => {
      const reply = await ask(startWorker, { do: "guess", file, options }, { signal });
      return "says" in reply ? reply.guess : reply;
    },
    preview: async (file, plan, { signal, ...options }) => {
      const reply = await ask(startWorker, { do: "preview", file, plan, options }, { signal });
      return "says" in reply ? { ok: true, rows: reply.rows } : reply;
    },
    read: async (file, plan, { onProgress, signal, ...options }) => {
      const reply = await ask(startWorker, { do: "read", file, plan, options }, { onProgress, signal });
      return "says" in reply ? reply.result : reply;
    },
  };
}

type LastSays = { readonly guess: "guessed"; readonly preview: "previewed"; readonly read: "read" };
type LastReply<J extends AirCsvJob> = Extract<AirCsvReply, { says: LastSays[J["do"]] }>;

function ask<J extends AirCsvJob>(
  startWorker: () => Worker,
  job: J,
  {
    onProgress,
    signal,
  }: {
    readonly onProgress?: ((progress: AirCsvProgress) => void) | undefined;
    readonly signal?: AbortSignal | undefined;
  },
): Promise<LastReply<J> | NotDone> {
  return new Promise((settle) => {
    let worker: Worker | null = null;
    const end = (result: LastReply<J> | NotDone): void => {
      worker?.terminate();
      signal?.removeEventListener("abort", abort);
      settle(result);
    };
    const abort = (): void => end({ ok: false, why: "aborted" });
    if (signal?.aborted === true) return abort();
    signal?.addEventListener("abort", abort);
    const lost = (): void => end({ ok: false, why: "no-worker" });
    try {
      worker = startWorker();
    } catch {
      return lost();
    }
    worker.addEventListener("error", lost);
    worker.addEventListener("messageerror", lost);
    worker.addEventListener("message", ({ data }: MessageEvent<AirCsvReply>) => {
      if (data.says === "progress") onProgress?.(data.progress);
      else if (data.says === "failed") end({ ok: false, why: "failed" });
      // A worker answers the job it was given, and only that.
      else end(data as LastReply<J>);
    });
    worker.postMessage(job);
  });
}

function startAirCsvWorker(): Worker {
  return new Worker(new URL("./airCsv.worker.ts", import.meta.url), { type: "module", name: "air-csv" });
}
