import {
  makePatternClient,
  type Answered,
  type NotAnswered,
  type PatternClient,
} from "../../../workers/patternClient.ts";
import type { PatternAsked, PatternProgress, PatternWork } from "../../../workers/patternMessages.ts";
import { deviceCaps } from "./deviceCaps.ts";
import type { PatternStudy } from "./patternStudy.ts";

type Options = {
  readonly signal?: AbortSignal | undefined;
  readonly onProgress?: ((progress: PatternProgress) => void) | undefined;
};
/** Questions about a mesh that is there. */
export type Question = Exclude<PatternWork, "open" | "restore">;
type OnBench = { readonly id: string; readonly isWhole: boolean };
type LastFile = { readonly id: string; readonly file: Blob };

/**
 * The one worker of this page and the pattern that lies in it, so that the mesh read on the list of patterns is still
 * there on the pattern's own page.
 */
export type PatternSession = {
  /** `keptIds`: of patterns kept that may be of this very file. */
  readonly open: (
    from: { readonly file: Blob; readonly name: string; readonly keptIds: readonly string[] },
    options?: Options,
  ) => Promise<Answered<"open"> | NotAnswered>;
  /** Lays the pattern on the bench first where another lies there, or none. */
  readonly ask: <Q extends Question>(
    study: PatternStudy,
    question: Q,
    asked: PatternAsked[Q],
    options?: Options,
  ) => Promise<Answered<Q> | NotAnswered>;
  /** Whether sums run on the whole mesh; null while it does not lie on the bench. */
  readonly isWhole: (id: string) => boolean | null;
  /** The file it was opened from, while this page has it at hand. */
  readonly file: (id: string) => Blob | null;
  readonly clear: () => void;
};

export function makePatternSession(client: PatternClient = makePatternClient()): PatternSession {
  let lies: OnBench | null = null;
  let last: LastFile | null = null;
  let laying: { readonly id: string; readonly done: Promise<NotAnswered | null> } | null = null;

  const open: PatternSession["open"] = async ({ file, ...from }, options) => {
    lies = null;
    const opened = await client.ask("open", { file, ...from, caps: deviceCaps() }, options);
    if (opened.ok) {
      const { id, found } = opened.answer;
      lies = { id, isWhole: found.analysed.isWhole };
      last = { id, file };
    }
    return opened;
  };
  /** Null when it lies there. Not to be aborted by one of several who wait for it. */
  const layOnce = async (study: PatternStudy): Promise<NotAnswered | null> => {
    const { original, found, file, holesClosed, seamsJoined } = study;
    const isAll = found.analysed.isWhole && found.display.idx.length / 3 === found.analysed.triangles;
    if (original !== null && !isAll) {
      const opened = await open({ file: original, name: file.name, keptIds: [study.id] });
      const joined =
        opened.ok && seamsJoined ? await client.ask("join-seams", { caps: deviceCaps() }) : opened;
      const closed =
        joined.ok && holesClosed ? await client.ask("close-holes", { caps: deviceCaps() }) : joined;
      return closed.ok ? null : closed;
    }
    const restored = await client.ask("restore", { mesh: found.display });
    if (!restored.ok) return restored;
    lies = { id: study.id, isWhole: isAll };
    return null;
  };
  const lay = async (study: PatternStudy): Promise<NotAnswered | null> => {
    if (laying?.id !== study.id) {
      const done = layOnce(study).finally(() => {
        if (laying?.done === done) laying = null;
      });
      laying = { id: study.id, done };
    }
    return laying.done;
  };

  return {
    open,
    isWhole: (id) => (lies?.id === id ? lies.isWhole : null),
    file: (id) => (last?.id === id ? last.file : null),
    clear: () => {
      lies = null;
      last = null;
      client.end();
    },
    ask: async (study, question, asked, options) => {
      for (let tries = 0; ; tries++) {
        const fault = lies?.id === study.id ? null : await lay(study);
        if (fault !== null) return fault;
        const result = await client.ask(
          question,
          { ...asked, isFilled: study.hollowsAre === "metal" },
          options,
        );
        // The worker was ended to stop something, or by the system for its memory: its mesh is gone.
        const isLost = !result.ok && (result.why === "no-mesh" || result.why === "no-worker");
        if (isLost) lies = null;
        if (!isLost || tries > 0) return result;
      }
    },
  };
}

let shared: PatternSession | null = null;
export function patternSession(): PatternSession {
  shared ??= makePatternSession();
  return shared;
}
