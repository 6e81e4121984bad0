import type {
  FileFault,
  PatternAnswers,
  PatternAsked,
  PatternJob,
  PatternProgress,
  PatternReply,
  PatternWork,
} from "./patternMessages.ts";

/**
 * "no-mesh": the worker has none, or not the one whose holes are to be closed: open or restore it first. "refused": the
 * message names the number that is out of its range. "failed" mostly means that memory ran out. "no-worker": the browser
 * has none, or it did not load, or it was ended.
 */
export type NotAnswered =
  | { readonly ok: false; readonly why: "aborted" | "no-mesh" | "no-worker" }
  | { readonly ok: false; readonly why: "refused" | "failed"; readonly message: string }
  | { readonly ok: false; readonly why: "fault"; readonly fault: FileFault };
export type Answered<W extends PatternWork> = { readonly ok: true; readonly answer: PatternAnswers[W] };

export type PatternClient = {
  /** Never rejects. Aborting answers at once, and ends the worker with its mesh when it does not stop by itself. */
  readonly ask: <W extends PatternWork>(
    work: W,
    asked: PatternAsked[W],
    options?: {
      readonly signal?: AbortSignal | undefined;
      readonly onProgress?: ((progress: PatternProgress) => void) | undefined;
    },
  ) => Promise<Answered<W> | NotAnswered>;
  readonly end: () => void;
};

type Waiting = {
  readonly onProgress: ((progress: PatternProgress) => void) | undefined;
  readonly settle: (result: Answered<PatternWork> | NotAnswered) => void;
};

/**
 * How long to wait for a worker that was told to stop. While it opens a file there is no mesh to lose; later, a step may be
 * seconds of work on a large mesh and a slow phone.
 */
const patienceMs = { opening: 1500, asked: 15_000 } as const;

/** One worker with one mesh, started at the first question. */
export function makePatternClient(startWorker: () => Worker = startPatternWorker): PatternClient {
  let lastId = 0;
  let worker: Worker | null = null;
  const waiting = new Map<number, Waiting>();
  /** Asked to stop and not heard of since. */
  const stopping = new Map<number, ReturnType<typeof setTimeout>>();

  const end = (): void => {
    worker?.terminate();
    worker = null;
    for (const timer of stopping.values()) clearTimeout(timer);
    stopping.clear();
    const left = [...waiting.values()];
    waiting.clear();
    for (const { settle } of left) settle({ ok: false, why: "no-worker" });
  };
  const hear = (reply: PatternReply): void => {
    const one = waiting.get(reply.id);
    if (reply.says === "progress") return one?.onProgress?.({ stage: reply.stage, share: reply.share });
    clearTimeout(stopping.get(reply.id));
    stopping.delete(reply.id);
    waiting.delete(reply.id);
    one?.settle(resultOf(reply));
  };
  const running = (): Worker => {
    if (worker !== null) return worker;
    worker = startWorker();
    worker.addEventListener("error", end);
    worker.addEventListener("messageerror", end);
    worker.addEventListener("message", ({ data }: MessageEvent<PatternReply>) => hear(data));
    return worker;
  };

  return {
    end,
    ask: async (work, asked, { signal, onProgress } = {}) => {
      if (signal?.aborted === true) return { ok: false, why: "aborted" };
      lastId += 1;
      const id = lastId;
      const result = await new Promise<Answered<PatternWork> | NotAnswered>((settle) => {
        const abort = (): void => {
          if (!waiting.delete(id)) return;
          worker?.postMessage({ id, do: "cancel" } satisfies PatternJob);
          stopping.set(id, setTimeout(end, work === "open" ? patienceMs.opening : patienceMs.asked));
          settle({ ok: false, why: "aborted" });
        };
        signal?.addEventListener("abort", abort);
        const settled: Waiting["settle"] = (answer) => {
          signal?.removeEventListener("abort", abort);
          settle(answer);
        };
        waiting.set(id, { onProgress, settle: settled });
        try {
          running().postMessage({ id, do: work, asked });
        } catch {
          waiting.delete(id);
          settled({ ok: false, why: "no-worker" });
        }
      });
      // The worker answers the question of that id, and only that.
      return result as Answered<typeof work> | NotAnswered;
    },
  };
}

function resultOf(reply: Exclude<PatternReply, { says: "progress" }>): Answered<PatternWork> | NotAnswered {
  switch (reply.says) {
    case "answer":
      return { ok: true, answer: reply.answer };
    case "fault":
      return { ok: false, why: "fault", fault: reply.fault };
    case "refused":
    case "failed":
      return { ok: false, why: reply.says, message: reply.message };
    case "no-mesh":
      return { ok: false, why: "no-mesh" };
    case "stopped":
      return { ok: false, why: "aborted" };
  }
}

function startPatternWorker(): Worker {
  return new Worker(new URL("./pattern.worker.ts", import.meta.url), { type: "module", name: "pattern" });
}
