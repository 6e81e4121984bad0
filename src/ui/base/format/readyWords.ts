import type { CoatDrying, NoReadyReason } from "../../../logbook/piece/standing.ts";

const reasonWords: Record<NoReadyReason, string> = {
  "no-readings": "no drying time yet: log the room's temperature and humidity",
  "air-too-damp": "the room's air is too damp to dry it: no time can be given",
  condensing: "water is condensing on the shell: warm the piece or dry the air",
  frost:
    "the wet surface falls below 1 °C, where the slurry freezes: no time can be given, bring the piece into a warmer room",
  "beyond-forecast": "it lies too far ahead to say",
  "before-log": "it hung before the log began: how it dried is not judged",
};

export const noReadyWords = (reason: NoReadyReason): string => reasonWords[reason];

/** One word of a coat's state and, under it, what the word rests on. */
export const verdictWords: Record<CoatDrying["verdict"], string> = {
  dry: "dry",
  maybe: "perhaps dry",
  wet: "wet",
  unknown: "not known",
};
