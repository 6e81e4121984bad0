import type { PlannedTrack } from "../../../physics/metal/pourDay.ts";

/** A track that begins so much of the whole before all others is cut off at the picture's edge. */
const aloneShare = 0.5;

/**
 * From when a pour day is drawn so that its tracks fill the frame, epoch ms: from the first to begin, or from the next
 * where that one alone takes more than half of the picture (a kiln of a day and a half beside two hours of work).
 * `whole` is from where all of it is drawn.
 */
export function tracksWindow(
  tracks: readonly Pick<PlannedTrack, "steps">[],
  pourAt: number,
): { readonly from: number; readonly whole: number } {
  const starts = tracks
    .flatMap(({ steps }) => steps[0]?.startAt ?? [])
    .filter((at) => at < pourAt)
    .toSorted((a, b) => a - b);
  const whole = starts[0] ?? pourAt;
  const isAlone = (at: number, i: number): boolean => {
    const next = starts[i + 1];
    return next !== undefined && next - at > (pourAt - at) * aloneShare;
  };
  return { from: starts.find((at, i) => !isAlone(at, i)) ?? whole, whole };
}
