/**
 * Long work cut in steps: it yields how far it is, 0–1, and returns its result. Whoever drives it decides when
 * to breathe and when to stop; to stop is not to ask for the next step.
 */
export type Steps<Result> = Generator<number, Result, void>;

/** Part of a longer work: its 0–1 shown as `from`–`to`. */
export function* between<Result>(from: number, to: number, steps: Steps<Result>): Steps<Result> {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
    yield from + (to - from) * step.value;
  }
}
