import type { PhotoFailure, PhotoJob, PhotoReply, ShrunkPhoto } from "./photoMessages.ts";

export type PhotoResult =
  | ({ readonly ok: true } & ShrunkPhoto)
  | { readonly ok: false; readonly why: PhotoFailure | "aborted" | "no-worker" };

export type PhotoClient = {
  /** Shrinks a picture off the page's thread. Aborting ends it at once. Never rejects. */
  readonly shrink: (file: Blob, signal?: AbortSignal) => Promise<PhotoResult>;
};

type Waiting = { readonly job: PhotoJob; readonly settle: (result: PhotoResult) => void };

/**
 * One worker at a time, one picture at a time: a full picture takes about 50 MB while it is open, and a phone asked
 * for five of them at once may kill the page. The worker ends when nothing is left to do.
 */
export function makePhotoClient(startWorker: () => Worker = startPhotoWorker): PhotoClient {
  let lastId = 0;
  let queue: readonly Waiting[] = [];
  let worker: Worker | null = null;

  const end = (): void => {
    worker?.terminate();
    worker = null;
  };
  const finish = (id: number, result: PhotoResult): void => {
    const wasRunning = queue[0]?.job.id === id;
    const done = queue.find(({ job }) => job.id === id);
    queue = queue.filter((waiting) => waiting !== done);
    done?.settle(result);
    if (wasRunning) runFirst();
  };
  const fail = (): void => {
    end();
    const running = queue[0];
    if (running) finish(running.job.id, { ok: false, why: "no-worker" });
  };
  const runFirst = (): void => {
    const first = queue[0];
    if (!first) return end();
    try {
      worker ??= listening(startWorker(), {
        onReply: ({ id, ...result }) => finish(id, result),
        onError: fail,
      });
      worker.postMessage(first.job);
    } catch {
      fail();
    }
  };

  return {
    shrink: async (file, signal) => {
      if (signal?.aborted === true) return { ok: false, why: "aborted" };
      return new Promise((settle) => {
        lastId += 1;
        const job: PhotoJob = { id: lastId, file };
        queue = [...queue, { job, settle }];
        signal?.addEventListener("abort", () => {
          // There is no other way to stop a picture halfway.
          if (queue[0]?.job.id === job.id) end();
          finish(job.id, { ok: false, why: "aborted" });
        });
        if (queue.length === 1) runFirst();
      });
    },
  };
}

function startPhotoWorker(): Worker {
  return new Worker(new URL("./photo.worker.ts", import.meta.url), { type: "module", name: "photo" });
}

function listening(
  worker: Worker,
  { onReply, onError }: { readonly onReply: (reply: PhotoReply) => void; readonly onError: () => void },
): Worker {
  worker.addEventListener("message", (event: MessageEvent<PhotoReply>) => onReply(event.data));
  worker.addEventListener("error", onError);
  worker.addEventListener("messageerror", onError);
  return worker;
}
