import type { Steps } from "../../geometry/steps.ts";
import type { PatternStage } from "../patternMessages.ts";

/** One piece of work as its doer sees it: whether to stop, and whom to tell how far it is. */
export type Work = {
  readonly signal: AbortSignal;
  readonly tell: (stage: PatternStage, share: number) => void;
};

/** Thrown inside the worker when the page no longer wants the answer. */
export class Stopped extends Error {}

/** How long a worker may go without hearing whether it should stop. */
const breathMs = 30;

/** Runs steps to the end, hearing messages about every 30 ms. */
export async function drive<Result>(
  steps: Steps<Result>,
  stage: PatternStage,
  { signal, tell }: Work,
): Promise<Result> {
  let since = performance.now();
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
    if (performance.now() - since < breathMs) continue;
    tell(stage, step.value);
    await breathe(signal);
    since = performance.now();
  }
}

/** Lets waiting messages in, then goes on unless one of them said stop. A timer would wait 4 ms for nothing. */
export async function breathe(signal: AbortSignal): Promise<void> {
  await new Promise<void>((done) => {
    const { port1, port2 } = new MessageChannel();
    port1.addEventListener("message", () => {
      port1.close();
      done();
    });
    port1.start();
    port2.postMessage(null);
  });
  if (signal.aborted) throw new Stopped();
}
