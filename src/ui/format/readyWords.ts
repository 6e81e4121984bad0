import type { CoatDrying, NoReadyReason } from "../../logbook/standing.ts";
import { soonTime } from "./time.ts";

const reasonWords: Record<NoReadyReason, string> = {
  "no-readings": "no reading of the room's air: read it and a time can be given",
  "air-too-damp": "the room's air is too damp: no time can be given until it is drier",
  condensing: "water is condensing on the shell: warm the piece or dry the air",
  frost:
    "the wet surface falls below 1 °C, where the slurry freezes: no time can be given, bring the piece into a warmer room",
  "beyond-forecast": "it lies too far ahead to say",
};

export const noReadyWords = (reason: NoReadyReason): string => reasonWords[reason];

/** "likely 18:40, between 17:10 and 21:30", or why there is no time. */
export function readyWords(
  drying: Pick<CoatDrying, "readyAt" | "reason">,
  now: number,
  locale: string,
): string {
  const { early, likely, late } = drying.readyAt;
  const say = (at: number): string => soonTime(at, now, locale);
  if (likely === null) {
    const why = drying.reason === null ? "no time can be given" : reasonWords[drying.reason];
    return early === null ? why : `not before ${say(early)}; ${why}`;
  }
  if (likely <= now) {
    if (late !== null && late > now) return `likely dry since ${say(likely)}, surely by ${say(late)}`;
    return `dry since ${say(likely)}`;
  }
  if (early !== null && late !== null) return `likely ${say(likely)}, between ${say(early)} and ${say(late)}`;
  if (early !== null) return `likely ${say(likely)}, not before ${say(early)}, perhaps much later`;
  return `likely ${say(likely)}`;
}

/** One word of a coat's state and, under it, what the word rests on. */
export const verdictWords: Record<CoatDrying["verdict"], string> = {
  dry: "dry",
  maybe: "perhaps dry",
  wet: "wet",
  unknown: "not known",
};
