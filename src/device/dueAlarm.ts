export type Due = { readonly id: string; readonly dueMs: number };

/** What is remembered from one look to the next. `waiting` and `rung` may die with the page, `atMs` is stored. */
export type LastLook = {
  readonly atMs: number;
  readonly waiting: readonly string[];
  /** What has come and was not put off since: a time that goes along with the clock does not come twice. */
  readonly rung?: readonly string[] | undefined;
};

export type Look<T extends Due> = {
  /** Came due just now, so ring. */
  readonly ringNow: readonly T[];
  /** Came due while nobody looked, too long ago to ring as if it were news: list it first. */
  readonly whileClosed: readonly T[];
  /** The one to come due next, if any. */
  readonly next: T | null;
  /** How long to wait for the next look, ms. */
  readonly lookAgainMs: number;
  readonly seen: LastLook;
};

/** Hidden pages get one timer a minute, so a due time may be found up to this late and still be news. */
export const newsMs = 90_000;

/** What has rung and is put off by more than this rings again. */
const againMs = 120_000;

/** Longest wait: timers stand still while a phone sleeps, so the clock is looked at often. */
const longestWaitMs = 30_000;

/**
 * Sorts due times at `nowMs` (epoch ms, as all here) into what rings, what was missed and what is to come.
 *
 * Each due time is told once: when it lies after the last look, or when it was waiting at the last look and a
 * changed forecast has since put it behind that look; and again only where it was put off well into the future, as
 * the step of a plan that moves on with the clock is not. The look handed back is at `nowMs` even where the clock was
 * set back: a stretch lived twice may ring twice, and loses nothing. Earliest due first.
 */
export function lookAtDues<T extends Due>({
  dues,
  seen,
  nowMs,
}: {
  readonly dues: readonly T[];
  readonly seen: LastLook;
  readonly nowMs: number;
}): Look<T> {
  const ordered = [...dues].sort((a, b) => a.dueMs - b.dueMs || (a.id < b.id ? -1 : 1));
  const waited = new Set(seen.waiting);
  const rung = new Set(seen.rung);
  const come = ordered.filter(({ dueMs }) => dueMs <= nowMs);
  const news = come.filter(({ id, dueMs }) => !rung.has(id) && (dueMs > seen.atMs || waited.has(id)));
  const toCome = ordered.filter(({ dueMs }) => dueMs > nowMs);
  // What moved behind the last look has not been missed for longer than since that look.
  const missed = ({ dueMs }: Due): boolean => nowMs - Math.max(dueMs, seen.atMs) > newsMs;
  const putOff = new Set(toCome.filter(({ dueMs }) => dueMs > nowMs + againMs).map(({ id }) => id));
  for (const { id } of come) rung.add(id);
  const next = toCome[0] ?? null;
  return {
    ringNow: news.filter((due) => !missed(due)),
    whileClosed: news.filter(missed),
    next,
    lookAgainMs: next === null ? longestWaitMs : Math.min(longestWaitMs, next.dueMs - nowMs),
    seen: {
      atMs: nowMs,
      waiting: toCome.map(({ id }) => id),
      rung: [...rung].filter((id) => !putOff.has(id)),
    },
  };
}
