import type { PourTrack } from "../../../logbook/entries/fireBodies.ts";
import { trackOrder } from "../../../logbook/pour/pourSteps.ts";
import type { PlannedStep, PlannedTrack } from "../../../physics/metal/pourDay.ts";

/** The step a track is at; undefined once all of it is done. */
export const currentOf = ({ steps }: Pick<PlannedTrack, "steps">): PlannedStep | undefined =>
  steps.find(({ state }) => state !== "done");

export const trackOf = (id: string): PourTrack => trackOrder.find((one) => one === id) ?? "people";

/** When a track next needs a hand, epoch ms: its step's end while it runs, else its start; Infinity once it is ready. */
export function dueAt(track: Pick<PlannedTrack, "steps">): number {
  const step = currentOf(track);
  if (step === undefined) return Infinity;
  return step.state === "running" ? step.endAt : step.startAt;
}

/**
 * The track whose key leads the screen at `now`: the first due, and of those that are due already what has not begun
 * before what is under way. Undefined once all are ready.
 */
export function leadOf<T extends Pick<PlannedTrack, "steps">>(
  tracks: readonly T[],
  now: number,
): T | undefined {
  const open = tracks.filter((track) => dueAt(track) !== Infinity);
  const waits = (track: T): number => (currentOf(track)?.state === "running" ? 1 : 0);
  const due = (track: T): number => Math.max(now, dueAt(track));
  return open.toSorted((a, b) => due(a) - due(b) || waits(a) - waits(b))[0];
}
