import type { PourStep as DayStep, PourTrack as DayTrack } from "../../physics/metal/pourDay.ts";
import { pourTracks } from "../../trade/pourTracks.ts";
import type { PourStep, PourTrack } from "../entries/fireBodies.ts";

/** The tracks of a pour day in the order they are shown. */
export const trackOrder: readonly PourTrack[] = ["shell", "sand", "metal", "tools", "people"];

/** Skimmer, thermocouple and ingot mould by the furnace until no damp is left in them, min: common practice, no source. */
const toolsHeatMin = 25;
/** A warm tool out of the heat is dry for about this long, min: judgement. */
const toolsKeepMin = 30;

const toolsHeated: PourStep = {
  id: "tools-heated",
  track: "tools",
  minutes: toolsHeatMin,
  keepsMin: toolsKeepMin,
};

export type PourMinutes = Parameters<typeof pourTracks>[0];

/** What a pour day is made of, as the log keeps it; tracks that aren't needed are left out. */
export function stepsOf(minutes: PourMinutes): readonly PourStep[] {
  const steps = pourTracks(minutes).flatMap((track) =>
    track.steps.map((step) => ({
      id: step.id,
      track: trackOf(track.id, step.id),
      minutes: step.durationMin,
      keepsMin: step.maxHoldMin,
    })),
  );
  return trackOrder.flatMap((track) => [
    ...steps.filter((step) => step.track === track),
    ...(track === "tools" ? [toolsHeated] : []),
  ]);
}

/** Tools are laid out by a person, but they are a track of their own: it goes on when that person has left. */
function trackOf(dayTrack: string, step: string): PourTrack {
  if (step === "tools-laid-out") return "tools";
  return dayTrack === "kiln" ? "shell" : (trackOrder.find((track) => track === dayTrack) ?? "people");
}

const most = 10_000;

/** Logged steps as the sum wants them: how each is held, who and what it keeps busy, comes from its id. */
export function dayTracks(steps: readonly PourStep[]): readonly DayTrack[] {
  const known = new Map(
    pourTracks({ kilnMin: 0, sandMin: 0, crucibleMin: 0, meltMin: 0 }).flatMap((track) =>
      track.steps.map((step): readonly [string, DayStep] => [step.id, step]),
    ),
  );
  return trackOrder
    .map((track) => ({ id: track, steps: steps.filter((step) => step.track === track) }))
    .filter((track) => track.steps.length > 0)
    .map((track) => ({
      id: track.id,
      steps: track.steps.map(({ id, minutes, keepsMin }): DayStep => {
        const traits = known.get(id);
        return {
          holdAs: id === toolsHeated.id ? "keep-hot" : "stand-ready",
          ...traits,
          id,
          durationMin: Math.min(most, Math.max(0, minutes)),
          maxHoldMin: keepsMin,
        };
      }),
    }));
}
