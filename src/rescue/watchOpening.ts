import type { RescuePage } from "./rescuePage.ts";
import { problemOf } from "./startProblem.ts";

/** What happens while a store opens; each is told as it comes. */
export type OpeningWatch = {
  readonly blocked: () => void;
  readonly upgrading: (done: number, of: number | null) => void;
  readonly opened: () => void;
  readonly failed: (error: unknown) => void;
};

/**
 * Shows on the plain page how the opening of the store goes, and takes the page away once it has opened. No answer
 * within `slowMs` is said too, unless something is known: an upgrade that runs, or an older tab that holds it.
 */
export function watchOpening(
  page: Pick<RescuePage, "show" | "hide">,
  { slowMs = 5000 }: { readonly slowMs?: number } = {},
): OpeningWatch {
  const slow = setTimeout(() => page.show({ kind: "no-answer", afterS: Math.round(slowMs / 1000) }), slowMs);
  let isOver = false;
  const heard = (say: () => void): void => {
    clearTimeout(slow);
    if (!isOver) say();
  };
  const end = (say: () => void): void => {
    heard(say);
    isOver = true;
  };
  return {
    blocked: () => heard(() => page.show({ kind: "older-tab" })),
    upgrading: (done, of) => heard(() => page.show({ kind: "upgrading", done, of })),
    opened: () => end(() => page.hide()),
    // Another try may still open it.
    failed: (error) => heard(() => page.show(problemOf(error, "store"))),
  };
}
