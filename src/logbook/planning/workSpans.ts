import type { Span } from "../dip/dipProposal.ts";

/**
 * The hours in which someone is at the bucket, in order; null where nobody said, and then every hour counts. A look
 * ahead past the last of them finds none.
 */
export type WorkSpans = readonly Span[] | null;

/** The first moment from `at` on in which someone is there, epoch ms; null where there is none. */
export function firstWithin(spans: WorkSpans, at: number): number | null {
  if (spans === null) return at;
  const span = spans.find(({ to }) => to >= at);
  return span === undefined ? null : Math.max(at, span.from);
}

/** The last moment up to `at` in which someone is there, epoch ms; null where there is none. */
export function lastWithin(spans: WorkSpans, at: number): number | null {
  if (spans === null) return at;
  const span = spans.findLast(({ from }) => from <= at);
  return span === undefined ? null : Math.min(at, span.to);
}
